import type { ChartConfiguration } from 'chart.js'
import { meansByMonth } from '#model/basis/hours'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import type { Ink } from '#ui/chart/ink.ts'
import type { ClimateSeries } from '#studies/climate-series.ts'
import { monthLabel } from '#ui/words/calendar.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/** Night means by month of what a plate at air temperature loses to the sky, W/m²; NaN where there is no night. */
export interface NightPotential {
  readonly black_Wm2: Float64Array
  readonly coating_Wm2: Float64Array
  readonly nights_h: Float64Array
}

export function nightPotential({ weather, night, black_Wm2, coating_Wm2 }: ClimateSeries): NightPotential {
  const black = meansByMonth(weather, black_Wm2, night)
  return {
    black_Wm2: black.mean,
    coating_Wm2: meansByMonth(weather, coating_Wm2, night).mean,
    nights_h: black.count,
  }
}

/** Months with the most and the least, in words for those who cannot see the chart. */
export function potentialSummary({ black_Wm2 }: NightPotential, flux: ShownQuantity): string {
  const months = [...black_Wm2.keys()].filter((month) => !Number.isNaN(black_Wm2[month]!))
  if (months.length === 0) return 'There is no night in this record.'
  const by = (better: (a: number, b: number) => boolean) =>
    months.reduce((best, month) => (better(black_Wm2[month]!, black_Wm2[best]!) ? month : best))
  const [most, least] = [by((a, b) => a > b), by((a, b) => a < b)]
  const words = (month: number) => `${flux.text(black_Wm2[month]!, 2)} in ${monthLabel(month)}`
  return most === least
    ? `A black plate loses ${words(most)} on a mean night hour.`
    : `A black plate loses most, ${words(most)}, and least, ${words(least)}, on a mean night hour.`
}

export function potentialConfig(
  potential: NightPotential,
  flux: ShownQuantity,
  ink: Ink,
): ChartConfiguration {
  const bars = (label: string, values: Float64Array, colour: string, hollow: boolean) => ({
    label,
    data: [...values].map((value) => (Number.isNaN(value) ? null : flux.toShown(value))),
    backgroundColor: hollow ? 'transparent' : colour,
    borderColor: colour,
    borderWidth: 2,
    pointStyle: 'rect' as const,
  })
  return {
    type: 'bar',
    data: {
      labels: [...potential.black_Wm2.keys()].map((month) => monthLabel(month)),
      datasets: [
        bars('Black plate', potential.black_Wm2, ink.room, false),
        bars('Coating of the design', potential.coating_Wm2, ink.store, true),
      ],
    },
    options: {
      ...baseOptions(ink),
      scales: {
        x: { ticks: { color: ink.soft }, grid: { display: false } },
        y: quantityAxis(ink, flux.symbol, { beginAtZero: true }),
      },
    },
  }
}

export function potentialTable(potential: NightPotential, flux: ShownQuantity): TableOf {
  const cell = (value: number) => (Number.isNaN(value) ? '–' : flux.fixed(value, 1))
  return {
    caption: 'Night-sky cooling at air temperature by month',
    columns: [
      'Month',
      `Black plate, ${flux.symbol}`,
      `Coating of the design, ${flux.symbol}`,
      'Night hours, h',
    ],
    rows: [...potential.black_Wm2].map((black, month) => [
      monthLabel(month),
      cell(black),
      cell(potential.coating_Wm2[month]!),
      potential.nights_h[month]!.toFixed(0),
    ]),
  }
}
