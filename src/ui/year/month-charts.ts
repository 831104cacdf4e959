import { coolerWords } from '#ui/answer/answer-words.ts'
import type { ChartConfiguration } from 'chart.js'
import type { LiveAnswer } from '#live/messages.ts'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import type { Ink } from '#ui/chart/ink.ts'
import { monthLabel } from '#ui/words/calendar.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

export interface MonthBars {
  readonly label: string
  /** One value a month, J. */
  readonly values_J: readonly number[]
  readonly colour: (ink: Ink) => string
  /** Bars that are outlined only: keeps two sets apart without colour. */
  readonly hollow?: boolean
}

/** Bars by month of one or two energies. */
export function monthConfig(sets: readonly MonthBars[], energy: ShownQuantity, ink: Ink): ChartConfiguration {
  return {
    type: 'bar',
    data: {
      labels: sets[0]!.values_J.map((_, month) => monthLabel(month)),
      datasets: sets.map(({ label, values_J, colour, hollow }) => ({
        label,
        data: values_J.map((v) => energy.toShown(v)),
        backgroundColor: hollow ? 'transparent' : colour(ink),
        borderColor: colour(ink),
        borderWidth: 2,
        pointStyle: 'rect' as const,
      })),
    },
    options: {
      ...baseOptions(ink),
      scales: {
        x: { ticks: { color: ink.soft }, grid: { display: false } },
        y: quantityAxis(ink, energy.symbol, { beginAtZero: true }),
      },
    },
  }
}

export function monthTable(answer: LiveAnswer, energy: ShownQuantity, temperature: ShownQuantity): TableOf {
  return {
    caption: 'The year by month',
    columns: [
      'Month',
      `Heat given off, ${energy.symbol}`,
      `Taken from the room, ${energy.symbol}`,
      `Electricity, ${energy.symbol}`,
      'Pump hours, h',
      `Highest, ${temperature.symbol}`,
      `Highest without ${coolerWords(answer) ?? 'panels'}, ${temperature.symbol}`,
    ],
    rows: answer.months.map((m, i) => [
      monthLabel(i),
      energy.toShown(m.panelHeat_J).toFixed(0),
      energy.toShown(m.delivered_J).toFixed(0),
      energy.toShown(m.electric_J).toFixed(1),
      m.pumpRun_h.toFixed(0),
      temperature.toShown(m.roomPeak_C).toFixed(1),
      temperature.toShown(m.doNothingPeak_C).toFixed(1),
    ]),
  }
}
