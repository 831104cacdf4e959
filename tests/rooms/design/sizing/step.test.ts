import { expect, test } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { taskOf } from '#model/design/assembly'
import { type Scenario, withField, defaultScenario } from '#model/design/scenario'
import { areaOnly } from '#inside/model/design/sizing/size.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'

/*
 * Label: independent calculation (the same equations in half the step). Source of the limit: the project's design,
 * "halving the step moves the sized area by less than 1 %"; the search itself closes to 0.3 % of the area, so at
 * most 0.6 % of that may be the search's.
 */
const MOST_MOVED = 0.01
const START = { ratio_m3m2: 0.08, guess_m2: 8, slope: null }

const CASES: readonly (readonly [climate: string, settings: Readonly<Record<string, string>>])[] = [
  ['continental', {}],
  ['high-dry-plateau', { 'target.kind': 'degreeHours', 'target.allowedDegreeHours_Kh': '5' }],
  ['mediterranean-coast', { 'target.limit_C': '29', 'target.kind': 'peak', 'plan.kind': 'allDay' }],
  ['semi-arid-south', { 'target.limit_C': '31', 'store.kind': 'layered' }],
]

test.each(CASES)(
  '%s: halving the step from 15 to 7.5 min moves the sized area by less than 1 %%',
  (climate, settings) => {
    const scenario = Object.entries(settings).reduce<Scenario>(
      (s, [field, text]) => withField(s, field, text),
      defaultScenario(),
    )
    const prepared = new Stages().prepare(scenario, sampleWeather(climate))
    const quarter_m2 = areaOnly(taskOf(prepared, 4), START)
    const eighth_m2 = areaOnly(taskOf(prepared, 8), START)
    console.log(`${climate}: ${quarter_m2?.toFixed(3)} m² at 15 min, ${eighth_m2?.toFixed(3)} m² at 7.5 min`)
    expect(quarter_m2).toBeGreaterThan(0)
    expect(Math.abs(eighth_m2! / quarter_m2! - 1)).toBeLessThan(MOST_MOVED)
  },
)
