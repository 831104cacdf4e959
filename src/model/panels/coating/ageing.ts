import type { CoatingOptics, FilmOptics } from './optics.ts'
import { stop } from '#model/basis/words'

/** Reflectance that dirt alone tends to, and how much of a coating's own survives it, –. */
const DIRT_REFLECTANCE = 0.2
const SURVIVING_SHARE = 0.67

/** Solar reflectance a soiled coating tends to: 0.2 + 0.67 (R₀ − 0.2), never above the fresh value (from memory). */
export function soiledReflectance_frac(fresh_frac: number): number {
  return Math.min(fresh_frac, DIRT_REFLECTANCE + SURVIVING_SHARE * (fresh_frac - DIRT_REFLECTANCE))
}

/**
 * A coating after so many years without washing: solar reflectance falls at first by `soiling_1y` a year and levels
 * off at `soiledReflectance_frac`; emittance stays (dirt is as black in the infrared as paint).
 * @throws RangeError for a negative age or soiling
 */
export function agedCoating(fresh: CoatingOptics, soiling_1y: number, age_y: number): CoatingOptics {
  if (!(age_y >= 0)) throw new RangeError(`age ${age_y} y, must be ≥ 0`)
  if (!(soiling_1y >= 0)) throw new RangeError(`soiling ${soiling_1y} a year, must be ≥ 0`)
  const end = soiledReflectance_frac(fresh.solarReflectance_frac)
  const room = fresh.solarReflectance_frac - end
  const lost = room > 0 ? room * (1 - Math.exp((-soiling_1y * age_y) / room)) : 0
  return { ...fresh, solarReflectance_frac: fresh.solarReflectance_frac - lost }
}

/** The cover's fields of a scenario that describe the film when new. */
export interface FilmFields {
  readonly solarTransmittance_frac: number
  readonly windowTransmittance_frac: number
  readonly offWindowTransmittance_frac: number
  /** Of its surfaces, all bands. */
  readonly reflectance_frac: number
  /** Sunlight that it sends back besides. */
  readonly scattered_frac: number
  readonly gap_m: number
  readonly flutter_frac: number
  readonly life_months: number
}

/** What a film has lost of its transmittance at the end of its life, – (common practice, no source). */
const SOLAR_LOSS_AT_END = 0.1
const INFRARED_LOSS_AT_END = 0.05

/**
 * A cover film at an age: transmittance falls in a straight line to 90 % (sunlight) and 95 % (infrared) of the new
 * value at the end of its life, when it is replaced; what is lost is absorbed. Reflectance stays.
 * @param age_y  age the sizing is made for; beyond the life it is a film about to be replaced
 * @throws ProblemError when transmittance and reflectance add to more than 1
 */
export function agedFilm(film: FilmFields, age_y: number): FilmOptics {
  const worn = Math.min(1, (12 * age_y) / film.life_months)
  const infraredReflects = film.reflectance_frac
  const solarReflects = infraredReflects + film.scattered_frac
  const bands = [
    ['solarTransmittance_frac', solarReflects],
    ['windowTransmittance_frac', infraredReflects],
    ['offWindowTransmittance_frac', infraredReflects],
  ] as const
  for (const [band, r] of bands) {
    if (film[band] + r > 1 + 1e-12) {
      throw stop(
        'film-more-than-all',
        `The film would pass ${film[band]} and reflect ${r}: together more than 1.`,
        'Lower the transmittance or the reflectance of the film.',
        { field: `cover.${band}` },
      )
    }
  }
  const infrared = 1 - INFRARED_LOSS_AT_END * worn
  return {
    solarTransmittance_frac: film.solarTransmittance_frac * (1 - SOLAR_LOSS_AT_END * worn),
    solarReflectance_frac: solarReflects,
    windowTransmittance_frac: film.windowTransmittance_frac * infrared,
    windowReflectance_frac: infraredReflects,
    offWindowTransmittance_frac: film.offWindowTransmittance_frac * infrared,
    offWindowReflectance_frac: infraredReflects,
    gap_m: film.gap_m,
    flutter_frac: film.flutter_frac,
  }
}
