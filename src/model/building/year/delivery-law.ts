/** Nothing is delivered. */
export const CLOSED = 0
/** The valve follows the room's excess over its setpoint. */
export const THROTTLED = 1
/** All that UA carries between room and store. */
export const OPEN_TO_STORE = 2
/** All that UA carries between room and indoor dew point + margin, return water blended in. */
export const OPEN_AT_DEW_LIMIT = 3
/** The same two where the room is hardly warmer: less and less, until the fan's own heat would eat the gain. */
export const FADING_TO_STORE = 4
export const FADING_AT_DEW_LIMIT = 5

export const fades = (law: number): boolean => law >= FADING_TO_STORE
export const heldByDew = (law: number): boolean => law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT

/** A share held to 0…1. */
export const clamped = (share: number): number => Math.min(1, Math.max(0, share))
