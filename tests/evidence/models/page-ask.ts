/** A drawn hour put to the project: sky, sunlight on the panel, optics with age, full balance, reduced hour, water kept. */
import { agedCoating, agedFilm } from '#model/panels/coating'
import {
  emptyPanelHour,
  panelBalance,
  panelSetting,
  panelTangent,
  readPanelHour,
  reducePanelHours,
  waterAfter_kgm2,
  type PanelSpec,
} from '#model/panels/plate'
import { skyHours } from '#model/outdoors/sky'
import { planeIrradiance } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { DrawnHour } from './page-draw.ts'

const column = (value: number) => new Float64Array(1).fill(value)
const read = { kind: 'read', note: '', filledHours: 0 } as const

/** One hour that begins at midnight UTC; the longitude gives it its solar time. */
function record({ weather: w, sun }: DrawnHour): WeatherRecord {
  return {
    site: {
      name: 'page',
      latitude_deg: 0,
      longitude_deg: 15 * (w.solarHour - 0.5 - (w.solarHour > 12 ? 24 : 0)),
      altitude_m: w.altitude_m,
      utcOffset_h: 0,
    },
    start_utcMs: 0,
    hours: 1,
    radiationMiddle_h: 0.5,
    airTemp_C: column(w.air_C),
    dewPoint_C: column(w.dewPoint_C),
    pressure_Pa: column(w.pressure_Pa),
    wind_ms: column(w.wind_ms),
    globalHorizontal_Wm2: column(sun.global_Wm2),
    directNormal_Wm2: column(sun.direct_Wm2),
    diffuseHorizontal_Wm2: column(sun.diffuse_Wm2),
    cloud_frac: column(w.cloud_frac),
    ...(w.measured_Wm2 === null ? {} : { skyLongwave_Wm2: column(w.measured_Wm2) }),
    origins: {
      cloud_frac: w.cloudWasRead ? read : { ...read, kind: 'derived' },
      ...(w.measured_Wm2 === null ? {} : { skyLongwave_Wm2: read }),
    },
    basis: 'measured',
  }
}

function specOf(hour: DrawnHour): PanelSpec {
  const { sheet, fresh, plane } = hour
  return {
    coating: agedCoating(
      {
        solarReflectance_frac: fresh.solarReflectance,
        windowEmittance_frac: fresh.window,
        offWindowEmittance_frac: fresh.rest,
      },
      hour.soiling_1y,
      hour.years,
    ),
    film:
      sheet &&
      agedFilm(
        {
          solarTransmittance_frac: sheet.sun,
          windowTransmittance_frac: sheet.window,
          offWindowTransmittance_frac: sheet.rest,
          reflectance_frac: sheet.reflectance,
          scattered_frac: sheet.scattered,
          gap_m: sheet.gap_m,
          flutter_frac: sheet.flutter,
          life_months: sheet.life_months,
        },
        hour.years,
      ),
    tilt_deg: plane.tilt_deg,
    azimuth_deg: plane.azimuth_deg,
    horizon_deg: plane.horizon_deg,
    groundAlbedo_frac: plane.albedo,
    height_m: hour.height_m,
    terrain: hour.terrain,
    windModel: hour.wind,
    windExposure_frac: hour.exposure,
    freeConvectionLength_m: hour.length_m,
    backLoss_Wm2K: hour.backLoss,
    heatCapacity_Jm2K: 5000,
  }
}

/** Seconds of the step after which the water is asked. */
export const STEP_S = 900

export interface Answers {
  readonly sky_Wm2: number
  readonly window_Wm2: number
  readonly sun_Wm2: number
  readonly full_Wm2: number
  readonly reduced_Wm2: number
  /** Vapour that leaves, as the heat it would take at 0 °C. */
  readonly vapour_Wm2: number
  readonly water_kgm2: number
}

export function projectAnswers(hour: DrawnHour): Answers {
  const weather = record(hour)
  const sky = skyHours(weather, {
    model: hour.weather.formula,
    altitudeTerm: hour.weather.altitudeTerm,
    useMeasured: true,
    deficitFactor_frac: hour.weather.correction,
  })
  const spec = specOf(hour)
  const at = {
    hours: 1,
    altitude_deg: column(hour.sun.altitude_deg),
    azimuth_deg: column(hour.sun.azimuth_deg),
    extraterrestrial_Wm2: column(hour.sun.extraterrestrial_Wm2),
  }
  const plane = planeIrradiance(
    at,
    weather,
    spec.tilt_deg,
    spec.azimuth_deg,
    spec.groundAlbedo_frac,
    spec.horizon_deg,
  )
  const setting = panelSetting(spec)
  const inputs = emptyPanelHour()
  readPanelHour(setting, weather, sky, plane, 0, inputs)
  const full = panelBalance(setting, inputs, hour.plate_C, hour.water_kgm2)
  const reduced = reducePanelHours(weather, plane, sky, spec)
  const tangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  panelTangent(reduced, 0, hour.plate_C, hour.water_kgm2, tangent)
  return {
    sky_Wm2: sky.total_Wm2[0]!,
    window_Wm2: sky.window_Wm2[0]!,
    sun_Wm2: plane.total_Wm2[0]!,
    full_Wm2: full.q_Wm2,
    reduced_Wm2: tangent.q_Wm2,
    vapour_Wm2: -2.501e6 * full.water_kgm2s,
    water_kgm2: waterAfter_kgm2(
      hour.water_kgm2,
      full.water_kgm2s,
      STEP_S,
      hour.plate_C,
      reduced.waterLimit_kgm2,
    ),
  }
}
