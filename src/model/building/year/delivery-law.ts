/** Nothing is delivered. */
export const CLOSED = 0
/** The valve follows the room's excess over its setpoint. */
export const THROTTLED = 1
/** All that UA carries between room and store. */
export const OPEN_TO_STORE = 2
/** All that UA carries between room and indoor dew point + margin, return water blended in. */
export const OPEN_AT_DEW_LIMIT = 3

/** A share held to 0…1. */
export const clamped = (share: number): number => Math.min(1, Math.max(0, share))
