import { figure, short, words, type Text } from '#model/basis/words'
import type { PlantFacts } from './facts.ts'
import { edgeInside_m, FLANGE_m } from './panel-edge.ts'
import {
  box,
  disc,
  label,
  outline,
  path,
  type Drawing,
  type Fill,
  type Ink,
  type Shape,
  type Spot,
} from './shapes.ts'

const LEFT = 22
const WIDE = 66
/** Where the names of the layers begin. */
const NAMES = LEFT + WIDE + 8

interface Layer {
  readonly name: Text
  /** A second line of it. */
  readonly more?: Text
  /** Drawn height, mm: layers are drawn far thicker than they are. */
  readonly drawn: number
  readonly fill: Fill
  readonly ink?: Ink
  readonly tubes?: boolean
}

/** The panel cut open, in layers from the sky down, with its fixing; thicknesses not to scale. */
export function buildUp(facts: PlantFacts): Drawing {
  const { build } = facts
  const layers: Layer[] = [
    ...(build.film === null
      ? []
      : [
          { name: 'infrared-clear film on its frame', drawn: 1.2, fill: 'paper' as Fill },
          { name: words`still air, ${short(build.film.gap_m)}`, drawn: 7, fill: 'none' as Fill },
        ]),
    { name: words`coating on the sky side: ${build.coating}`, drawn: 2.2, fill: 'paper', ink: 'thick' },
    { name: words`plate, ${build.plateText}`, drawn: 2.6, fill: 'grey' },
    { name: passageText(facts), more: layText(facts), drawn: 8, fill: 'none', tubes: true },
    ...(build.foam_m > 0
      ? [{ name: words`${build.foamText}`, drawn: 13, fill: 'pale' as Fill }]
      : [{ name: 'no insulation: open air behind', drawn: 5, fill: 'none' as Fill }]),
    { name: 'sun-proof, weather-tight back sheet', drawn: 1.2, fill: 'grey' },
  ]
  let y = 12
  const shapes: Shape[] = []
  layers.forEach((layer, i) => {
    shapes.push(box([LEFT, y], WIDE, layer.drawn, layer.ink ?? 'line', layer.fill))
    if (layer.tubes === true) shapes.push(...tubesOf(facts, y))
    const middle = y + layer.drawn / 2
    const textY = 10 + i * 7.4
    shapes.push(
      path(
        [
          [LEFT + WIDE, middle],
          [NAMES - 3, textY - 1],
          [NAMES - 1, textY - 1],
        ],
        'thin',
      ),
      label([NAMES, textY], layer.name, 'start'),
      ...(layer.more === undefined ? [] : [label([NAMES, textY + 3.6], layer.more, 'start')]),
    )
    y += layer.drawn
  })
  const textEnd = 10 + layers.length * 7.4
  return {
    id: 'build-up',
    title: 'One panel cut open, from the sky down',
    width: 182,
    height: Math.max(y + 10, textEnd + 10),
    scale: null,
    summary: 'Layers of a panel from the sky down, with its fixing to the structure.',
    notes: ['Thicknesses are not to scale.'],
    key: [],
    shapes: [
      ...shapes,
      ...fixing(facts, 12, y, textEnd),
      label([LEFT + WIDE / 2, 6], 'sky', 'middle', { bold: true }),
    ],
  }
}

function passageText({ build, passage }: PlantFacts): Text {
  return words`${passage}s ${short(build.passageInner_m)} inside, ${figure(build.passageOuter_m, 'tubeOuter')} outside`
}

function layText({ build }: PlantFacts): Text {
  return build.spacing_m === null
    ? 'side by side over the whole plate'
    : words`${short(build.spacing_m)} apart, gripped by grooves, paste between`
}

/** The groove of the plate round a tube, a little past half of it, degrees. */
const GRIPPED_deg = Array.from({ length: 15 }, (_, i) => -20 + (220 * i) / 14)

/** Four passages, their spacing marked between two of them. */
function tubesOf({ build }: PlantFacts, top: number): Shape[] {
  const wetted = build.spacing_m === null
  const count = wetted ? 12 : 4
  const pitch = WIDE / count
  const radius = wetted ? 3 : 3.2
  return Array.from({ length: count }, (_, i): Shape[] => {
    const x = LEFT + (i + 0.5) * pitch
    const grip = radius + 0.5
    const around = (turn_deg: number): Spot => [
      x + grip * Math.cos((turn_deg * Math.PI) / 180),
      top + radius - grip * Math.sin((turn_deg * Math.PI) / 180),
    ]
    return wetted
      ? [box([x - pitch / 2 + 0.3, top + 0.6], pitch - 0.6, 6.4, 'line', 'paper')]
      : [path(GRIPPED_deg.map(around), 'thick'), disc([x, top + radius], radius, 'paper', 'line')]
  }).flat()
}

/** Edge profile, clamp, bolt and rail: the module lies on the rail, the clamp holds it down by its edge. */
function fixing(facts: PlantFacts, top: number, y: number, textEnd: number): Shape[] {
  const rail = 7
  const side = LEFT - 0.9
  const from = LEFT - 12
  const bolt = LEFT - 7
  const profile = (inner: number, outer: number): Shape =>
    path(
      [
        [inner, top - 0.7],
        [outer, top - 0.7],
        [outer, y],
        [inner, y],
      ],
      'thick',
    )
  const lead = (spot: Spot, textY: number): Shape =>
    path([spot, [NAMES - 3, textY], [NAMES - 1, textY]], 'thin')
  return [
    profile(LEFT + 4, side),
    profile(LEFT + WIDE - 4, LEFT + WIDE + 0.9),
    box([from, y + 0.6], LEFT + WIDE - from, rail, 'thick', 'paper'),
    label([LEFT + WIDE / 2, y + 5.2], 'rail, on feet'),
    outline(
      [
        [from + 1, y + 0.6],
        [from + 1, y - 0.6],
        [side - 2.2, y - 0.6],
        [side - 2.2, top - 2.4],
        [LEFT + 3, top - 2.4],
        [LEFT + 3, top - 1.2],
        [side - 1, top - 1.2],
        [side - 1, y + 0.6],
      ],
      'line',
      'grey',
    ),
    path(
      [
        [bolt, y - 1.4],
        [bolt, y + rail - 1],
      ],
      'thick',
    ),
    disc([bolt, y - 1.4], 1, 'ink'),
    lead([LEFT + WIDE + 1, y - 1.6], textEnd - 3.4),
    label(
      [NAMES, textEnd - 2.4],
      words`edge profile: flanges ${short(FLANGE_m)}, ${short(edgeInside_m(facts.build), 2)} inside`,
      'start',
    ),
    lead([LEFT + WIDE, y + 4], textEnd + 3),
    label([NAMES, textEnd + 4], 'clamp over the edge profile, bolted to the rail:', 'start'),
    label([NAMES, textEnd + 8], 'four a module; feet go into the structure, sealed', 'start'),
  ]
}
