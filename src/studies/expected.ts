import type { Stages } from './stages.ts'
import { withWay } from '#model/design/measures'
import { designRanges, type DesignRanges } from '#model/handover/sheet'
import type { Candidate } from '#model/design/sizing'
import { counted, type Asked, type Study } from './study.ts'
import { HOURS_DRAWS } from './usual.ts'

/** What a built design does over the uncertain inputs, month by month: the ranges of the builder's sheet. */
export function* expected(
  stages: Stages,
  {
    scenario,
    weather,
    built,
    draws = HOURS_DRAWS,
  }: Asked & { readonly built: Candidate; readonly draws?: number },
): Study<DesignRanges> {
  const work = designRanges(
    withWay(scenario, weather),
    weather,
    built,
    (drawn) => stages.prepare(drawn, weather),
    draws,
  )
  return { result: yield* counted(work, draws), remarks: [] }
}
