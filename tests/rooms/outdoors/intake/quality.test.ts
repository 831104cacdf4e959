import { describe, expect, test } from 'vitest'
import { openWeather } from '#model/outdoors/intake'
import { sample, sampleSite, usualCells, write } from './dialects.ts'

/** Opens the sample year with one column changed. */
function withColumn(column: number, change: (value: number, hour: number) => number, more = {}) {
  const text = write({
    cells: (h) => usualCells(h).map((value, i) => (i === column ? change(value, h) : value)),
  })
  return openWeather(text, { file: 'table.csv', site: sampleSite, ...more })
}
const missing = (from: number, hours: number) => (value: number, hour: number) =>
  hour >= from && hour < from + hours ? NaN : value

describe('gaps', () => {
  test('3 h are bridged by a straight line', () => {
    const { record, quality } = withColumn(0, missing(1000, 3))
    expect(quality.gaps).toMatchObject([
      { quantity: 'airTemp', firstHour: 1000, hours: 3, how: 'interpolated' },
    ])
    const [before, after] = [sample.airTemp_C[999]!, sample.airTemp_C[1003]!]
    expect(record!.airTemp_C[1001]).toBeCloseTo((before + after) / 2, 9)
    expect(record!.origins.airTemp_C!.filledHours).toBe(3)
  })
  test('4 to 48 h come from the days before and after at the same hour', () => {
    for (const hours of [4, 48]) {
      const { record, quality } = withColumn(0, missing(1000, hours))
      expect(quality.gaps[0]).toMatchObject({ hours, how: 'neighbouring days' })
      const days = hours === 4 ? 24 : 48
      expect(record!.airTemp_C[1000]).toBeCloseTo(
        (sample.airTemp_C[976]! + sample.airTemp_C[1000 + days]!) / 2,
        9,
      )
    }
  })
  test('49 h are refused with the date, and filled when the user accepts', () => {
    const { record, problems } = withColumn(0, missing(1000, 49))
    expect(record).toBeNull()
    expect(problems.find(({ code }) => code === 'weather-long-gap')!.message).toContain('02-11 16:00 (49 h)')
    const accepted = withColumn(0, missing(1000, 49), { acceptLongGaps: true })
    expect(accepted.record!.airTemp_C.every(Number.isFinite)).toBe(true)
    expect(accepted.quality.gaps[0]!.how).toBe('neighbouring days')
  })
  test('a column that can be worked out is left out instead of refused, and that is said', () => {
    const { record, problems } = withColumn(2, missing(1000, 200))
    expect(problems.map(({ code }) => code)).toContain('weather-column-left-out')
    expect(record!.origins.pressure_Pa!.kind).toBe('derived')
  })
  test('a gap over New Year is one gap', () => {
    const { quality } = withColumn(0, (value, hour) => (hour >= 8758 || hour < 2 ? NaN : value))
    expect(quality.gaps).toMatchObject([{ firstHour: 8758, hours: 4 }])
  })
  test('coverage is counted by month, before anything is filled', () => {
    const { quality } = withColumn(0, missing(0, 24))
    const air = quality.coverage.find(({ quantity }) => quantity === 'airTemp')!
    expect(air.monthly_frac[0]).toBeCloseTo(30 / 31, 9)
    expect(air.monthly_frac[1]).toBe(1)
  })
})

describe('values that cannot be', () => {
  const kinds = (opened: ReturnType<typeof withColumn>) =>
    opened.quality.findings.map(({ kind, quantity, hours }) => [kind, quantity, hours])

  test('the year as invented has none', () => {
    expect(kinds(withColumn(0, (value) => value))).toEqual([])
  })
  test('a spike is said and left', () => {
    const spiked = withColumn(0, (value, hour) => (hour === 700 ? value + 25 : value))
    expect(kinds(spiked)).toContainEqual(['spike', 'airTemp', 1])
    expect(spiked.record!.airTemp_C[700]).toBe(sample.airTemp_C[700]! + 25)
  })
  test('an impossible value becomes a gap', () => {
    const hot = withColumn(0, (value, hour) => (hour === 700 ? 450 : value))
    expect(kinds(hot)).toContainEqual(['impossible', 'airTemp', 1])
    expect(hot.quality.gaps).toHaveLength(1)
  })
  test('a frozen sensor is said', () => {
    expect(kinds(withColumn(0, (value, hour) => (hour >= 700 && hour < 730 ? 11.1 : value)))).toContainEqual([
      'frozen',
      'airTemp',
      30,
    ])
  })
  test('a dew point above the air is lowered to it and said', () => {
    const wet = withColumn(1, (value, hour) => (hour === 700 ? sample.airTemp_C[700]! + 3 : value))
    expect(kinds(wet)).toContainEqual(['pair', 'dewPoint', 1])
    expect(wet.record!.dewPoint_C[700]).toBe(sample.airTemp_C[700])
  })
  test('light in the middle of the night is said', () => {
    const midnight = withColumn(4, (value, hour) => (hour === 24 * 10 ? 300 : value))
    expect(kinds(midnight)).toContainEqual(['pair', 'globalHorizontal', 1])
  })
  test('humidity above 100 % is set to 100 and said; far above is missing', () => {
    const text = (humidity: number) =>
      write({
        header: 'time,temp (C),rh (%),pressure (hPa),wind speed (m/s),ghi (W/m2)',
        cells: (h) => [usualCells(h)[0]!, h === 50 ? humidity : 60 + (h % 7), ...usualCells(h).slice(2)],
      })
    const over = openWeather(text(104), { file: 'rh.csv', site: sampleSite })
    expect(kinds(over)).toContainEqual(['humidity', 'relativeHumidity', 1])
    expect(over.record!.dewPoint_C[50]).toBeCloseTo(sample.airTemp_C[50]!, 6)
    expect(kinds(openWeather(text(180), { file: 'rh.csv', site: sampleSite }))).toContainEqual([
      'impossible',
      'relativeHumidity',
      1,
    ])
  })
  test('global that does not close with direct and diffuse is said with its size', () => {
    const text = write({
      header: 'time,temp,dewpoint,pressure (hPa),wind speed,ghi,dni,dhi',
      cells: (h) => [...usualCells(h), sample.directNormal_Wm2[h]! * 0.6, sample.diffuseHorizontal_Wm2[h]!],
    })
    const open = openWeather(text, { file: 'closure.csv', site: sampleSite })
    expect(open.quality.findings.find(({ kind }) => kind === 'closure')!.sentence).toMatch(
      /root mean square \d+ W\/m²/,
    )
  })
})
