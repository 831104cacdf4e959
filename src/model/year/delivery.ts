/**
 * Delivery from tank to room: a valve that opens in proportion to the room's excess over its setpoint, limited by
 * what the cooled surface can take up at the temperature it may have (never below indoor dew point + margin):
 *
 *   Q = max(0, min( UA (T_air − max(T_store, T_dew + margin)), UA · 10 K / band · (T_air − setpoint) ))
 *
 * Piecewise linear, so each stage solves it as one of four laws and checks that the law holds at its solution.
 */
export const CLOSED = 0
export const THROTTLED = 1
export const OPEN_TO_STORE = 2
export const OPEN_AT_DEW_LIMIT = 3

/** Temperature difference at which the valve's rated output is counted, K (common practice, no source). */
export const RATED_DIFFERENCE_K = 10

/** Delivery starts when the store is this much colder than the room, and stops at the second, K: under it the fan's own heat eats the gain. */
export const DELIVERY_START_K = 1
export const DELIVERY_STOP_K = 0.5

/**
 * Which law holds at these temperatures.
 * @param open_WK    conductance with the valve fully open, W/K
 * @param demand_WK  slope of the valve's demand, W/K
 * @param lowest_C   indoor dew point + margin
 */
export function deliveryLaw(
  air_C: number,
  store_C: number,
  lowest_C: number,
  setpoint_C: number,
  open_WK: number,
  demand_WK: number,
): number {
  const surface_C = Math.max(store_C, lowest_C)
  const reachable_W = open_WK * (air_C - surface_C)
  const demanded_W = demand_WK * (air_C - setpoint_C)
  if (reachable_W <= 0 || demanded_W <= 0) return CLOSED
  if (demanded_W < reachable_W) return THROTTLED
  return store_C >= lowest_C ? OPEN_TO_STORE : OPEN_AT_DEW_LIMIT
}
