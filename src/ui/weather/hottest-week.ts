import type { ChartConfiguration } from 'chart.js'
import { STEFAN_BOLTZMANN } from '#model/outdoors/air'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import { hourLineOptions } from '#ui/chart/hour-lines.ts'
import type { Ink } from '#ui/chart/ink.ts'
import { nightBoxes } from '#ui/chart/night-boxes.ts'
import type { ClimateSeries } from '#studies/climate-series.ts'
import { hourLabel } from '#ui/words/calendar.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

const WEEK_H = 168

interface Line {
  readonly label: string
  readonly values: Float64Array
  readonly look: (ink: Ink) => object
}

/** Temperature of a black sky that sends down as much as this one, °C. */
function skyTemp_C(total_Wm2: Float64Array): Float64Array {
  return total_Wm2.map((flux) => (flux / STEFAN_BOLTZMANN) ** 0.25 - 273.15)
}

function linesOf(series: ClimateSeries, harder: ClimateSeries | null): readonly Line[] {
  const lines: Line[] = [
    {
      label: 'Air',
      values: series.weather.airTemp_C,
      look: (ink) => ({ borderColor: ink.outdoor, borderWidth: 3 }),
    },
    {
      label: 'Dew point',
      values: series.weather.dewPoint_C,
      look: (ink) => ({ borderColor: ink.store, borderWidth: 2, borderDash: [2, 3] }),
    },
    {
      label: 'Sky',
      values: skyTemp_C(series.sky.total_Wm2),
      look: (ink) => ({ borderColor: ink.room, borderWidth: 2, borderDash: [9, 4] }),
    },
  ]
  if (harder === null) return lines
  return [
    ...lines,
    {
      label: 'Air, made harder',
      values: harder.weather.airTemp_C,
      look: (ink) => ({ borderColor: ink.without, borderWidth: 1.5 }),
    },
    {
      label: 'Sky, made harder',
      values: skyTemp_C(harder.sky.total_Wm2),
      look: (ink) => ({ borderColor: ink.without, borderWidth: 1.5, borderDash: [9, 4] }),
    },
  ]
}

/** Air, dew point and sky of one week over the hour index, nights shaded. */
export function hotWeekConfig(
  series: ClimateSeries,
  harder: ClimateSeries | null,
  start_h: number,
  temperature: ShownQuantity,
  ink: Ink,
): ChartConfiguration {
  const { weather } = series
  const end_h = Math.min(start_h + WEEK_H, weather.hours)
  const points = (values: Float64Array) =>
    Array.from(values.subarray(start_h, end_h), (value, i) => ({
      x: start_h + i + 0.5,
      y: temperature.toShown(value),
    }))
  return {
    type: 'line',
    data: {
      datasets: linesOf(series, harder).map(({ label, values, look }) => ({
        label,
        data: points(values),
        pointRadius: 0,
        pointStyle: 'line' as const,
        tension: 0.25,
        ...look(ink),
      })),
    },
    options: hourLineOptions({
      clock: weather,
      start_h,
      end_h,
      quantity: temperature,
      ink,
      behind: nightBoxes(series.altitude_deg, start_h, end_h, ink),
    }),
  } as ChartConfiguration
}

/** `Air between 21 and 43 °C, sky down to 4 °C.` */
export function hotWeekSummary(
  { weather, sky }: ClimateSeries,
  start_h: number,
  temperature: ShownQuantity,
): string {
  const air = weather.airTemp_C.subarray(start_h, start_h + WEEK_H)
  const above = skyTemp_C(sky.total_Wm2.subarray(start_h, start_h + WEEK_H))
  return `Air between ${temperature.text(Math.min(...air))} and ${temperature.text(Math.max(...air))}, sky down to ${temperature.text(Math.min(...above))}.`
}

export function hotWeekTable(
  series: ClimateSeries,
  harder: ClimateSeries | null,
  start_h: number,
  temperature: ShownQuantity,
): TableOf {
  const lines = linesOf(series, harder)
  const hours = Math.min(WEEK_H, series.weather.hours - start_h)
  return {
    caption: 'The week hour by hour',
    columns: ['Hour', ...lines.map(({ label }) => `${label}, ${temperature.symbol}`)],
    rows: Array.from({ length: hours }, (_, i) => [
      hourLabel(series.weather, start_h + i),
      ...lines.map(({ values }) => temperature.fixed(values[start_h + i]!, 1)),
    ]),
  }
}
