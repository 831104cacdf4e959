import { Matrix } from 'ml-matrix'
import {
  ERROR_SOURCES,
  THERMOMETER_SD_K,
  THERMOMETER_SHARED_SD_K,
  UNDISTURBED,
  type Disturbance,
} from './reading-errors.ts'
import type { BenchReadings, SurfaceReading } from './reading.ts'
import { boardSetting, shownTemperature_C, type SampleState } from './surface-temperature.ts'
import { benchUnknowns, touches, unknownParameter, type BenchUnknown } from './unknowns.ts'
import { stepAbout, type ErrorBlock, type FitProblem } from '#model/basis/numbers'

/** One row of the fit: a surface read in a moment. */
export interface BenchRow {
  readonly moment: number
  readonly surface: SurfaceReading
}

/** A bench's least-squares problem and what its rows and columns mean. */
export interface BenchFit extends FitProblem {
  readonly unknowns: readonly BenchUnknown[]
  readonly rows: readonly BenchRow[]
}

/** Sets up the fit of field notes. `skip` leaves out rows (surfaces found wet). */
export function benchFit(readings: BenchReadings, skip: (row: BenchRow) => boolean = () => false): BenchFit {
  const unknowns = benchUnknowns(readings)
  const rows = readings.moments
    .flatMap((moment, i) => moment.surfaces.map((surface): BenchRow => ({ moment: i, surface })))
    .filter((row) => !skip(row))
  const board = boardSetting(readings.board)
  const parameters = unknowns.map((unknown) => unknownParameter(unknown, readings.samples))
  const shown = (row: BenchRow, values: readonly number[], disturbance: Disturbance) =>
    shownTemperature_C(
      readings,
      board,
      row.moment,
      row.surface,
      stateOf(unknowns, values, row, readings),
      disturbance,
    )
  return {
    unknowns,
    rows,
    parameters,
    measured: rows.map((row) => row.surface.shown_C),
    predict: (values) => Float64Array.from(rows, (row) => shown(row, values, UNDISTURBED)),
    errorBlocks: (values) => [errorBlock(readings, rows, (row, d) => shown(row, values, d))],
    slopes: (values) =>
      unknowns.map((unknown, k) => {
        const { low, high } = stepAbout(parameters[k]!, values[k]!)
        const at = (row: BenchRow, value: number) =>
          shown(
            row,
            values.map((v, i) => (i === k ? value : v)),
            UNDISTURBED,
          )
        return Float64Array.from(rows, (row) =>
          touches(unknown, row.surface.sample, readings.moments[row.moment]!.wind)
            ? (at(row, high) - at(row, low)) / (high - low)
            : 0,
        )
      }),
  }
}

/** Optics and wind of one row for these parameter values. */
function stateOf(
  unknowns: readonly BenchUnknown[],
  values: readonly number[],
  row: BenchRow,
  readings: BenchReadings,
): SampleState {
  const wind = readings.moments[row.moment]!.wind
  const valueOf = (match: (unknown: BenchUnknown) => boolean) => values[unknowns.findIndex(match)]!
  const { sample } = row.surface
  return {
    solarReflectance_frac: valueOf((u) => u.kind === 'reflectance' && u.sample === sample),
    emittance_frac: valueOf((u) => u.kind === 'emittance' && u.sample === sample),
    windLog: valueOf((u) => u.kind === 'wind' && u.wind === wind),
  }
}

/** Σ = diag(thermometer²) + Σ_k s_k s_kᵀ, s_k the move of every row under one shared error. */
function errorBlock(
  readings: BenchReadings,
  rows: readonly BenchRow[],
  shown: (row: BenchRow, disturbance: Disturbance) => number,
): ErrorBlock {
  const n = rows.length
  const covariance = Matrix.zeros(n, n)
  const base = rows.map((row) => shown(row, UNDISTURBED))
  rows.forEach((row, i) => covariance.set(i, i, THERMOMETER_SD_K[row.surface.thermometer] ** 2))
  const add = (move: readonly number[], together: (i: number, j: number) => boolean) => {
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < n; j++) {
        if (together(i, j)) covariance.set(i, j, covariance.get(i, j) + move[i]! * move[j]!)
      }
    }
  }
  for (const source of ERROR_SOURCES) {
    const move = rows.map((row, i) => {
      const sd = source.sd(readings.moments[row.moment]!)
      return sd === 0 ? 0 : shown(row, { ...UNDISTURBED, [source.of]: sd }) - base[i]!
    })
    add(move, (i, j) => source.shared === 'all' || rows[i]!.moment === rows[j]!.moment)
  }
  const probe = (i: number) => rows[i]!.surface.thermometer
  add(
    rows.map((_, i) => THERMOMETER_SHARED_SD_K[probe(i)]),
    (i, j) => probe(i) === probe(j),
  )
  return { rows: rows.map((_, i) => i), covariance }
}
