import { short, words, type Text } from '#model/basis/words'
import { drainsBack, type PlantFacts } from './facts.ts'
import { box, disc, head, label, path, type Shape, type Spot } from './shapes.ts'
import { flowing, mover, sensor, unit, valve } from './symbols.ts'

interface Drawn {
  /** Drawn under the pipes. */
  readonly shapes: readonly Shape[]
  /** Drawn over them. */
  readonly over: readonly Shape[]
  readonly key: readonly { readonly mark: string; readonly what: Text }[]
}

/** Tank, slab or the building's mass, at the foot of the schematic. */
export function storeBox(facts: PlantFacts, top: number): Drawn {
  if (facts.tank === null) return massBox(facts, top)
  return {
    shapes: [
      box([100, top], 26, 32, 'thick', 'paper'),
      box([100, top + 2.5], 26, 29.5, 'thin', 'pale'),
      label([110, top + 17], 'tank'),
      label([110, top + 9], 'warm'),
      label([110, top + 29], 'cold'),
      ...sensor([105, top], 'S2'),
      ...sensor([105, top + 32], 'S8', false),
      path(
        [
          [113, top - 9],
          [113, top - 5],
        ],
        'line',
      ),
      label([113, top - 10.5], 'FH'),
      path(
        [
          [126, top + 3],
          [132, top + 3],
          [132, top + 8],
        ],
        'line',
      ),
      label([133.5, top + 8], 'O1', 'start'),
      path([
        [124, top + 14],
        [130, top + 14],
      ]),
      ...unit([130, top + 11.5], 8, 5, 'LS'),
      path(
        [
          [113, top + 32],
          [113, top + 36],
        ],
        'line',
      ),
      ...valve([113, top + 36], 'D2', true),
    ],
    over: airHole(facts, top),
    key: tankKey(facts),
  }
}

const tankKey = (facts: PlantFacts): Drawn['key'] => [
  ...(drainsBack(facts)
    ? [
        {
          mark: 'AH',
          what: words`air hole of ${short(AIR_HOLE_m)} in the return, above the water line: lets the panels run empty`,
        },
      ]
    : []),
  {
    mark: 'FH',
    what: 'filling hose that ends above the rim: an air gap, never a fixed joint with the mains',
  },
  { mark: 'O1', what: 'overflow to a drain' },
  { mark: 'LS', what: 'float switch: low water stops the pump' },
  { mark: 'D2', what: 'drain of the tank' },
]

/** Hole that lets air into a return, m (common practice, no source). */
export const AIR_HOLE_m = 0.006

function airHole(facts: PlantFacts, top: number): Shape[] {
  return drainsBack(facts)
    ? [disc([122, top + 1.1], 0.7, 'paper'), label([120.5, top - 0.8], 'AH', 'end')]
    : []
}

/** Slab or the building's mass, with the vessel a drain-back loop needs. */
function massBox(facts: PlantFacts, top: number): Drawn {
  const name = facts.mass === 'slab' ? 'pipes in slab' : 'cooled mass'
  return {
    shapes: [...unit([100, top], 26, 30, ''), label([113, top + 14], name), ...sensor([113, top], 'S2')],
    over: drainsBack(facts) ? unit([136, top + 20], 10, 10, 'DV') : [],
    key: drainsBack(facts)
      ? [
          {
            mark: 'DV',
            what: 'drain-back vessel, open to the air by a filter in its lid: the panels run empty into it',
          },
        ]
      : [],
  }
}

/** What brings the cold to the room; nothing where the loop runs in the mass itself. */
export function roomSide(facts: PlantFacts, top: number): Shape[] {
  if (facts.tank === null) return onWall([68, top + 24])
  const [supply, back] = [top + 28, top + 20]
  return [
    path(
      [
        [100, supply],
        [58, supply],
      ],
      'supply',
    ),
    path(
      [
        [58, back],
        [97, back],
        [97, top + 8],
        [100, top + 8],
      ],
      'return',
    ),
    flowing([88, supply], [-1, 0]),
    flowing([75, back], [1, 0]),
    ...valve([90, back], 'V4'),
    ...valve([93, supply], ''),
    label([93, supply + 5], 'V3'),
    path([
      [77, supply],
      [77, supply + 4],
    ]),
    ...valve([77, supply + 6], 'D3', true),
    ...mover([71, supply], '', -1),
    label([71, supply + 6.5], 'P2'),
    ...(facts.drained
      ? []
      : [
          path(
            [
              [82, back],
              [82, supply],
            ],
            'return',
          ),
          ...valve([82, supply], ''),
          label([87, supply - 2.5], 'M1'),
          ...sensor([63, supply], 'S9', false),
        ]),
    ...roomUnit(facts, top),
  ]
}

/** Room air and its humidity, side by side on an inner wall: off every unit and out of its stream. */
function onWall([x, y]: Spot): Shape[] {
  return [
    ...sensor([x, y], 'S5'),
    ...sensor([x + 8, y], 'S6'),
    path([
      [x - 3, y],
      [x + 11, y],
    ]),
    label([x + 4, y + 4], 'inner wall'),
  ]
}

/** The unit in the room with its vent, sensors and drain. */
function roomUnit(facts: PlantFacts, top: number): Shape[] {
  return [
    box([36, top + 17], 22, 14, 'line', 'paper'),
    ...UNIT_NAMES[facts.roomUnit ?? 'pipes'].map((text, i) => label([47, top + 23 + 4 * i], text)),
    path([
      [38, top + 17],
      [38, top + 14.5],
    ]),
    disc([38, top + 13], 1.5, 'paper'),
    label([35.5, top + 14], 'AV', 'end'),
    ...onWall([22.5, top + 31]),
    ...(facts.drained ? sensor([49.8, top + 31], 'FS', false) : []),
    ...(facts.roomUnit === 'fanCoil'
      ? [
          path([
            [44.4, top + 31],
            [44.4, top + 41],
          ]),
          head([44.4, top + 41], [0, 1]),
          label([44.4, top + 44.5], 'CD'),
        ]
      : []),
  ]
}

/** What brings the cold into the room, as it is written in its box. */
const UNIT_NAMES = {
  fanCoil: ['FC', 'fan coil'],
  ceiling: ['CP', 'ceiling'],
  pipes: ['MF', 'manifold'],
} as const

const VENT = {
  mark: 'AV',
  what: 'air vent at its highest point, opened by hand to fill and drain, else shut',
}
const UNIT_KEY = {
  fanCoil: [
    { mark: 'FC', what: 'fan coil with its tray' },
    VENT,
    {
      mark: 'CD',
      what: 'condensate pipe from the tray, falling 1 : 50, with a trap, to a drain or outdoors',
    },
  ],
  ceiling: [{ mark: 'CP', what: 'cooled ceiling panels, piped in circuits of equal length' }, VENT],
  pipes: [{ mark: 'MF', what: 'manifold of the circuits, with a valve each and a drain' }, VENT],
} as const

/** Marks of the room's side, for the key. */
export function roomKey(facts: PlantFacts): Drawn['key'] {
  if (facts.tank === null) return []
  return [
    { mark: 'P2', what: `pump of the room cooling${facts.drained ? '' : ', after M1'}` },
    { mark: 'V3, V4', what: 'shut-off valves out of and into the tank; V4 with a flow scale' },
    { mark: 'D3', what: 'its filling and drain valve, lowest point' },
    ...UNIT_KEY[facts.roomUnit ?? 'pipes'],
    ...(facts.drained
      ? [{ mark: 'FS', what: 'float switch in the tray' }]
      : [
          {
            mark: 'M1',
            what: 'mixing valve before P2, which draws return water in by it, so that the supply stays above the dew point',
          },
        ]),
  ]
}
