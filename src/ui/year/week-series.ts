import { airOffset_K, limitInMovingAir_C } from '#model/design/target'
import type { ChartConfiguration } from 'chart.js'
import type { LiveAnswer } from '#live/messages.ts'
import { machineOf } from '#model/design/scenario'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import { hourLineOptions } from '#ui/chart/hour-lines.ts'
import type { Ink } from '#ui/chart/ink.ts'
import { nightBoxes } from '#ui/chart/night-boxes.ts'
import { dayLabel, hourLabel } from '#ui/words/calendar.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

const WEEK_H = 168

interface Series {
  readonly label: string
  readonly values: Float64Array
}

/** A machine in place of panels: its room is the answer's own. */
const hasMachine = ({ area_m2, scenario }: LiveAnswer): boolean =>
  area_m2 === 0 && machineOf(scenario) !== 'none'

function seriesOf(answer: LiveAnswer): readonly Series[] {
  if (hasMachine(answer))
    return [
      { label: 'Outdoors', values: answer.weather.airTemp_C },
      { label: 'Room without the machine', values: answer.doNothing.room_C },
      { label: 'Room with the machine', values: answer.year.room_C },
    ]
  if (answer.area_m2 === 0)
    return [
      { label: 'Outdoors', values: answer.weather.airTemp_C },
      { label: 'Room', values: answer.year.room_C },
    ]
  return [
    { label: 'Outdoors', values: answer.weather.airTemp_C },
    { label: 'Room without panels', values: answer.doNothing.room_C },
    { label: 'Room with panels', values: answer.year.room_C },
    { label: 'Store', values: answer.year.store_C },
  ]
}

function styles(ink: Ink): readonly object[] {
  return [
    { borderColor: ink.outdoor, borderWidth: 1.5 },
    { borderColor: ink.without, borderWidth: 2, borderDash: [9, 4] },
    { borderColor: ink.room, borderWidth: 3.5 },
    { borderColor: ink.store, borderWidth: 2, borderDash: [2, 3] },
  ]
}

/** Lines of one week over the hour index, the nights shaded, the limit drawn. */
export function weekConfig(
  answer: LiveAnswer,
  start_h: number,
  temperature: ShownQuantity,
  ink: Ink,
): ChartConfiguration {
  const all = styles(ink)
  const look = answer.area_m2 === 0 && !hasMachine(answer) ? [all[0], all[2]] : all
  return {
    type: 'line',
    data: {
      datasets: [
        ...seriesOf(answer).map(({ label, values }, i) => ({
          label,
          data: points(values, start_h, temperature),
          pointRadius: 0,
          pointStyle: 'line' as const,
          tension: 0.25,
          ...look[i],
        })),
        ...limitLine(answer, start_h, temperature, ink),
      ],
    },
    options: hourLineOptions({
      clock: answer.weather,
      start_h,
      end_h: start_h + WEEK_H,
      quantity: temperature,
      ink,
      behind: nightBoxes(answer.sun.altitude_deg, start_h, start_h + WEEK_H, ink),
    }),
  } as ChartConfiguration
}

function points(values: Float64Array, start_h: number, temperature: ShownQuantity) {
  const out: { x: number; y: number }[] = []
  for (let h = start_h; h < Math.min(start_h + WEEK_H, values.length); h++) {
    out.push({ x: h + 0.5, y: temperature.toShown(values[h]!) })
  }
  return out
}

/** The limit as a line of its own, so that the legend names it; nothing where it moves with the weather. */
function limitLine(answer: LiveAnswer, start_h: number, temperature: ShownQuantity, ink: Ink): object[] {
  const { target } = answer.scenario
  if (target.kind === 'adaptive') return []
  // as hours are judged: in moving air higher than the limit that was given
  const judged_C = limitInMovingAir_C(target.limit_C, airOffset_K(target))
  const y = temperature.toShown(judged_C)
  return [
    {
      label:
        judged_C === target.limit_C
          ? `Limit ${temperature.text(judged_C)}`
          : `Limit ${temperature.text(target.limit_C)}, in moving air ${temperature.text(judged_C)}`,
      data: [start_h, start_h + WEEK_H].map((x) => ({ x, y })),
      borderColor: ink.limit,
      borderWidth: 1.2,
      borderDash: [14, 3, 2, 3],
      pointRadius: 0,
      pointHitRadius: 0,
    },
  ]
}

function highest(values: Float64Array, start_h: number): number {
  let top = -Infinity
  for (let h = start_h; h < Math.min(start_h + WEEK_H, values.length); h++) top = Math.max(top, values[h]!)
  return top
}

/** The main numbers of a week in words. */
export function weekSummary(answer: LiveAnswer, start_h: number, temperature: ShownQuantity): string {
  const peaks = seriesOf(answer).map(
    ({ label, values }) => `${label} ${temperature.text(highest(values, start_h))}`,
  )
  return `Line chart of the week from ${dayLabel(answer.weather, start_h)}. Highest: ${peaks.join(', ')}.`
}

export function weekTable(answer: LiveAnswer, start_h: number, temperature: ShownQuantity): TableOf {
  const series = seriesOf(answer)
  const rows = []
  for (let h = start_h; h < Math.min(start_h + WEEK_H, answer.year.hours); h++) {
    rows.push([
      hourLabel(answer.weather, h),
      ...series.map(({ values }) => temperature.toShown(values[h]!).toFixed(1)),
    ])
  }
  return {
    caption: `Hourly temperatures, week from ${dayLabel(answer.weather, start_h)}`,
    columns: ['Hour from', ...series.map(({ label }) => `${label}, ${temperature.symbol}`)],
    rows,
  }
}
