/** Random hours put to the project and to the second model of `page-hour.ts`. */
import {
  emptyPanelHour,
  panelBalance,
  panelSetting,
  panelTangent,
  readPanelHour,
  reducePanelHours,
  type PanelSpec,
} from '#model/panels/plate'
import { skyHours } from '#model/outdoors/sky'
import { FIELDS } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import { once } from '../check.ts'
import { pageHeat_Wm2, type PagePanel } from './page-hour.ts'
import { pageSky, type PageWeather } from './page-sky.ts'
import { xorshift } from './random.ts'

export const HOURS = 500
const draw = xorshift(20261129)
const between = (low: number, high: number) => low + (high - low) * draw()

function oneHour(): { w: PageWeather; panel: PagePanel; plate_C: number; water_kgm2: number } {
  const air_C = between(-12, 42)
  const film = draw() < 0.5
  const thin = () => [between(0.6, 0.9), between(0.02, 0.1)] as const
  return {
    w: {
      air_C,
      dewPoint_C: air_C - between(0.2, 22),
      pressure_Pa: between(75000, 103000),
      wind_ms: draw() < 0.1 ? 0 : between(0, 7),
      cloud_frac: draw() < 0.3 ? 0 : draw(),
      cloudWasRead: draw() < 0.5,
      sun_Wm2: draw() < 0.5 ? 0 : between(0, 1000),
    },
    panel: {
      solarReflectance: between(0.1, 0.98),
      window: between(0.1, 0.97),
      rest: between(0.05, 0.97),
      film: film
        ? { sun: thin(), window: thin(), rest: thin(), gap_m: between(0.005, 0.06), flutter: between(0, 0.5) }
        : null,
      tilt_deg: draw() < 0.3 ? 0 : between(0, 80),
      horizon_deg: draw() < 0.5 ? 0 : between(0, 25),
      height_m: between(1, 8),
      terrain: (['open', 'suburb', 'city'] as const)[Math.floor(3 * draw())]!,
      slope: 3,
      exposure: between(0.5, 1.2),
      length_m: between(0.05, 0.5),
      backLoss: between(0.2, 2),
    },
    plate_C: air_C + between(-18, 15),
    water_kgm2: draw() < 0.6 ? 0 : between(0, 0.05),
  }
}

function ours({ w, panel, plate_C, water_kgm2 }: ReturnType<typeof oneHour>) {
  const column = (value: number) => new Float64Array(1).fill(value)
  const weather: WeatherRecord = {
    site: { name: 'page', latitude_deg: 0, longitude_deg: 0, altitude_m: 0, utcOffset_h: 0 },
    start_utcMs: 0,
    hours: 1,
    radiationMiddle_h: 0.5,
    airTemp_C: column(w.air_C),
    dewPoint_C: column(w.dewPoint_C),
    pressure_Pa: column(w.pressure_Pa),
    wind_ms: column(w.wind_ms),
    globalHorizontal_Wm2: column(0),
    directNormal_Wm2: column(0),
    diffuseHorizontal_Wm2: column(0),
    cloud_frac: column(w.cloud_frac),
    origins: { cloud_frac: { kind: w.cloudWasRead ? 'read' : 'derived', note: '', filledHours: 0 } },
    basis: 'measured',
  }
  const sky = skyHours(weather, {
    model: FIELDS.sky.model.default,
    altitudeTerm: false,
    useMeasured: false,
    deficitFactor_frac: 1,
  })
  const { film } = panel
  const spec: PanelSpec = {
    coating: {
      solarReflectance_frac: panel.solarReflectance,
      windowEmittance_frac: panel.window,
      offWindowEmittance_frac: panel.rest,
    },
    film: film && {
      solarTransmittance_frac: film.sun[0],
      solarReflectance_frac: film.sun[1],
      windowTransmittance_frac: film.window[0],
      windowReflectance_frac: film.window[1],
      offWindowTransmittance_frac: film.rest[0],
      offWindowReflectance_frac: film.rest[1],
      gap_m: film.gap_m,
      flutter_frac: film.flutter,
    },
    tilt_deg: panel.tilt_deg,
    azimuth_deg: 180,
    horizon_deg: panel.horizon_deg,
    groundAlbedo_frac: 0.2,
    height_m: panel.height_m,
    terrain: panel.terrain,
    windModel: 'watmuff1977',
    windExposure_frac: panel.exposure,
    freeConvectionLength_m: panel.length_m,
    backLoss_Wm2K: panel.backLoss,
    heatCapacity_Jm2K: 5000,
  }
  const plane = {
    beam_Wm2: column(w.sun_Wm2),
    diffuse_Wm2: column(0),
    total_Wm2: column(w.sun_Wm2),
    cosIncidence: column(1),
  }
  const setting = panelSetting(spec)
  const hour = emptyPanelHour()
  readPanelHour(setting, weather, sky, plane, 0, hour)
  const tangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  panelTangent(reducePanelHours(weather, plane, sky, spec), 0, plate_C, water_kgm2, tangent)
  return {
    sky_Wm2: sky.total_Wm2[0]!,
    window_Wm2: sky.window_Wm2[0]!,
    full_Wm2: panelBalance(setting, hour, plate_C, water_kgm2).q_Wm2,
    reduced_Wm2: tangent.q_Wm2,
  }
}

/** Largest differences between project and page over the hours, W/m². */
export const pageDifferences = once(() => {
  const worst = { sky_Wm2: 0, window_Wm2: 0, full_Wm2: 0, reduced_Wm2: 0 }
  for (let i = 0; i < HOURS; i++) {
    const one = oneHour()
    const sky = pageSky(one.w)
    const heat_Wm2 = pageHeat_Wm2(one.w, one.panel, one.plate_C, one.water_kgm2)
    const page = { sky_Wm2: sky.total, window_Wm2: sky.window, full_Wm2: heat_Wm2, reduced_Wm2: heat_Wm2 }
    const got = ours(one)
    for (const key of Object.keys(worst) as (keyof typeof worst)[])
      worst[key] = Math.max(worst[key], Math.abs(got[key] - page[key]))
  }
  return worst
})
