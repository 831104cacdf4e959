import type { Stages } from './stages.ts'
import {
  batchQuantities,
  type BatchQuantities,
  DEMO_JOB,
  type CoatingRecipe,
  type CoatJob,
} from '#model/panels/paint'
import type { Study } from './study.ts'

/** What to weigh and measure for an area; what the job leaves out is as in the example. */

export function* mixPaint(
  _stages: Stages,
  { recipe, job }: { readonly recipe: CoatingRecipe; readonly job?: Partial<CoatJob> },
): Study<BatchQuantities> {
  return { result: batchQuantities(recipe, { ...DEMO_JOB, ...job }), remarks: [] }
}
