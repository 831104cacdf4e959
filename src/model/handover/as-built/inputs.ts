import type { AsBuiltLog } from './log.ts'
import type { AsBuiltInputs } from './inputs-type.ts'
import { designFlow, loopSpecOf, panelSpecOf, skyOptionsOf } from '#model/design/assembly'
import type { Scenario } from '#model/design/scenario'
import { skyHours } from '#model/outdoors/sky'
import { planeIrradiance, sunHours } from '#model/outdoors/sun'
import type { WeatherRecord } from '#model/outdoors/weather'

/**
 * What the as-built check needs, from the scenario the panel was designed with.
 * @param weather  of the log's own hours
 * @param area_m2  of panel as built
 */
export function asBuiltInputs(
  scenario: Scenario,
  weather: WeatherRecord,
  log: AsBuiltLog,
  area_m2: number,
): AsBuiltInputs {
  const panel = panelSpecOf(scenario)
  const { latitude_deg, longitude_deg } = weather.site
  const sun = sunHours(
    weather.start_utcMs,
    weather.hours,
    weather.radiationMiddle_h,
    latitude_deg,
    longitude_deg,
  )
  const { tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg } = panel
  return {
    weather,
    sky: skyHours(weather, skyOptionsOf(scenario)),
    plane: planeIrradiance(sun, weather, tilt_deg, azimuth_deg, groundAlbedo_frac, horizon_deg),
    panel,
    loop: { ...loopSpecOf(scenario), flow_kgsm2: designFlow(scenario)(area_m2) },
    area_m2,
    fieldFactor_frac: scenario.panel.fieldFactor_frac,
    log,
  }
}

/** A log with nothing in it yet, for a rehearsal or a forecast over the hours of some weather. */
export function emptyLog(hours: number): AsBuiltLog {
  const nothing = new Float64Array(hours).fill(NaN)
  return {
    hours,
    panelIn_C: nothing,
    panelOut_C: nothing,
    flow_kgs: null,
    pumpRun_frac: null,
    air_C: null,
    plate_C: null,
    store_C: null,
    room_C: null,
    basis: 'Nothing logged.',
  }
}
