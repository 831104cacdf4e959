import type { Stages } from './stages.ts'
import { builderSheet, type BuilderSheet, type Doubts, type SheetAnswer } from '#model/handover/sheet'
import type { Study } from './study.ts'

/** The builder's sheet of an answer; null where there is nothing to build. */

export function* sheet(
  _stages: Stages,
  { answer, doubts }: { readonly answer: SheetAnswer; readonly doubts?: Doubts },
): Study<BuilderSheet | null> {
  return { result: builderSheet(answer, doubts), remarks: answer.warnings }
}
