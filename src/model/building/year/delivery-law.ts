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

/** A share of the flow, found with the heat that it carries from the port to the store. */
export const PARTLY_OPEN = 6

/** A flow, or the fan's heat alone, is solved for again while it is this far from the one that was assumed, share of full flow. */
export const SAME_FLOW = 0.003
export const SAME_FAN = 0.02
/** A valve that throttles or blends lets at least this share of its flow through the tank's layers. */
export const LEAST_FLOW = 0.05
/** Temperature difference at which the valve's rated output is counted, K (common practice, no source). */
export const RATED_DIFFERENCE_K = 10

export const fades = (law: number): boolean => law === FADING_TO_STORE || law === FADING_AT_DEW_LIMIT
export const heldByDew = (law: number): boolean => law === OPEN_AT_DEW_LIMIT || law === FADING_AT_DEW_LIMIT

/** A share held to 0…1. */
export const clamped = (share: number): number => Math.min(1, Math.max(0, share))

/**
 * The law that holds where the room asks some heat, W, and the open valve reaches some, W, after a law. A store that the
 * open valve has brought to the room's temperature stays joined to it through the step.
 * @param byStore  store, not dew limit, is the end the heat goes to
 * @param above    the room, where the plant meets it, is warmer than the dew limit
 */
export function lawAfter(
  law: number,
  demanded_W: number,
  reachable_W: number,
  fading: boolean,
  byStore: boolean,
  above: boolean,
): number {
  // An open valve that brings the air under its setpoint is one to throttle; shut, it would be asked for again.
  if (demanded_W <= 0) return law >= OPEN_TO_STORE ? THROTTLED : CLOSED
  if (reachable_W <= 0 && (law !== OPEN_TO_STORE || !above)) return CLOSED
  if (reachable_W > 0 && demanded_W < reachable_W) return THROTTLED
  if (byStore) return fading ? FADING_TO_STORE : OPEN_TO_STORE
  return fading ? FADING_AT_DEW_LIMIT : OPEN_AT_DEW_LIMIT
}

/** What a valve in proportion asks for: heat for each kelvin of air over the setpoint. */
export interface Demand {
  readonly perKelvin_WK: number
  readonly setpoint_C: number
}
