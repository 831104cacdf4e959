import type { ChartConfiguration } from 'chart.js'
import { type ComparisonRow, rowName, type WordColumn } from '#model/design/comparison'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { Ink } from '#ui/chart/ink.ts'
import type { NumberColumn } from '#ui/comparing/columns.ts'

/** Columns that are drawn in pairs: with panels filled, without them as an outline. */
const ALONE: Readonly<Record<string, string>> = { peak: 'peakAlone', hours: 'hoursAlone' }

/** One column of the table as bars, in the order of the table. */
export function comparisonConfig(
  rows: readonly ComparisonRow[],
  words: readonly WordColumn[],
  numbers: readonly NumberColumn[],
  shown: NumberColumn,
  ink: Ink,
): ChartConfiguration {
  const base = baseOptions(ink)
  const alone = numbers.find(({ id }) => id === ALONE[shown.id])
  const outline = alone && {
    label: alone.title,
    data: rows.map((row) => alone.value(row)),
    backgroundColor: 'transparent',
    borderColor: ink.without,
    borderWidth: 2,
  }
  const filled = {
    label: shown.title,
    data: rows.map((row) => shown.value(row)),
    backgroundColor: ink.room,
    borderColor: ink.room,
    borderWidth: 2,
  }
  return {
    type: 'bar',
    data: {
      labels: rows.map((row) => rowName(row, words)),
      datasets: outline ? [filled, outline] : [filled],
    },
    options: {
      ...base,
      indexAxis: 'y',
      scales: {
        x: quantityAxis(ink, shown.title, { beginAtZero: !shown.id.startsWith('peak') }),
        y: {
          ticks: { color: ink.text, autoSkip: false, callback: wrapped(rows, words) },
          grid: { display: false },
        },
      },
      plugins: { ...base.plugins, legend: { ...base.plugins?.legend, display: outline !== undefined } },
    },
  }
}

const LONGEST = 26

/** Names of rows broken into lines, so that they leave room for the bars on a phone. */
function wrapped(rows: readonly ComparisonRow[], words: readonly WordColumn[]) {
  return (_: unknown, i: number): string[] => {
    const lines = ['']
    for (const word of rowName(rows[i]!, words).split(' ')) {
      const longer = `${lines.at(-1)} ${word}`.trim()
      if (longer.length > LONGEST && lines.at(-1) !== '') lines.push(word)
      else lines[lines.length - 1] = longer
    }
    return lines
  }
}
