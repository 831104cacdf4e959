import { short, words } from '#model/basis/words'
import { across, box, head, label, path, type Drawing, type Shape } from '../shapes.ts'
import { unit } from '../symbols.ts'
import { airWay } from './chain.ts'
import type { WayFacts } from './way-facts.ts'

/** Free in front of and behind an outdoor unit where its maker says nothing, m (common practice, no source). */
const FREE_m = { behind: 0.2, before: 1 }

/** Small air conditioner: units, lines, drain and supply; not to scale. */
export function conditionerLines(facts: WayFacts): Drawing {
  const { cooling, electric, drain } = facts.conditioner!
  return {
    id: 'way-conditioner',
    title: 'The air conditioner: lines, drain and supply',
    width: 182,
    height: 76,
    scale: null,
    summary: 'Schematic of the air conditioner with its lines, drain and supply as listed below.',
    notes: [
      'Filling, evacuation and opening of the circuit only by a licensed fitter; its manual gives bores, lengths and the rise between the units.',
    ],
    key: [
      { mark: 'A1', what: words`indoor unit, ${cooling}, high on the outer wall` },
      {
        mark: 'A2',
        what: words`outdoor unit, about ${electric} flat out, on a bracket or pads that damp it`,
      },
      { mark: 'LS', what: 'line set, both pipes insulated, through a sleeve that falls outwards, sealed' },
      { mark: 'CD', what: words`condensate drain ${drain}, falling 1 : 50 all the way, with a trap` },
      { mark: 'IS', what: 'isolator within sight of A2' },
      { mark: 'CB', what: 'breaker with residual-current protection, a circuit of its own' },
    ],
    shapes: picture(),
  }
}

const WALL = 78

/** Room at the left, outdoors at the right. */
function picture(): Shape[] {
  return [
    box([WALL, 4], 5, 60, 'line', 'grey'),
    path(
      [
        [6, 64],
        [176, 64],
      ],
      'thick',
    ),
    label([12, 8], 'room', 'start'),
    label([170, 8], 'outdoors', 'end'),
    ...unit([54, 10], 22, 11, 'A1'),
    airWay([
      [54, 20],
      [40, 30],
    ]),
    head([40, 30], [-1, 0.7]),
    box([106, 40], 22, 20, 'thick', 'pale'),
    label([117, 51], 'A2', 'middle', { bold: true }),
    path(
      [
        [76, 17],
        [94, 18],
        [94, 45],
        [106, 45],
      ],
      'supply',
    ),
    label([96, 30], 'LS', 'start'),
    path(
      [
        [76, 20],
        [88, 21],
        [88, 62],
      ],
      'hidden',
    ),
    head([88, 62], [0, 1]),
    label([89.5, 50], 'CD', 'start'),
    ...unit([106, 28], 9, 6, 'IS'),
    path([
      [110, 34],
      [110, 40],
    ]),
    path([
      [115, 31],
      [150, 31],
    ]),
    ...unit([150, 28], 10, 6, 'CB'),
    label([162, 32], 'board', 'start'),
    ...across([83, 60], [106, 60], 11, words`${short(FREE_m.behind)} free`),
    ...across([128, 60], [160, 60], 11, words`${short(FREE_m.before)} free`),
  ]
}
