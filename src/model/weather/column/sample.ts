import { sunAt } from '#model/sun/position.ts'
import { withoutFill } from '#model/weather/hourly-series.ts'
import type { Site } from '#model/weather/record.ts'
import type { RawTable } from '#model/weather/table/raw.ts'

/** At most this many rows are looked at. */
const MOST_ROWS = 9000

/** Every column at about one row an hour, for guessing by physics. */
export interface Sample {
  /** By column index; NaN for fill values and text. */
  readonly columns: readonly Float64Array[]
  /** Rows in a day. */
  readonly perDay: number
  /** Sine of the sun's height, 0 at night; null when place or time are unknown. */
  readonly sunSine: Float64Array | null
}

/**
 * Takes about one row an hour.
 * @param middles_utcMs middles of the rows' periods, UTC; null when time is unknown (rows count as hourly)
 */
export function sampleTable(
  raw: RawTable,
  missing: readonly number[],
  step_h: number,
  middles_utcMs: Float64Array | null,
  site: Partial<Site>,
): Sample {
  const stride =
    step_h > 0 && raw.rows * step_h > 72
      ? Math.max(1, Math.round(1 / step_h))
      : Math.max(1, Math.round(0.25 / (step_h || 1)))
  const rows = Math.min(MOST_ROWS, Math.ceil(raw.rows / stride))
  const columns = raw.columns.map((column) => {
    const every = new Float64Array(rows)
    for (let i = 0; i < rows; i += 1) every[i] = column.values[i * stride]!
    return column.kind === 'number' ? withoutFill(every, missing) : every.fill(NaN)
  })
  const perDay = Math.max(1, Math.round(24 / ((step_h || 1) * stride)))
  const { latitude_deg, longitude_deg } = site
  if (middles_utcMs === null || latitude_deg === undefined || longitude_deg === undefined) {
    return { columns, perDay, sunSine: null }
  }
  const sunSine = new Float64Array(rows)
  for (let i = 0; i < rows; i += 1) {
    const utc_ms = middles_utcMs[i * stride]!
    if (utc_ms !== utc_ms) continue
    const altitude = sunAt(utc_ms, latitude_deg, longitude_deg).altitude_deg
    sunSine[i] = Math.max(0, Math.sin((altitude * Math.PI) / 180))
  }
  return { columns, perDay, sunSine }
}
