import type { Chart, ChartOptions, LegendItem } from 'chart.js'
import type { Ink } from '#ui/chart/ink.ts'

/** What all charts share: no animation (it follows a slider), legend that shows dashes, quiet grid. */
export function baseOptions(ink: Ink): ChartOptions {
  return {
    animation: false,
    responsive: true,
    maintainAspectRatio: false,
    color: ink.text,
    interaction: { mode: 'index', intersect: false },
    plugins: {
      legend: {
        position: 'bottom',
        labels: {
          usePointStyle: true,
          pointStyleWidth: 40,
          boxHeight: 7,
          color: ink.text,
          padding: 14,
          generateLabels: legendWithDashes,
        },
      },
      tooltip: { usePointStyle: true },
    },
  }
}

/** A quantity axis with its title; `unit` goes in brackets. */
export function quantityAxis(ink: Ink, title: string, more: Record<string, unknown> = {}) {
  return {
    title: { display: true, text: title, color: ink.soft },
    ticks: { color: ink.soft, maxTicksLimit: 8 },
    grid: { color: ink.grid },
    border: { color: ink.grid },
    ...more,
  }
}

/** An axis of hours from one to the other, with a mark every so many. */
export function hoursAxis(ink: Ink, title: string, [min, max]: readonly [number, number], step_h: number) {
  return {
    type: 'linear' as const,
    min,
    max,
    ...quantityAxis(ink, title, { ticks: { stepSize: step_h, color: ink.soft } }),
  }
}

/** Legend lines drawn as the chart draws them: same width, same dash. */
function legendWithDashes(chart: Chart): LegendItem[] {
  const { defaults } = chart.constructor as typeof Chart
  return defaults.plugins.legend.labels.generateLabels(chart).map((item) => {
    const dataset = chart.data.datasets[item.datasetIndex ?? 0]!
    if (chart.getDatasetMeta(item.datasetIndex ?? 0).type !== 'line') return item
    const { borderDash, borderWidth } = dataset as { borderDash?: number[]; borderWidth?: number }
    return { ...item, pointStyle: 'line' as const, lineDash: borderDash ?? [], lineWidth: borderWidth ?? 2 }
  })
}
