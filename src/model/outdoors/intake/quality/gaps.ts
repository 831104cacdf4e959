import { QUANTITIES, type Quantity } from '../column/quantity.ts'
import type { ProblemList } from '../problems.ts'
import type { Gap } from './report.ts'
import { nameHour, type HourlySeries, type HourNames } from './series.ts'

/** Longest gap bridged by a straight line, and longest taken from neighbouring days, h. */
export const INTERPOLATED_H = 3
export const FROM_DAYS_H = 48

/** The quantities a record cannot do without, and so the ones that are filled. */
const FILLED: readonly Quantity[] = [
  'airTemp',
  'dewPoint',
  'relativeHumidity',
  'pressure',
  'windSpeed',
  'globalHorizontal',
  'directNormal',
  'diffuseHorizontal',
  'directHorizontal',
  'opaqueCloud',
  'totalCloud',
]

export interface FillResult {
  readonly series: HourlySeries
  readonly gaps: readonly Gap[]
}

/**
 * Fills gaps: up to 3 h by a straight line, up to 48 h by the mean of the nearest days at the same hour, longer
 * ones the same way only when the user accepts it; otherwise a problem with the dates. Columns without any value
 * are left out. Measured longwave is never filled: the model takes its place.
 */
export function fillGaps(
  series: HourlySeries,
  names: HourNames,
  acceptLongGaps: boolean,
  problems: ProblemList,
): FillResult {
  const filled: HourlySeries = { ...series }
  const gaps: Gap[] = []
  for (const quantity of FILLED) {
    const values = series[quantity]
    if (values === undefined) continue
    if (values.every(Number.isNaN)) {
      delete filled[quantity]
      continue
    }
    const copy = values.slice()
    for (const { first, hours } of runsOfNaN(values, names.wholeYear)) {
      const how = fillOne(copy, values, first, hours, names.wholeYear, acceptLongGaps)
      gaps.push({
        quantity,
        firstHour: first,
        hours,
        how,
        sentence: sentence(quantity, first, hours, how, names),
      })
    }
    filled[quantity] = copy
  }
  const kept = dropReplaceable(filled, gaps, problems)
  refuseLongGaps(kept, names, problems)
  return { series: filled, gaps: kept }
}

/** What takes the place of a column that has gaps too long to fill: null when a formula always does. */
const REPLACED_BY: Partial<Record<Quantity, Quantity | null>> = {
  opaqueCloud: null,
  totalCloud: null,
  pressure: null,
  dewPoint: 'relativeHumidity',
  relativeHumidity: 'dewPoint',
  directNormal: 'globalHorizontal',
  diffuseHorizontal: 'globalHorizontal',
  directHorizontal: 'globalHorizontal',
}

/** Leaves out columns with gaps too long to fill where they can be worked out from others, and says so. */
function dropReplaceable(series: HourlySeries, gaps: readonly Gap[], problems: ProblemList): readonly Gap[] {
  const broken = new Set(gaps.filter(({ how }) => how === 'left').map(({ quantity }) => quantity))
  const dropped = new Set<Quantity>()
  for (const quantity of broken) {
    const instead = REPLACED_BY[quantity]
    const whole =
      instead === null || (instead !== undefined && series[instead] !== undefined && !broken.has(instead))
    if (!whole) continue
    delete series[quantity]
    dropped.add(quantity)
    problems.warn(
      'weather-column-left-out',
      `${QUANTITIES[quantity].label} is missing for more than ${FROM_DAYS_H} h at a stretch; the column is left out and worked out instead.`,
      'Accept long gaps if the column should be kept and filled from the nearest days.',
      { column: QUANTITIES[quantity].label },
    )
  }
  return gaps.filter(({ quantity }) => !dropped.has(quantity))
}

interface Run {
  readonly first: number
  readonly hours: number
}

function runsOfNaN(values: Float64Array, cyclic: boolean): Run[] {
  const runs: Run[] = []
  let first = -1
  for (let i = 0; i <= values.length; i += 1) {
    const missing = i < values.length && Number.isNaN(values[i]!)
    if (missing && first < 0) first = i
    if (!missing && first >= 0) {
      runs.push({ first, hours: i - first })
      first = -1
    }
  }
  const last = runs.at(-1)
  if (cyclic && runs.length > 1 && runs[0]!.first === 0 && last!.first + last!.hours === values.length) {
    runs[0] = { first: last!.first, hours: last!.hours + runs[0]!.hours }
    runs.pop()
  }
  return runs
}

function fillOne(
  target: Float64Array,
  source: Float64Array,
  first: number,
  hours: number,
  cyclic: boolean,
  acceptLongGaps: boolean,
): Gap['how'] {
  const n = source.length
  const at = (i: number): number => (cyclic ? source[((i % n) + n) % n]! : (source[i] ?? NaN))
  const before = at(first - 1)
  const after = at(first + hours)
  if (hours <= INTERPOLATED_H && before === before && after === after) {
    for (let k = 0; k < hours; k += 1) {
      target[(first + k) % n] = before + ((after - before) * (k + 1)) / (hours + 1)
    }
    return 'interpolated'
  }
  if (hours > FROM_DAYS_H && !acceptLongGaps) return 'left'
  for (let k = 0; k < hours; k += 1) target[(first + k) % n] = sameHourNearby(at, first + k, n, before, after)
  return 'neighbouring days'
}

/** Mean of the nearest earlier and later days that have a value at this hour, else the nearest value of all. */
function sameHourNearby(
  at: (i: number) => number,
  hour: number,
  n: number,
  before: number,
  after: number,
): number {
  let earlier = NaN
  let later = NaN
  for (let day = 1; day * 24 < n && (earlier !== earlier || later !== later); day += 1) {
    if (earlier !== earlier) earlier = at(hour - day * 24)
    if (later !== later) later = at(hour + day * 24)
  }
  if (earlier === earlier && later === later) return (earlier + later) / 2
  if (earlier === earlier) return earlier
  if (later === later) return later
  return before === before ? before : after
}

function sentence(
  quantity: Quantity,
  first: number,
  hours: number,
  how: Gap['how'],
  names: HourNames,
): string {
  const what = `${QUANTITIES[quantity].label}: ${hours} h missing from ${nameHour(names, first)}`
  if (how === 'interpolated') return `${what}, bridged by a straight line.`
  return how === 'left'
    ? `${what}, too long to fill.`
    : `${what}, taken from neighbouring days at the same hour.`
}

function refuseLongGaps(gaps: readonly Gap[], names: HourNames, problems: ProblemList): void {
  const long = gaps.filter((gap) => gap.how === 'left')
  for (const quantity of new Set(long.map((gap) => gap.quantity))) {
    const own = long.filter((gap) => gap.quantity === quantity)
    const dates = own
      .slice(0, 5)
      .map((gap) => `${nameHour(names, gap.firstHour)} (${gap.hours} h)`)
      .join(', ')
    problems.error(
      'weather-long-gap',
      `${QUANTITIES[quantity].label} is missing for more than ${FROM_DAYS_H} h: ${dates}${own.length > 5 ? ` and ${own.length - 5} more` : ''}.`,
      'Find the missing hours, or accept that they are filled from the nearest days.',
      { column: QUANTITIES[quantity].label },
    )
  }
}
