import type { LayoutDrawing, Point } from '#model/handover/sheet'

/** `M0 1L2 3` in metres. */
export function pathOf(points: readonly Point[]): string {
  return points.map(([x_m, y_m], i) => `${i === 0 ? 'M' : 'L'}${round(x_m)} ${round(y_m)}`).join('')
}

/** Size of a letter and of a thin line, m: the same on paper whatever the size of the field. */
export function inkOf({ width_m, height_m }: LayoutDrawing): { letter_m: number; line_m: number } {
  const across_m = Math.max(width_m, 1.15 * height_m)
  return { letter_m: across_m / 30, line_m: across_m / 420 }
}

/** An arrow in the middle of the longest stretch of a run, pointing the way it flows. */
export function arrowOf(points: readonly Point[], size_m: number): string {
  const lengths_m = points.slice(1).map((to, i) => Math.hypot(to[0] - points[i]![0], to[1] - points[i]![1]))
  const longest = lengths_m.indexOf(Math.max(...lengths_m))
  const [from, to] = [points[longest]!, points[longest + 1]!]
  const length_m = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1
  const [dx, dy] = [(to[0] - from[0]) / length_m, (to[1] - from[1]) / length_m]
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2]
  const corner = (along: number, aside: number): Point => [
    x + size_m * (along * dx - aside * dy),
    y + size_m * (along * dy + aside * dx),
  ]
  return `${pathOf([corner(-0.5, 0.45), corner(0.6, 0), corner(-0.5, -0.45)])}Z`
}

const round = (value: number): number => Math.round(value * 1000) / 1000
