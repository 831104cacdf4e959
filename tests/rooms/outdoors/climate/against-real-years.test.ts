/**
 * Do the invented years behave like real ones? Against the two open typical years in ../shared/data (US national
 * data set, 36 N 80 W; European Commission data set, 45 N 8 E): shape, not level, since no place is copied.
 */
import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { dayMeans, dayRanges } from '#model/basis/hours'
import { inventClimate } from '#model/outdoors/climate'
import { placeById } from '#inside/model/outdoors/climate/places.ts'
import { dayPersistence } from '#inside/model/outdoors/weather/statistics.ts'
import { cloudTransmission_frac } from '#inside/model/outdoors/climate/irradiance-year.ts'
import { ineichenPerez } from '#model/outdoors/sun'
import { correlation, departures, mean, spread } from './series.ts'

const DATA = new URL('../../../../../shared/data/', import.meta.url)
const american = new URL('typical-year-36N-80W.csv', DATA)
const european = new URL('typical-year-45N-8E.csv', DATA)
const absent = !existsSync(american) || !existsSync(european)
if (absent) console.log('against-real-years: not run, ../shared/data is not there')

/** Columns of 8760 rows by header word, from the line that starts with `first`. */
function columns(file: URL, first: string): (word: string) => Float64Array {
  const lines = readFileSync(file, 'utf8').split(/\r?\n/)
  const at = lines.findIndex((line) => line.startsWith(first))
  const headers = lines[at]!.split(',')
  const rows = lines.slice(at + 1, at + 8761).map((line) => line.split(','))
  return (word) => {
    const column = headers.findIndex((header) => header.startsWith(word))
    return Float64Array.from(rows, (row) => Number(row[column]))
  }
}

describe.skipIf(absent)('shape of real typical years (needs ../shared/data)', () => {
  const us = absent ? () => new Float64Array() : columns(american, 'Date')
  const eu = absent ? () => new Float64Array() : columns(european, 'time(UTC)')
  const subtropical = inventClimate(placeById('humid-subtropical'))
  const inland = inventClimate(placeById('continental'))

  // a year's estimate of a lag-1 correlation has a standard error of 0.04, and places differ by 0.1
  test('persistence of daily means: within 0.15 of the real year', () => {
    const ours = dayPersistence(subtropical.airTemp_C)
    expect(Math.abs(ours - dayPersistence(us('Dry-bulb')))).toBeLessThan(0.15)
    expect(Math.abs(dayPersistence(inland.airTemp_C) - dayPersistence(eu('T2m')))).toBeLessThan(0.15)
    const dew = dayPersistence(subtropical.dewPoint_C)
    expect(Math.abs(dew - dayPersistence(us('Dew-point')))).toBeLessThan(0.15)
  })

  test('opaque cloud is two-faced: shares of clear (< 0.1) and overcast (> 0.9) hours within 0.12', () => {
    const real = us('OpqCld').map((tenths) => tenths / 10)
    const share = (series: Float64Array, is: (cloud: number) => boolean) => series.filter(is).length / 8760
    for (const is of [(cloud: number) => cloud < 0.1, (cloud: number) => cloud > 0.9]) {
      expect(Math.abs(share(subtropical.cloud_frac, is) - share(real, is))).toBeLessThan(0.12)
    }
  })

  test('daily range against cloud, seasons removed: correlation within 0.12', () => {
    const link = (air: Float64Array, cloud: Float64Array) =>
      correlation(departures(dayRanges(air)), departures(dayMeans(cloud)))
    const ours = link(subtropical.airTemp_C, subtropical.cloud_frac)
    expect(Math.abs(ours - link(us('Dry-bulb'), us('OpqCld')))).toBeLessThan(0.12)
  })

  test('spread of hourly wind over its mean within 0.15', () => {
    const ratio = (wind: Float64Array) => spread(wind) / mean(wind)
    expect(Math.abs(ratio(subtropical.wind_ms) - ratio(us('Wspd')))).toBeLessThan(0.15)
    expect(Math.abs(ratio(inland.wind_ms) - ratio(eu('WS10m')))).toBeLessThan(0.15)
  })

  // not validation: the transmission was fitted to this file. It guards the fit.
  test('sunlight left by opaque cloud in tenths: within 0.1 of the file it was fitted to', () => {
    const [outside, normal, global, cloud] = [us('ETR ('), us('ETRN'), us('GHI ('), us('OpqCld')]
    for (let tenths = 0; tenths <= 10; tenths += 1) {
      const index: number[] = []
      for (let hour = 0; hour < 8760; hour += 1) {
        const sine = outside[hour]! / normal[hour]!
        if (!(normal[hour]! > 1300 && sine > 0.25) || cloud[hour] !== tenths) continue
        const altitude_deg = (Math.asin(sine) * 180) / Math.PI
        index.push(global[hour]! / ineichenPerez(altitude_deg, normal[hour]!, 273, 3.5).global_Wm2)
      }
      expect(Math.abs(mean(index) - cloudTransmission_frac(tenths / 10))).toBeLessThan(0.1)
    }
  })
})
