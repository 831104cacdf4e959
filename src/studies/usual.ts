/** Draws of the area's range unless given. */
export { USUAL_DRAWS } from '#model/design/scenario'

/**
 * Draws behind the hours and months of a built design, the first of the usual ones (the first of them form a hypercube by
 * themselves): enough for 10 and 90 %, few enough to wait for.
 */
export const HOURS_DRAWS = 32

/** A design map is drawn around at least this much panel and store. */
export const LEAST_MAP_AREA_m2 = 1
export const LEAST_MAP_STORE_m3 = 0.02
