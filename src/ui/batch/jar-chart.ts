import type { ChartConfiguration } from 'chart.js'
import type { BatchQuantities } from '#model/panels/paint'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { Ink } from '#ui/chart/ink.ts'

/** Volume of each ingredient in one jar: what stays in the film filled, what dries out outlined. */
export function jarConfig({ lines }: BatchQuantities, ink: Ink): ChartConfiguration {
  const stays = lines.map(({ role }) => role === 'binder' || role === 'solid')
  const base = baseOptions(ink)
  return {
    type: 'bar',
    data: {
      labels: lines.map(({ name }) => name),
      datasets: [
        {
          label: 'In one jar, mL',
          data: lines.map(({ perBatch_mL }) => perBatch_mL),
          backgroundColor: stays.map((s) => (s ? ink.room : 'transparent')),
          borderColor: ink.room,
          borderWidth: 2,
        },
      ],
    },
    options: {
      ...base,
      indexAxis: 'y',
      scales: {
        x: quantityAxis(ink, 'mL in one jar', { min: 0 }),
        y: { ticks: { color: ink.text, autoSkip: false }, grid: { display: false } },
      },
      plugins: { ...base.plugins, legend: { display: false } },
    },
  }
}
