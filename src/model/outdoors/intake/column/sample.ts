import { HOUR_MS } from '#model/basis/hours'
import { sunAt } from '#model/outdoors/sun'
import { withoutFill } from '../hourly-series.ts'
import type { Site } from '#model/outdoors/weather'
import type { RawTable } from '../table/raw.ts'

/** Up to this many rows all are looked at; of longer tables one an hour. */
const MOST_ROWS = 9000

/** Every column at about one row an hour, for guessing by physics. */
export interface Sample {
  /** By column index; NaN for fill values and text. */
  readonly columns: readonly Float64Array[]
  /** Time of day of each sampled row, 0 to `perDay` − 1. */
  readonly slot: Int32Array
  readonly perDay: number
  /** Sampled row an hour earlier and a day earlier, −1 where there is none. */
  readonly hourBefore: Int32Array
  readonly dayBefore: Int32Array
  /** Sine of the sun's height, 0 at night; null when place or time are unknown. */
  readonly sunSine: Float64Array | null
}

/**
 * Samples a table for the guess.
 * @param middles_utcMs middles of the rows' periods, UTC; null when time is unknown (rows then count as hourly)
 */
export function sampleTable(
  raw: RawTable,
  missing: readonly number[],
  step_h: number,
  middles_utcMs: Float64Array | null,
  site: Partial<Site>,
): Sample {
  const step = step_h > 0 ? step_h : 1
  const stride = raw.rows <= MOST_ROWS ? 1 : Math.max(1, Math.round(1 / step))
  const rows = Math.min(MOST_ROWS, Math.ceil(raw.rows / stride))
  const columns = raw.columns.map((column) => {
    const every = new Float64Array(rows)
    for (let i = 0; i < rows; i += 1) every[i] = column.values[i * stride]!
    return column.kind === 'number' ? withoutFill(every, missing) : every.fill(NaN)
  })
  const spacing_ms = step * stride * HOUR_MS
  const ms = Float64Array.from({ length: rows }, (_, i) => middles_utcMs?.[i * stride] ?? i * spacing_ms)
  const perDay = Math.max(1, Math.round((24 * HOUR_MS) / spacing_ms))
  const places = new Map<number, number>()
  ms.forEach((moment, i) => places.set(Math.round(moment / spacing_ms), i))
  const before = (lag_h: number): Int32Array =>
    Int32Array.from(ms, (moment) => places.get(Math.round((moment - lag_h * HOUR_MS) / spacing_ms)) ?? -1)
  return {
    ...{ columns, perDay, hourBefore: before(Math.max(1, step * stride)), dayBefore: before(24) },
    slot: Int32Array.from(
      ms,
      (moment) => ((Math.floor(moment / spacing_ms + 1e-6) % perDay) + perDay) % perDay || 0,
    ),
    sunSine: middles_utcMs === null ? null : sineOfSun(ms, site),
  }
}

function sineOfSun(
  utc_ms: Float64Array,
  { latitude_deg, longitude_deg }: Partial<Site>,
): Float64Array | null {
  if (latitude_deg === undefined || longitude_deg === undefined) return null
  return utc_ms.map((moment) => {
    if (moment !== moment) return 0
    const { altitude_deg } = sunAt(moment, latitude_deg, longitude_deg)
    return Math.max(0, Math.sin((altitude_deg * Math.PI) / 180))
  })
}
