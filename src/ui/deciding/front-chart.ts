import type { ChartConfiguration } from 'chart.js'
import type { Combination } from '#studies/decide-trial.ts'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import type { Ink } from '#ui/chart/ink.ts'

/** Cost over the years counted against hours over the limit: those that nothing beats, with and without panels. */
export function frontConfig(front: readonly Combination[], years_y: number, ink: Ink): ChartConfiguration {
  const base = baseOptions(ink)
  const points = (panels: boolean) =>
    front
      .filter(({ panelArea_m2 }) => panelArea_m2 > 0 === panels)
      .map(({ totalCost, hoursOver_h, names }) => ({ x: totalCost, y: hoursOver_h, names }))
  return {
    type: 'scatter',
    data: {
      datasets: [
        { label: 'With panels', data: points(true), backgroundColor: ink.room, pointRadius: 6 },
        {
          label: 'Without panels',
          data: points(false),
          backgroundColor: ink.without,
          pointStyle: 'triangle',
          pointRadius: 6,
        },
      ],
    },
    options: {
      ...base,
      interaction: { mode: 'nearest', intersect: false },
      scales: {
        x: quantityAxis(ink, `cost in ${years_y} years`, { type: 'linear', min: 0 }),
        y: quantityAxis(ink, 'hours over the limit', { beginAtZero: true }),
      },
      plugins: {
        ...base.plugins,
        tooltip: {
          callbacks: {
            label: ({ raw }: { raw: unknown }) => (raw as { names: string[] }).names.join(' + ') || 'nothing',
          },
        },
      },
    },
  }
}

/** The same in numbers, cheapest first. */
export function frontTable(front: readonly Combination[]): TableOf {
  const rows = front.toSorted((a, b) => a.totalCost - b.totalCost)
  return {
    caption: 'Combinations that no other beats, cheapest first',
    columns: ['Measures', 'Panels, m²', 'Hours over', 'Cost'],
    rows: rows.map(({ names, panelArea_m2, hoursOver_h, totalCost }) => [
      names.join(' + ') || 'nothing',
      panelArea_m2.toFixed(1),
      String(Math.round(hoursOver_h)),
      String(Math.round(totalCost)),
    ]),
  }
}
