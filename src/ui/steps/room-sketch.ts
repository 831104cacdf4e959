import type { Scenario } from '#model/design/scenario'

/** An edge of the room that can be drawn longer or shorter. */
export type Edge = 'length_m' | 'width_m' | 'height_m'
type Room = Pick<Scenario['room'], Edge | 'windowFront_m2'>
interface Point {
  readonly x: number
  readonly y: number
}

/** The picture is 420 × 260; depth runs to the upper right, foreshortened. */
const ORIGIN = { x: 66, y: 236 }
const SPAN = { x: 310, y: 195 }
const DEPTH = { x: 0.5, y: 0.34 }

/** Picture units a metre takes so that the whole box is in sight. */
export function scaleOf({ length_m, width_m, height_m }: Room): number {
  return Math.min(SPAN.x / (length_m + DEPTH.x * width_m), SPAN.y / (height_m + DEPTH.y * width_m))
}

/** The three faces, the window and the handles of the box. */
export function seenFrom({ length_m, width_m, height_m, windowFront_m2 }: Room, scale: number) {
  const at = (x_m: number, y_m: number, z_m: number): Point => ({
    x: ORIGIN.x + scale * (x_m + DEPTH.x * y_m),
    y: ORIGIN.y - scale * (z_m + DEPTH.y * y_m),
  })
  const face = (...points: Point[]) => points.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ')
  const [l, w, h] = [length_m, width_m, height_m]
  const right = at(l, 0, h / 2)
  const back = at(l, w, 0)
  const top = at(l / 2, 0, h)
  return {
    front: face(at(0, 0, 0), at(l, 0, 0), at(l, 0, h), at(0, 0, h)),
    side: face(at(l, 0, 0), at(l, w, 0), at(l, w, h), at(l, 0, h)),
    top: face(at(0, 0, h), at(l, 0, h), at(l, w, h), at(0, w, h)),
    window: windowOf(windowFront_m2, l, h, scale, at),
    handles: {
      length_m: { ...right, tx: at(l / 2, 0, 0).x, ty: ORIGIN.y + 18, anchor: 'middle' },
      width_m: { ...back, tx: at(l, w / 2, 0).x + 14, ty: at(l, w / 2, 0).y + 14, anchor: 'start' },
      height_m: { ...top, tx: ORIGIN.x - 8, ty: at(0, 0, h / 2).y - 4, anchor: 'end' },
    } as const,
  }
}

/** A window of its true area on the front, wider than high, never larger than the wall. */
function windowOf(
  area_m2: number,
  length_m: number,
  height_m: number,
  scale: number,
  at: (x_m: number, y_m: number, z_m: number) => Point,
) {
  if (!(area_m2 > 0)) return null
  const high_m = Math.min(0.8 * height_m, Math.max(Math.sqrt(area_m2 / 1.4), area_m2 / (0.9 * length_m)))
  const wide_m = Math.min(area_m2 / high_m, 0.95 * length_m)
  const { x, y } = at((length_m - wide_m) / 2, 0, 0.55 * height_m + high_m / 2)
  return { x, y, width: scale * wide_m, height: scale * high_m }
}

/** Length of an edge, m, whose handle is pulled to a point of the picture. */
export function sizeAlong(edge: Edge, { x, y }: Point, room: Room, scale: number): number {
  switch (edge) {
    case 'length_m':
      return (x - ORIGIN.x) / scale
    case 'height_m':
      return (ORIGIN.y - y) / scale
    case 'width_m':
      return Math.max(0, ((x - ORIGIN.x) / scale - room.length_m) / DEPTH.x)
  }
}
