import type { MapAxes } from './map-axes.ts'
import type { Exceedance } from '#model/design/target'
import type { Candidate } from './task.ts'
import { electricOver, MOST_YEARS, type ReadElectric } from './map-electric.ts'
import { readMap, type MapMiss, type ReadMap } from './read-map.ts'

/** What the map needs of the stages before it. */
export interface MapTask {
  /** How a candidate does against the target. */
  readonly judgedAt: (candidate: Candidate) => Exceedance
  /** Electricity of pump and delivery in a candidate's year, J; null where it has no price. */
  readonly electric_J: ((candidate: Candidate) => number) | null
  /** Flow an area is run with while the store varies, kg/s m². */
  readonly flow_kgsm2: (area_m2: number) => number
  /** Held while flow varies, m³; of no account where there is no tank. */
  readonly storeVolume_m3: number
}

/** Values over the crossings of the axes, row by row (a row is one store or flow); NaN where not yet known. */
export interface DesignMap {
  readonly axes: MapAxes
  /** Every so many columns and rows, and the last of each, are known. */
  readonly stride: number
  readonly simulated: number
  /** 1 where a crossing is simulated; others are read between those. */
  readonly known: Uint8Array
  /** How far readings were off at crossings that were simulated to see it; null where none is read. */
  readonly miss: MapMiss | null
  /** Smooth distance from the target in its own unit; ≤ 0: met. */
  readonly measure: Float64Array
  readonly peak_C: Float64Array
  readonly hours_h: Float64Array
  /** Read between some whole years, and the most it was off at others, J; null where none is read. */
  readonly electric_J: Float64Array
  readonly electricMiss_J: number | null
}

/** A map of so many crossings is simulated at each of them. */
export const WHOLE_CROSSINGS = 200

/** Steps from one simulated column or row to the next, coarse first. */
export const STRIDES = [4, 2, 1] as const

/** Places of an axis that a stride reaches: every so many, and always the last. */
export function reached(length: number, stride: number): number[] {
  const places = Array.from({ length: Math.ceil(length / stride) }, (_, i) => i * stride)
  return places.at(-1) === length - 1 ? places : [...places, length - 1]
}

type Drawing = Generator<{ share: number; map: DesignMap | null }, DesignMap>

/**
 * The map over the crossings of the axes: up to `WHOLE_CROSSINGS` of them simulated each, coarse grid first; more of them read
 * between simulated ones, with every one beside the contour of the target simulated. The year's electricity is read between
 * whole years.
 * @returns an iterator of the share done and, whenever there is more to show, the map so far; the map itself at the end
 * @throws RangeError when an axis has fewer than two marks
 */
export function* designMap(task: MapTask, axes: MapAxes): Drawing {
  const [columns, rows] = [axes.area_m2.length, axes.other.length]
  if (columns < 2 || rows < 2)
    throw new RangeError(`design map: ${columns} × ${rows} marks, at least 2 × 2 are needed`)
  const at = (column: number, row: number): Candidate =>
    candidateAt(task, axes, axes.area_m2[column]!, axes.other[row]!)
  const { electric_J } = task
  const electric =
    electric_J === null
      ? free(columns * rows)
      : yield* yearsFirst(electricOver(axes, (...place) => electric_J(at(...place))))
  const judgedAt = (column: number, row: number): Exceedance => task.judgedAt(at(column, row))
  const few = columns * rows > WHOLE_CROSSINGS
  const drawing = few ? fromFew(axes, judgedAt, electric) : whole(axes, judgedAt, electric)
  const before = electric_J === null ? 0 : YEARS_SHARE
  for (;;) {
    const next = drawing.next()
    if (next.done === true) return next.value
    yield { ...next.value, share: before + (1 - before) * next.value.share }
  }
}

/** The share of the work that the years of the electricity are, about. */
const YEARS_SHARE = 0.3

function* yearsFirst(
  years: Generator<number, ReadElectric>,
): Generator<{ share: number; map: null }, ReadElectric> {
  for (;;) {
    const next = years.next()
    if (next.done === true) return next.value
    yield { share: YEARS_SHARE * Math.min(1, next.value / MOST_YEARS), map: null }
  }
}

const free = (size: number): ReadElectric => ({ electric_J: new Float64Array(size), electricMiss_J: null })

function* whole(
  axes: MapAxes,
  judgedAt: (column: number, row: number) => Exceedance,
  electric: ReadElectric,
): Drawing {
  const [columns, rows] = [axes.area_m2.length, axes.other.length]
  const size = columns * rows
  const column = (): Float64Array => new Float64Array(size).fill(NaN)
  const known = new Uint8Array(size)
  const values = { known, measure: column(), peak_C: column(), hours_h: column(), ...electric, miss: null }
  let simulated = 0
  for (const stride of STRIDES) {
    for (const row of reached(rows, stride))
      for (const at of reached(columns, stride)) {
        const i = row * columns + at
        if (known[i] === 1) continue
        const found = judgedAt(at, row)
        values.measure[i] = found.measure
        values.peak_C[i] = found.peak_C
        values.hours_h[i] = found.hours_h
        known[i] = 1
        simulated++
        yield { share: simulated / size, map: null }
      }
    yield { share: simulated / size, map: { axes, stride, simulated, ...values } }
  }
  return { axes, stride: 1, simulated, ...values }
}

/** Runs that a map read between simulated crossings takes as a rule, for the share done. */
const USUAL_RUNS = 150

function* fromFew(
  axes: MapAxes,
  judgedAt: (column: number, row: number) => Exceedance,
  electric: ReadElectric,
): Drawing {
  const drawing = readMap(axes, judgedAt)
  let simulated = 0
  const shown = (map: ReadMap): DesignMap => ({ axes, stride: 1, simulated, ...map, ...electric })
  for (;;) {
    const next = drawing.next()
    if (next.done === true) return shown(next.value)
    simulated = next.value.simulated
    const { map } = next.value
    yield { share: simulated / (simulated + USUAL_RUNS / 4), map: map === null ? null : shown(map) }
  }
}

/** The design at a place of the map. */
export function candidateAt(
  held: Pick<MapTask, 'flow_kgsm2' | 'storeVolume_m3'>,
  { kind }: MapAxes,
  area_m2: number,
  other: number,
): Candidate {
  return kind === 'store'
    ? { area_m2, storeVolume_m3: other, flow_kgsm2: held.flow_kgsm2(area_m2) }
    : { area_m2, storeVolume_m3: held.storeVolume_m3, flow_kgsm2: other }
}

/** A place of the map as it is adopted or priced: a map of stores leaves its flow to be chosen at the place's own area. */
export function placeAt(around: Candidate, axes: MapAxes, area_m2: number, other: number): Candidate {
  return candidateAt({ ...around, flow_kgsm2: () => around.flow_kgsm2 }, axes, area_m2, other)
}
