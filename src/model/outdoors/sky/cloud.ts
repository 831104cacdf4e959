/** Scale height of the cloud term, m. Martin & Berdahl 1984, Solar Energy 33, 321 (from memory). */
const CLOUD_SCALE_M = 8200
/** Rise of the condensation level per kelvin of dew-point spread, m/K. Espy's rule; Lawrence 2005, BAMS 86, 225. */
const BASE_RISE_MK = 125
/** Cloud bases are held within these, m (common practice, no source). */
const LOWEST_BASE_M = 200
const HIGHEST_BASE_M = 4000

/** Height of a cloud base over the ground from the dew-point spread, m. */
export function cloudBase_m(air_C: number, dewPoint_C: number): number {
  return Math.min(HIGHEST_BASE_M, Math.max(LOWEST_BASE_M, BASE_RISE_MK * (air_C - dewPoint_C)))
}

/**
 * Sky emissivity under *observed* opaque cloud (black, colder with height), –.
 *   ε = ε₀ + (1 − ε₀) n exp(−h/8200 m)
 * Source: Martin & Berdahl 1984, with cloud emittance 1.
 */
export function cloudyMartinBerdahl(clear: number, cloud_frac: number, base_m: number): number {
  return clear + (1 - clear) * cloud_frac * Math.exp(-base_m / CLOUD_SCALE_M)
}

/**
 * Sky emissivity where cloud was worked out from sunlight (clf = 1 − clear-sky index), –.
 *   ε = clf + (1 − clf) ε₀
 * Source: Crawford & Duchon 1999, J. Applied Meteorology 38, 474.
 */
export function cloudyCrawfordDuchon(clear: number, cloud_frac: number): number {
  return cloud_frac + (1 - cloud_frac) * clear
}
