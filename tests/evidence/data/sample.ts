import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { readSampleCsv } from '#model/outdoors/climate'
import type { WeatherRecord } from '#model/outdoors/weather'

/** One of the invented climates that ship with the project. */
export function sampleClimate(id: string): WeatherRecord {
  const file = `${id}.csv`
  return readSampleCsv(
    readFileSync(fileURLToPath(new URL(`../../../climate-samples/${file}`, import.meta.url)), 'utf8'),
    file,
  )
}

/** Hours of July (January south of the equator is not used here), first and one past the last. */
export const JULY = [181 * 24, 212 * 24] as const

/** Mean over hours from–until. */
export function meanOf(values: Float64Array, [from, until]: readonly [number, number]): number {
  let sum = 0
  for (let h = from; h < until; h++) sum += values[h]!
  return sum / (until - from)
}

/** Mean of the daily highest (or lowest) over the days of a span. */
export function meanDaily(
  values: Float64Array,
  span: readonly [number, number],
  pick: 'max' | 'min',
): number {
  let sum = 0
  for (let d = span[0]; d < span[1]; d += 24) sum += Math[pick](...values.subarray(d, d + 24))
  return sum / ((span[1] - span[0]) / 24)
}
