import { stop } from '#model/basis/words'
import type { PlaceMonths } from './months.ts'

/** The columns of the table of months: names, units as people write them, and what a value may be. */
export const MONTH_COLUMNS = [
  { name: 'airTemp_C', label: 'mean temperature', unit: '°C', perUnit: 1, least: -70, most: 50, digits: 1 },
  { name: 'dailyRange_K', label: 'daily range', unit: 'K', perUnit: 1, least: 0.5, most: 35, digits: 1 },
  {
    name: 'humidity_frac',
    label: 'relative humidity',
    unit: '%',
    perUnit: 100,
    least: 5,
    most: 100,
    digits: 0,
  },
  {
    name: 'sunshine_frac',
    label: 'share of sunshine',
    unit: '%',
    perUnit: 100,
    least: 0,
    most: 100,
    digits: 0,
  },
  { name: 'wind_ms', label: 'wind', unit: 'm/s', perUnit: 1, least: 0.3, most: 25, digits: 1 },
] as const
export type MonthColumn = (typeof MONTH_COLUMNS)[number]['name']

export const MONTH_NAMES = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const

/** A value of the user's own in place of the held one, in SI; month 0 is January. */
export interface OwnMonth {
  readonly column: MonthColumn
  readonly month: number
  readonly value: number
}

/** The same, with the value it takes the place of. */
export interface ChangedMonth extends OwnMonth {
  readonly held: number
}

/** Values closer than half a last digit are the same. */
const sameAs = (a: number, b: number, { perUnit, digits }: (typeof MONTH_COLUMNS)[number]): boolean =>
  Math.abs(a - b) * perUnit < 0.5 * 10 ** -digits

const columnOf = (name: MonthColumn): (typeof MONTH_COLUMNS)[number] =>
  MONTH_COLUMNS.find((column) => column.name === name)!

/** @throws ProblemError for a value that no climate has, naming month and column */
export function checkOwnMonth({ column, month, value }: OwnMonth): void {
  const { label, unit, perUnit, least, most } = columnOf(column)
  const shown = value * perUnit
  if (shown >= least - 1e-9 && shown <= most + 1e-9) return
  throw stop(
    'month-out-of-range',
    `${MONTH_NAMES[month]}: ${label} is ${shown} ${unit}.`,
    `Give a number from ${least} to ${most} ${unit}.`,
    { field: `${MONTH_NAMES[month]}, ${label}` },
  )
}

/** The months with the user's own values in them, and which differ from those held. @throws ProblemError for a value out of range */
export function withOwnMonths(
  held: PlaceMonths,
  own: readonly OwnMonth[],
): { readonly months: PlaceMonths; readonly changed: readonly ChangedMonth[] } {
  const months: Record<MonthColumn, number[]> = {
    airTemp_C: [...held.airTemp_C],
    dailyRange_K: [...held.dailyRange_K],
    humidity_frac: [...held.humidity_frac],
    sunshine_frac: [...held.sunshine_frac],
    wind_ms: [...held.wind_ms],
  }
  const changed: ChangedMonth[] = []
  for (const one of own) {
    checkOwnMonth(one)
    const before = held[one.column][one.month]!
    if (sameAs(one.value, before, columnOf(one.column))) continue
    months[one.column][one.month] = one.value
    changed.push({ ...one, held: before })
  }
  return { months, changed }
}

/** One change as people read it: "July mean temperature 24.5 °C instead of 23.7". */
export function monthChangeText({ column, month, value, held }: ChangedMonth): string {
  const { label, unit, perUnit, digits } = columnOf(column)
  const shown = (si: number): string => (si * perUnit).toFixed(digits).replace('-', '−')
  return `${MONTH_NAMES[month]} ${label} ${shown(value)} ${unit} instead of ${shown(held)}`
}
