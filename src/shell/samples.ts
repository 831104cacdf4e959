import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { readSampleCsv } from '#model/outdoors/climate'
import type { WeatherRecord } from '#model/outdoors/weather'

const SAMPLES = fileURLToPath(new URL('../../climate-samples/', import.meta.url))

/** Names of the sample climates that ship. */
export function sampleNames(): string[] {
  return readdirSync(SAMPLES)
    .filter((file) => file.endsWith('.csv'))
    .map((file) => file.slice(0, -4))
}

/** A sample climate by its name. */
export function sampleWeather(name: string): WeatherRecord {
  const file = join(SAMPLES, `${name}.csv`)
  return readSampleCsv(readFileSync(file, 'utf8'), basename(file))
}
