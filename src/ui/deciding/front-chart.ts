import type { ChartConfiguration } from 'chart.js'
import { J_PER_KWH } from '#model/basis/hours'
import type { Combination } from '#studies/decide-trial.ts'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import type { Ink } from '#ui/chart/ink.ts'

/** What cost is set against. */
export const FRONT_AXES = {
  hours: { label: 'hours over the limit', of: (one: Combination) => one.hoursOver_h },
  electricity: { label: 'electricity a year, kWh', of: (one: Combination) => one.electric_J / J_PER_KWH },
  water: { label: 'water a year, m³', of: (one: Combination) => one.water_m3 },
} as const
export type FrontAxis = keyof typeof FRONT_AXES

/** Cost over the years counted against hours over the limit: those that nothing beats, with and without panels. */
export function frontConfig(
  front: readonly Combination[],
  years_y: number,
  axis: FrontAxis,
  ink: Ink,
): ChartConfiguration {
  const { label: axisLabel, of } = FRONT_AXES[axis]
  const base = baseOptions(ink)
  const points = (panels: boolean) =>
    front
      .filter(({ panelArea_m2 }) => panelArea_m2 > 0 === panels)
      .map((one) => ({ x: one.totalCost, y: of(one), names: one.names }))
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
      ].filter(({ data }) => data.length > 0),
    },
    options: {
      ...base,
      interaction: { mode: 'nearest', intersect: false },
      scales: {
        x: quantityAxis(ink, `cost in ${years_y} years`, { type: 'linear', min: 0 }),
        y: quantityAxis(ink, axisLabel, { beginAtZero: true }),
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
    columns: ['Measures', 'Panels, m²', 'Hours over', 'Cost', 'kWh a year', 'Water, m³'],
    rows: rows.map(({ names, panelArea_m2, hoursOver_h, totalCost, electric_J, water_m3 }) => [
      names.join(' + ') || 'nothing',
      panelArea_m2.toFixed(1),
      String(Math.round(hoursOver_h)),
      String(Math.round(totalCost)),
      String(Math.round(electric_J / J_PER_KWH)),
      water_m3.toFixed(1),
    ]),
  }
}
