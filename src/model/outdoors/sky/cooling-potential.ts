import { OFF_WINDOW_EMISSION, WINDOW_EMISSION } from '#model/outdoors/air'
import { valueAt } from '#model/basis/numbers'
import type { SkyHours } from './hours.ts'
import type { SunHours } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'

/** Hemispherical emittance of a surface inside and outside 8–13 µm, 0…1. */
export interface Emitter {
  readonly windowEmittance_frac: number
  readonly offWindowEmittance_frac: number
}

/** A surface that radiates all it can. */
export const BLACK: Emitter = { windowEmittance_frac: 1, offWindowEmittance_frac: 1 }

/** Sun at least this far down counts as night, degrees: sunset to the eye, refraction and half the disc. */
const NIGHT_DEG = -0.833

/**
 * What an open, level surface held at air temperature loses to the sky in every hour, W/m²: net longwave in the two
 * bands, ε_w (E_w(T) − L_w) + ε_o (E_o(T) − L_o). No sunlight and, at air temperature, no wind enters it; a cooler
 * plate gains less. Below zero the sky is warmer than the air.
 * @throws RangeError when the series differ in length or an emittance is not 0…1
 */
export function coolingPotential_Wm2(
  weather: Pick<WeatherRecord, 'airTemp_C' | 'hours'>,
  sky: SkyHours,
  emitter: Emitter,
): Float64Array {
  if (sky.hours !== weather.hours) {
    throw new RangeError(`coolingPotential: sky has ${sky.hours} h, weather ${weather.hours} h`)
  }
  const { windowEmittance_frac: window, offWindowEmittance_frac: rest } = emitter
  if (!(window >= 0 && window <= 1 && rest >= 0 && rest <= 1)) {
    throw new RangeError(`coolingPotential: emittances ${window} and ${rest}, must be 0…1`)
  }
  return weather.airTemp_C.map(
    (air_C, hour) =>
      window * (valueAt(WINDOW_EMISSION, air_C) - sky.window_Wm2[hour]!) +
      rest * (valueAt(OFF_WINDOW_EMISSION, air_C) - sky.offWindow_Wm2[hour]!),
  )
}

/** 1 in the hours whose middle lies after sunset and before sunrise, else 0. */
export function nightHours(sun: Pick<SunHours, 'altitude_deg'>): Uint8Array {
  return Uint8Array.from(sun.altitude_deg, (altitude) => (altitude < NIGHT_DEG ? 1 : 0))
}
