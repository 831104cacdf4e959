import type { ChartConfiguration } from 'chart.js'
import type { AsBuiltReport } from '#studies/check-as-built.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import { hourLineOptions } from '#ui/chart/hour-lines.ts'
import type { Ink } from '#ui/chart/ink.ts'
import { dayLabel, hourLabel } from '#ui/words/calendar.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/** Hours in sight at once. */
export const WINDOW_H = 168

function seriesOf({ result, panelIn_C, air_C }: AsBuiltReport) {
  return [
    { label: 'Outdoors', values: air_C },
    { label: 'Into the panel', values: panelIn_C },
    { label: 'Out, measured', values: result.measuredOut_C },
    { label: 'Out, as designed', values: result.predictedOut_C },
    { label: 'Out, as explained', values: result.explainedOut_C },
  ]
}

function styles(ink: Ink): readonly object[] {
  return [
    { borderColor: ink.outdoor, borderWidth: 1.2, pointRadius: 0 },
    { borderColor: ink.without, borderWidth: 1.8, borderDash: [12, 3, 2, 3], pointRadius: 0 },
    { borderColor: ink.room, borderWidth: 3.2, pointRadius: 0 },
    { borderColor: ink.text, borderWidth: 2, borderDash: [8, 4], pointRadius: 0 },
    { borderColor: ink.store, borderWidth: 2, borderDash: [2, 3], pointRadius: 0 },
  ]
}

/** Positions of the judged hours inside the window, in order. */
function inWindow({ result }: AsBuiltReport, start_h: number): number[] {
  return [...result.hours.keys()].filter((i) => {
    const hour = result.hours[i]!
    return hour >= start_h && hour < start_h + WINDOW_H
  })
}

/** Hourly lines of one week; the line breaks where the pump was off. */
export function temperatureConfig(
  report: AsBuiltReport,
  start_h: number,
  temperature: ShownQuantity,
  ink: Ink,
): ChartConfiguration {
  const look = styles(ink)
  const { hours } = report.result
  const last = hours.at(-1)! + 1
  const rows = inWindow(report, start_h)
  return {
    type: 'line',
    data: {
      datasets: seriesOf(report).map(({ label, values }, s) => ({
        label,
        data: rows.flatMap((i) => {
          const point = { x: hours[i]! + 0.5, y: temperature.toShown(values[i]!) }
          const broken = i > 0 && hours[i]! > hours[i - 1]! + 1
          return broken ? [{ x: hours[i]! - 0.5, y: NaN }, point] : [point]
        }),
        pointStyle: 'line' as const,
        ...look[s],
      })),
    },
    options: hourLineOptions({
      clock: report.clock,
      start_h,
      end_h: Math.min(start_h + WINDOW_H, Math.ceil(last / 24) * 24),
      quantity: temperature,
      ink,
    }),
  } as ChartConfiguration
}

export function temperatureTable(
  report: AsBuiltReport,
  start_h: number,
  temperature: ShownQuantity,
): TableOf {
  const series = seriesOf(report)
  return {
    caption: `Hourly temperatures, week from ${dayLabel(report.clock, start_h)}`,
    columns: ['Hour from', ...series.map(({ label }) => `${label}, ${temperature.symbol}`)],
    rows: inWindow(report, start_h).map((i) => [
      hourLabel(report.clock, report.result.hours[i]!),
      ...series.map(({ values }) => temperature.fixed(values[i]!, 1)),
    ]),
  }
}
