import { count, figure, words } from '#model/basis/words'
import { hungRise_m, type Frame } from './frame.ts'
import { partOf, type Part } from './part.ts'
import type { Plant } from './plant.ts'

/** Posts lower than this are braced by their base plate alone, m (common practice, no source). */
const UNBRACED_m = 0.3
/** A bay along a rail has two diagonals, a cross (common practice, no source). */
const CROSS = 2
const BOLTS_BRACE = 2

/** Diagonals between posts: number and length of those along the rails and of those from low to high rail. */
export interface Braces {
  /** Bays between two posts of a rail that have a cross. */
  readonly bays: number
  /** The longest diagonal of a cross, m. */
  readonly along_m: number
  /** Pairs of a low and a high post with one diagonal. */
  readonly pairs: number
  readonly across_m: number
}

export function bracesOf(plant: Plant, frame: Frame): Braces {
  const rise_m = hungRise_m(plant)
  const level_m = frame.apart_m * Math.cos((plant.answer.scenario.panel.tilt_deg * Math.PI) / 180)
  const braced = frame.feet_m.flatMap(([low_m, high_m], row) => {
    const bays = frame.feetPerRail[row]! - 1
    const span_m = frame.rails_m[row]! / bays
    const posts = [low_m, high_m].map((post_m) => post_m + rise_m).filter((post_m) => post_m > UNBRACED_m)
    return posts.length === 0
      ? []
      : [{ bays: bays * posts.length, pairs: bays + 1, span_m, post_m: Math.max(...posts) }]
  })
  return {
    bays: braced.reduce((sum, { bays }) => sum + bays, 0),
    along_m: Math.max(0, ...braced.map(({ span_m, post_m }) => Math.hypot(span_m, post_m))),
    pairs: braced.reduce((sum, { pairs }) => sum + pairs, 0),
    across_m: Math.max(0, ...braced.map(({ post_m }) => Math.hypot(level_m, post_m))),
  }
}

/** Diagonals of posts, with their bolts; nothing where the posts are low. */
export function braceParts(plant: Plant, frame: Frame): Part[] {
  const part = partOf('Frame')
  const { bays, along_m, pairs, across_m } = bracesOf(plant, frame)
  const braces = CROSS * bays + pairs
  return [
    part(
      figure(CROSS * bays * along_m + pairs * across_m, 'm'),
      words`braces between the posts, flat steel 30 × 4 mm (1 1/4 × 3/16 in), hot-dip galvanised, not drawn: a cross in each of ${count(bays)} bays along the rails (${count(CROSS * bays)} of ${figure(along_m, 'span')} at most), and one from the foot of the low post to the head of the high one, or in its place an angle, at each of ${count(pairs)} pairs (${figure(across_m, 'span')} at most); the engineer checks number and size`,
    ),
    part(
      count(BOLTS_BRACE * braces),
      words`bolts M8 (5/16 in) with washers and lock nut, stainless steel, two a brace`,
    ),
  ]
}
