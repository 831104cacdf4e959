import type { ChartConfiguration } from 'chart.js'
import { localHour } from '#model/basis/hours'
import type { OpenQuestion } from '#model/outdoors/intake'
import type { WeatherColumn, WeatherRecord } from '#model/outdoors/weather'
import { baseOptions, hoursAxis, quantityAxis } from '#ui/chart/base-options.ts'
import type { Ink } from '#ui/chart/ink.ts'

/** The column of a record that a question is about, with the suffix of its unit; the light where it is the clock's. */
const DRAWN: Partial<Record<OpenQuestion['about'], readonly [WeatherColumn, string]>> = {
  airTemp: ['airTemp_C', 'C'],
  dewPoint: ['dewPoint_C', 'C'],
  windSpeed: ['wind_ms', 'ms'],
  units: ['wind_ms', 'ms'],
}

/** What is drawn to show one answer beside another, and the suffix of its unit. */
export const drawnFor = (about: OpenQuestion['about']): readonly [WeatherColumn, string] =>
  DRAWN[about] ?? ['globalHorizontal_Wm2', 'Wm2']

/** Mean of a column at each hour of the local day, 24 values. */
export function dayCourseOf(record: WeatherRecord, column: WeatherColumn): number[] {
  const sums = new Float64Array(24)
  const counts = new Float64Array(24)
  for (let hour = 0; hour < record.hours; hour++) {
    const slot = Math.floor(localHour(record, hour))
    sums[slot]! += record[column][hour]!
    counts[slot]! += 1
  }
  return Array.from(sums, (sum, slot) => sum / Math.max(1, counts[slot]!))
}

/** The mean day as one line, from the same zero to the same top for every answer. */
export function dayCourseConfig(
  values: readonly number[],
  top: number,
  bottom: number,
  unit: string,
  ink: Ink,
): ChartConfiguration {
  const base = baseOptions(ink)
  return {
    type: 'line',
    data: {
      datasets: [
        {
          data: values.map((y, hour) => ({ x: hour + 0.5, y })),
          borderColor: ink.room,
          borderWidth: 3,
          pointRadius: 0,
        },
      ],
    },
    options: {
      ...base,
      parsing: false,
      scales: {
        x: hoursAxis(ink, 'hour of the day', [0, 24], 6),
        y: quantityAxis(ink, unit, { min: bottom, max: top }),
      },
      plugins: { ...base.plugins, legend: { display: false } },
    },
  }
}
