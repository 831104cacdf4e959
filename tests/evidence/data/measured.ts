/**
 * Open data with measured longwave, read here by the test's own few lines (not by the project's readers) and
 * averaged to hours. Missing is NaN.
 */
import { readFileSync } from 'node:fs'
import { dataFile } from '../run.ts'

export interface MeasuredHours {
  readonly latitude_deg: number
  readonly longitude_deg: number
  readonly altitude_m: number
  readonly start_utcMs: number
  readonly hours: number
  readonly airTemp_C: Float64Array
  readonly relativeHumidity_pct: Float64Array
  readonly pressure_Pa: Float64Array
  readonly wind_ms: Float64Array
  readonly global_Wm2: Float64Array
  readonly longwave_Wm2: Float64Array
}
const COLUMNS = [
  'airTemp_C',
  'relativeHumidity_pct',
  'pressure_Pa',
  'wind_ms',
  'global_Wm2',
  'longwave_Wm2',
] as const
type Column = (typeof COLUMNS)[number]
/** One line of a file: when its interval begins and its values in the order of COLUMNS. */
interface Sample {
  readonly utcMs: number
  readonly values: readonly number[]
}
const HOUR_ms = 3_600_000

export const SURFRAD = 'surfrad-slv16001.dat'
export const SHIP = 'ship-tropical-atlantic.txt'
export const ALPINE = 'alpine-winter-47N-9E.txt'

function lines(file: string): number[][] {
  return readFileSync(dataFile(file), 'utf8')
    .split('\n')
    .map((line) => line.trim().split(/\s+/).map(Number))
    .filter((cells) => cells.length > 5 && Number.isFinite(cells[0]))
}

/** San Luis Valley, one winter day under an inversion, 1 min, UTC, −9999.9 missing; longitude printed unsigned. */
export function surfrad(): MeasuredHours {
  const samples = lines(SURFRAD)
    .filter((cells) => cells.length > 40)
    .map((c) => ({
      utcMs: Date.UTC(c[0]!, c[2]! - 1, c[3]!, c[4]!, c[5]!),
      values: [c[38]!, c[40]!, c[46]! * 100, c[42]!, c[8]!, c[16]!].map((v) => (v < -9000 ? NaN : v)),
    }))
  return { latitude_deg: 37.7, longitude_deg: -105.92, altitude_m: 2317, ...hourly(samples) }
}

/** A ship in the tropical Atlantic, 10 min, day of year in UTC from 1.0 = 1 January (2020). */
export function ship(): MeasuredHours {
  const samples = lines(SHIP).map((c) => ({
    utcMs: Date.UTC(2020, 0, 1) + (c[0]! - 1) * 24 * HOUR_ms + 1000,
    values: [c[3]!, c[5]!, c[7]! * 100, c[1]!, c[9]!, c[10]!],
  }))
  return { latitude_deg: 14.5, longitude_deg: -55, altitude_m: 0, ...hourly(samples) }
}

/** Alpine station, October to May, hourly, hour ending in UTC. */
export function alpine(): MeasuredHours {
  const samples = lines(ALPINE).map((c) => ({
    utcMs: Date.UTC(c[0]!, c[1]! - 1, c[2]!, c[3]! - 1),
    values: [c[8]! - 273.15, c[9]!, c[11]!, c[10]!, c[4]!, c[5]!],
  }))
  return { latitude_deg: 47.05, longitude_deg: 8.72, altitude_m: 1200, ...hourly(samples) }
}

function hourly(
  samples: readonly Sample[],
): Record<Column, Float64Array> & { start_utcMs: number; hours: number } {
  const first = Math.floor(Math.min(...samples.slice(0, 50).map((s) => s.utcMs)) / HOUR_ms)
  const hours = Math.floor(samples.at(-1)!.utcMs / HOUR_ms) - first + 1
  const columns = COLUMNS.map(() => new Float64Array(hours))
  const counts = COLUMNS.map(() => new Float64Array(hours))
  for (const { utcMs, values } of samples) {
    const h = Math.floor(utcMs / HOUR_ms) - first
    for (const [k, value] of values.entries()) {
      if (!Number.isFinite(value)) continue
      columns[k]![h]! += value
      counts[k]![h]! += 1
    }
  }
  for (const [k, column] of columns.entries()) column.forEach((sum, h) => (column[h] = sum / counts[k]![h]!))
  return {
    ...Object.fromEntries(COLUMNS.map((name, k) => [name, columns[k]!])),
    start_utcMs: first * HOUR_ms,
    hours,
  } as never
}
