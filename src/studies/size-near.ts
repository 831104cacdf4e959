import type { Stages } from './stages.ts'
import { builtNear, type NearBuilt } from '#model/design/assembly'
import type { KneeAnchor } from '#model/design/sizing'
import type { Asked, Study } from './study.ts'

/** The modules and the tank of a description from an answer near by; null where they have to be searched from scratch. */

export function* sizeNear(
  stages: Stages,
  { scenario, weather, near }: Asked & { readonly near: KneeAnchor },
): Study<NearBuilt | null> {
  return { result: builtNear(stages.prepare(scenario, weather), near), remarks: [] }
}
