import { figure, words } from '#model/basis/words'
import {
  airHoleHeight_m,
  drainsBack,
  highest_m,
  liftOf_m,
  planOf,
  riseOf,
  waterLine_m,
  type PlantFacts,
} from './facts.ts'
import { toScale, type Rule } from './scales.ts'
import { panelsOf } from './section-panels.ts'
import { pipesOf } from './section-pipes.ts'
import type { At, Levels } from './levels.ts'
import { roomUnitKey, roomUnitOf } from './section-room.ts'
import { sectionNotes } from './section-notes.ts'
import { across, box, label, path, upright, type Drawing, type Shape, type Spot } from './shapes.ts'

const PAPER = { across: 104, down: 72 }
const MARGIN = { left: 22, right: 62, top: 6, bottom: 9 }
/** Free between a tank and the wall beside it, m. */
const BESIDE_m = 0.3

function levelsOf(facts: PlantFacts): Levels {
  const { tank, roomWidth_m, roomHeight_m } = facts
  const field_m = planOf(facts).down_m
  const onRoof = facts.panelHeight_m >= roomHeight_m
  const panel_m = onRoof ? (roomWidth_m - field_m) / 2 : -field_m - 1
  const tank_m =
    tank === null
      ? 0
      : tank.place === 'room'
        ? Math.max(0.1, roomWidth_m - tank.diameter_m - BESIDE_m)
        : roomWidth_m + 2 * BESIDE_m
  return {
    onRoof,
    low_m: facts.panelHeight_m,
    high_m: facts.panelHeight_m + riseOf(facts),
    panel_m,
    tank_m,
    left_m: Math.min(0, panel_m),
    right_m: Math.max(roomWidth_m, panel_m + field_m, tank === null ? 0 : tank_m + tank.diameter_m),
  }
}

/** Section through room, panels and store with levels, lift and pipe run; to scale. */
export const section = (facts: PlantFacts): Drawing => toScale((rule) => sectionAt(facts, rule))

function sectionAt(facts: PlantFacts, rule: Rule): Drawing {
  const levels = levelsOf(facts)
  const top_m = Math.max(highest_m(facts), facts.roomHeight_m) + 0.2
  const scale = rule.scaleFor({ across: levels.right_m - levels.left_m, down: top_m }, PAPER)
  const mm = (length_m: number): number => (1000 * length_m) / scale
  const ground = MARGIN.top + mm(top_m)
  const at = (x_m: number, z_m: number): Spot => [MARGIN.left + mm(x_m - levels.left_m), ground - mm(z_m)]
  const right = MARGIN.left + mm(levels.right_m - levels.left_m)
  const width = right + MARGIN.right
  const marks = levelMarks(facts, levels, at, right)
  return {
    id: 'section',
    title: 'Section: levels, lift and pipe run',
    width,
    height: Math.max(ground + MARGIN.bottom, ...marks.flatMap(endOf)),
    scale,
    summary: words`Section: room ${figure(facts.roomHeight_m, 'span')} high, panels from ${figure(levels.low_m, 'span')} to ${figure(levels.high_m, 'span')} above the ground.`,
    notes: sectionNotes(facts, levels),
    key: [
      { mark: '━━━', what: 'supply to the panels' },
      { mark: '╍╍╍', what: 'return from the panels' },
      ...roomUnitKey(facts),
      ...(facts.feetHigh === null
        ? []
        : [
            {
              mark: 'feet',
              what: words`posts under the rails, at the fed end, up to the top of the rail: ${facts.feetHigh} (low and high rail); braces are in the list, not drawn`,
            },
          ]),
    ],
    shapes: [
      path(
        [
          [8, ground],
          [right + 1, ground],
        ],
        'thick',
      ),
      box(at(0, facts.roomHeight_m), mm(facts.roomWidth_m), mm(facts.roomHeight_m), 'thick'),
      ...roofOf(facts, at, mm),
      ...panelsOf(facts, levels, at),
      ...storeOf(facts, levels, at, mm),
      ...pipesOf(facts, levels, at, mm),
      ...roomUnitOf(facts, levels, at, mm),
      ...marks,
      ...across(at(0, 0), at(facts.roomWidth_m, 0), 7, words`room ${figure(facts.roomWidth_m, 'span')}`),
    ],
  }
}

type Mm = (length_m: number) => number

/** Where a text ends below. */
const endOf = (shape: Shape): number[] => (shape.kind === 'text' ? [shape.at[1] + 1] : [])

function roofOf({ roofThickness_m, roomHeight_m, roomWidth_m }: PlantFacts, at: At, mm: Mm): Shape[] {
  if (roofThickness_m === null) return []
  return [box(at(0, roomHeight_m + roofThickness_m), mm(roomWidth_m), mm(roofThickness_m), 'thin', 'pale')]
}

function storeOf(facts: PlantFacts, levels: Levels, at: At, mm: (m: number) => number): Shape[] {
  const { tank, mass } = facts
  if (tank === null) {
    return [box(at(0, mass === 'slab' ? 0 : facts.roomHeight_m), mm(facts.roomWidth_m), 2.4, 'line', 'grey')]
  }
  const [x, y] = at(levels.tank_m, tank.foot_m + tank.height_m)
  const [w, h] = [mm(tank.diameter_m), mm(tank.height_m)]
  const water = at(levels.tank_m, tank.foot_m + tank.water_m)
  return [
    box([x, y + h], w, mm(tank.foot_m), 'thin', 'grey'),
    box([x, y], w, h, 'thick'),
    box(water, w, mm(tank.water_m), 'thin', 'pale'),
    label([x + 0.48 * w, y + h / 2 + 1], 'tank'),
  ]
}

function levelMarks(facts: PlantFacts, levels: Levels, at: At, right: number): Shape[] {
  const marks: { z_m: number; what: string }[] = [
    ...(highest_m(facts) > levels.high_m ? [{ z_m: highest_m(facts), what: 'high corner' }] : []),
    { z_m: levels.high_m, what: highest_m(facts) > levels.high_m ? 'high edge, fed end' : 'high edge' },
    { z_m: levels.low_m, what: 'low edge' },
    { z_m: facts.roomHeight_m, what: facts.mass === 'building' ? 'ceiling, cooled' : 'ceiling' },
    ...waterMarks(facts),
    { z_m: 0, what: facts.mass === 'slab' ? 'floor, pipes in the slab' : 'floor' },
  ].toSorted((a, b) => b.z_m - a.z_m)
  let last = -Infinity
  const lines = marks.flatMap(({ z_m, what }): Shape[] => {
    const [, y] = at(0, z_m)
    const textY = Math.max(y + 1, last + 3.4)
    last = textY
    return [
      path(
        [
          [right + 2, y],
          [right + 6, y],
          [right + 8, textY - 1],
        ],
        'thin',
      ),
      label([right + 9, textY], words`${z_m === 0 ? '±' : '+'}${figure(z_m, 'span')} ${what}`, 'start'),
    ]
  })
  return [...lines, ...liftMark(facts, at)]
}

function liftMark(facts: PlantFacts, at: At): Shape[] {
  const water_m = waterLine_m(facts)
  const lift_m = liftOf_m(facts)
  if (water_m === null || lift_m === null || lift_m <= 0) return []
  return upright(
    [12, at(0, highest_m(facts))[1]],
    [12, at(0, water_m)[1]],
    4,
    words`lift ${figure(lift_m, 'span')}`,
  )
}

function waterMarks(facts: PlantFacts): { z_m: number; what: string }[] {
  const { tank } = facts
  const water_m = waterLine_m(facts)
  if (water_m === null) return []
  if (tank === null) return [{ z_m: water_m, what: 'water in vessel DV' }]
  return [
    { z_m: tank.height_m, what: 'tank rim' },
    ...(drainsBack(facts) ? [{ z_m: airHoleHeight_m(tank), what: 'air hole AH' }] : []),
    { z_m: tank.water_m, what: 'water line' },
    { z_m: tank.outlet_m, what: 'outlet to P1' },
    { z_m: tank.end_m, what: 'return ends' },
  ].map(({ z_m, what }) => ({ z_m: tank.foot_m + z_m, what }))
}
