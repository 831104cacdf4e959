/** How sure is a way? Its hours over the limit when every uncertain input is drawn at once, the plant as it was sized. */
import { simulateYear } from '#model/building/year'
import { quantile } from '#model/basis/numbers'
import { designOf, type Prepared } from '#model/design/assembly'
import { MEASURES } from '#model/design/measures'
import { firstDraws } from '#model/design/scenario'
import { exceedance } from '#model/design/target'
import { Trials, type Combination } from './decide-trial.ts'
import type { Stages } from './stages.ts'
import type { Asked, Study } from './study.ts'
import { HOURS_DRAWS } from './usual.ts'

/** A way whose plant is known. */
export type KnownWay = Pick<Combination, 'measures' | 'plant' | 'panelArea_m2' | 'storeVolume_m3'>

/**
 * The question: ways of one description, and which of the draws; `joinHours` joins the shares of several workers. A design asks
 * with one way of no measures and its own plant.
 */
export interface DrawingHours extends Asked {
  readonly ways: readonly KnownWay[]
  readonly draws?: number
  readonly from?: number
  readonly to?: number
}

/** The year of a way as it is described, nothing drawn. */
export interface OwnYear {
  /** Hours over the limit, h, and distance from the target (0 or less: met). */
  readonly hours_h: number
  readonly miss: number
  /** Operative temperature of the room, °C, an entry an hour. */
  readonly room_C: Float64Array
}

/** For each way: hours over the limit, h, and distance from the target of each draw; its own year from the first share. */
export type DrawnHours = readonly {
  readonly hours_h: readonly number[]
  readonly miss: readonly number[]
  readonly own: OwnYear | null
}[]

/** @throws ProblemError as sizing does */
export function* drawHours(
  stages: Stages,
  { scenario, weather, ways, draws = HOURS_DRAWS, from = 0, to = draws }: DrawingHours,
): Study<DrawnHours> {
  const described = new Trials(stages, scenario, weather)
  const found = ways.map((way) => ({
    hours_h: [] as number[],
    miss: [] as number[],
    own: from === 0 ? yearOf(described, way) : null,
  }))
  // The draws of a way are those of the design that it makes: taken, it is as sure as it was said to be.
  const drawn = ways.map((way) =>
    firstDraws(described.described(measuresOf(way)), weather, draws).slice(from, to),
  )
  for (let i = 0; i < to - from; i++)
    for (const [k, way] of ways.entries()) {
      const trials = new Trials(stages, drawn[k]![i]!, weather, measuresOf(way))
      const { hours_h, miss } = yearOf(trials, { ...way, measures: [] })
      found[k]!.hours_h.push(hours_h)
      found[k]!.miss.push(miss)
      yield { share: (i + (k + 1) / ways.length) / (to - from) }
    }
  return { result: found, remarks: [] }
}

function yearOf(trials: Trials, { measures, plant, panelArea_m2, storeVolume_m3 }: KnownWay): OwnYear {
  const set = measuresOf({ measures })
  const prepared = trials.with(set)
  const room_C =
    plant === 'panels'
      ? builtRoom_C(prepared, panelArea_m2, storeVolume_m3)
      : trials.room_C(prepared, set, plant)
  const { hours_h, measure } = exceedance(room_C, prepared.yardstick)
  return { hours_h, miss: measure, room_C }
}

/** Panels as they were sized, in a year that turns out otherwise. */
function builtRoom_C(prepared: Prepared, area_m2: number, storeVolume_m3: number): Float64Array {
  const candidate = { area_m2, storeVolume_m3, flow_kgsm2: prepared.flow_kgsm2(area_m2) }
  return simulateYear(designOf(prepared, candidate, 'built').inputs, { lean: true }).room_C
}

const measuresOf = ({ measures }: Pick<KnownWay, 'measures'>) =>
  MEASURES.filter(({ id }) => measures.includes(id))

/** Hours over the limit of one way, eight draws in ten, and the share of draws that meet the target. */
export interface HoursSpread {
  readonly low_h: number
  readonly middle_h: number
  readonly high_h: number
  readonly met_frac: number
  readonly draws: number
  /** Of every draw, in rising order, h. */
  readonly all_h: readonly number[]
  /** The year as it is described, nothing drawn. */
  readonly own: OwnYear | null
}

/** The spread of each way over the draws of all shares. */
export function joinHours(shares: readonly DrawnHours[]): HoursSpread[] {
  return (shares[0] ?? []).map((_, k) => {
    const sorted = shares.flatMap((share) => share[k]!.hours_h).toSorted((a, b) => a - b)
    const miss = shares.flatMap((share) => share[k]!.miss)
    const at = (share: number): number => quantile(sorted, share)
    return {
      low_h: at(0.1),
      middle_h: at(0.5),
      high_h: at(0.9),
      met_frac: miss.filter((one) => one <= 0).length / Math.max(1, miss.length),
      draws: miss.length,
      all_h: sorted,
      own: shares.map((share) => share[k]!.own).find((own) => own !== null) ?? null,
    }
  })
}
