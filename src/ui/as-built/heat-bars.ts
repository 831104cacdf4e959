import { HOUR_S } from '#model/basis/hours'
import type { ChartConfiguration } from 'chart.js'
import type { AsBuiltReport } from '#studies/check-as-built.ts'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import type { Ink } from '#ui/chart/ink.ts'
import { dayLabel } from '#ui/words/calendar.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/** Heat given off in the judged hours of one calendar day of the log, J. */
export interface HeatDay {
  readonly label: string
  readonly measured_J: number
  readonly predicted_J: number
  readonly hours: number
}

/** Judged hours summed by calendar day of the site. */
export function heatDays({ result, clock }: AsBuiltReport): readonly HeatDay[] {
  const days = new Map<string, { measured_J: number; predicted_J: number; hours: number }>()
  result.hours.forEach((hour, i) => {
    const label = dayLabel(clock, hour)
    const day = days.get(label) ?? { measured_J: 0, predicted_J: 0, hours: 0 }
    day.measured_J += result.measuredHeat_W[i]! * HOUR_S
    day.predicted_J += result.predictedHeat_W[i]! * HOUR_S
    day.hours += 1
    days.set(label, day)
  })
  return [...days].map(([label, day]) => ({ label, ...day }))
}

/** Measured filled, predicted outlined, side by side for each day. */
export function heatConfig(days: readonly HeatDay[], energy: ShownQuantity, ink: Ink): ChartConfiguration {
  const base = baseOptions(ink)
  const bars = { borderWidth: 2, borderSkipped: false }
  return {
    type: 'bar',
    data: {
      labels: days.map(({ label }) => label),
      datasets: [
        {
          label: 'Measured',
          data: days.map(({ measured_J }) => energy.toShown(measured_J)),
          backgroundColor: ink.room,
          borderColor: ink.room,
          ...bars,
        },
        {
          label: 'Predicted, as designed',
          data: days.map(({ predicted_J }) => energy.toShown(predicted_J)),
          backgroundColor: 'transparent',
          borderColor: ink.text,
          ...bars,
        },
      ],
    },
    options: {
      ...base,
      scales: {
        x: { ticks: { color: ink.soft, maxRotation: 0, autoSkipPadding: 10 }, grid: { display: false } },
        y: quantityAxis(ink, `Heat given off, ${energy.symbol} a day`),
      },
      plugins: {
        ...base.plugins,
        legend: { position: 'bottom', labels: { color: ink.text, boxWidth: 18, padding: 14 } },
      },
    },
  }
}

export function heatTable(days: readonly HeatDay[], energy: ShownQuantity): TableOf {
  return {
    caption: 'Heat given off by day, judged hours only',
    columns: ['Day', 'Hours judged', `Measured, ${energy.symbol}`, `Predicted, ${energy.symbol}`],
    rows: days.map(({ label, hours, measured_J, predicted_J }) => [
      label,
      String(hours),
      energy.fixed(measured_J, 2),
      energy.fixed(predicted_J, 2),
    ]),
  }
}
