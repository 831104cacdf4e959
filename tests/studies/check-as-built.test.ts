import { describe, expect, test } from 'vitest'
import { defaultScenario } from '#model/design/scenario'
import { createStudies, finish } from '#studies/index.ts'
import { sampleWeather } from '../../src/shell/samples.ts'

const weather = sampleWeather('continental')
const scenario = defaultScenario()
const area_m2 = 10
const studies = createStudies()
const wanted = { scenario, weather, fault: 'lowFlow' as const, firstDay: 180, days: 10, seed: 3, area_m2 }
const practice = finish(studies.practiceLog(wanted)).result

/** The practice log without its last two columns: store and room. */
const without = practice
  .trimEnd()
  .split('\n')
  .map((line, i) => (i === 0 ? line : line.split(',').slice(0, -2).join(',')))

describe('the as-built check', () => {
  test('a logged store and room are held against a simulated year of the same hours', () => {
    const text = without
      .map((line, i) => (i === 0 ? line : i === 1 ? `${line},store (°C),room (°C)` : `${line},18,24`))
      .join('\n')
    const report = finish(studies.checkAsBuilt({ scenario, weather, area_m2, file: 'log.csv', text })).result
    expect(report.result.fault).toBe('lowFlow')
    expect(report.house.store!.hours).toBe(240)
    expect(report.house.store!.measuredMean).toBeCloseTo(18, 9)
    const { year } = finish(studies.judge({ scenario, weather, chosen: { area_m2 } })).result
    const part = year.room_C.slice(180 * 24, 190 * 24)
    const mean = part.reduce((sum, t) => sum + t, 0) / part.length
    expect(report.house.room!.predictedMean).toBeCloseTo(mean, 9)
  })

  test('a log without store and room says nothing of them', () => {
    const report = finish(
      studies.checkAsBuilt({ scenario, weather, area_m2, file: 'log.csv', text: without.join('\n') }),
    )
    expect(report.result.house).toEqual({ store: null, room: null })
  })
})
