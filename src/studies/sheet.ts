import type { Spine } from '#model/answer.ts'
import { builderSheet, type BuilderSheet, type Doubts } from '#model/sheet/builder-sheet.ts'
import type { SheetAnswer } from '#model/sheet/plant.ts'
import type { Study } from './study.ts'

/** The builder's sheet of an answer; null where there is nothing to build. */

export function* sheet(
  _stages: Spine,
  { answer, doubts }: { readonly answer: SheetAnswer; readonly doubts?: Doubts },
): Study<BuilderSheet | null> {
  return { result: builderSheet(answer, doubts), remarks: answer.warnings }
}
