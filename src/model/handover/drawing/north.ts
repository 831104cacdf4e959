import { head, label, path, type Shape, type Spot } from './shapes.ts'

/** An arrow to the north, where down the page is the way of `azimuth_deg`. */
export function northArrow(azimuth_deg: number, [x, y]: Spot): Shape[] {
  const turn = (azimuth_deg * Math.PI) / 180
  const way: Spot = [Math.sin(turn), Math.cos(turn)]
  const tip: Spot = [x + 6 * way[0], y + 6 * way[1]]
  return [
    path([[x - 5 * way[0], y - 5 * way[1]], tip]),
    head(tip, way, 3),
    label([x + 9.5 * way[0], y + 9.5 * way[1] + 1], 'N', 'middle', { bold: true }),
  ]
}
