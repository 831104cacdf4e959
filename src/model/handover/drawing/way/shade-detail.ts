import { figure, short, words } from '#model/basis/words'
import { toScale, type Rule } from '../scales.ts'
import { across, box, label, path, upright, type Drawing, type Shape } from '../shapes.ts'
import type { WayFacts } from './way-facts.ts'

const PAPER = { across: 110, down: 40 }
const LEFT = 16
const TOP = 12
/** Between two windows, and for the cut at the right, mm. */
const GAP = 14
const CUT = 44
/** Air between shade and glass, m (common practice, no source). */
const AIR_m = 0.1

/** Each window with its outside shade from outdoors, to scale, and a cut through one. */
export const shadeDetail = (facts: WayFacts): Drawing => toScale((rule) => shadesAt(facts, rule))

function shadesAt({ windows, shade }: WayFacts, rule: Rule): Drawing {
  const past_m = shade!.past_m
  const sizes = windows.map(({ width_m, height_m }) => ({
    w: width_m + 2 * past_m,
    h: height_m + 2 * past_m,
  }))
  const tallest_m = Math.max(...sizes.map(({ h }) => h))
  const scale = rule.scaleFor(
    { across: sizes.reduce((sum, { w }) => sum + w, 0), down: tallest_m },
    { ...PAPER, across: PAPER.across - GAP * (windows.length - 1) },
  )
  const mm = (length_m: number): number => (1000 * length_m) / scale
  const foot = TOP + mm(tallest_m)
  let x = LEFT
  const shapes = windows.flatMap(({ width_m, height_m }, i): Shape[] => {
    const { w, h } = sizes[i]!
    const left = x
    x += mm(w) + GAP
    const top = foot - mm(h)
    return [
      box([left, top], mm(w), mm(h), 'thick', 'pale'),
      box([left + mm(past_m), top + mm(past_m)], mm(width_m), mm(height_m), 'hidden'),
      label([left + mm(w) / 2, top + mm(h) / 2 + 1], `S${i + 1}`, 'middle', { bold: true }),
      ...across([left, foot], [left + mm(w), foot], 6, words`${figure(w, 'span')}`),
      ...upright([left, top], [left, foot], -4, words`${figure(h, 'span')}`),
    ]
  })
  return {
    id: 'way-shade',
    title: 'Outside shades, seen from outdoors, and one cut through',
    width: x + CUT + 24,
    height: foot + 14,
    scale,
    summary: words`${String(windows.length)} outside shades with their sizes and a cut through one.`,
    notes: [
      words`Dashed: the glass, drawn as one square window of the area given. Measure yours: the shade is ${short(past_m)} wider on each side and higher above and below. It lets through at most ${shade!.sunLeft} of the sun. The cut is not to scale.`,
    ],
    key: windows.map(({ side, faces_deg }, i) => ({
      mark: `S${i + 1}`,
      what: words`${side} window, faces ${figure(faces_deg, 'deg')}`,
    })),
    shapes: [...shapes, ...cut(x + 14, TOP, Math.max(foot, TOP + 30))],
  }
}

/** Wall, glass and shade from the side: outdoors at the left. */
function cut(x: number, top: number, foot: number): Shape[] {
  const wall = x + 10
  const names = wall + 8
  const named = (y: number, from: number, text: Parameters<typeof label>[1]): Shape[] => [
    path(
      [
        [from, y],
        [names - 1, y],
      ],
      'thin',
    ),
    label([names, y + 1], text, 'start'),
  ]
  return [
    box([wall, top - 4], 5, 8, 'line', 'grey'),
    box([wall, foot - 4], 5, 6, 'line', 'grey'),
    box([wall + 2, top + 4], 1, foot - top - 8, 'line', 'paper'),
    box([wall - 6, top - 1], 1.2, foot - top - 1, 'thick', 'ink'),
    path([
      [wall - 5, top + 1],
      [wall, top + 1],
    ]),
    path([
      [wall - 5, foot - 2.5],
      [wall, foot - 2.5],
    ]),
    ...named(top, wall + 5, 'wall'),
    ...named(top + 8, wall - 4.8, 'shade'),
    ...named(top + 14, wall + 3, 'glass'),
    ...named(foot - 2.5, wall, 'bracket'),
    ...across([wall - 5, foot], [wall, foot], 6, words`${short(AIR_m)} of air`),
    label([wall - 7, top - 3], 'outdoors', 'end'),
  ]
}
