import { box, disc, head, label, outline, path, type Shape, type Spot } from './shapes.ts'

/** A valve on a pipe along the page (or, `upright`, up it), with its mark. */
export function valve([x, y]: Spot, mark: string, standing = false): Shape[] {
  const r = 2
  const bow: Spot[] = standing
    ? [
        [x - r, y - r],
        [x + r, y - r],
        [x - r, y + r],
        [x + r, y + r],
      ]
    : [
        [x - r, y - r],
        [x + r, y + r],
        [x + r, y - r],
        [x - r, y + r],
      ]
  return [
    outline(bow, 'line', 'paper'),
    standing ? label([x + 3, y + 1], mark, 'start') : label([x, y - 3], mark),
  ]
}

/** A pump or fan that moves to the left (−1) or right (1). */
export function mover([x, y]: Spot, mark: string, way: -1 | 1): Shape[] {
  return [
    disc([x, y], 3, 'paper'),
    outline(
      [
        [x + 3 * way, y],
        [x - 1.5 * way, y - 2.6],
        [x - 1.5 * way, y + 2.6],
      ],
      'thin',
      'ink',
    ),
    label([x, y - 4], mark),
  ]
}

/** A sensor or gauge: a circle with its mark inside, on a short stem. */
export function sensor([x, y]: Spot, mark: string, up = true): Shape[] {
  const away = up ? -6 : 6
  return [
    path(
      [
        [x, y],
        [x, y + 0.5 * away],
      ],
      'thin',
    ),
    disc([x, y + away], 3, 'paper'),
    label([x, y + away + 1], mark),
  ]
}

/** Something with a name in a frame. */
export function unit([x, y]: Spot, width: number, height: number, mark: string): Shape[] {
  return [box([x, y], width, height, 'line', 'paper'), label([x + width / 2, y + height / 2 + 1], mark)]
}

/** An arrow head in the middle of a run, on its line. */
export function flowing(at: Spot, way: Spot): Shape {
  return head([at[0] + 1.2 * Math.sign(way[0]), at[1] + 1.2 * Math.sign(way[1])], way)
}
