import { OFF_WINDOW_EMISSION, WINDOW_EMISSION } from '#model/outdoors/air'
import { weightedSum, type Polynomial5 } from '#model/basis/numbers'
import type { CoatingOptics, FilmOptics } from '#model/panels/coating'

/**
 * Emittance of water (and frost) on a surface, hemispherical, both bands: 0.95 (Incropera & DeWitt, table A.11:
 * water 0.96, frost 0.82–0.99; a film of dew is rough, taken a little lower; common practice, no source).
 */
export const WATER_EMITTANCE = 0.95

/**
 * Longwave and solar exchange of a plate, bare or under a film, with the sky, all inter-reflections summed.
 * Emission is a polynomial of °C (W/m²), the rest are shares of what falls on the panel.
 *
 *   plate loses  plateEmission(T) − filmToPlate(T_f) − window L_w − off L_o − sun G
 *   film loses   filmEmission(T_f) − plateToFilm(T) − filmWindow L_w − filmOff L_o − filmSun G
 */
export interface Exchange {
  readonly plateEmission: Polynomial5
  readonly plateWindow: number
  readonly plateOff: number
  readonly plateSun: number
  readonly filmToPlate: Polynomial5
  readonly plateToFilm: Polynomial5
  readonly filmEmission: Polynomial5
  readonly filmWindow: number
  readonly filmOff: number
  readonly filmSun: number
}

const NOTHING: Polynomial5 = new Float64Array(6)

/** A bare plate, dry, or wet and radiating as water does. Water is taken as clear to sunlight. */
export function bareExchange(coating: CoatingOptics, wet: boolean): Exchange {
  const window = wet ? WATER_EMITTANCE : coating.windowEmittance_frac
  const off = wet ? WATER_EMITTANCE : coating.offWindowEmittance_frac
  return {
    plateEmission: weightedSum(window, WINDOW_EMISSION, off, OFF_WINDOW_EMISSION),
    plateWindow: window,
    plateOff: off,
    plateSun: 1 - coating.solarReflectance_frac,
    filmToPlate: NOTHING,
    plateToFilm: NOTHING,
    filmEmission: NOTHING,
    filmWindow: 0,
    filmOff: 0,
    filmSun: 0,
  }
}

/** A film in one band: what it passes, and what its inner and outer faces reflect and emit. */
interface FilmBand {
  readonly passes: number
  readonly inReflects: number
  readonly inEmits: number
  readonly outEmits: number
}

/** A wet film lets no infrared through: below it acts by its own reflectance, above as water. */
function filmBand(transmittance: number, reflectance: number, wet: boolean): FilmBand {
  const emits = Math.max(0, 1 - transmittance - reflectance)
  return wet
    ? { passes: 0, inReflects: reflectance, inEmits: 1 - reflectance, outEmits: WATER_EMITTANCE }
    : { passes: transmittance, inReflects: reflectance, inEmits: emits, outEmits: emits }
}

/** Weights of one band: on the plate, on the film, and between them. */
interface BandExchange {
  readonly plateEmits: number
  readonly between: number
  readonly filmEmits: number
  readonly plateSky: number
  readonly filmSky: number
}

/**
 * Grey exchange in one band between a plate (emittance ε, ρ = 1 − ε), a film and a sky L, from the radiosities
 * J_down = t L + a_in E_f + r J_up and J_up = ε E_p + ρ J_down, with D = 1/(1 − r ρ).
 */
function bandExchange(emittance: number, film: FilmBand): BandExchange {
  const reflectance = 1 - emittance
  const D = 1 / (1 - film.inReflects * reflectance)
  return {
    plateEmits: emittance * D * (1 - film.inReflects),
    between: emittance * D * film.inEmits,
    filmEmits: film.inEmits + film.outEmits - film.inEmits * film.inEmits * reflectance * D,
    plateSky: emittance * D * film.passes,
    filmSky: film.outEmits + film.inEmits * reflectance * D * film.passes,
  }
}

/** A plate under a film, film dry or wet outside. */
export function filmExchange(coating: CoatingOptics, film: FilmOptics, wet: boolean): Exchange {
  const w = bandExchange(
    coating.windowEmittance_frac,
    filmBand(film.windowTransmittance_frac, film.windowReflectance_frac, wet),
  )
  const o = bandExchange(
    coating.offWindowEmittance_frac,
    filmBand(film.offWindowTransmittance_frac, film.offWindowReflectance_frac, wet),
  )
  const between = weightedSum(w.between, WINDOW_EMISSION, o.between, OFF_WINDOW_EMISSION)
  const bounce = 1 / (1 - film.solarReflectance_frac * coating.solarReflectance_frac)
  const filmAbsorbs = Math.max(0, 1 - film.solarTransmittance_frac - film.solarReflectance_frac)
  // Between a film and a coating that both reflect all, no sun comes in to be thrown to and fro without end.
  const through = film.solarTransmittance_frac > 0 ? film.solarTransmittance_frac * bounce : 0
  return {
    plateEmission: weightedSum(w.plateEmits, WINDOW_EMISSION, o.plateEmits, OFF_WINDOW_EMISSION),
    plateWindow: w.plateSky,
    plateOff: o.plateSky,
    plateSun: through * (1 - coating.solarReflectance_frac),
    filmToPlate: between,
    plateToFilm: between,
    filmEmission: weightedSum(w.filmEmits, WINDOW_EMISSION, o.filmEmits, OFF_WINDOW_EMISSION),
    filmWindow: w.filmSky,
    filmOff: o.filmSky,
    filmSun: filmAbsorbs * (1 + through * coating.solarReflectance_frac),
  }
}
