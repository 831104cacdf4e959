import type { ChartOptions } from 'chart.js'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { Ink } from '#ui/chart/ink.ts'
import { dayLabel, hourLabel, type Clock } from '#ui/words/calendar.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/** What lines over the hours of a record have in common. */
export interface HourLines {
  /** Whose clock names the days. */
  readonly clock: Clock
  readonly start_h: number
  readonly end_h: number
  readonly quantity: ShownQuantity
  readonly ink: Ink
  /** Shading behind the lines (`nightBoxes`). */
  readonly behind?: Record<string, object>
}

/** Options of a line chart over the hour index: a day a tick, one decimal in the tooltip. */
export function hourLineOptions({
  clock,
  start_h,
  end_h,
  quantity,
  ink,
  behind,
}: HourLines): ChartOptions<'line'> {
  const base = baseOptions(ink) as ChartOptions<'line'>
  return {
    ...base,
    parsing: false,
    scales: {
      x: {
        type: 'linear',
        min: start_h,
        max: end_h,
        ticks: {
          stepSize: 24,
          color: ink.soft,
          align: 'start',
          maxRotation: 0,
          autoSkipPadding: 14,
          callback: (value) => dayLabel(clock, Number(value)),
        },
        grid: { color: ink.grid },
      },
      y: quantityAxis(ink, quantity.symbol),
    },
    plugins: {
      ...base.plugins,
      tooltip: {
        ...base.plugins?.tooltip,
        callbacks: {
          title: (items) => hourLabel(clock, items[0]?.parsed.x ?? 0),
          label: (item) => `${item.dataset.label}: ${item.parsed.y?.toFixed(1)} ${quantity.symbol}`,
        },
      },
      ...(behind === undefined ? {} : { annotation: { annotations: behind } }),
    },
  }
}
