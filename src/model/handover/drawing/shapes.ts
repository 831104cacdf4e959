import { type Text, wordingText } from '#model/basis/words'

/** A point on paper: to the right, then down, in millimetres. */
export type Spot = readonly [x: number, y: number]

/** How a line is drawn. Supply pipes are drawn through, return pipes dashed: it reads without colour. */
export type Ink = 'thin' | 'line' | 'thick' | 'hidden' | 'supply' | 'return'
/** What fills a closed shape. */
export type Fill = 'none' | 'paper' | 'ink' | 'pale' | 'grey'

/** A plain shape; all lengths are millimetres on paper. */
export type Shape =
  | {
      readonly kind: 'path'
      readonly points: readonly Spot[]
      readonly ink: Ink
      readonly closed: boolean
      readonly fill: Fill
    }
  | {
      readonly kind: 'circle'
      readonly at: Spot
      readonly radius: number
      readonly ink: Ink
      readonly fill: Fill
    }
  | {
      readonly kind: 'text'
      readonly at: Spot
      readonly text: Text
      readonly anchor: 'start' | 'middle' | 'end'
      readonly bold: boolean
      /** Read from below upwards. */
      readonly turned: boolean
    }

/** A drawing of the sheet: shapes on paper, and what is to be said under them. */
export interface Drawing {
  readonly id: string
  readonly title: string
  /** Size on paper, mm. */
  readonly width: number
  readonly height: number
  /** 50 for 1 : 50; null where it is not to scale. */
  readonly scale: number | null
  /** What the drawing shows, for those who cannot see it. */
  readonly summary: Text
  readonly notes: readonly Text[]
  /** Marks in the drawing and what they are. */
  readonly key: readonly { readonly mark: string; readonly what: Text }[]
  readonly shapes: readonly Shape[]
  /** The same for US rules, where it is to scale. */
  readonly us?: Drawing
}

export const path = (points: readonly Spot[], ink: Ink = 'line'): Shape => ({
  kind: 'path',
  points,
  ink,
  closed: false,
  fill: 'none',
})

export const outline = (points: readonly Spot[], ink: Ink = 'line', fill: Fill = 'none'): Shape => ({
  kind: 'path',
  points,
  ink,
  closed: true,
  fill,
})

/** A rectangle by its upper left corner and size. */
export function box(
  [x, y]: Spot,
  width: number,
  height: number,
  ink: Ink = 'line',
  fill: Fill = 'none',
): Shape {
  return outline(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    ink,
    fill,
  )
}

export const disc = (at: Spot, radius: number, fill: Fill = 'paper', ink: Ink = 'line'): Shape => ({
  kind: 'circle',
  at,
  radius,
  ink,
  fill,
})

export function label(
  at: Spot,
  text: Text,
  anchor: 'start' | 'middle' | 'end' = 'middle',
  how: { readonly bold?: boolean; readonly turned?: boolean } = {},
): Shape {
  return { kind: 'text', at, text, anchor, bold: how.bold ?? false, turned: how.turned ?? false }
}

/** Half the length of the stroke that ends a dimension, mm. */
const TICK = 1
/** How far the number is off its dimension line, mm. */
const OFF = 1

/** A letter of a number is about so wide, and it has so much free at its sides, mm. */
const LETTER_WIDE = 1.75
const FREE = 1.5

/** How long a number is in the longer of the two systems of units, mm: where it has no place, it has none in both. */
const longestOf = (text: Text): number =>
  LETTER_WIDE * Math.max(wordingText(text, 'si').length, wordingText(text, 'us').length) + FREE

/** A dimension along the page, `beside` mm below (or, negative, above) the two spots. */
export function across(from: Spot, to: Spot, beside: number, text: Text): Shape[] {
  const y = (beside < 0 ? Math.min(from[1], to[1]) : Math.max(from[1], to[1])) + beside
  return [
    path([from, [from[0], y]], 'thin'),
    path([to, [to[0], y]], 'thin'),
    path(
      [
        [from[0], y],
        [to[0], y],
      ],
      'thin',
    ),
    ...[from[0], to[0]].map((x) => slash([x, y])),
    to[0] - from[0] < longestOf(text)
      ? label([to[0] + 2 * OFF, y - OFF], text, 'start')
      : label([(from[0] + to[0]) / 2, y - OFF], text),
  ]
}

/** A dimension up the page, `beside` mm to the right (or, negative, left) of the two spots. */
export function upright(from: Spot, to: Spot, beside: number, text: Text): Shape[] {
  const x = (beside < 0 ? Math.min(from[0], to[0]) : Math.max(from[0], to[0])) + beside
  return [
    path([from, [x, from[1]]], 'thin'),
    path([to, [x, to[1]]], 'thin'),
    path(
      [
        [x, from[1]],
        [x, to[1]],
      ],
      'thin',
    ),
    ...[from[1], to[1]].map((y) => slash([x, y])),
    Math.abs(to[1] - from[1]) < longestOf(text)
      ? label([x - OFF, Math.max(from[1], to[1]) + 2 * OFF], text, 'end', { turned: true })
      : label([x - OFF, (from[1] + to[1]) / 2], text, 'middle', { turned: true }),
  ]
}

const slash = ([x, y]: Spot): Shape =>
  path(
    [
      [x - TICK, y + TICK],
      [x + TICK, y - TICK],
    ],
    'line',
  )

/** A filled arrow head at `at`, pointing along `way`. */
export function head([x, y]: Spot, [dx, dy]: Spot, size = 2.4): Shape {
  const length = Math.hypot(dx, dy) || 1
  const [ux, uy] = [dx / length, dy / length]
  return outline(
    [
      [x, y],
      [x - size * ux - 0.4 * size * uy, y - size * uy + 0.4 * size * ux],
      [x - size * ux + 0.4 * size * uy, y - size * uy - 0.4 * size * ux],
    ],
    'thin',
    'ink',
  )
}
