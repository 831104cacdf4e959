import type { Exceedance } from '#model/design/target'
import type { MapAxes } from './map-axes.ts'
import { besideZero, mended, placesOnScale, readThroughKnots, type Knots, type Sheet } from './map-reading.ts'

/** Knots along an axis at first, and how many more each time the reading between them is not good enough. */
const FIRST_KNOTS = 7
const FINER = 1.6
/** A reading is good enough while no simulated crossing that it was not made from lies further from it than so much, K of the hottest hour. */
const GOOD_K = 0.2
/** How far a map read between simulated crossings was off at those it was not made from. */
export interface MapMiss {
  readonly looks: number
  readonly peak_K: number
  readonly hours_h: number
}

/** What a map of many crossings is made from and shows. */
export interface ReadMap {
  readonly known: Uint8Array
  readonly measure: Float64Array
  readonly peak_C: Float64Array
  readonly hours_h: Float64Array
  /** Null where every crossing is simulated. */
  readonly miss: MapMiss | null
}

/**
 * A map of many crossings from few simulated ones: a grid of knots, every crossing beside the contour of the target, and some
 * between to see how far the reading is off; with more knots where it is off too far. The contour runs between simulated
 * crossings only.
 * @returns an iterator of crossings simulated so far and, once there is a first reading, the map
 */
export function* readMap(
  { area_m2, other }: MapAxes,
  run: (column: number, row: number) => Exceedance,
): Generator<{ simulated: number; map: ReadMap | null }, ReadMap> {
  const [columns, rows] = [area_m2.length, other.length]
  const size = columns * rows
  const column = (): Float64Array => new Float64Array(size).fill(NaN)
  const values = { measure: column(), peak_C: column(), hours_h: column() }
  const known = new Uint8Array(size)
  let simulated = 0
  function* simulate(places: readonly number[]): Generator<{ simulated: number; map: null }> {
    for (const i of places) {
      if (known[i] === 1) continue
      const { measure, peak_C, hours_h } = run(i % columns, Math.floor(i / columns))
      values.measure[i] = measure
      values.peak_C[i] = peak_C
      values.hours_h[i] = hours_h
      known[i] = 1
      simulated++
      yield { simulated, map: null }
    }
  }
  for (let count = FIRST_KNOTS; ; count *= FINER) {
    const [x, y] = [area_m2.map(Math.sqrt), other.map(Math.log)]
    const knots: Knots = {
      columns: placesOnScale(x, Math.round(count)),
      rows: placesOnScale(y, Math.round(count)),
      x,
      y,
    }
    const atKnots = knots.rows.flatMap((row) => knots.columns.map((at) => row * columns + at))
    yield* simulate(atKnots)
    const sheet = (of: Float64Array): Sheet => ({ columns, rows, values: of, known })
    const read = {
      measure: readThroughKnots(sheet(values.measure), knots),
      peak_C: readThroughKnots(sheet(values.peak_C), knots),
      hours_h: readThroughKnots(sheet(values.hours_h), knots),
    }
    const shown = (): ReadMap => ({
      known,
      measure: mended(sheet(values.measure), read.measure),
      peak_C: mended(sheet(values.peak_C), read.peak_C),
      hours_h: mended(sheet(values.hours_h), read.hours_h).map((hours) => Math.max(0, hours)),
      miss: simulated === size ? null : missOf(known, atKnots, values, read),
    })
    yield { simulated, map: shown() }
    yield* simulate(
      gapsOf(knots.rows).flatMap((row) => gapsOf(knots.columns).map((at) => row * columns + at)),
    )
    for (;;) {
      const beside = besideZero(sheet(values.measure), mended(sheet(values.measure), read.measure))
      if (beside.length === 0) break
      yield* simulate(beside)
    }
    const map = shown()
    if (map.miss === null || map.miss.peak_K <= GOOD_K) return map
    yield { simulated, map }
  }
}

/** Half way between the first two knots, the two in the middle and the last two. */
function gapsOf(knots: readonly number[]): number[] {
  const middle = Math.floor(knots.length / 2)
  const pairs = [1, middle, knots.length - 1].map((i) => [knots[i - 1]!, knots[i]!] as const)
  return pairs.map(([from, to]) => Math.floor((from + to) / 2))
}

/** The largest differences at the simulated crossings that the reading was not made from. */
function missOf(
  known: Uint8Array,
  atKnots: readonly number[],
  values: { readonly peak_C: Float64Array; readonly hours_h: Float64Array },
  read: { readonly peak_C: Float64Array; readonly hours_h: Float64Array },
): MapMiss {
  const made = new Set(atKnots)
  const left = Array.from(known.keys()).filter((i) => known[i] === 1 && !made.has(i))
  const worst = (of: Float64Array, from: Float64Array): number =>
    left.reduce((most, i) => Math.max(most, Math.abs(of[i]! - from[i]!)), 0)
  return {
    looks: left.length,
    peak_K: worst(values.peak_C, read.peak_C),
    hours_h: worst(values.hours_h, read.hours_h),
  }
}
