import type { Stages } from './stages.ts'
import type { DesignAnswer } from '#model/design/assembly'
import { hold, type Chosen } from '#model/design/scenario'
import type { Asked, Study } from './study.ts'

/** The whole answer to a scenario: sized, or the user's own area judged, as the scenario says. */

export function* size(stages: Stages, { scenario, weather }: Asked): Study<DesignAnswer> {
  const result = stages.answer(scenario, weather)
  return { result, remarks: result.warnings }
}

/** The answer to a scenario with parts of its design given. */
export function judge(
  stages: Stages,
  { scenario, weather, chosen }: Asked & { readonly chosen: Chosen },
): Study<DesignAnswer> {
  return size(stages, { scenario: hold(scenario, chosen), weather })
}
