import { blackbody_Wm2 } from '#model/outdoors/air'
import { clearByLongwave } from './clear-by-longwave.ts'
import type { SkyOptions } from './hours.ts'
import { skyHours } from './longwave.ts'
import type { SunHours } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'

/** How the modelled longwave did against the measured one over some hours: model − measured, W/m². */
export interface SkyErrors {
  readonly hours: number
  readonly bias_Wm2: number
  readonly rmse_Wm2: number
}

/** The sky's errors over all hours and kinds of hours, with cloud as the model has it and by the clear-sky formula. */
export interface SkyJudgement {
  /** The model as it runs, cloud and all. */
  readonly model: Readonly<Record<'all' | 'day' | 'clear day' | NightKind, SkyErrors>>
  /** The clear-sky formula without cloud. */
  readonly formula: Readonly<Record<NightKind, SkyErrors>>
}

/** All nights, those with cloud below a tenth, and those the measured longwave calls clear (`clearByLongwave`). */
type NightKind = 'night' | 'clear night' | 'night clear by its own longwave'

/** Cloud cover below which an hour counts as clear, 0…1. */
const CLEAR_frac = 0.1

/**
 * Judges the sky model against the measured longwave of a record, which it does not look at; hours without a measured
 * value are left out.
 * @returns null when the record has no measured longwave
 */
export function judgeSky(weather: WeatherRecord, sun: SunHours, options: SkyOptions): SkyJudgement | null {
  const measured_Wm2 = weather.skyLongwave_Wm2
  if (measured_Wm2 === undefined) return null
  const blind = { ...options, useMeasured: false }
  const cloudless = { ...weather, cloud_frac: new Float64Array(weather.hours) }
  const model_Wm2 = skyHours(weather, blind).total_Wm2
  const formula_Wm2 = skyHours(cloudless, blind).total_Wm2
  const black_Wm2 = weather.airTemp_C.map(blackbody_Wm2)
  const proven = clearByLongwave(measured_Wm2, formula_Wm2, black_Wm2)
  const up = (h: number): boolean => sun.altitude_deg[h]! > 0
  const clear = (h: number): boolean => weather.cloud_frac[h]! < CLEAR_frac
  const nights = (series_Wm2: Float64Array): Record<NightKind, SkyErrors> => ({
    night: errorsOver(series_Wm2, measured_Wm2, (h) => !up(h)),
    'clear night': errorsOver(series_Wm2, measured_Wm2, (h) => !up(h) && clear(h)),
    'night clear by its own longwave': errorsOver(series_Wm2, measured_Wm2, (h) => !up(h) && proven[h] === 1),
  })
  return {
    model: {
      all: errorsOver(model_Wm2, measured_Wm2, () => true),
      day: errorsOver(model_Wm2, measured_Wm2, up),
      'clear day': errorsOver(model_Wm2, measured_Wm2, (h) => up(h) && clear(h)),
      ...nights(model_Wm2),
    },
    formula: nights(formula_Wm2),
  }
}

function errorsOver(
  model_Wm2: Float64Array,
  measured_Wm2: Float64Array,
  counts: (h: number) => boolean,
): SkyErrors {
  let hours = 0
  let sum = 0
  let squares = 0
  for (let h = 0; h < model_Wm2.length; h++) {
    const error = model_Wm2[h]! - measured_Wm2[h]!
    if (Number.isNaN(error) || !counts(h)) continue
    hours++
    sum += error
    squares += error * error
  }
  return { hours, bias_Wm2: sum / hours, rmse_Wm2: Math.sqrt(squares / hours) }
}
