import { figure, words, type Text } from '#model/basis/words'
import { FULL_frac, liftOf_m, planOf, riseOf, scaleFor, type PlantFacts } from './facts.ts'
import {
  across,
  box,
  disc,
  head,
  label,
  outline,
  path,
  upright,
  type Drawing,
  type Shape,
  type Spot,
} from './shapes.ts'

const PAPER = { across: 104, down: 60 }
const MARGIN = { left: 26, right: 46, top: 10, bottom: 16 }
/** Free between a tank and the wall beside it, m. */
const BESIDE_m = 0.3

interface Levels {
  readonly onRoof: boolean
  /** Low and high edge of the panels above the ground, m. */
  readonly low_m: number
  readonly high_m: number
  /** Left end of the panels and of the tank, from the outer wall, m. */
  readonly panel_m: number
  readonly tank_m: number
  /** Water line above the ground, m; 0 without a tank. */
  readonly water_m: number
  readonly left_m: number
  readonly right_m: number
}

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
    water_m: tank === null ? 0 : FULL_frac * tank.height_m,
    left_m: Math.min(0, panel_m),
    right_m: Math.max(roomWidth_m, panel_m + field_m, tank === null ? 0 : tank_m + tank.diameter_m),
  }
}

/** Section through room, panels and store with levels, lift and pipe run; to scale. */
export function section(facts: PlantFacts): Drawing {
  const levels = levelsOf(facts)
  const top_m = Math.max(levels.high_m, facts.roomHeight_m) + 0.2
  const scale = scaleFor({ across: levels.right_m - levels.left_m, down: top_m }, PAPER)
  const mm = (length_m: number): number => (1000 * length_m) / scale
  const ground = MARGIN.top + mm(top_m)
  const at = (x_m: number, z_m: number): Spot => [MARGIN.left + mm(x_m - levels.left_m), ground - mm(z_m)]
  const right = MARGIN.left + mm(levels.right_m - levels.left_m)
  const width = right + MARGIN.right
  return {
    id: 'section',
    title: 'Section: levels, lift and pipe run',
    width,
    height: ground + MARGIN.bottom,
    scale,
    summary: words`Section: room ${figure(facts.roomHeight_m, 'm')} high, panels from ${figure(levels.low_m, 'm')} to ${figure(levels.high_m, 'm')} above the ground.`,
    notes: notesOf(facts, levels),
    key: [
      { mark: '━', what: 'supply to the panels' },
      { mark: '╍', what: 'return from the panels' },
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
      ...panelOf(facts, levels, at),
      ...storeOf(facts, levels, at, mm),
      ...pipesOf(facts, levels, at),
      ...levelMarks(facts, levels, at, right),
      ...across(at(0, 0), at(facts.roomWidth_m, 0), 8, words`room ${figure(facts.roomWidth_m, 'm')}`),
    ],
  }
}

type At = (x_m: number, z_m: number) => Spot

function panelOf(facts: PlantFacts, levels: Levels, at: At): Shape[] {
  const field_m = planOf(facts).down_m
  const low = at(levels.panel_m, levels.low_m)
  const high = at(levels.panel_m + field_m, levels.high_m)
  const foot_m = levels.onRoof ? facts.roomHeight_m : 0
  const post = (share: number): Shape =>
    path([
      at(levels.panel_m + share * field_m, levels.low_m + share * (levels.high_m - levels.low_m)),
      at(levels.panel_m + share * field_m, foot_m),
    ])
  return [
    post(0.08),
    post(0.92),
    outline([low, high, [high[0], high[1] - 1.6], [low[0], low[1] - 1.6]], 'line', 'grey'),
    label(
      [(low[0] + high[0]) / 2, Math.min(low[1], high[1]) - 4],
      words`panels, ${figure(facts.tilt_deg, 'deg')}`,
    ),
  ]
}

function storeOf(facts: PlantFacts, levels: Levels, at: At, mm: (m: number) => number): Shape[] {
  const { tank, mass } = facts
  if (tank === null) {
    const z_m = mass === 'slab' ? 0 : facts.roomHeight_m
    const [x, y] = at(0, z_m)
    const thick = 2.4
    return [
      box([x, y], mm(facts.roomWidth_m), thick, 'line', 'grey'),
      label(
        [x + mm(facts.roomWidth_m) / 2, mass === 'slab' ? y - 2 : y + thick + 4],
        mass === 'slab' ? 'pipes in the slab' : 'pipes at the ceiling',
      ),
    ]
  }
  const [x, y] = at(levels.tank_m, tank.height_m)
  const [w, h] = [mm(tank.diameter_m), mm(tank.height_m)]
  const water = at(levels.tank_m, levels.water_m)
  return [
    box([x, y], w, h, 'thick'),
    box(water, w, mm(levels.water_m), 'thin', 'pale'),
    label([x + w / 2, y + h / 2 - 2], 'tank'),
    label([x + w / 2, y + h / 2 + 2], words`${figure(tank.volume_m3, 'm3')}`),
    label([x + w / 2, y + h / 2 + 6], words`⌀ ${figure(tank.diameter_m, 'm')}`),
    ...upright([x, y], [x, y + h], -3, words`${figure(tank.height_m, 'm')}`),
  ]
}

/** Supply rises from the store to the low edge, return falls from the high one; the mover is at the store. */
function pipesOf(facts: PlantFacts, levels: Levels, at: At): Shape[] {
  const { tank } = facts
  const field_m = planOf(facts).down_m
  const end_m = tank === null ? facts.roomWidth_m * 0.5 : levels.tank_m + tank.diameter_m * 0.5
  const store_z = tank === null ? (facts.mass === 'slab' ? 0 : facts.roomHeight_m) : tank.height_m
  const low = at(levels.panel_m, levels.low_m)
  const high = at(levels.panel_m + field_m, levels.high_m)
  const supply = at(end_m - 0.12 * (tank?.diameter_m ?? 1), store_z)
  const back = at(end_m + 0.12 * (tank?.diameter_m ?? 1), store_z)
  const over = Math.max(2, 0.02 * Math.abs(low[1]))
  const supplyY = levels.onRoof
    ? at(0, facts.roomHeight_m)[1] + 4
    : Math.min(supply[1] - 5, at(0, levels.low_m)[1] + 6)
  const pump: Spot = [supply[0], (supply[1] + supplyY) / 2]
  return [
    path([supply, [supply[0], supplyY], [low[0] - over, supplyY], [low[0] - over, low[1]], low], 'supply'),
    head(low, [1, 0]),
    path(
      [high, [high[0] + over, high[1]], [high[0] + over, supplyY + 4], [back[0], supplyY + 4], back],
      'return',
    ),
    head(back, [0, 1]),
    disc(pump, 2, 'paper'),
    label([pump[0], pump[1] + 1], facts.mover === 'pump' ? 'P' : 'F'),
  ]
}

function levelMarks(facts: PlantFacts, levels: Levels, at: At, right: number): Shape[] {
  const marks: { z_m: number; what: string }[] = [
    { z_m: levels.high_m, what: 'high edge' },
    { z_m: levels.low_m, what: 'low edge' },
    { z_m: facts.roomHeight_m, what: 'ceiling' },
    ...(facts.tank === null ? [] : [{ z_m: levels.water_m, what: 'water line' }]),
    { z_m: 0, what: 'floor' },
  ]
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
      label([right + 9, textY], words`+${figure(z_m, 'm')} ${what}`, 'start'),
    ]
  })
  const lift =
    facts.tank === null || !facts.liquid
      ? []
      : upright(
          [12, at(0, levels.high_m)[1]],
          [12, at(0, levels.water_m)[1]],
          4,
          words`lift ${figure(liftOf_m(facts, facts.tank.height_m), 'm')}`,
        )
  return [...lines, ...lift]
}

function notesOf(facts: PlantFacts, levels: Levels): Text[] {
  const notes: Text[] = [
    words`${facts.ducting === 'pipe' ? 'Pipe' : 'Duct'} there and back together ${figure(facts.pipeRun_m, 'm')}, ${facts.pipe}. Pitch every run so that it drains to the low point (1 : 100 at least).`,
  ]
  if (!levels.onRoof)
    notes.push('The panels are lower than the ceiling, so they are drawn on the ground beside the room.')
  if (facts.liquid && facts.freeze === 'drainBack')
    notes.push(
      'Drain-back: no trap, no check valve and no level stretch between panels and store, or water stays and freezes.',
    )
  if (facts.tank !== null && facts.tank.height_m > facts.roomHeight_m && facts.tank.place === 'room')
    notes.push('The tank is higher than the room.')
  return notes
}
