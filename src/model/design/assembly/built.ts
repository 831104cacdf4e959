import { designOf, moduleArea_m2, taskOf, type Design } from './design.ts'
import type { Prepared } from './prepared.ts'
import { tanksSoldAbout_m3 } from './tank-sizes.ts'
import { exceedance } from '#model/design/target'
import { judged, type Candidate, type SizingResult } from '#model/design/sizing'
import { USUAL_YEAR, type YearResult, simulateYear } from '#model/building/year'

export interface Built {
  /** Judged as built. */
  readonly sizing: SizingResult
  readonly design: Design
  readonly year: YearResult
}

/**
 * The sized design as it is built, of whole modules, standard bores and a tank that is sold and fits: with the fewest modules that
 * make the area, the next smaller tank where that meets the target, else the next larger where it fits, else more modules. Where
 * no number of them is enough, the target is out of reach. What is not sized is not rounded.
 */
export function builtOf(prepared: Prepared, sized: SizingResult): Built {
  if (sized.kind !== 'met') return builtWith(prepared, sized, asItIs(prepared, sized))
  const goal = Math.max(0, sized.withPanels.measure)
  const task = taskOf(prepared, USUAL_YEAR.stepsPerHour, 'built')
  let last: Rounding | null = null
  for (const one of roundings(prepared, sized, task.mostStore_m3)) {
    last = one
    if (judged(task, one.candidate).measure > goal) continue
    const built = roundedWith(prepared, sized, one)
    if (built.sizing.withPanels.measure <= goal) return built
  }
  const { candidate, modules } = last!
  const { area_m2, storeVolume_m3 } = candidate
  return builtWith(prepared, { ...sized, kind: 'floor', area_m2, storeVolume_m3, modules }, candidate)
}

function roundedWith(prepared: Prepared, sized: SizingResult, { modules, candidate }: Rounding): Built {
  return builtWith(prepared, { ...sized, modules, beforeRounding: sized.withPanels }, candidate)
}

export interface Rounding {
  readonly modules: number
  readonly candidate: Candidate
}

/** From here on modules are added by this share of them at a time. */
const MORE_MODULES = 0.05

/** What may be built for a sized design, the least first; at least one more module than it asks for. */
export function* roundings(
  { scenario, flow_kgsm2 }: Prepared,
  sized: Pick<SizingResult, 'modules' | 'storeVolume_m3'>,
  mostStore_m3: number,
): Generator<Rounding> {
  const chosen = scenario.store.autoVolume && sized.storeVolume_m3 > 0
  const volumes_m3 = chosen ? tanksSoldAbout_m3(sized.storeVolume_m3, mostStore_m3) : [sized.storeVolume_m3]
  const module_m2 = moduleArea_m2(scenario)
  const most = Math.max(sized.modules + 1, Math.floor(scenario.target.maxArea_m2 / module_m2))
  for (
    let modules = sized.modules;
    modules <= most;
    modules += Math.max(1, Math.floor(MORE_MODULES * (modules - sized.modules) * modules))
  )
    for (const storeVolume_m3 of volumes_m3) {
      const area_m2 = modules * module_m2
      yield { modules, candidate: { area_m2, storeVolume_m3, flow_kgsm2: flow_kgsm2(area_m2) } }
    }
}

function asItIs({ flow_kgsm2 }: Prepared, { area_m2, storeVolume_m3 }: SizingResult): Candidate {
  return { area_m2, storeVolume_m3, flow_kgsm2: flow_kgsm2(area_m2) }
}

function builtWith(prepared: Prepared, sized: SizingResult, candidate: Candidate): Built {
  const design = designOf(prepared, candidate, 'built')
  const year = design.inputs.plant === null ? prepared.doNothing : simulateYear(design.inputs)
  const { area_m2, flow_kgsm2 } = candidate
  const flowKnee = area_m2 > 0 ? taskOf(prepared).flowRows(area_m2) : []
  const withPanels = exceedance(year.room_C, prepared.yardstick)
  return { sizing: { ...sized, flow_kgsm2, flowKnee, withPanels }, design, year }
}
