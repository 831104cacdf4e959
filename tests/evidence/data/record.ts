/** A weather record from measured hours: dew point and cloud are worked out by the project's own derivations. */
import { sunHours } from '#model/outdoors/sun'
import { FIELDS } from '#model/design/scenario'
import { blackbody_Wm2 } from '#model/outdoors/air'
import { clearByLongwave } from '#inside/model/outdoors/sky/clear-by-longwave.ts'
import { type SkyOptions, skyHours } from '#model/outdoors/sky'
import { deriveCloud } from '#inside/model/outdoors/intake/derive/cloud.ts'
import { deriveDewPoint } from '#inside/model/outdoors/intake/derive/humidity.ts'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { MeasuredHours } from './measured.ts'

export interface SkyErrors {
  readonly count: number
  readonly bias_Wm2: number
  readonly rmse_Wm2: number
}
export interface SkyJudgement {
  readonly clearNight: SkyErrors
  /** The clear-sky formula without cloud, over nights that the measured longwave itself calls clear. */
  readonly formulaClearNight: SkyErrors
  readonly allNight: SkyErrors
  readonly clearDay: SkyErrors
  readonly allDay: SkyErrors
}

/** Cloud under which an hour counts as clear. */
const CLEAR_frac = 0.1

const OPTIONS: SkyOptions = {
  model: FIELDS.sky.model.default,
  altitudeTerm: false,
  useMeasured: false,
  deficitFactor_frac: 1,
}

/** Model less measured longwave of every hour that has all its readings, the measured column being withheld. */
export function judgeSky(measured: MeasuredHours): SkyJudgement {
  const { hours, start_utcMs, latitude_deg, longitude_deg, altitude_m } = measured
  const sun = sunHours(start_utcMs, hours, 0.5, latitude_deg, longitude_deg)
  const cloud_frac = deriveCloud(measured.global_Wm2, sun, altitude_m, false)!
  const record: WeatherRecord = {
    site: { name: 'measured', latitude_deg, longitude_deg, altitude_m, utcOffset_h: 0 },
    start_utcMs,
    hours,
    radiationMiddle_h: 0.5,
    airTemp_C: measured.airTemp_C,
    dewPoint_C: deriveDewPoint(measured.airTemp_C, measured.relativeHumidity_pct),
    pressure_Pa: measured.pressure_Pa,
    wind_ms: measured.wind_ms,
    globalHorizontal_Wm2: measured.global_Wm2,
    directNormal_Wm2: new Float64Array(hours),
    diffuseHorizontal_Wm2: measured.global_Wm2,
    cloud_frac,
    origins: { cloud_frac: { kind: 'derived', note: '', filledHours: 0 } },
    basis: 'measured',
  }
  const longwave = skyHours(record, OPTIONS).total_Wm2
  const formula = skyHours({ ...record, cloud_frac: new Float64Array(hours) }, OPTIONS).total_Wm2
  const proven = clearByLongwave(measured.longwave_Wm2, formula, record.airTemp_C.map(blackbody_Wm2))
  const errors = (wanted: (h: number) => boolean) => errorsOf(longwave, measured.longwave_Wm2, wanted)
  const night = (h: number) => sun.altitude_deg[h]! < -1
  const day = (h: number) => sun.altitude_deg[h]! > 10
  const clear = (h: number) => cloud_frac[h]! < CLEAR_frac
  return {
    clearNight: errors((h) => night(h) && clear(h)),
    formulaClearNight: errorsOf(formula, measured.longwave_Wm2, (h) => night(h) && proven[h] === 1),
    allNight: errors(night),
    clearDay: errors((h) => day(h) && clear(h)),
    allDay: errors(day),
  }
}

function errorsOf(model: Float64Array, measured: Float64Array, wanted: (h: number) => boolean): SkyErrors {
  const off: number[] = []
  for (let h = 0; h < model.length; h++) {
    const error = model[h]! - measured[h]!
    if (wanted(h) && Number.isFinite(error)) off.push(error)
  }
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
  return { count: off.length, bias_Wm2: mean(off), rmse_Wm2: Math.sqrt(mean(off.map((e) => e * e))) }
}
