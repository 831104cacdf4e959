import psychrolib from 'psychrolib'
import { describe, expect, test } from 'vitest'
import { relativeHumidity_frac } from '#model/outdoors/air'
import { openWeather } from '#model/outdoors/intake'

/* Second implementation: psychrolib 1.1.1 (an open psychrometric library) writes the columns; the reading gives the dew point back. */

psychrolib.SetUnitSystem(psychrolib.SI)

const HOURS = 480
const PRESSURE_PA = 84_000
const air_C = (h: number): number => 16 + 11 * Math.sin(((h % 24) - 9) * 0.26) + 4 * Math.sin(h / 60)
const humidity_frac = (h: number): number => 0.5 - 0.3 * Math.sin(((h % 24) - 9) * 0.26)
const sun_Wm2 = (h: number): number => Math.max(0, 850 * Math.sin(((h % 24) - 6) * 0.2618))
const vapour_Pa = (h: number): number => humidity_frac(h) * psychrolib.GetSatVapPres(air_C(h))
const ratio = (h: number): number => psychrolib.GetHumRatioFromVapPres(vapour_Pa(h), PRESSURE_PA)

function read(header: string, cells: (h: number) => readonly (string | number)[]) {
  const lines = ['time,Temp (C),GHI (W/m2),Station pressure (hPa),' + header]
  for (let h = 0; h < HOURS; h++) {
    const when = new Date(Date.UTC(2023, 6, 1, h)).toISOString().slice(0, 16)
    lines.push([when, air_C(h).toFixed(2), sun_Wm2(h).toFixed(0), PRESSURE_PA / 100, ...cells(h)].join(','))
  }
  return openWeather(lines.join('\n'), {
    file: 'made.csv',
    site: { latitude_deg: 40, longitude_deg: 0, altitude_m: 1500, utcOffset_h: 0 },
  })
}

/** The largest difference of the relative humidity over water, 0…1 (a dew point below 0 °C may be meant over ice). */
function worst_frac(header: string, cell: (h: number) => number | string): number {
  const { record, problems } = read(`Wind (m/s),${header}`, (h) => [2 + (h % 3), cell(h)])
  expect(record, JSON.stringify(problems)).not.toBeNull()
  expect(record!.origins.dewPoint_C).toMatchObject({ kind: 'derived' })
  return Math.max(
    ...record!.dewPoint_C.map((dew, h) => Math.abs(relativeHumidity_frac(air_C(h), dew) - humidity_frac(h))),
  )
}

describe('humidity by whatever column a file has', () => {
  test.each([
    ['Vapour pressure (hPa)', (h: number) => (vapour_Pa(h) / 100).toFixed(3)],
    ['e act [kPa]', (h: number) => (vapour_Pa(h) / 1000).toFixed(4)],
    ['VPD (hPa)', (h: number) => ((psychrolib.GetSatVapPres(air_C(h)) - vapour_Pa(h)) / 100).toFixed(3)],
    ['Mixing ratio (g/kg)', (h: number) => (1000 * ratio(h)).toFixed(3)],
    ['specific_humidity (kg/kg)', (h: number) => (ratio(h) / (1 + ratio(h))).toFixed(6)],
  ])('%s', (header, cell) => {
    expect(worst_frac(header, cell)).toBeLessThan(0.005)
  })

  test('a wet bulb: the ventilated psychrometer is within 2 % of humidity of the thermodynamic wet bulb', () => {
    const wet = (h: number) =>
      psychrolib.GetTWetBulbFromRelHum(air_C(h), humidity_frac(h), PRESSURE_PA).toFixed(2)
    expect(worst_frac('Wet bulb (C)', wet)).toBeLessThan(0.02)
  })

  test('where a dew point is there, it is taken and nothing is worked out', () => {
    const { record } = read('Wind (m/s),Vapour pressure (hPa),Dew point (C)', (h) => [
      2 + (h % 3),
      99,
      (air_C(h) - 8).toFixed(2),
    ])
    expect(record!.origins.dewPoint_C).toMatchObject({ kind: 'read' })
  })
})

describe('wind by its two components', () => {
  const east = (h: number): number => -3 + (h % 7)
  const north = (h: number): number => 2 - (h % 5)
  const cells = (h: number) => [(100 * humidity_frac(h)).toFixed(1), east(h), north(h)]

  test('speed is their length, whatever sign they have', () => {
    const { record, mapping } = read('RH (%),u10 (m/s),v10 (m/s)', cells)
    const used = Object.fromEntries(mapping!.columns.map((one) => [one.header, one.quantity]))
    expect(used).toMatchObject({ 'u10 (m/s)': 'windEast', 'v10 (m/s)': 'windNorth' })
    for (let h = 0; h < HOURS; h++) expect(record!.wind_ms[h]).toBeCloseTo(Math.hypot(east(h), north(h)), 9)
    expect(record!.origins.wind_ms).toMatchObject({ kind: 'derived' })
  })

  test('u10 without its partner is a wind speed at ten metres', () => {
    const { mapping } = read('RH (%),U10 (m/s)', (h) => [(100 * humidity_frac(h)).toFixed(1), 1 + (h % 7)])
    expect(mapping!.columns.find(({ header }) => header === 'U10 (m/s)')!.quantity).toBe('windSpeed')
  })
})
