import { figure, words, type Text } from '#model/basis/words'
import { across, label, path, type Shape, type Spot } from '../shapes.ts'
import type { Placed } from './way-facts.ts'

/** A number lies along its dimension where that is longer than this, else it is turned, mm. */
const NARROW = 20

/** What was made in a wall along the page, measured in a chain from corner to corner, `beside` mm off it. */
export function chain(
  placed: readonly Placed[],
  corner: Spot,
  wall_m: number,
  beside: number,
  mm: (length_m: number) => number,
): Shape[] {
  const made = placed.filter((one) => one.made)
  if (made.length === 0) return []
  const ends_m = [0, ...made.flatMap(({ at_m, width_m }) => [at_m, at_m + width_m]), wall_m].map(toCentimetre)
  const y = corner[1] + beside
  return ends_m.slice(1).flatMap((to_m, i): Shape[] => {
    const from_m = ends_m[i]!
    if (to_m - from_m < 1e-6) return []
    const [from, to] = [corner[0] + mm(from_m), corner[0] + mm(to_m)]
    const text = words`${figure(to_m - from_m, 'span', to_m - from_m < 9.995 ? 3 : 4)}`
    return to - from < NARROW
      ? [
          ...across([from, corner[1]], [to, corner[1]], beside, '').filter(isLine),
          turned([(from + to) / 2 + 1, y], beside, text),
        ]
      : across([from, corner[1]], [to, corner[1]], beside, text)
  })
}

/** Ends are rounded, not the pieces between them: so the pieces add up to the wall. */
const toCentimetre = (length_m: number): number => Math.round(100 * length_m) / 100

const isLine = ({ kind }: Shape): boolean => kind !== 'text'

/** Beyond the dimension, read from below upwards. */
const turned = ([x, y]: Spot, beside: number, text: Text): Shape =>
  beside < 0
    ? label([x, y - 1.5], text, 'start', { turned: true })
    : label([x, y + 1.5], text, 'end', { turned: true })

/** Air on its way, dashed, with an arrow head. */
export const airWay = (points: readonly Spot[]): Shape => path(points, 'hidden')
