import type { Stages } from './stages.ts'
import type { AboutArea, NearDesign } from '#model/design/sizing'
import type { Asked, Study } from './study.ts'

/** About the area of a description, from the design of one near it: what can follow a hand on a slider. */

export function* follow(
  stages: Stages,
  { scenario, weather, near }: Asked & { readonly near: NearDesign },
): Study<AboutArea> {
  return { result: stages.about(scenario, weather, near), remarks: [] }
}
