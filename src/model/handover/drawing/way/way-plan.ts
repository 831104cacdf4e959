import { figure, words, type Text } from '#model/basis/words'
import { toScale, type Rule } from '../scales.ts'
import { northArrow } from '../north.ts'
import { across, box, disc, head, label, upright, type Drawing, type Shape, type Spot } from '../shapes.ts'
import { airWay, chain } from './chain.ts'
import { fanSpots, wallFanSpots } from './fan-spots.ts'
import { INDOOR_m, overfull, piecesOf, placedOn, type Placed, type Side, type WayFacts } from './way-facts.ts'
import { wayKey } from './way-key.ts'

const PAPER = { across: 118, down: 84 }
const MARGIN = { left: 24, right: 30, top: 22, bottom: 26 }
/** A cooler and an outdoor unit, seen from above, and how far off the wall, m (common practice, no source). */
const COOLER_m = { across: 0.9, deep: 0.9, off: 0.15 }
const OUTDOOR_m = { across: 0.8, deep: 0.35, off: 0.2 }
/** Jars on racks so deep, m. */
const RACK_m = 0.3
/** A wall is drawn so thick, mm. */
const WALL = 2.4

/** The room from above with all that is built, its places along the walls and the way of the air; to scale. */
export const wayPlan = (facts: WayFacts): Drawing => toScale((rule) => planAt(facts, rule))

function planAt(facts: WayFacts, rule: Rule): Drawing {
  const scale = rule.scaleFor({ across: facts.length_m, down: facts.width_m }, PAPER)
  const mm = (length_m: number): number => (1000 * length_m) / scale
  const outside = outsideDepth(facts, mm)
  const corner: Spot = [MARGIN.left, MARGIN.top + outside]
  const [w, d] = [mm(facts.length_m), mm(facts.width_m)]
  const pieces = piecesOf(facts)
  const on = (side: Side): Placed[] =>
    placedOn(pieces, side, side === 'front' || side === 'back' ? facts.length_m : facts.width_m)
  const width = Math.max(MARGIN.left + w + MARGIN.right, 90)
  const foot: Spot = [corner[0], corner[1] + d]
  const sides = (['front', 'back', 'left', 'right'] as const).flatMap(on)
  return {
    id: 'way-plan',
    title: 'The room from above: what goes where',
    width,
    height: corner[1] + d + MARGIN.bottom,
    scale,
    summary: words`Plan of the room, ${figure(facts.length_m, 'span')} by ${figure(facts.width_m, 'span')}, with ${String(sides.length)} openings and units in its walls.`,
    notes: notesOf(facts),
    key: wayKey(facts),
    shapes: [
      ...insulationBand(facts, corner, [w, d], mm),
      box(corner, w, d, 'thick'),
      ...jarsOf(facts, corner, [w, d], mm),
      ...fansOf(facts, corner, mm),
      ...sides.flatMap((placed) => pieceShapes(facts, placed, corner, [w, d], mm)),
      ...outdoorUnits(facts, on('back'), corner, mm),
      ...airWays(sides, corner, [w, d], mm),
      ...chain(on('back'), corner, facts.length_m, -(7 + outside), mm),
      ...chain(on('front'), foot, facts.length_m, 7, mm),
      ...across(foot, [foot[0] + w, foot[1]], 20, words`front, ${figure(facts.length_m, 'span')}`),
      ...upright(corner, foot, -14, words`${figure(facts.width_m, 'span')}`),
      ...northArrow(facts.azimuth_deg, [width - 12, 13]),
    ],
  }
}

function outsideDepth(facts: WayFacts, mm: (m: number) => number): number {
  if (facts.cooler !== null) return mm(COOLER_m.off + COOLER_m.deep) + 1
  return facts.conditioner === null ? 0 : mm(OUTDOOR_m.off + OUTDOOR_m.deep) + 1
}

/** Middle of a piece on the wall's line, and the way outwards. */
function spotOf(
  placed: Placed,
  [x, y]: Spot,
  [w, d]: Spot,
  mm: (m: number) => number,
): { at: Spot; out: Spot } {
  const along = mm(placed.at_m + placed.width_m / 2)
  switch (placed.side) {
    case 'front':
      return { at: [x + along, y + d], out: [0, 1] }
    case 'back':
      return { at: [x + along, y], out: [0, -1] }
    case 'left':
      return { at: [x, y + along], out: [-1, 0] }
    case 'right':
      return { at: [x + w, y + along], out: [1, 0] }
  }
}

function pieceShapes(
  facts: WayFacts,
  placed: Placed,
  corner: Spot,
  size: Spot,
  mm: (m: number) => number,
): Shape[] {
  const { at, out } = spotOf(placed, corner, size, mm)
  const long = Math.max(1, mm(placed.width_m))
  const lying = out[0] === 0
  const frame = (off: number, half: number, thick: number, fill: 'paper' | 'ink' | 'grey'): Shape => {
    const [cx, cy] = [at[0] + out[0] * off, at[1] + out[1] * off]
    return lying
      ? box([cx - half, cy - thick / 2], 2 * half, thick, 'line', fill)
      : box([cx - thick / 2, cy - half], thick, 2 * half, 'line', fill)
  }
  const inwards = placed.mark === 'A1' ? mm(INDOOR_m.deep) + 2.5 : 4
  const shapes = [
    placed.mark === 'A1'
      ? frame(-mm(INDOOR_m.deep) / 2, long / 2, mm(INDOOR_m.deep), 'paper')
      : frame(0, long / 2, WALL, placed.made ? 'paper' : 'grey'),
    label([at[0] - out[0] * inwards, at[1] - out[1] * inwards + 1], placed.mark, 'middle', {
      bold: placed.made,
    }),
  ]
  if (placed.made || facts.shade === null) return shapes
  const past = mm(facts.shade.past_m)
  return [
    ...shapes,
    frame(2.2, long / 2 + past, 0.8, 'ink'),
    label(
      lying
        ? [at[0] + long / 2 + past + 3, at[1] + out[1] * 2.6 + 1]
        : [at[0] + out[0] * 5, at[1] + long / 2 + past + 3],
      placed.mark.replace('W', 'S'),
      'middle',
      { bold: true },
    ),
  ]
}

function insulationBand(facts: WayFacts, [x, y]: Spot, [w, d]: Spot, mm: (m: number) => number): Shape[] {
  if (facts.wallInsulation === null) return []
  const t = Math.max(1, mm(facts.wallInsulation.thickness_m))
  return [
    box([x - t, y - t], w + 2 * t, d + 2 * t, 'thin', 'grey'),
    box([x, y], w, d, 'thin', 'paper'),
    label([x + w + t + 1.5, y + d - 2], 'I1', 'start', { bold: true }),
  ]
}

function jarsOf(facts: WayFacts, [x, y]: Spot, [w, d]: Spot, mm: (m: number) => number): Shape[] {
  if (facts.jars === null) return []
  const rack = mm(RACK_m)
  const long = 0.5 * d
  return [x + 1.6, x + w - 1.6 - rack].flatMap((left) => [
    box([left, y + (d - long) / 2], rack, long, 'line', 'pale'),
    label([left + rack / 2, y + d / 2 + 1], 'J1', 'middle', { bold: true }),
  ])
}

function fansOf(facts: WayFacts, [x, y]: Spot, mm: (m: number) => number): Shape[] {
  const { ceilingFan } = facts
  if (ceilingFan === null) return []
  const across = mm(ceilingFan.across_m)
  const onWall = wallFanSpots(facts).flatMap((down_m, i): Shape[] => {
    const at: Spot = [x + WALL / 2, y + mm(down_m)]
    const tip: Spot = [at[0] + 2 + across, at[1]]
    return [
      box([at[0], at[1] - across / 2], 2, across, 'line', 'paper'),
      airWay([[at[0] + 2, at[1]], tip]),
      head(tip, [1, 0]),
      label([at[0] + 3, at[1] - 1.5], `C${i + 1}`, 'start', { bold: true }),
    ]
  })
  const hung = fanSpots(facts).flatMap(([along_m, down_m], i): Shape[] => {
    const at: Spot = [x + mm(along_m), y + mm(down_m)]
    return [
      disc(at, across / 2, 'none', 'hidden'),
      disc(at, 0.8, 'ink'),
      label([at[0] + 2, at[1] - 1.5], `C${i + 1}`, 'start', { bold: true }),
    ]
  })
  return [...onWall, ...hung]
}

/** Cooler or outdoor unit behind the back wall. */
function outdoorUnits(
  facts: WayFacts,
  back: readonly Placed[],
  [x, y]: Spot,
  mm: (m: number) => number,
): Shape[] {
  const behind = (
    mark: string,
    unit: { across: number; deep: number; off: number },
    name: string,
  ): Shape[] => {
    const placed = back.find((one) => one.mark === mark)
    if (placed === undefined) return []
    const middle = x + mm(placed.at_m + placed.width_m / 2)
    const top = y - mm(unit.off + unit.deep)
    const half = mm(placed.width_m) / 2
    const pipe = mark === 'D1' ? half : 0.6
    return [
      box([middle - mm(unit.across) / 2, top], mm(unit.across), mm(unit.deep), 'thick', 'pale'),
      label([middle, top + mm(unit.deep) / 2 + 1], name, 'middle', { bold: true }),
      box([middle - pipe, y - mm(unit.off)], 2 * pipe, mm(unit.off), 'line', 'paper'),
    ]
  }
  return [
    ...(facts.cooler === null ? [] : behind('D1', COOLER_m, 'E1')),
    ...(facts.conditioner === null ? [] : behind('A1', OUTDOOR_m, 'A2')),
  ]
}

/** From where the air comes in to where it leaves. */
function airWays(sides: readonly Placed[], corner: Spot, size: Spot, mm: (m: number) => number): Shape[] {
  const pairs: [string, string][] = [
    ['N1', 'N2'],
    ['V1', 'F1'],
    ['D1', 'X1'],
  ]
  return pairs.flatMap(([from, to]): Shape[] => {
    const [a, b] = [sides.find(({ mark }) => mark === from), sides.find(({ mark }) => mark === to)]
    if (a === undefined || b === undefined) return []
    const [start, end] = [spotOf(a, corner, size, mm), spotOf(b, corner, size, mm)]
    const inFrom: Spot = [start.at[0], start.at[1] - start.out[1] * 6.5]
    const inTo: Spot = [end.at[0], end.at[1] - end.out[1] * 6.5]
    return [airWay([inFrom, inTo]), head(inTo, [inTo[0] - inFrom[0], inTo[1] - inFrom[1]])]
  })
}

function notesOf(facts: WayFacts): Text[] {
  const notes: Text[] = [
    words`The front faces ${figure(facts.azimuth_deg, 'deg')} clockwise from north and is drawn at the foot. Sizes are those of the openings inside the frame; places along the walls are proposed: move them for doors, posts and pipes, but keep what is opposite or diagonal so.`,
  ]
  if (facts.windows.length > 0)
    notes.push(
      'Of windows only the area is known: each is drawn as one square window in its wall. Measure yours before you buy.',
    )
  const full = overfull(facts)
  if (full.length > 0)
    notes.push(
      words`The ${full.join(' and ')} wall is too short for all of it side by side: drawn narrower than it is. Put one above the other, or part of it in the wall beside.`,
    )
  return notes
}
