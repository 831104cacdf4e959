import { ROW_GAP_m } from '#model/panels/loop'
import {
  airHoleHeight_m,
  FALL,
  drainsBack,
  planOf,
  THROUGH_m,
  waterLine_m,
  type PlantFacts,
} from './facts.ts'
import type { At, Levels } from './levels.ts'
import { disc, head, label, path, type Shape, type Spot } from './shapes.ts'
import { unit } from './symbols.ts'

/** Pump and outlet beside the tank, on paper: off its wall, mm. */
const BESIDE = { suction: 3, pump: 8 }
/** Middle of a pump above the floor; of a pump or fan under the ceiling, below it, m (common practice, no source). */
const PUMP_m = { floor: 0.25, ceiling: 0.35 }
/** Above the floor on paper, so that the pipes of the room cooling pass below, mm. */
const ABOVE_PAIR = 7
/** Pipes run so far under the ceiling or the panels, m. */
const UNDER_m = 0.15
/** Between supply and return where they run side by side, mm on paper. */
const APART = 4

/** Supply rises from the pump to the low edge, return comes down from the high one; both fall towards the store. */
export function pipesOf(facts: PlantFacts, levels: Levels, at: At, mm: (m: number) => number): Shape[] {
  const field_m = planOf(facts).down_m
  const low = at(levels.panel_m, levels.low_m)
  const high = at(levels.panel_m + field_m, levels.high_m)
  const over = mm(THROUGH_m)
  const run = at(0, levels.onRoof ? facts.roomHeight_m - UNDER_m : Math.max(0.1, levels.low_m - UNDER_m))[1]
  const fallen = (fromX: number, toX: number): number => FALL * Math.abs(toX - fromX)
  const ends = endsOf(facts, levels, at)
  const left = low[0] - over
  const supplyEnd = run + fallen(left, ends.pump[0])
  const right = high[0] + over
  const returnRun = levels.onRoof ? run + APART : Math.min(ends.back[1] - 3, high[1] + 2)
  const returnEnd = returnRun + fallen(right, ends.back[0])
  const turn: Spot = [ends.back[0], Math.min(returnEnd, ends.back[1] - 1)]
  const mark = (left + ends.pump[0]) / 2
  return [
    path([...ends.outlet, ends.pump, [ends.pump[0], supplyEnd], [left, run], [left, low[1]], low], 'supply'),
    head(low, [1, 0]),
    path([high, [right, high[1]], [right, returnRun], turn, ends.back], 'return'),
    head(ends.back, [0, 1]),
    disc(ends.pump, 2, 'paper'),
    label([ends.pump[0], ends.pump[1] + 1], facts.mover === 'pump' ? 'P1' : 'FN'),
    ...(facts.liquid && Math.abs(ends.pump[0] - left) > 26
      ? [label([mark, run + fallen(left, mark) + 3], 'fall 1 : 50 →')]
      : []),
    ...rowPipes(facts, levels, at, right),
    ...airShapes(facts, ends, mm),
  ]
}

/** Collecting run above the roof, m (common practice, no source). */
const OVER_ROOF_m = 0.1

/** On a roof with several rows: supply on to the higher ones, and the returns of the lower ones, which fall to the run above the roof. */
function rowPipes(facts: PlantFacts, levels: Levels, at: At, right: number): Shape[] {
  if (!levels.onRoof || facts.rows.length < 2) return []
  const slope_rad = (facts.tilt_deg * Math.PI) / 180
  const onSlope = (along_m: number): Spot =>
    at(levels.panel_m + along_m * Math.cos(slope_rad), levels.low_m + along_m * Math.sin(slope_rad))
  const pitch_m = facts.moduleLength_m + ROW_GAP_m
  const foot = at(0, facts.roomHeight_m + OVER_ROOF_m)[1]
  const lower = Array.from({ length: facts.rows.length - 1 }, (_, row) => row)
  return [
    path([onSlope(0), onSlope(lower.length * pitch_m)], 'supply'),
    ...lower.map((row) => {
      const from = onSlope(row * pitch_m + facts.moduleLength_m)
      const start = Math.max(from[1], foot - FALL * (right - from[0]))
      return path([from, [from[0] + 1, from[1]], [from[0] + 1, start], [right, foot]], 'return')
    }),
  ]
}

/** The hole that lets air into a return, or the vessel that a loop without a tank drains into. */
function airShapes(facts: PlantFacts, ends: Ends, mm: (m: number) => number): Shape[] {
  if (!drainsBack(facts)) return []
  if (facts.tank !== null) {
    const rim = ends.back[1] - mm(facts.tank.height_m - facts.tank.end_m)
    const hole: Spot = [ends.back[0], ends.back[1] - mm(airHoleHeight_m(facts.tank) - facts.tank.end_m)]
    return [disc(hole, 0.7, 'paper'), label([hole[0] + 1.2, rim - 1], 'AH', 'start')]
  }
  const water = ends.floor - mm(waterLine_m(facts)!)
  return unit([ends.back[0] - 4, water - 3], 8, 6, 'DV')
}

interface Ends {
  /** From the store's outlet to the pump. */
  readonly outlet: readonly Spot[]
  readonly pump: Spot
  readonly back: Spot
  /** The floor on paper. */
  readonly floor: number
}

function endsOf(facts: PlantFacts, levels: Levels, at: At): Ends {
  const { tank, mass, roomWidth_m, roomHeight_m } = facts
  const floor = at(0, 0)[1]
  if (tank !== null) {
    const outlet = at(levels.tank_m, tank.foot_m + tank.outlet_m)
    // above the room's own pipes along the floor, and lower than the outlet
    const pumpY = Math.max(Math.min(at(0, PUMP_m.floor)[1], floor - ABOVE_PAIR), outlet[1] + 2)
    const foot: Spot = [outlet[0] - BESIDE.suction, pumpY]
    return {
      outlet: [outlet, [foot[0], outlet[1]], foot],
      pump: [outlet[0] - BESIDE.pump, pumpY],
      back: at(levels.tank_m + 0.82 * tank.diameter_m, tank.foot_m + tank.end_m),
      floor,
    }
  }
  const z_m = mass === 'slab' ? 0 : roomHeight_m
  const pump_m = mass === 'slab' ? PUMP_m.floor : roomHeight_m - PUMP_m.ceiling
  const out = at(0.42 * roomWidth_m, z_m)
  return { outlet: [out], pump: at(0.42 * roomWidth_m, pump_m), back: at(0.62 * roomWidth_m, z_m), floor }
}
