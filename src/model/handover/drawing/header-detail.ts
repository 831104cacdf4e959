import { short } from '#model/basis/words'
import type { PlantFacts } from './facts.ts'
import {
  BACK_SHEET_m,
  crankOf,
  EDGE_WALL_m,
  edgeInside_m,
  FLANGE_m,
  HEADER_IN_m,
  headerOuter_m,
  type Crank,
} from './panel-edge.ts'
import { scaleWords, type Rule } from './scales.ts'
import { across, box, disc, label, outline, upright, type Shape, type Spot } from './shapes.ts'

/** Paper of the cut without its dimensions, mm; free beside it for those. */
const PAPER = { across: 78, down: 40 }
const BESIDE = { left: 10, right: 14, top: 14, bottom: 16 }
/** Straight tube between header and bend, and after it, m; points of a bend that are drawn. */
const STUB_m = 0.01
const STRAIGHT_m = 0.02
const POINTS = 12

/** Paper that its title takes, mm. */
const TITLE = 64

export interface Detail {
  readonly shapes: readonly Shape[]
  readonly width: number
  readonly height: number
  readonly scale: number
}

/** The end of a panel cut along a passage: how it comes into its header under the plate, and the edge profile; to scale. */
export function headerDetail(facts: PlantFacts, [left, top]: Spot, rule: Rule): Detail | null {
  const crank = crankOf(facts)
  if (crank === null) return null
  const { build } = facts
  const [outer_m, tube_m, inside_m] = [headerOuter_m(build), build.passageOuter_m, edgeInside_m(build)]
  const under_m = EDGE_WALL_m + build.plate_m
  const begin_m = EDGE_WALL_m + HEADER_IN_m + outer_m + STUB_m
  const end_m = begin_m + crank.length_m + STRAIGHT_m
  const deep_m = inside_m + 2 * EDGE_WALL_m
  const scale = rule.scaleFor({ across: end_m, down: deep_m }, PAPER)
  const mm = (length_m: number): number => (1000 * length_m) / scale
  const at = (x_m: number, z_m: number): Spot => [left + BESIDE.left + mm(x_m), top + BESIDE.top + mm(z_m)]
  const [low_m, high_m] = [under_m + outer_m / 2, under_m + tube_m / 2]
  const middle: Spot = at(EDGE_WALL_m + HEADER_IN_m + outer_m / 2, low_m)
  const foot_m = EDGE_WALL_m + inside_m
  const first_m = begin_m - STUB_m
  return {
    scale,
    width: Math.max(TITLE, BESIDE.left + mm(end_m) + BESIDE.right),
    height: BESIDE.top + mm(deep_m) + BESIDE.bottom,
    shapes: [
      label([left, top + 3], `end of a panel, cut along a ${facts.passage}`, 'start', { bold: true }),
      label([left, top + 6.4], scaleWords(scale, rule.system), 'start'),
      box(at(EDGE_WALL_m, under_m), mm(end_m - EDGE_WALL_m), mm(inside_m - build.plate_m), 'thin', 'pale'),
      box(
        at(EDGE_WALL_m, EDGE_WALL_m),
        mm(end_m - EDGE_WALL_m),
        Math.max(0.6, mm(build.plate_m)),
        'line',
        'ink',
      ),
      box(at(EDGE_WALL_m, foot_m - BACK_SHEET_m), mm(end_m - EDGE_WALL_m), mm(BACK_SHEET_m), 'line', 'grey'),
      outline(
        tubeOf(crank, { first_m, begin_m, end_m, low_m, high_m, half_m: tube_m / 2 }, at),
        'line',
        'paper',
      ),
      disc(middle, mm(outer_m) / 2, 'paper', 'thick'),
      ...profile(deep_m, at),
      label([middle[0], middle[1] + 1], 'header'),
      label(at(end_m - STRAIGHT_m, high_m + 1.2 * crank.offset_m), facts.passage),
      ...across(at(0, 0), at(FLANGE_m, 0), -4, [short(FLANGE_m)]),
      ...across(at(EDGE_WALL_m, deep_m), at(EDGE_WALL_m + HEADER_IN_m, deep_m), 10, [short(HEADER_IN_m)]),
      ...across(at(begin_m, deep_m), at(begin_m + crank.length_m, deep_m), 5, [short(crank.length_m, 2)]),
      ...upright(at(0, EDGE_WALL_m), at(0, EDGE_WALL_m + inside_m), -3, [short(inside_m, 2)]),
      ...upright(at(end_m, high_m), at(end_m, low_m), 5, [short(crank.offset_m, 2)]),
    ],
  }
}

/** The U of the edge profile, its web to the left. */
function profile(deep_m: number, at: (x_m: number, z_m: number) => Spot): Shape[] {
  const inner_m = EDGE_WALL_m
  return [
    outline(
      [
        at(FLANGE_m, 0),
        at(0, 0),
        at(0, deep_m),
        at(FLANGE_m, deep_m),
        at(FLANGE_m, deep_m - inner_m),
        at(inner_m, deep_m - inner_m),
        at(inner_m, inner_m),
        at(FLANGE_m, inner_m),
      ],
      'line',
      'grey',
    ),
  ]
}

interface Tube {
  readonly first_m: number
  readonly begin_m: number
  readonly end_m: number
  readonly low_m: number
  readonly high_m: number
  readonly half_m: number
}

/** Outline of the tube: level at the header, up by two arcs, level under the plate. */
function tubeOf(crank: Crank, tube: Tube, at: (x_m: number, z_m: number) => Spot): Spot[] {
  const { radius_m, length_m } = crank
  const bend = Array.from({ length: POINTS + 1 }, (_, i): readonly [x: number, z: number, turned: number] => {
    const along_m = (length_m * i) / POINTS
    const near_m = Math.min(along_m, length_m - along_m)
    const rise_m = radius_m - Math.sqrt(radius_m * radius_m - near_m * near_m)
    const z_m = along_m <= length_m / 2 ? tube.low_m - rise_m : tube.high_m + rise_m
    return [tube.begin_m + along_m, z_m, Math.asin(near_m / radius_m)]
  })
  const axis = [[tube.first_m, tube.low_m, 0] as const, ...bend, [tube.end_m, tube.high_m, 0] as const]
  const side = (half_m: number): Spot[] =>
    axis.map(([x_m, z_m, turned]) => at(x_m + half_m * Math.sin(turned), z_m + half_m * Math.cos(turned)))
  return [...side(-tube.half_m), ...side(tube.half_m).reverse()]
}
