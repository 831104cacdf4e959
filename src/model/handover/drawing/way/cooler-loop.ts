import { figure, words } from '#model/basis/words'
import { box, disc, head, label, path, type Drawing, type Shape, type Spot } from '../shapes.ts'
import { flowing, mover, sensor, unit, valve } from '../symbols.ts'
import { airWay } from './chain.ts'
import type { WayFacts } from './way-facts.ts'

/** The evaporative cooler with its air, water, drain and supply, every part marked; not to scale. */
export function coolerLoop(facts: WayFacts): Drawing {
  const cooler = facts.cooler!
  const { direct } = cooler
  return {
    id: 'way-cooler',
    title: 'The cooler: air, water, drain and supply',
    width: 182,
    height: 82,
    scale: null,
    summary: 'Schematic of the evaporative cooler with water feed, bleed, duct and controls as listed below.',
    notes: [
      words`Water ${cooler.feed}, drain ${cooler.drain}. ${cooler.bled} of the water is bled off by BL against salt. Up to ${cooler.water} an hour.`,
      ...(direct
        ? ['The air of a direct cooler leaves by X1: none is taken back.']
        : [
            'An indirect cooler has two air ways: the wetted one ends outdoors, only the dry one goes to the room.',
          ]),
    ],
    key: [
      { mark: 'SV', what: 'shut-off valve; the pipe before it can be drained in winter' },
      {
        mark: 'BP',
        what: 'backflow preventer; the feed ends over an air gap all the same, above the edge of OF',
      },
      { mark: 'FV', what: 'float valve: holds the sump’s level' },
      { mark: 'PD', what: direct ? 'wetted pads' : 'heat exchanger, wetted on one side' },
      { mark: 'SU, SP', what: 'sump, and the pump that wets the pads' },
      { mark: 'BL', what: 'bleed, set by its cock' },
      { mark: 'OF, DR', what: 'overflow and drain of the sump, with a trap' },
      { mark: 'FN', what: words`fan, ${cooler.flow}` },
      { mark: 'DM', what: 'damper, shut in winter' },
      {
        mark: 'GR',
        what: words`grille in the room, after a duct ${figure(cooler.duct_m, 'duct')} across (D1)`,
      },
      {
        mark: 'TH',
        what: direct ? words`thermostat, and humidity switch: off above ${cooler.mostHumid}` : 'thermostat',
      },
      { mark: 'IS', what: 'isolator beside the cooler, on a residual-current protected circuit' },
    ],
    shapes: [...body(direct), ...water(), ...drains(), ...air(facts), ...supply()],
  }
}

const LEFT = 62
const TOP = 14
const WIDE = 40
const HIGH = 44
const SUMP = TOP + 34
/** Water of the sump under its edge, mm: the feed ends above it. */
const WATER = 4

function body(direct: boolean): Shape[] {
  return [
    box([LEFT, TOP], WIDE, HIGH, 'thick'),
    box([LEFT, SUMP + WATER], WIDE, HIGH - 34 - WATER, 'line', 'pale'),
    box([LEFT + 4, TOP + 6], 6, 26, 'line', 'grey'),
    label([LEFT + 7, TOP + 20], 'PD'),
    label([LEFT + 31, SUMP + 8], 'SU'),
    ...mover([LEFT + 17, SUMP + 5], '', 1),
    label([LEFT + 21.2, SUMP + 8], 'SP', 'start'),
    path([
      [LEFT + 17, SUMP + 2],
      [LEFT + 17, TOP + 3],
      [LEFT + 7, TOP + 3],
      [LEFT + 7, TOP + 6],
    ]),
    flowing([LEFT + 17, TOP + 18], [0, -1]),
    ...mover([LEFT + 30, TOP + 18], 'FN', 1),
    label([LEFT + WIDE / 2, TOP - 3], direct ? 'E1, direct' : 'E1, indirect', 'middle', { bold: true }),
  ]
}

/** From the mains at the left by stop valve and backflow preventer to the float valve. */
function water(): Shape[] {
  const y = SUMP - 2
  return [
    path(
      [
        [6, y],
        [LEFT + 3, y],
        [LEFT + 3, SUMP],
      ],
      'supply',
    ),
    label([6, y - 2.5], 'mains', 'start'),
    ...valve([24, y], 'SV'),
    ...unit([32, y - 2.5], 9, 5, 'BP'),
    flowing([48, y], [1, 0]),
    ...valve([56, y], 'FV'),
    disc([LEFT + 5, SUMP + 4.6], 1.3, 'paper'),
  ]
}

/** A pipe down the page over one across it, with which it has no joint. */
const bridge = (x: number, y: number): Spot[] => [
  [x, y - 2],
  [x + 1.4, y - 1.4],
  [x + 2, y],
  [x + 1.4, y + 1.4],
  [x, y + 2],
]

function drains(): Shape[] {
  const foot = TOP + HIGH
  return [
    path([
      [LEFT + 17, TOP + 24],
      [LEFT - 12, TOP + 24],
      ...bridge(LEFT - 12, SUMP - 2),
      [LEFT - 12, foot + 12],
    ]),
    ...valve([LEFT - 6, TOP + 24], 'BL'),
    path([
      [LEFT + 34, foot],
      [LEFT + 34, foot + 12],
    ]),
    ...valve([LEFT + 34, foot + 5], 'DR', true),
    path([
      [LEFT + 26, SUMP + 3],
      [LEFT + 26, foot + 12],
    ]),
    label([LEFT + 24.5, foot + 6], 'OF', 'end'),
    path([
      [LEFT - 12, foot + 12],
      [LEFT + 50, foot + 12],
    ]),
    path([
      [LEFT + 50, foot + 12],
      [LEFT + 50, foot + 16],
      [LEFT + 56, foot + 16],
      [LEFT + 56, foot + 12],
      [LEFT + 66, foot + 12],
    ]),
    head([LEFT + 66, foot + 12], [1, 0]),
    label([LEFT + 68, foot + 13], 'trap, then soakaway or sewer', 'start'),
  ]
}

function air(facts: WayFacts): Shape[] {
  const y = TOP + 18
  const room: Spot = [138, 4]
  return [
    airWay([
      [40, y],
      [LEFT - 1, y],
    ]),
    head([LEFT - 1, y], [1, 0]),
    label([38, y + 1], 'outdoor air', 'end'),
    box([LEFT + WIDE, y - 3.5], 34, 7, 'line', 'paper'),
    ...valve([LEFT + WIDE + 9, y], ''),
    label([LEFT + WIDE + 9, y - 5], 'DM'),
    label([LEFT + WIDE + 20, y - 5], 'D1'),
    box([LEFT + WIDE + 33, y - 5], 2, 10, 'line', 'ink'),
    label([LEFT + WIDE + 37, y - 6], 'GR', 'start'),
    box(room, 40, 50, 'thick'),
    label([room[0] + 20, 10], 'room'),
    airWay([
      [LEFT + WIDE + 37, y],
      [room[0] + 26, y],
      [room[0] + 39, y + 12],
    ]),
    head([room[0] + 40, y + 13], [1, 1]),
    ...(facts.cooler!.direct
      ? [
          box([room[0] + 39, y + 9], 2, 8, 'line', 'paper'),
          label([room[0] + 36, y + 20], 'X1', 'end', { bold: true }),
        ]
      : []),
    ...sensor([room[0] + 14, 48], 'TH', true),
  ]
}

/** From the board to the isolator and the thermostat. */
function supply(): Shape[] {
  return [
    path(
      [
        [152, 54],
        [152, 62],
        [124, 62],
        [124, 44],
        [LEFT + WIDE, 44],
      ],
      'hidden',
    ),
    ...unit([112, 41], 8, 6, 'IS'),
    label([154, 63], 'from the board', 'start'),
  ]
}
