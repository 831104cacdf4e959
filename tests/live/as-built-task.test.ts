import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { Spine } from '#model/answer.ts'
import { readSampleCsv } from '#model/climate/sample-format.ts'
import { defaultScenario } from '#model/scenario/schema.ts'
import { asBuiltReport, rehearsalFile } from '#live/as-built-task.ts'
import { benchReport } from '#live/bench-task.ts'
import { DEMO_READINGS } from '#model/bench/demo-readings.ts'

const weather = readSampleCsv(readFileSync('climate-samples/continental.csv', 'utf8'), 'continental.csv')
const scenario = defaultScenario()
const wanted = { scenario, fault: 'lowFlow' as const, firstDay: 180, days: 10, seed: 3, area_m2: 10 }

describe('the as-built task', () => {
  test('a logged store and room are held against a simulated year of the same hours', () => {
    const lines = rehearsalFile(wanted, weather).trimEnd().split('\n')
    const text = lines
      .map((line, i) => (i === 0 ? line : i === 1 ? `${line},store (°C),room (°C)` : `${line},18,24`))
      .join('\n')
    const question = { scenario, area_m2: 10, file: 'log.csv', text, stamp: 'instant' as const }
    const report = asBuiltReport(question, new Spine(), weather)
    expect(report.result.fault).toBe('lowFlow')
    expect(report.house.store!.hours).toBe(240)
    expect(report.house.store!.measuredMean).toBeCloseTo(18, 9)
    const { year } = new Spine().answer(
      { ...scenario, target: { ...scenario.target, autoArea: false, area_m2: 10 } },
      weather,
    )
    const part = year.room_C.slice(180 * 24, 190 * 24)
    const mean = part.reduce((sum, t) => sum + t, 0) / part.length
    expect(report.house.room!.predictedMean).toBeCloseTo(mean, 9)
  })

  test('what crosses to the page can be cloned: no function is left in it', () => {
    const question = {
      scenario,
      area_m2: 10,
      file: 'log.csv',
      text: rehearsalFile(wanted, weather),
      stamp: 'instant' as const,
    }
    const report = asBuiltReport(question, new Spine(), weather)
    expect(structuredClone(report)).toEqual(report)
    const notes = benchReport(DEMO_READINGS)
    expect(structuredClone(notes)).toEqual(notes)
  })
})
