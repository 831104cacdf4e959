import type { Stages } from './stages.ts'
import {
  comparisonCases,
  type ComparisonAxes,
  comparisonRun,
  type Comparison,
} from '#model/design/comparison'
import { said, type Problem, words } from '#model/basis/words'
import { type Scenario, free } from '#model/design/scenario'
import type { Study } from './study.ts'

interface Compared {
  readonly scenario: Scenario
  /** Every climate comes with its hours. */
  readonly axes: ComparisonAxes
}

/** Every combination of the axes side by side, sized for one target. Rows come as they are answered. */
export function* compare(stages: Stages, { scenario, axes }: Compared): Study<Comparison, Comparison> {
  const own = !scenario.target.autoArea
  const base = free(scenario, own ? ['area', 'store'] : ['area'])
  const cases = comparisonCases(base, axes)
  const answering = comparisonRun(cases, (one) => stages.answer(one.scenario, one.weather))
  for (;;) {
    const next = answering.next()
    if (next.done === true) return { result: next.value, remarks: own ? [SIZED_AFRESH] : [] }
    yield { share: next.value.rows.length / cases.length, soFar: next.value }
  }
}

/** Only designs sized for one target can be set side by side. */
const SIZED_AFRESH: Problem = {
  code: 'comparison-sized-afresh',
  severity: 'warning',
  ...said(
    words`Your own panel area and tank are left out here: every design is sized afresh for the target.`,
  ),
  remedy: 'Their hours are on the design page and in the year.',
  place: { field: 'target.autoArea' },
}
