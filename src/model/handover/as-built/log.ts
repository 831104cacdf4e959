import { stop } from '#model/basis/words'

/**
 * A logger record of the finished panel, one value an hour, index for index with the weather of the same hours. NaN where
 * nothing was logged. Panel temperatures are taken at the panel's own ports.
 */
export interface AsBuiltLog {
  readonly hours: number
  readonly panelIn_C: Float64Array
  readonly panelOut_C: Float64Array
  /** Metered flow; null without a meter: the design flow is then taken while the pump runs. */
  readonly flow_kgs: Float64Array | null
  /** Share of the hour the pump ran; null when not logged. */
  readonly pumpRun_frac: Float64Array | null
  readonly air_C: Float64Array | null
  /** Sensor on the middle of the plate; null without. */
  readonly plate_C: Float64Array | null
  readonly store_C: Float64Array | null
  readonly room_C: Float64Array | null
  /** One sentence: whose logger, whether invented. */
  readonly basis: string
}

/** An hour counts as running when the pump ran at least this share of it. */
const WHOLE_HOUR_FRAC = 0.95
/** Fewest running hours a judgement may rest on: two nights. */
const FEWEST_HOURS = 16

/** Hours with both panel temperatures and the pump running throughout. */
export function runningHours(log: AsBuiltLog): number[] {
  const rows: number[] = []
  for (let hour = 0; hour < log.hours; hour++) {
    const read = Number.isFinite(log.panelIn_C[hour]) && Number.isFinite(log.panelOut_C[hour])
    const flows = log.flow_kgs === null || log.flow_kgs[hour]! > 0
    const pumps = log.pumpRun_frac === null || log.pumpRun_frac[hour]! >= WHOLE_HOUR_FRAC
    if (read && flows && pumps) rows.push(hour)
  }
  return rows
}

/**
 * Checks a log against its weather.
 * @throws ProblemError when it cannot be judged; RangeError for columns of different length
 */
export function checkLog(log: AsBuiltLog, weatherHours: number): void {
  if (log.hours !== weatherHours) {
    throw new RangeError(`log has ${log.hours} hours, the weather ${weatherHours}`)
  }
  for (const [name, column] of Object.entries(log)) {
    if (column instanceof Float64Array && column.length !== log.hours) {
      throw new RangeError(`${name} has ${column.length} values, the log ${log.hours} hours`)
    }
  }
  const rows = runningHours(log)
  if (rows.length < FEWEST_HOURS) {
    throw stop(
      'as-built-too-short',
      `The logger file has ${rows.length} hours with the pump running and both panel temperatures.`,
      `Log at least ${FEWEST_HOURS} such hours, better two weeks.`,
    )
  }
  const wild = rows.find((hour) => outside(log.panelIn_C[hour]!) || outside(log.panelOut_C[hour]!))
  if (wild !== undefined) {
    throw stop(
      'as-built-wild-temperature',
      `The panel temperatures of hour ${wild + 1} are ${log.panelIn_C[wild]} in and ${log.panelOut_C[wild]} out.`,
      'Check the sensor, its unit, and the column it was read from.',
      { line: wild + 1 },
    )
  }
}

function outside(temp_C: number): boolean {
  return temp_C < -40 || temp_C > 110
}
