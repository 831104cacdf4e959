import { expect, test } from 'vitest'
import { defaultScenario, withWayTaken, type WayPart } from '#model/design/scenario'
import { createStudies, finish } from '#studies/index.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'

test('the way that was taken is on the sheet, before the panels; without one nothing is said of it', () => {
  const base = defaultScenario()
  const own = { ...base, target: { ...base.target, autoArea: false, area_m2: 6 } }
  const linesFor = (way: readonly WayPart[]) => {
    const scenario = withWayTaken(own, way)
    const studies = createStudies()
    const answer = finish(studies.size({ scenario, weather: sampleWeather('continental') })).result
    return JSON.stringify(finish(studies.sheet({ answer })).result)
  }
  const together = linesFor(['paintRoof', 'panels'])
  expect(together).toMatch(/Way taken.{0,80}Paint the roof with your coating \+ panels/)
  expect(together).toMatch(/The room as it is, without all that/)
  // what the measures need is bought and drawn with the panels
  expect(together).toMatch(/"group":"Paint the roof"/)
  expect(together).toMatch(/"id":"way-paint"/)
  expect(linesFor([])).not.toMatch(/Way taken|"id":"way-paint"/)
})
