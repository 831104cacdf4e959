import { exceedance } from '#model/design/target'
import {
  type Candidate,
  judged,
  type KneeAnchor,
  type NearSizing,
  sizeNear,
  taskIn,
} from '#model/design/sizing'
import { USUAL_YEAR } from '#model/building/year'
import { type Rounding, roundings } from './built.ts'
import { moduleArea_m2, taskOf } from './design.ts'
import type { Prepared } from './prepared.ts'

/** A design as built, of whole modules and a tank that is sold. */
export interface NearBuilt extends NearSizing {
  readonly modules: number
  readonly area_m2: number
  readonly storeVolume_m3: number
}

/** Area and tank found from near by and from scratch are apart by no more than these shares. */
const AREA_SHARE = 0.003
const TANK_SHARE = 0.02
/** A design further than this from the target is judged by the hours that judged the answer near by, else by a whole season, K. */
const SURE_K = 0.05
/** A design this close to the target may miss it in a whole year, K. */
const CLOSE_K = 0.002

/**
 * The design of a changed description as it is built, from an answer near by: whole modules and a tank that the search from scratch
 * comes to as well. Null where that could be others: where an area 0.3 % or a tank 2 % larger or smaller would be built otherwise,
 * the design hardly meets or misses the target, or it has to be searched from scratch at all.
 */
export function builtNear(prepared: Prepared, from: KneeAnchor): NearBuilt | null {
  const { scenario, yardstick, doNothing } = prepared
  if (!scenario.target.autoArea || exceedance(doNothing.room_C, yardstick).measure <= 0) return null
  const found = sizeNear(taskOf(prepared), from)
  if (found === null) return null
  const { area_m2, ratio_m3m2 } = found.anchor
  const modulesOf = (area: number): number => Math.ceil(area / moduleArea_m2(scenario) - 1e-9)
  const around = (share: number): number[] => [1, 1 - share, 1 + share]
  const areas = new Set(around(AREA_SHARE).map((share) => modulesOf(share * area_m2)))
  const tanks_m3 = around(TANK_SHARE).map((share) => share * ratio_m3m2 * area_m2)
  const build = builder(prepared, from)
  const ways = [...areas].flatMap((modules) =>
    tanks_m3.map((storeVolume_m3) => build(modules, storeVolume_m3)),
  )
  const one = ways[0]!
  if (one === null || ways.some((other) => other === null || !same(other.candidate, one.candidate)))
    return null
  return { ...found, ...one.candidate, modules: one.modules }
}

/** What is built of an area and a tank; null where that hangs on less than can be known. No design is simulated twice. */
function builder(
  prepared: Prepared,
  { spells }: KneeAnchor,
): (modules: number, storeVolume_m3: number) => Rounding | null {
  const task = taskOf(prepared, USUAL_YEAR.stepsPerHour, 'built')
  const part = taskIn(task, spells)
  const known = new Map<string, number>()
  const judge = (candidate: Candidate): number => {
    const { measure } = judged(part, candidate)
    return Math.abs(measure) > SURE_K ? measure : judged(task, candidate).measure
  }
  const measureOf = (candidate: Candidate): number => {
    const key = `${candidate.area_m2} ${candidate.storeVolume_m3}`
    const measure = known.get(key) ?? judge(candidate)
    known.set(key, measure)
    return measure
  }
  return (modules, storeVolume_m3) => {
    for (const one of roundings(prepared, { modules, storeVolume_m3 }, task.mostStore_m3)) {
      const measure = measureOf(one.candidate)
      if (Math.abs(measure) < CLOSE_K) return null
      if (measure <= 0) return one
    }
    return null
  }
}

const same = (a: Candidate, b: Candidate): boolean =>
  a.area_m2 === b.area_m2 && a.storeVolume_m3 === b.storeVolume_m3
