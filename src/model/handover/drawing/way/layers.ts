import type { Text } from '#model/basis/words'
import { box, label, path, type Drawing, type Fill, type Shape } from '../shapes.ts'

const LEFT = 8
const WIDE = 62
const NAMES = LEFT + WIDE + 8
/** Between the names of two layers, mm. */
const PITCH = 5

export interface Layer {
  readonly name: Text
  /** Drawn height, mm. */
  readonly drawn: number
  readonly fill: Fill
  /** How it is drawn inside: slats, mesh, bars or, of two layers, joints that are apart. */
  readonly inside?: 'slats' | 'mesh' | 'bars' | 'joints'
}

interface Stack {
  readonly id: string
  readonly title: string
  /** What is above and below the layers. */
  readonly above: string
  readonly below: string
  readonly layers: readonly Layer[]
  readonly notes: readonly Text[]
}

/** Layers one under the other, each with its name beside it; thicknesses not to scale. */
export function layersDrawing({ id, title, above, below, layers, notes }: Stack): Drawing {
  let y = 6
  const shapes: Shape[] = [label([LEFT + WIDE / 2, 4], above, 'middle', { bold: true })]
  layers.forEach((layer, i) => {
    const textY = 7 + i * PITCH
    const middle = y + layer.drawn / 2
    shapes.push(
      box([LEFT, y], WIDE, layer.drawn, 'line', layer.fill),
      ...insideOf(layer, y, i),
      path(
        [
          [LEFT + WIDE, middle],
          [NAMES - 3, textY],
          [NAMES - 1, textY],
        ],
        'thin',
      ),
      label([NAMES, textY + 1], layer.name, 'start'),
    )
    y += layer.drawn
  })
  shapes.push(label([LEFT + WIDE / 2, y + 4], below, 'middle', { bold: true }))
  return {
    id,
    title,
    width: 182,
    height: Math.max(y + 6, 7 + layers.length * PITCH + 2),
    scale: null,
    summary: `${title}: ${String(layers.length)} layers with their names.`,
    notes,
    key: [],
    shapes,
  }
}

function insideOf({ inside, drawn }: Layer, y: number, i: number): Shape[] {
  const every = (step: number, draw: (x: number) => Shape): Shape[] =>
    Array.from({ length: Math.floor(WIDE / step) - 1 }, (_, n) => draw(LEFT + (n + 1) * step))
  const line = (x: number, lean: number): Shape =>
    path(
      [
        [x - lean, y + 0.6],
        [x + lean, y + drawn - 0.6],
      ],
      'line',
    )
  switch (inside) {
    case 'slats':
      return every(4, (x) => line(x, 1.6))
    case 'mesh':
      return every(1.6, (x) => line(x, 0))
    case 'bars':
      return every(8, (x) => box([x - 0.7, y + 0.5], 1.4, drawn - 1, 'line', 'ink'))
    case 'joints':
      return every(20, (x) =>
        path(
          [
            [x + (i % 2) * 8, y],
            [x + (i % 2) * 8, y + drawn],
          ],
          'line',
        ),
      )
    default:
      return []
  }
}
