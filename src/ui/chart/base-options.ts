import type { ChartOptions } from 'chart.js'
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
        labels: { usePointStyle: true, pointStyleWidth: 36, boxHeight: 7, color: ink.text, padding: 14 },
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
