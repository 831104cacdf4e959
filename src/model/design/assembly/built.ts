import { builtCandidate, designOf, taskOf, type Design } from './design.ts'
import type { Prepared } from './prepared.ts'
import { exceedance } from '#model/design/target'
import type { SizingResult } from '#model/design/sizing'
import { type YearResult, simulateYear } from '#model/building/year'

export interface Built {
  /** Judged as built. */
  readonly sizing: SizingResult
  readonly design: Design
  readonly year: YearResult
}

/** The sized design as it is built, of whole modules and standard bores; one module more where these miss the target. */
export function builtOf(prepared: Prepared, sized: SizingResult): Built {
  const built = builtWith(prepared, sized)
  const missed = built.sizing.withPanels.measure > Math.max(0, sized.withPanels.measure)
  return sized.kind === 'met' && missed
    ? builtWith(prepared, { ...sized, modules: sized.modules + 1 })
    : built
}

function builtWith(prepared: Prepared, sized: SizingResult): Built {
  const design = designOf(prepared, builtCandidate(prepared, sized), 'built')
  const year = design.inputs.plant === null ? prepared.doNothing : simulateYear(design.inputs)
  const { area_m2, flow_kgsm2 } = design.candidate
  const flowKnee = area_m2 > 0 ? taskOf(prepared).flowRows(area_m2) : []
  const withPanels = exceedance(year.room_C, prepared.yardstick)
  return { sizing: { ...sized, flow_kgsm2, flowKnee, withPanels }, design, year }
}
