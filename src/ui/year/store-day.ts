import type { ChartConfiguration } from 'chart.js'
import { quantile } from '#model/basis/numbers'
import type { LiveAnswer } from '#live/messages.ts'
import { baseOptions, quantityAxis } from '#ui/chart/base-options.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import type { Ink } from '#ui/chart/ink.ts'
import { clockLabel, wallClock } from '#ui/words/calendar.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/** Noon first, so that the night is whole in the middle. */
const FIRST_CLOCK_HOUR = 12

export interface StoreDay {
  /** Clock hour of each of the 24 entries. */
  readonly clock: readonly number[]
  readonly low_C: readonly number[]
  readonly middle_C: readonly number[]
  readonly high_C: readonly number[]
  /** Share of the hour the pump ran, on average. */
  readonly pump_frac: readonly number[]
}

/** Month (0…11) with the highest outdoor mean. */
export function hottestMonth(answer: LiveAnswer): number {
  const means = answer.months.map((m) => m.outdoorMean_C)
  return means.indexOf(Math.max(...means))
}

/** Where the store is at each hour of the day over one month: lowest tenth, middle, highest tenth. */
export function storeDay(answer: LiveAnswer, month: number): StoreDay {
  const stores: number[][] = Array.from({ length: 24 }, () => [])
  const pump = new Float64Array(24)
  for (let h = 0; h < answer.year.hours; h++) {
    const wall = wallClock(answer.weather, h)
    if (wall.month !== month) continue
    stores[wall.hour]!.push(answer.year.store_C[h]!)
    pump[wall.hour]! += answer.year.pumpRun_frac[h]!
  }
  const clock = Array.from({ length: 24 }, (_, i) => (i + FIRST_CLOCK_HOUR) % 24)
  const sorted = clock.map((hour) => stores[hour]!.sort((a, b) => a - b))
  const at = (share: number) => sorted.map((values) => quantile(values, share))
  return {
    clock,
    low_C: at(0.1),
    middle_C: at(0.5),
    high_C: at(0.9),
    pump_frac: clock.map((hour) => pump[hour]! / Math.max(1, stores[hour]!.length)),
  }
}

export function storeDayConfig(day: StoreDay, temperature: ShownQuantity, ink: Ink): ChartConfiguration {
  const line = (label: string, values: readonly number[], look: object) => ({
    label,
    type: 'line' as const,
    data: values.map((v) => temperature.toShown(v)),
    borderColor: ink.store,
    pointRadius: 0,
    pointStyle: 'line' as const,
    tension: 0.3,
    yAxisID: 'y',
    ...look,
  })
  return {
    type: 'bar',
    data: {
      labels: day.clock.map(clockLabel),
      datasets: [
        line('Usual day', day.middle_C, { borderWidth: 3 }),
        line('Warmest tenth', day.high_C, { borderWidth: 1.5, borderDash: [8, 4] }),
        line('Coldest tenth', day.low_C, { borderWidth: 1.5, borderDash: [2, 3] }),
        {
          label: 'Pump runs, % of the hour',
          type: 'bar' as const,
          data: day.pump_frac.map((f) => f * 100),
          backgroundColor: ink.night,
          borderColor: ink.soft,
          borderWidth: 1,
          pointStyle: 'rect' as const,
          yAxisID: 'pump',
        },
      ],
    },
    options: {
      ...baseOptions(ink),
      scales: {
        x: { ticks: { color: ink.soft, maxTicksLimit: 9 }, grid: { display: false } },
        y: quantityAxis(ink, temperature.symbol, { beginAtZero: false }),
        pump: quantityAxis(ink, 'pump, %', { position: 'right', min: 0, max: 100, grid: { display: false } }),
      },
    },
  }
}

export function storeDayTable(day: StoreDay, temperature: ShownQuantity): TableOf {
  return {
    caption: 'Store temperature by hour of the day',
    columns: [
      'Hour from',
      `Coldest tenth, ${temperature.symbol}`,
      `Usual, ${temperature.symbol}`,
      `Warmest tenth, ${temperature.symbol}`,
      'Pump runs, % of the hour',
    ],
    rows: day.clock.map((hour, i) => [
      clockLabel(hour),
      temperature.fixed(day.low_C[i]!, 1),
      temperature.fixed(day.middle_C[i]!, 1),
      temperature.fixed(day.high_C[i]!, 1),
      (day.pump_frac[i]! * 100).toFixed(0),
    ]),
  }
}
