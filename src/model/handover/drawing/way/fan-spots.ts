import type { WayFacts } from './way-facts.ts'

/** Of more ceiling fans so many are drawn. */
const MOST = 12

/** The middle of a wall fan over the floor, of the room’s height. */
export const WALL_FAN_frac = 0.75

/** Places of wall fans along the left wall, from its back end, m. */
export function wallFanSpots({ ceilingFan, width_m }: WayFacts): number[] {
  if (ceilingFan === null || ceilingFan.ceiling) return []
  const fans = Math.min(ceilingFan.fans, MOST)
  return Array.from({ length: fans }, (_, i) => ((i + 0.5) * width_m) / fans)
}

/** Places of the ceiling fans from the left end of the back wall, m: a grid of equal fields, each fan in the middle of its own. */
export function fanSpots({ ceilingFan, length_m, width_m }: WayFacts): [along_m: number, down_m: number][] {
  if (ceilingFan === null || !ceilingFan.ceiling) return []
  const fans = Math.min(ceilingFan.fans, MOST)
  const rows = Math.max(1, Math.round(Math.sqrt((fans * width_m) / length_m)))
  const columns = Math.ceil(fans / rows)
  return Array.from({ length: fans }, (_, i) => {
    const row = Math.floor(i / columns)
    const inRow = Math.min(columns, fans - row * columns)
    const used = Math.ceil(fans / columns)
    return [((i % columns) + 0.5) * (length_m / inRow), (row + 0.5) * (width_m / used)]
  })
}
