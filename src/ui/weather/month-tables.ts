import { meansByMonth, meansByMonthAndHour } from '#model/basis/hours'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import type { ClimateSeries } from '#studies/climate-series.ts'
import { clockLabel, monthLabel } from '#ui/words/calendar.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

const DECIMALS = 1
const cell = (quantity: ShownQuantity, value: number | undefined) =>
  value === undefined || Number.isNaN(value) ? '–' : quantity.fixed(value, DECIMALS)

/** Means of all hours, of the nights and of the days, by month. */
export function monthMeansTable(
  { weather, night }: ClimateSeries,
  name: string,
  values: Float64Array,
  quantity: ShownQuantity,
): TableOf {
  const all = meansByMonth(weather, values).mean
  const nights = meansByMonth(weather, values, night).mean
  const days = meansByMonth(
    weather,
    values,
    night.map((dark) => 1 - dark),
  ).mean
  return {
    caption: `${name}: means by month`,
    columns: [
      'Month',
      `All hours, ${quantity.symbol}`,
      `Nights, ${quantity.symbol}`,
      `Days, ${quantity.symbol}`,
    ],
    rows: Array.from(all, (mean, month) => [
      monthLabel(month),
      cell(quantity, mean),
      cell(quantity, nights[month]),
      cell(quantity, days[month]),
    ]),
  }
}

/** Means by hour of the day (rows) and month (columns). */
export function monthHourTable(
  { weather }: ClimateSeries,
  name: string,
  values: Float64Array,
  quantity: ShownQuantity,
): TableOf {
  const { mean } = meansByMonthAndHour(weather, values)
  return {
    caption: `${name} by hour of the day and month, ${quantity.symbol}`,
    columns: [`Hour (${quantity.symbol})`, ...Array.from({ length: 12 }, (_, month) => monthLabel(month))],
    rows: Array.from({ length: 24 }, (_, hour) => [
      clockLabel(hour),
      ...Array.from({ length: 12 }, (_, month) => cell(quantity, mean[month * 24 + hour])),
    ]),
  }
}
