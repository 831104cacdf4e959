import { figure, words, type Text } from '#model/basis/words'
import { toScale, type Rule } from '../scales.ts'
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
} from '../shapes.ts'
import { airWay } from './chain.ts'
import { fanSpots, WALL_FAN_frac, wallFanSpots } from './fan-spots.ts'
import { heights, heightsNeed } from './section-heights.ts'
import { beyond_m, machines } from './section-machines.ts'
import type { Paper } from './section-paper.ts'
import { piecesOf, type Piece, type WayFacts } from './way-facts.ts'

const PAPER = { across: 103, down: 66 }
const MARGIN = { left: 30, right: 55, top: 14, bottom: 16 }
/** Pieces of one wall are drawn side by side, so far apart, mm; the first on the wall's line. */
const STEP = 4.4

/** The room cut from front to back: heights of all openings, roof layers, blades and units, and the way of the air; to scale. */
export const waySection = (facts: WayFacts): Drawing => toScale((rule) => sectionAt(facts, rule))

function sectionAt(facts: WayFacts, rule: Rule): Drawing {
  const pieces = piecesOf(facts)
  const behind_m = beyond_m(facts)
  const top_m =
    Math.max(facts.height_m, facts.ceilingFan?.ceiling === true ? facts.ceilingFan.blades_m : 0) + 0.3
  const scale = rule.scaleFor({ across: facts.width_m + behind_m, down: top_m }, PAPER)
  const mm = (length_m: number): number => (1000 * length_m) / scale
  const ground = Math.max(MARGIN.top + mm(top_m), 6 + heightsNeed(facts, pieces))
  const at = (x_m: number, z_m: number): Spot => [MARGIN.left + mm(x_m), ground - mm(z_m)]
  const right = MARGIN.left + mm(facts.width_m + behind_m)
  const paper: Paper = { facts, mm, at }
  return {
    id: 'way-section',
    title: 'The room cut from front to back: heights',
    width: right + MARGIN.right,
    height: ground + MARGIN.bottom,
    scale,
    summary: words`Section of the room, ${figure(facts.width_m, 'span')} from front to back and ${figure(facts.height_m, 'span')} high, with the heights of what is built.`,
    notes: notesOf(facts),
    key: [],
    shapes: [
      path(
        [
          [6, ground],
          [right + 2, ground],
        ],
        'thick',
      ),
      ...skin(paper),
      box(at(0, facts.height_m), mm(facts.width_m), mm(facts.height_m), 'thick'),
      ...wallPieces(paper, pieces, 'front'),
      ...wallPieces(paper, pieces, 'back'),
      ...ceilingFans(paper),
      ...machines(paper, pieces),
      ...airWays(paper, pieces),
      ...heights(paper, pieces, right),
      label([at(0, 0)[0] - 5, ground + 4], 'front', 'end'),
      ...across(at(0, 0), at(facts.width_m, 0), 9, words`${figure(facts.width_m, 'span')}`),
    ],
  }
}

/** Layers outside walls and roof, drawn at least so thick that they are seen, mm. */
function skin({ facts, mm, at }: Paper): Shape[] {
  const [x, y] = at(0, facts.height_m)
  const [w, h] = [mm(facts.width_m), mm(facts.height_m)]
  const wall = facts.wallInsulation === null ? 0 : Math.max(1.2, mm(facts.wallInsulation.thickness_m))
  const roof = facts.roofInsulation === null ? 0 : Math.max(1.2, mm(facts.roofInsulation.thickness_m))
  return [
    ...(wall > 0
      ? [
          box([x - wall, y], wall, h, 'thin', 'grey'),
          box([x + w, y], wall, h, 'thin', 'grey'),
          label([x - wall - 1, y + h - 3], 'I1', 'end', { bold: true }),
        ]
      : []),
    ...(roof > 0
      ? [
          box([x - wall, y - roof], w + 2 * wall, roof, 'thin', 'grey'),
          label([x + 0.3 * w, y - roof - 3], 'R2', 'middle', { bold: true }),
        ]
      : []),
    ...(facts.paint === null
      ? []
      : [
          box([x - wall, y - roof - 1.3], w + 2 * wall, 0.9, 'thin', 'ink'),
          label([x + 0.7 * w, y - roof - 3], 'R1', 'middle', { bold: true }),
        ]),
    ...(facts.sealed
      ? (
          [at(0, 0), at(facts.width_m, 0), at(0, facts.height_m), at(facts.width_m, facts.height_m)] as Spot[]
        ).flatMap((spot, i) => [
          disc(spot, 1.2, 'none'),
          label(
            [spot[0] + (i % 2 === 0 ? 2 : -2), spot[1] + (i < 2 ? -2 : 4)],
            'L',
            i % 2 === 0 ? 'start' : 'end',
          ),
        ])
      : []),
  ]
}

/** Openings and windows of front or back, side by side inwards from the wall's line. */
function wallPieces({ facts, at, mm }: Paper, pieces: readonly Piece[], side: 'front' | 'back'): Shape[] {
  const inward = side === 'front' ? 1 : -1
  const x = at(side === 'front' ? 0 : facts.width_m, 0)[0]
  const mine = pieces.filter((piece) => piece.side === side && (piece.mark[0] !== 'F' || piece.mark === 'F1'))
  return mine.flatMap((piece, i): Shape[] => {
    const middle = x + inward * i * STEP
    const [top, foot] = [at(0, piece.high_m)[1], at(0, piece.low_m)[1]]
    const isUnit = piece.mark === 'A1'
    const deep = isUnit ? 5.4 : 2
    const left = isUnit ? (inward > 0 ? middle : middle - deep) : middle - deep / 2
    const past = mm(facts.shade?.past_m ?? 0)
    return [
      box([left, top], deep, Math.max(foot - top, 1), 'line', piece.made ? 'paper' : 'grey'),
      isUnit
        ? label([left + deep / 2, (top + foot) / 2 + 1], piece.mark, 'middle', { bold: true })
        : onWall(piece, i, facts)
          ? label([x - inward * 2.2, (top + foot) / 2 + 1], piece.mark, inward > 0 ? 'end' : 'start', {
              bold: true,
            })
          : // at the end that lies towards the middle of the room's height
            label([middle, inUpperHalf(piece, facts) ? foot + 3.2 : top - 1], piece.mark, 'middle', {
              bold: piece.made,
            }),
      ...(piece.made || facts.shade === null
        ? []
        : [
            box([x - inward * 3 - 0.4, top - past], 0.8, foot - top + 2 * past, 'thin', 'ink'),
            label(
              // above it where a machine is below
              [x - inward * 4.5, inward < 0 && hasMachine(facts) ? top - past - 1 : foot + past + 3],
              piece.mark.replace('W', 'S'),
              inward > 0 ? 'end' : 'start',
              { bold: true },
            ),
          ]),
    ]
  })
}

/** The first piece of a wall is drawn on its line: its mark is written outside, where no machine is. */
const onWall = (piece: Piece, place: number, facts: WayFacts): boolean =>
  place === 0 && piece.made && (piece.side === 'front' || !hasMachine(facts))

const hasMachine = ({ cooler, conditioner }: WayFacts): boolean => cooler !== null || conditioner !== null

const inUpperHalf = ({ low_m, high_m }: Piece, { height_m }: WayFacts): boolean => low_m + high_m > height_m

function ceilingFans({ facts, at, mm }: Paper): Shape[] {
  const { ceilingFan, height_m } = facts
  if (ceilingFan === null) return []
  if (!ceilingFan.ceiling) {
    return wallFanSpots(facts).flatMap((down_m, i): Shape[] => {
      const spot = at(facts.width_m - down_m, WALL_FAN_frac * height_m)
      return [
        disc(spot, mm(ceilingFan.across_m / 2)),
        label([spot[0], spot[1] + 1], `C${i + 1}`, 'middle', { bold: true }),
      ]
    })
  }
  const places = [...new Set(fanSpots(facts).map(([, down_m]) => facts.width_m - down_m))]
  const first = places[0]!
  const half = mm(ceilingFan.across_m / 2)
  return [
    ...places.flatMap((x_m) => {
      const [x, y] = at(x_m, ceilingFan.blades_m)
      return [
        path([at(x_m, height_m), [x, y]]),
        box([x - half, y - 0.5], 2 * half, 1, 'line', 'ink'),
        label([x + 2, y - 2], 'C1', 'start', { bold: true }),
      ]
    }),
    ...upright(
      at(first, ceilingFan.blades_m),
      at(first, 0),
      half * 0.6,
      words`${figure(ceilingFan.blades_m, 'span')} free`,
    ),
  ]
}

function airWays({ facts, at }: Paper, pieces: readonly Piece[]): Shape[] {
  const pairs: [string, string, boolean][] = [
    ['N1', 'N2', true],
    ['V1', 'F1', true],
    ['D1', 'X1', false],
  ]
  return pairs.flatMap(([from, to, towardsBack], i): Shape[] => {
    const [a, b] = [pieces.find(({ mark }) => mark === from), pieces.find(({ mark }) => mark === to)]
    if (a === undefined || b === undefined) return []
    const side = (share: number): number => (towardsBack ? share : 1 - share) * facts.width_m
    const middle = (piece: Piece): number => (piece.low_m + piece.high_m) / 2
    const low_m = Math.max(0.15, middle(a) - 0.1 * i)
    const end = at(side(0.78), middle(b))
    return [
      airWay([
        at(side(0.22), low_m),
        at(side(0.5), towardsBack ? low_m : 0.5 * low_m),
        at(side(0.6), 0.5 * middle(b)),
        end,
      ]),
      head(end, [towardsBack ? 1 : -1, -0.6]),
    ]
  })
}

function notesOf(facts: WayFacts): Text[] {
  const notes: Text[] = [
    'Openings of one wall lie behind one another and are drawn side by side; marks as in the plan.',
  ]
  const { opening, ceilingFan, cooler } = facts
  if (opening !== null)
    notes.push(
      'Still night: cool air comes in low by N1, warm air leaves high by N2; with wind, from the windward to the lee side. Inner doors open, or an opening of the same area.',
    )
  if (ceilingFan?.ceiling === true)
    notes.push(
      words`Blades at least ${figure(ceilingFan.least_m, 'span')} above the floor, half a blade’s length from walls and lamps.`,
    )
  if (cooler?.direct === true) notes.push('X1 is open whenever E1 runs: without a way out no air comes in.')
  return notes
}
