import { expect, test } from 'vitest'
import { readHeader } from '#model/outdoors/intake'

/* Headers as open data sets, weather services and loggers of several countries print them; from memory. */
const HEADERS: readonly (readonly [string, string, string | null])[] = [
  ['temperature_2m (°C)', 'airTemp', 'C'],
  ['relative_humidity_2m (%)', 'relativeHumidity', '%'],
  ['dew_point_2m (°C)', 'dewPoint', 'C'],
  ['surface_pressure (hPa)', 'pressure', 'hPa'],
  ['wind_speed_10m (km/h)', 'windSpeed', 'km/h'],
  ['wind_direction_10m (°)', 'windDirection', 'deg'],
  ['shortwave_radiation (W/m²)', 'globalHorizontal', 'W/m2'],
  ['direct_normal_irradiance (W/m²)', 'directNormal', 'W/m2'],
  ['diffuse_radiation (W/m²)', 'diffuseHorizontal', 'W/m2'],
  ['cloud_cover (%)', 'totalCloud', '%'],
  ['Dry-bulb (C)', 'airTemp', 'C'],
  ['Dew-point (C)', 'dewPoint', 'C'],
  ['RHum (%)', 'relativeHumidity', '%'],
  ['GHI (W/m^2)', 'globalHorizontal', 'W/m2'],
  ['GHI source', 'ignore', null],
  ['ETR (W/m^2)', 'ignore', 'W/m2'],
  ['OpqCld (tenths)', 'opaqueCloud', 'tenths'],
  ['Clearsky DNI', 'ignore', null],
  ['T2m', 'airTemp', null],
  ['G(h)', 'globalHorizontal', null],
  ['Gb(n)', 'directNormal', null],
  ['Gd(h)', 'diffuseHorizontal', null],
  ['IR(h)', 'skyLongwave', null],
  ['WS10m', 'windSpeed', null],
  ['SP', 'pressure', null],
  ['dw_ir', 'skyLongwave', null],
  ['dw_solar', 'globalHorizontal', null],
  ['airTemp_C', 'airTemp', 'C'],
  ['skyLongwave_Wm2', 'skyLongwave', 'W/m2'],
  ['Lufttemperatur [°C]', 'airTemp', 'C'],
  ['Außentemperatur', 'airTemp', null],
  ['relative Luftfeuchte [%]', 'relativeHumidity', '%'],
  ['Windgeschwindigkeit [m/s]', 'windSpeed', 'm/s'],
  ['Windrichtung', 'windDirection', null],
  ['Globalstrahlung [J/cm²]', 'globalHorizontal', 'J/cm2'],
  ['Gegenstrahlung', 'skyLongwave', null],
  ['Bedeckungsgrad [1/8]', 'totalCloud', 'oktas'],
  ['Humidité (%)', 'relativeHumidity', '%'],
  ['Température (°C)', 'airTemp', 'C'],
  ['Point de rosée (°C)', 'dewPoint', 'C'],
  ['Rayonnement global', 'globalHorizontal', null],
  ['Nébulosité', 'totalCloud', null],
  ['Temperatura (ºC)', 'airTemp', 'C'],
  ['Humedad relativa (%)', 'relativeHumidity', '%'],
  ['Velocidad del viento (m/s)', 'windSpeed', 'm/s'],
  ['Radiación global', 'globalHorizontal', null],
  ['Umidità relativa (%)', 'relativeHumidity', '%'],
  ['Pressione (hPa)', 'pressure', 'hPa'],
  ['Umidade (%)', 'relativeHumidity', '%'],
  ['Luchtdruk (hPa)', 'pressure', 'hPa'],
  ['Windsnelheid (m/s)', 'windSpeed', 'm/s'],
]

test.each(HEADERS)('%s is %s', (header, quantity, unit) => {
  const reading = readHeader(header, '')
  expect(reading.quantities.find((one) => one !== 'hour' && one !== 'epoch')).toBe(quantity)
  expect(reading.unit).toBe(unit)
})

test.each([
  'Soil temperature (°C)',
  'Sea-level pressure (hPa)',
  'Wind gust (m/s)',
  'Inside temp',
  'LW up',
  'Specific humidity',
  'cloud base height',
])('%s is not taken for what it resembles', (header) => {
  const { quantities } = readHeader(header, '')
  expect(
    quantities.filter((one) =>
      ['airTemp', 'pressure', 'skyLongwave', 'relativeHumidity', 'totalCloud'].includes(one),
    ),
  ).toEqual([])
  expect(quantities[0] === 'windSpeed').toBe(false)
})
