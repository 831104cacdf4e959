import { FALL, FIXING_INSET_frac } from '#model/handover/drawing'
import { fieldSize_m, ROW_GAP_m } from '#model/panels/loop'
import { GUST_ms, upliftOfModule_N } from './cautions.ts'
import { partOf, type Part } from './part.ts'
import { engineerPart, footFixings } from './fixings.ts'
import { rowsOf, type Plant } from './plant.ts'
import { roofThickness_m } from './roof-thickness.ts'
import { ANCHORS_PER_MODULE } from './quantities.ts'
import { count, figure, short, words, type Wording } from '#model/basis/words'

/** Rails of a row; how far a rail runs past its modules; most between two feet of a rail, m (common practice, no source). */
const RAILS = 2
export const PAST_m = 0.1
const FEET_APART_m = 2
/** Stress allowed in a rail, Pa: yield point over 1.65, steel S235 and aluminium EN AW-6060 T66 (150 MPa; from memory). */
const STEEL_Pa = 142e6
const ALUMINIUM_Pa = 91e6
/** Bolt of a clamp (common practice, no source). */
const BOLT = 'M8 (5/16 in)'
/** Panels lower over their roof than this need no posts, m. */
const FLAT_m = 0.05

/** What carries the modules: rails along each row, feet under them, and the pull that each fixing must hold. */
export interface Frame {
  /** Between the two rails of a row, along the slope, m. */
  readonly apart_m: number
  /** Lengths of the rails, one of each row, m. */
  readonly rails_m: readonly number[]
  readonly feet: number
  /** Feet under each of the two rails, row by row. */
  readonly feetPerRail: readonly number[]
  /** Heights of the feet above what they stand on, m: low and high rail of each row, from the low edge up; empty where none is needed. */
  readonly feet_m: readonly (readonly [low: number, high: number])[]
  readonly clampUplift_N: number
  /** Least section modulus of a rail of steel, m³. */
  readonly modulus_m3: number
  /** Pull of wind on a foot: the mean, and the most where rails run on past it, N. */
  readonly footUplift_N: { readonly mean: number; readonly most: number }
}

export function frameOf(plant: Plant): Frame {
  const { loopSpec, answer } = plant
  const { panel, room } = answer.scenario
  const rows = rowsOf(plant)
  const inset_m = FIXING_INSET_frac * Math.min(loopSpec.moduleLength_m, loopSpec.moduleWidth_m)
  const raised_m = panel.height_m >= room.height_m ? panel.height_m - room.height_m : panel.height_m
  const slope = Math.sin((panel.tilt_deg * Math.PI) / 180)
  const rails_m = rows.map((modules) => fieldSize_m(loopSpec, [modules]).across_m + 2 * PAST_m)
  const feetOf = (rail_m: number): number => Math.ceil(rail_m / FEET_APART_m) + 1
  const feetPerRail = rails_m.map(feetOf)
  const feet = RAILS * feetPerRail.reduce((sum, each) => sum + each, 0)
  const module_N = upliftOfModule_N(loopSpec.moduleLength_m * loopSpec.moduleWidth_m, GUST_ms)
  /** A foot carries half a span on each side of it; the last of a rail, one half. */
  const most_N = rows.map((modules, row) => {
    const each = feetOf(rails_m[row]!)
    return (module_N * modules) / RAILS / (each > 2 ? each - 1 : each)
  })
  const onPosts = raised_m > FLAT_m || slope * loopSpec.moduleLength_m > FLAT_m
  return {
    apart_m: loopSpec.moduleLength_m - 2 * inset_m,
    rails_m,
    feet,
    feetPerRail,
    feet_m: onPosts
      ? rows.map((_, row) => {
          const from_m = row * (loopSpec.moduleLength_m + ROW_GAP_m)
          const at = (along_m: number): number => raised_m + slope * (from_m + along_m)
          return [at(inset_m), at(loopSpec.moduleLength_m - inset_m)] as const
        })
      : [],
    modulus_m3: modulusOf(rows, rails_m, feetPerRail, module_N),
    clampUplift_N: module_N / ANCHORS_PER_MODULE,
    footUplift_N: { mean: (module_N * plant.layout.modules) / feet, most: Math.max(...most_N) },
  }
}

/** A rail as a beam between two feet under the pull of wind: M = q l²/8 over the stress allowed. */
function modulusOf(
  rows: readonly number[],
  rails_m: readonly number[],
  feetPerRail: readonly number[],
  module_N: number,
): number {
  const each_Nm = rows.map((modules, row) => {
    const span_m = rails_m[row]! / (feetPerRail[row]! - 1)
    const load_Nm = (module_N * modules) / RAILS / rails_m[row]!
    return (load_Nm * span_m * span_m) / 8
  })
  return Math.max(...each_Nm) / STEEL_Pa
}

export function frameParts(plant: Plant): Part[] {
  const part = partOf('Frame')
  const frame = frameOf(plant)
  const anchors = ANCHORS_PER_MODULE * plant.layout.modules
  const rail_m = RAILS * frame.rails_m.reduce((sum, each_m) => sum + each_m, 0)
  const ground = plant.answer.scenario.panel.height_m < plant.answer.scenario.room.height_m
  return [
    engineerPart(plant, frame, ground),
    part(
      figure(rail_m, 'm'),
      words`rail, hot-dip galvanised steel or aluminium: two a row, ${short(frame.apart_m, 3)} apart up the slope, ${lengths(frame.rails_m)} long; section modulus at least ${figure(frame.modulus_m3, 'sectionModulus', 2)} of steel with a yield point of 235 MPa (S235, in the US A36) or ${figure((frame.modulus_m3 * STEEL_Pa) / ALUMINIUM_Pa, 'sectionModulus', 2)} of aluminium (6060 T66, in the US 6063 T6)`,
    ),
    part(
      count(frame.feet),
      words`adjustable feet under the rails, at most ${figure(FEET_APART_m, 'rough')} apart, ${ground ? 'each on a footing or ballast block' : 'through the roof into rafter or purlin, flashed and sealed'}${heights(frame)}${fall(plant, frame)}${ground || frame.feet_m.length === 0 ? '' : fromCeiling(plant)}${frame.feet_m.length === 0 ? '' : '; they end at the underside of the rail, so take off its depth too'}; loads as in the check, the most where a rail runs on past a foot; a pad between unlike metals`,
    ),
    ...footFixings(ground, frame.feet),
    part(
      count(anchors),
      words`clamps that grip the edge profile of a module, with bolts ${BOLT} of stainless steel to the rail, four a module; each must hold ${figure(frame.clampUplift_N, 'force', 2)} upwards (gust ${figure(GUST_ms, 'ms')}, roof edge: see Wind): an engineer decides`,
    ),
  ]
}

/** How much of a foot is inside the roof. */
function fromCeiling({ answer }: Plant): Wording {
  const thick_m = roofThickness_m(answer.scenario)
  return thick_m === null
    ? words`, counted from the ceiling: take off what your roof is thick there`
    : words`, counted from the ceiling: take off ${short(thick_m)}, which the roof is thick as it is described`
}

function lengths(rails_m: readonly number[]): Wording {
  const kinds = [...new Set(rails_m)]
  return kinds.flatMap((rail_m, i) => [...(i === 0 ? [] : [' and ']), figure(rail_m, 'span')])
}

/** How much higher the far end of a row is than the fed one, m; 0 in a loop of air. */
export function hungRise_m({ loopSpec, layout }: Plant): number {
  if (loopSpec.fluid === 'air') return 0
  return FALL * fieldSize_m(loopSpec, [Math.min(layout.modulesPerRow, layout.modules)]).across_m
}

/** Rails fall towards the fed corner, so that headers drain: feet at the other end are higher. */
function fall(plant: Plant, { feet_m }: Frame): Wording {
  const rise_m = hungRise_m(plant)
  if (rise_m === 0) return words``
  return words`${feet_m.length === 0 ? ', shimmed' : ' at the fed end of a row'}, and ${short(rise_m, 2)} more at its other end (rising 1 : 50, those between in step)`
}

function heights(frame: Frame): Wording {
  const high = feetHeights(frame)
  return high === null
    ? words``
    : words`, ${high} (low rail and high rail) up to the top of the rail, where the modules lie`
}

/** Heights of the feet at the fed end, row by row; null where none is needed. */
export function feetHeights({ feet_m }: Frame): Wording | null {
  if (feet_m.length === 0) return null
  const rows = feet_m.map(
    ([low_m, high_m], row) =>
      words`${row === 0 ? '' : '; '}${feet_m.length > 1 ? `row ${feet_m.length - row}: ` : ''}${short(low_m)} and ${short(high_m)}`,
  )
  return rows.flat()
}
