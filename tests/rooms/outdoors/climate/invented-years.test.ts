/**
 * Statistics of the invented years: what a place asks for is what its year holds, and day, night, cloud, damp and
 * wind hang together as they do in weather. Checks against the place's own targets are checks of the generator.
 * Outside figures name their source; real typical years are compared in `against-real-years.test.ts`.
 */
import { Body, Equator, Horizon, Observer } from 'astronomy-engine'
import { describe, expect, test } from 'vitest'
import { dayMeans, dayRanges, monthMeans } from '#model/basis/hours'
import { inventClimate, PLACES, readSampleCsv, writeSampleCsv } from '#model/outdoors/climate'
import { dayPersistence } from '#inside/model/outdoors/weather/statistics.ts'
import { correlation, departures, mean, spread } from './series.ts'

const years = PLACES.map((place) => {
  const record = readSampleCsv(writeSampleCsv(inventClimate(place), place.description), `${place.id}.csv`)
  return [place.id, place, record] as const
})

/** Largest distance between twelve got and twelve wanted. */
function worst(got: ArrayLike<number>, want: readonly number[]): number {
  return Math.max(...want.map((value, month) => Math.abs(value - got[month]!)))
}

describe.each(years)('%s', (_, place, record) => {
  test('month means of air and dew point within 0.05 K of the target (rounding to 0.1 K averages out)', () => {
    expect(worst(monthMeans(record.airTemp_C), place.airTemp_C)).toBeLessThan(0.05)
    expect(worst(monthMeans(record.dewPoint_C), place.dewPoint_C)).toBeLessThan(0.05)
  })

  test('month means of daily range within 0.1 K, cloud within 0.01, wind within 0.03 m/s of the target', () => {
    expect(worst(monthMeans(dayRanges(record.airTemp_C)), place.dailyRange_K)).toBeLessThan(0.1)
    expect(worst(monthMeans(record.cloud_frac), place.cloud_frac)).toBeLessThan(0.01)
    expect(worst(monthMeans(record.wind_ms), place.wind_ms)).toBeLessThan(0.03)
  })

  // 0.6–0.8 was asked for; a year's estimate has a standard error of √((1−ρ²)/365) = 0.04
  test('yesterday says much about today: lag-1 of daily means 0.6–0.8 (± 0.04) for air, above 0.4 for dew point', () => {
    expect(dayPersistence(record.airTemp_C)).toBeGreaterThan(0.56)
    expect(dayPersistence(record.airTemp_C)).toBeLessThan(0.84)
    expect(dayPersistence(record.dewPoint_C)).toBeGreaterThan(0.4)
    expect(dayPersistence(record.cloud_frac)).toBeGreaterThan(0.3)
  })

  test('the dew point is never above the air', () => {
    expect(record.dewPoint_C.every((dew, hour) => dew <= record.airTemp_C[hour]!)).toBe(true)
  })

  test('extremes inside the records of the globe: 56.7 °C and −67.8 °C at an inhabited place (WMO, from memory)', () => {
    expect(Math.max(...record.airTemp_C)).toBeLessThan(56.7)
    expect(Math.min(...record.airTemp_C)).toBeGreaterThan(-67.8)
    // highest dew point measured, 35 °C (WMO, from memory)
    expect(Math.max(...record.dewPoint_C)).toBeLessThan(35)
  })

  test('a hot spell is there: three days on end are 60 % of the planted kelvins over the warmest month', () => {
    const days = dayMeans(record.airTemp_C)
    const threeDays = days.subarray(0, -2).map((day, at) => Math.min(day, days[at + 1]!, days[at + 2]!))
    const over_K = Math.max(...threeDays) - Math.max(...place.airTemp_C)
    expect(over_K).toBeGreaterThan(0.6 * place.hotSpell_K)
    expect(over_K).toBeLessThan(place.hotSpell_K + 3 * place.warmSpread_K)
  })

  test('cloudy days swing less: correlation of daily range with daily cloud, seasons removed, below −0.6', () => {
    const range = departures(dayRanges(record.airTemp_C))
    expect(correlation(range, departures(dayMeans(record.cloud_frac)))).toBeLessThan(-0.6)
  })

  test('damp nights cool less: days of one cloudiness swing less the smaller their dew-point depression', () => {
    const clear = dayMeans(record.cloud_frac)
    const quiet = [...clear.keys()].filter((day) => Math.abs(clear[day]! - mean(clear)) < 0.25)
    const range = departures(dayRanges(record.airTemp_C))
    const dew = dayMeans(record.dewPoint_C)
    const depression = departures(dayMeans(record.airTemp_C).map((air, day) => air - dew[day]!))
    const pick = (series: Float64Array) => Float64Array.from(quiet, (day) => series[day]!)
    expect(correlation(pick(range), pick(depression))).toBeGreaterThan(0.1)
  })

  test('cloud keeps the sun out: daily cloud against daily clearness (Haurwitz clear sky) below −0.9', () => {
    const h = sines(record)
    const cloud: number[] = []
    const clearness: number[] = []
    for (let day = 0; day < 365; day += 1) {
      let [got, clear, covered, hours] = [0, 0, 0, 0]
      for (let hour = day * 24; hour < day * 24 + 24; hour += 1) {
        if (h[hour]! < 0.2) continue
        got += record.globalHorizontal_Wm2[hour]!
        clear += 1098 * h[hour]! * Math.exp(-0.059 / h[hour]!)
        covered += record.cloud_frac[hour]!
        hours += 1
      }
      if (hours < 4) continue
      cloud.push(covered / hours)
      clearness.push(got / clear)
    }
    expect(correlation(cloud, clearness)).toBeLessThan(-0.9)
  })

  // independent calculation: sun from astronomy-engine, mid-hour, no refraction. suncalc is within 0.013°, which
  // moves direct · sin h by at most 1000 × 0.00023 = 0.2 W/m²; the file's rounding of global adds 0.05
  test('global = direct · sin h + diffuse within 0.3 W/m², and nothing shines with the sun down', () => {
    const h = sines(record)
    let off = 0
    for (let hour = 0; hour < 8760; hour += 1) {
      const [global, direct, diffuse] = [
        record.globalHorizontal_Wm2[hour]!,
        record.directNormal_Wm2[hour]!,
        record.diffuseHorizontal_Wm2[hour]!,
      ]
      if (h[hour]! < -0.0003) expect(global + direct + diffuse).toBe(0)
      else off = Math.max(off, Math.abs(global - direct * Math.max(0, h[hour]!) - diffuse))
    }
    expect(off).toBeLessThan(0.3)
  })

  // a windy headland (0.8 by night in its place file) hardly sleeps: hence 0.95 and not less
  test('wind: Weibull-like spread (0.45–0.75 of the mean; 0.523 is a shape of 2), calmer by night', () => {
    const ratio = spread(record.wind_ms) / mean(record.wind_ms)
    expect(ratio).toBeGreaterThan(0.45)
    expect(ratio).toBeLessThan(0.75)
    const h = sines(record)
    const night = mean(record.wind_ms.filter((_wind, hour) => h[hour]! < -0.2))
    const noon = mean(record.wind_ms.filter((_wind, hour) => h[hour]! > 0.2))
    expect(night / noon).toBeLessThan(0.95)
    expect(record.wind_ms.filter((wind) => wind < 0.5).length).toBeGreaterThan(20)
  })

  // exact: 101325 (1 − 2.25577e-5 z)^5.25588 (ICAO standard atmosphere); a year's mean of the slow weather strays
  // by about spread × √(6/365), 130 Pa at most: three of those
  test('mean pressure is the standard atmosphere’s within 390 Pa', () => {
    const standard_Pa = 101_325 * (1 - 2.25577e-5 * place.site.altitude_m) ** 5.25588
    expect(Math.abs(mean(record.pressure_Pa) - standard_Pa)).toBeLessThan(390)
  })

  test('the warm half of the year is the sunny half of its hemisphere (outside the tropics)', () => {
    if (Math.abs(place.site.latitude_deg) < 20) {
      expect(Math.max(...place.airTemp_C) - Math.min(...place.airTemp_C)).toBeLessThan(12)
      return
    }
    const sunny = monthMeans(record.globalHorizontal_Wm2)
    const [december, june] = [sunny[11]!, sunny[5]!]
    const south = place.site.latitude_deg < 0
    expect(south ? december > june : june > december).toBe(true)
    const air = monthMeans(record.airTemp_C)
    expect(south ? air[0]! > air[6]! : air[6]! > air[0]!).toBe(true)
  })

  // the mean course of a year: sunrise lies between 2.6 h (June at 61 N) and 9.4 h
  test('the warmest hour comes 1–4 h after solar noon, the coldest around sunrise', () => {
    const solar = (hour: number) => hour + 0.5 + place.site.longitude_deg / 15 - place.site.utcOffset_h
    const course = Float64Array.from({ length: 24 }, (_h, hour) =>
      mean(record.airTemp_C.filter((_air, at) => at % 24 === hour)),
    )
    const warmest = solar(course.indexOf(Math.max(...course)))
    const coldest = solar(course.indexOf(Math.min(...course)))
    expect(warmest).toBeGreaterThan(13)
    expect(warmest).toBeLessThan(16)
    expect(coldest).toBeGreaterThan(3)
    expect(coldest).toBeLessThan(7.5)
  })
})

const known = new Map<string, Float64Array>()

/** Sine of the sun's geometric height at the middle of each hour, by astronomy-engine. */
function sines(record: (typeof years)[number][2]): Float64Array {
  const { name, latitude_deg, longitude_deg, altitude_m } = record.site
  const found = known.get(name)
  if (found) return found
  const observer = new Observer(latitude_deg, longitude_deg, altitude_m)
  const made = Float64Array.from({ length: 8760 }, (_, hour) => {
    const at = new Date(record.start_utcMs + (hour + 0.5) * 3_600_000)
    const { ra, dec } = Equator(Body.Sun, at, observer, true, true)
    return Math.sin((Horizon(at, observer, ra, dec).altitude * Math.PI) / 180)
  })
  known.set(name, made)
  return made
}
