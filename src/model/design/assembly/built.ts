import { builtCandidate, designOf, type Design } from '#model/scenario/design.ts'
import type { Prepared } from '#model/scenario/prepared.ts'
import { exceedance } from '#model/sizing/exceedance.ts'
import type { SizingResult } from '#model/sizing/result.ts'
import type { YearResult } from '#model/year/result.ts'
import { simulateYear } from '#model/year/simulate.ts'

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
  const design = designOf(prepared, builtCandidate(prepared.scenario, sized), 'built')
  const year = design.inputs.plant === null ? prepared.doNothing : simulateYear(design.inputs)
  return { sizing: { ...sized, withPanels: exceedance(year.room_C, prepared.yardstick) }, design, year }
}
