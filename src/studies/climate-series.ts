import { relativeHumidity_frac } from '#model/outdoors/air'
import {
  BLACK,
  coolingPotential_Wm2,
  nightHours,
  type Emitter,
  type SkyHours,
  type SkyOptions,
  skyHours,
} from '#model/outdoors/sky'
import { sunHours } from '#model/outdoors/sun'
import { stressWeather } from '#model/outdoors/climate'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Scenario } from '#model/design/scenario'

/** Everything the charts of one climate are drawn from, worked out once a record. */
export interface ClimateSeries {
  readonly weather: WeatherRecord
  readonly sky: SkyHours
  readonly altitude_deg: Float64Array
  readonly night: Uint8Array
  readonly humidity_frac: Float64Array
  /** Net loss of a black plate and of the design's coating at air temperature, W/m². */
  readonly black_Wm2: Float64Array
  readonly coating_Wm2: Float64Array
}

/** Sky, sun, humidity and cooling potential of a record. */
export function climateSeries(weather: WeatherRecord, options: SkyOptions, coating: Emitter): ClimateSeries {
  const { start_utcMs, hours, site } = weather
  const sky = skyHours(weather, options)
  const sun = sunHours(start_utcMs, hours, 0.5, site.latitude_deg, site.longitude_deg)
  return {
    weather,
    sky,
    altitude_deg: sun.altitude_deg,
    night: nightHours(sun),
    humidity_frac: weather.airTemp_C.map((air_C, hour) =>
      relativeHumidity_frac(air_C, weather.dewPoint_C[hour]!),
    ),
    black_Wm2: coolingPotential_Wm2(weather, sky, BLACK),
    coating_Wm2: coolingPotential_Wm2(weather, sky, coating),
  }
}

/** A record under the site's stress (hot spells, humidity, wind); the record itself where there is none. */
export function stressedRecord(record: WeatherRecord, site: Scenario['site']): WeatherRecord {
  const { wholeYear_K, hotSpell_K, moreHumid_K, windFactor_frac } = site
  return stressWeather(record, { wholeYear_K, hotSpell_K, moreHumid_K, windFactor_frac })
}
