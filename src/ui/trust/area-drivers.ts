import type { ChartConfiguration } from 'chart.js'
import type { UncertaintyResult } from '#model/design/sizing'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import type { Ink } from '#ui/chart/ink.ts'

type Drivers = UncertaintyResult['drivers']

/** Bars of rank correlation with the area: right, more of it needs more area; left, less. */
export function driversConfig(drivers: Drivers, ink: Ink): ChartConfiguration {
  const base = baseOptions(ink)
  return {
    type: 'bar',
    data: {
      labels: drivers.map(({ label }) => label),
      datasets: [
        {
          label: 'Rank correlation with the area',
          data: drivers.map(({ correlation }) => correlation),
          backgroundColor: drivers.map(({ correlation }) => (correlation > 0 ? ink.without : 'transparent')),
          borderColor: drivers.map(({ correlation }) => (correlation > 0 ? ink.without : ink.room)),
          borderWidth: 2,
        },
      ],
    },
    options: {
      ...base,
      indexAxis: 'y',
      scales: {
        x: quantityAxis(ink, '← less area   more area →', { min: -1, max: 1 }),
        y: { ticks: { color: ink.text, autoSkip: false }, grid: { display: false } },
      },
      plugins: { ...base.plugins, legend: { display: false } },
    },
  }
}

export function driversTable(drivers: Drivers): TableOf {
  return {
    caption: 'Uncertain inputs and their rank correlation with the area',
    columns: ['Input', 'Drawn from', 'to', 'Rank correlation with the area'],
    rows: drivers.map(({ label, low, high, correlation }) => [
      label,
      String(Number(low.toPrecision(3))),
      String(Number(high.toPrecision(3))),
      correlation.toFixed(2),
    ]),
  }
}
