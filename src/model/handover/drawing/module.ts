import { figure, short, words, type Text } from '#model/basis/words'
import { MODULE_GAP_m } from '#model/panels/loop'
import { FIXING_INSET_frac, type PlantFacts } from './facts.ts'
import { headerDetail } from './header-detail.ts'
import { crankOf, HEADER_IN_m } from './panel-edge.ts'
import { toScale, type Rule } from './scales.ts'
import {
  across,
  box,
  disc,
  head,
  label,
  path,
  upright,
  type Drawing,
  type Shape,
  type Spot,
} from './shapes.ts'
import { sensor } from './symbols.ts'

const PAPER = { across: 82, down: 63 }
const MARGIN = { left: 22, right: 22, top: 9, bottom: 10 }
/** Widest drawing, and between panel and detail, mm. */
const WIDEST = 186
const APART = 2

/** One panel seen through its plate: headers, passages with their spacing, fixings and where S1 goes; to scale. */
export const modulePlan = (facts: PlantFacts): Drawing => toScale((rule) => planAt(facts, rule))

function planAt(facts: PlantFacts, rule: Rule): Drawing {
  const { moduleLength_m, moduleWidth_m, build } = facts
  const scale = rule.scaleFor({ across: moduleWidth_m, down: moduleLength_m }, PAPER)
  const mm = (length_m: number): number => (1000 * length_m) / scale
  const [x, y, w, l] = [MARGIN.left, MARGIN.top, mm(moduleWidth_m), mm(moduleLength_m)]
  const header = Math.max(1.2, mm(build.header_m))
  const stub = mm(MODULE_GAP_m / 2)
  const pipe = (top: number): Shape => box([x - stub, top], w + 2 * stub, header, 'line', 'paper')
  const [low, high] = [y + l - mm(HEADER_IN_m) - header, y + mm(HEADER_IN_m)]
  const inset = FIXING_INSET_frac * Math.min(w, l)
  const size = { width: x + w + MARGIN.right, height: y + l + MARGIN.bottom }
  const detail = detailOf(facts, size, rule)
  return {
    id: 'module',
    title: 'One panel seen through its plate',
    width: Math.max(size.width, detail.right, 90),
    height: Math.max(size.height, detail.foot),
    scale,
    summary: words`One panel of ${figure(moduleLength_m, 'span')} by ${figure(moduleWidth_m, 'span')} with its headers and ${facts.passage}s.`,
    notes: notesOf(facts),
    key: [
      {
        mark: '●',
        what: words`clamp on the edge profile, ${short(FIXING_INSET_frac * Math.min(moduleWidth_m, moduleLength_m))} from its corner`,
      },
      { mark: 'S1', what: 'in one top panel, under the plate, with a hatch in foam and back sheet' },
    ],
    shapes: [
      box([x, y], w, l, 'thick', 'pale'),
      ...passagesOf(facts, { x, w, from: high + header, to: low }, mm),
      pipe(high),
      pipe(low),
      head([x - stub, low + header / 2], [1, 0], 2),
      label([x - stub - 3, low + header / 2 + 1], 'in', 'end'),
      head([x + w + stub + 2, high + header / 2], [1, 0], 2),
      label([x + w + stub + 3, high + header / 2 + 1], 'out', 'start'),
      ...[x, x + w].flatMap((cx) =>
        [y + inset, y + l - inset].map((cy) => disc([cx, cy], 0.7, 'ink', 'thin')),
      ),
      ...sensor([x + w / 2, y + l / 2 + 6], 'S1'),
      ...dimensions(facts, [x, y], mm),
      ...detail.shapes,
    ],
  }
}

/** The end of the panel cut along a passage, at the side of the panel where there is room, else below it. */
function detailOf(
  facts: PlantFacts,
  size: { readonly width: number; readonly height: number },
  rule: Rule,
): { readonly shapes: readonly Shape[]; readonly right: number; readonly foot: number } {
  const drawnAt = (spot: Spot) => headerDetail(facts, spot, rule)
  const beside: Spot = [size.width + APART, APART]
  const tried = drawnAt(beside)
  if (tried === null) return { shapes: [], right: 0, foot: 0 }
  const [left, top] = beside[0] + tried.width <= WIDEST ? beside : ([APART, size.height + APART] as const)
  const { shapes, width, height } = drawnAt([left, top])!
  return { shapes, right: left + width, foot: top + height }
}

/** Middles of the passages, m from the left edge, evenly about the middle. */
function places({ moduleWidth_m, build }: PlantFacts): number[] {
  const { passages, spacing_m, passageOuter_m } = build
  const pitch_m = spacing_m ?? passageOuter_m
  return Array.from({ length: passages }, (_, i) => moduleWidth_m / 2 + (i - (passages - 1) / 2) * pitch_m)
}

interface Inside {
  readonly x: number
  readonly w: number
  readonly from: number
  readonly to: number
}

function passagesOf(facts: PlantFacts, { x, w, from, to }: Inside, mm: (m: number) => number): Shape[] {
  if (facts.build.passages > 1)
    return places(facts).map((at_m) =>
      path(
        [
          [x + mm(at_m), from],
          [x + mm(at_m), to],
        ],
        'line',
      ),
    )
  const pitch = mm(facts.build.spacing_m ?? facts.build.passageOuter_m)
  const runs = Math.max(1, Math.floor(w / pitch))
  const left = x + (w - (runs - 1) * pitch) / 2
  const turn = Math.min(4, (to - from) / 6)
  const points = Array.from({ length: runs }, (_, i): Spot[] => {
    const at = left + i * pitch
    const first: Spot = [at, i === 0 ? to : to - turn]
    const last: Spot = [at, i === runs - 1 ? from : from + turn]
    return i % 2 === 0 ? [first, last] : [[at, from + turn], i === runs - 1 ? [at, from] : [at, to - turn]]
  }).flat()
  return [path(points, 'line')]
}

function dimensions(facts: PlantFacts, [x, y]: Spot, mm: (m: number) => number): Shape[] {
  const { moduleLength_m, moduleWidth_m, build } = facts
  const [w, l] = [mm(moduleWidth_m), mm(moduleLength_m)]
  const [first, second] = places(facts)
  return [
    ...across([x, y + l], [x + w, y + l], 8, words`${figure(moduleWidth_m, 'span')}`),
    ...upright([x + w, y], [x + w, y + l], 14, words`${figure(moduleLength_m, 'span')}`),
    ...(build.passages > 1 && second !== undefined && build.spacing_m !== null
      ? [
          ...across([x, y], [x + mm(first!), y], -3, words`${short(first!)}`).slice(0, -1),
          label([x - 2, y - 2], words`${short(first!)}`, 'end'),
          ...across([x + mm(first!), y], [x + mm(second), y], -3, words`${short(build.spacing_m)}`),
        ]
      : []),
  ]
}

function notesOf(facts: PlantFacts): Text[] {
  const { build, passage } = facts
  const many =
    build.passages > 1
      ? words`${String(build.passages)} ${passage}s from header to header, alike on both sides of the middle.`
      : words`One ${passage} from header to header, in bends as it comes.`
  return [
    many,
    ...crankNotes(facts),
    words`Headers run across both ends and past the module by ${short(MODULE_GAP_m / 2)} at each side${facts.liquid ? ', collar of the union counted in' : ''}, through notches in the edge profile${facts.liquid ? ' as wide as the socket of the union, which is inside it' : ''}. In: lower left; out: upper right; the other two ends of a row have caps.`,
  ]
}

/** How a passage comes into the header, which lies under the plate as it does and is wider. */
function crankNotes(facts: PlantFacts): Text[] {
  const crank = crankOf(facts)
  if (crank === null) return []
  const { build, passage } = facts
  return [
    words`Each ${passage} is cranked, the plate is not cut: ${short(crank.offset_m, 2)} away from the plate over ${short(crank.length_m, 2)}, two bends of ${short(crank.radius_m, 2)} to the middle of the tube, then square into the middle of the header’s side by a hole of ${figure(build.passageOuter_m, 'tubeOuter')}; foam cut out. The contact lost is within the field factor.`,
  ]
}
