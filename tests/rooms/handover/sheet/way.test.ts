import { expect, test } from 'vitest'
import { defaultScenario } from '#model/design/scenario'
import { createStudies, finish } from '#studies/index.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'

test('the way that was chosen is on the sheet, before the panels; without one nothing is said of it', () => {
  const base = defaultScenario()
  const target = { ...base.target, autoArea: false, area_m2: 6 }
  const linesFor = (way: string) => {
    const scenario = { ...base, target, job: { ...base.job, way } }
    const studies = createStudies()
    const answer = finish(studies.size({ scenario, weather: sampleWeather('continental') })).result
    return JSON.stringify(finish(studies.sheet({ answer })).result)
  }
  const together = linesFor('Paint the roof with your coating + panels')
  expect(together).toMatch(/Way chosen.{0,80}Paint the roof with your coating \+ panels/)
  // what the measures need is bought and drawn with the panels, but not that of measures taken before
  expect(together).toMatch(/"group":"Paint the roof"/)
  expect(together).toMatch(/"id":"way-paint"/)
  // panels beside a way that had none are no part of it
  const before = linesFor('Paint the roof with your coating + Ceiling fan')
  expect(before).not.toMatch(/"group":"Paint the roof"/)
  expect(before).toMatch(/Measures taken before.{0,80}Paint the roof with your coating \+ Ceiling fan/)
  expect(linesFor('')).not.toMatch(/Way chosen|Measures taken before/)
})
