import type { WeatherColumn } from '#model/outdoors/weather'

/** Names of the record's columns for people. */
export const COLUMN_WORDS: Readonly<Record<WeatherColumn | 'skyLongwave_Wm2', string>> = {
  airTemp_C: 'Air temperature',
  dewPoint_C: 'Dew point',
  pressure_Pa: 'Air pressure',
  wind_ms: 'Wind at 10 m',
  globalHorizontal_Wm2: 'Global horizontal irradiance',
  directNormal_Wm2: 'Direct normal irradiance',
  diffuseHorizontal_Wm2: 'Diffuse horizontal irradiance',
  cloud_frac: 'Opaque cloud',
  skyLongwave_Wm2: 'Longwave from the sky',
}
