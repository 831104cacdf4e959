import type { MapAxes } from './map-axes.ts'
import type { Exceedance } from '#model/design/target'
import type { Candidate } from './size.ts'

/** What the map needs of the stages before it. */
export interface MapTask {
  /** A simulated year of a candidate. */
  readonly yearOf: (candidate: Candidate) => MapYear
  /** Flow an area is run with while the store varies, kg/s m². */
  readonly flow_kgsm2: (area_m2: number) => number
  /** Held while flow varies, m³; of no account where there is no tank. */
  readonly storeVolume_m3: number
}
export interface MapYear extends Exceedance {
  /** Electricity of pump and delivery in the year, J. */
  readonly electric_J: number
}

/** Values over the crossings of the axes, row by row (a row is one store or flow); NaN where not yet simulated. */
export interface DesignMap {
  readonly axes: MapAxes
  /** Every so many columns and rows, and the last of each, are known. */
  readonly stride: number
  readonly simulated: number
  /** Smooth distance from the target in its own unit; ≤ 0: met. */
  readonly measure: Float64Array
  readonly peak_C: Float64Array
  readonly hours_h: Float64Array
  readonly electric_J: Float64Array
}

/** Steps from one simulated column or row to the next, coarse first. */
export const STRIDES = [4, 2, 1] as const

/** Places of an axis that a stride reaches: every so many, and always the last. */
export function reached(length: number, stride: number): number[] {
  const places = Array.from({ length: Math.ceil(length / stride) }, (_, i) => i * stride)
  return places.at(-1) === length - 1 ? places : [...places, length - 1]
}

/**
 * Simulates a year at every crossing of the axes, coarse grid first.
 * @returns an iterator of the share done and, whenever a finer grid is whole, the map so far; the map itself at the end
 * @throws RangeError when an axis has fewer than two marks
 */
export function* designMap(
  task: MapTask,
  axes: MapAxes,
): Generator<{ share: number; map: DesignMap | null }, DesignMap> {
  const [columns, rows] = [axes.area_m2.length, axes.other.length]
  if (columns < 2 || rows < 2)
    throw new RangeError(`design map: ${columns} × ${rows} marks, at least 2 × 2 are needed`)
  const column = (): Float64Array => new Float64Array(columns * rows).fill(NaN)
  const values = { measure: column(), peak_C: column(), hours_h: column(), electric_J: column() }
  let simulated = 0
  for (const stride of STRIDES) {
    for (const row of reached(rows, stride))
      for (const at of reached(columns, stride)) {
        const i = row * columns + at
        if (!Number.isNaN(values.measure[i]!)) continue
        const year = task.yearOf(candidateAt(task, axes, axes.area_m2[at]!, axes.other[row]!))
        values.measure[i] = year.measure
        values.peak_C[i] = year.peak_C
        values.hours_h[i] = year.hours_h
        values.electric_J[i] = year.electric_J
        simulated++
        yield { share: simulated / (columns * rows), map: null }
      }
    yield { share: simulated / (columns * rows), map: { axes, stride, simulated, ...values } }
  }
  return { axes, stride: 1, simulated, ...values }
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
