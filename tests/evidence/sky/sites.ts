import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { dewPointFromHumidity_C } from '#model/outdoors/air'
import { type SunHours, sunHours } from '#model/outdoors/sun'

const FOLDER = fileURLToPath(new URL('../../../../shared/data/sky/', import.meta.url))
const HOUR_MS = 3_600_000
/** Heights of the places, m (README of the data); their pressures are not all station pressures and are not used. */
const ALTITUDE_M: Readonly<Record<string, number>> = {
  'humid-summer-hills': 510,
  mediterranean: 270,
  'tropical-sea': 0,
  'cool-forest-june': 385,
  'alpine-winter': 1200,
}

export const SKY_SITES_ARE_THERE = existsSync(FOLDER)

/** Hourly series of one place, contiguous, NaN where there is no row. */
export interface SkySite {
  readonly name: string
  readonly altitude_m: number
  readonly start_utcMs: number
  readonly hours: number
  readonly sun: SunHours
  readonly airTemp_C: Float64Array
  readonly dewPoint_C: Float64Array
  readonly relativeHumidity_frac: Float64Array
  readonly wind_ms: Float64Array
  readonly global_Wm2: Float64Array
  readonly longwave_Wm2: Float64Array
}

/** The places with measured longwave of ../shared/data/sky; none where that folder is not there. */
export function skySites(): SkySite[] {
  if (!SKY_SITES_ARE_THERE) return []
  return readdirSync(FOLDER)
    .filter((file) => file.endsWith('.csv'))
    .map(readSite)
}

function readSite(file: string): SkySite {
  const [, latitude, longitude, name] = /^sky-(-?[\d.]+)-(-?[\d.]+)-(.+)\.csv$/.exec(file)!
  const [, ...lines] = readFileSync(FOLDER + file, 'utf8')
    .trim()
    .split('\n')
  const rows = lines.map((line) => line.split(','))
  const at = (row: readonly string[]) => Date.parse(row[0]!.replace('Z', ':00Z'))
  const start_utcMs = at(rows[0]!)
  const hours = Math.round((at(rows.at(-1)!) - start_utcMs) / HOUR_MS) + 1
  const column = (index: number): Float64Array => {
    const values = new Float64Array(hours).fill(NaN)
    for (const row of rows) {
      const cell = row[index]!.trim()
      if (cell !== '') values[Math.round((at(row) - start_utcMs) / HOUR_MS)] = Number(cell)
    }
    return values
  }
  const airTemp_C = column(1)
  const relativeHumidity_frac = column(2)
  return {
    name: name!,
    altitude_m: ALTITUDE_M[name!]!,
    start_utcMs,
    hours,
    sun: sunHours(start_utcMs, hours, 0.5, Number(latitude), Number(longitude)),
    airTemp_C,
    relativeHumidity_frac,
    dewPoint_C: airTemp_C.map((air_C, h) =>
      Number.isNaN(air_C) || Number.isNaN(relativeHumidity_frac[h]!)
        ? NaN
        : Math.min(air_C, dewPointFromHumidity_C(air_C, Math.max(0.005, relativeHumidity_frac[h]!))),
    ),
    wind_ms: column(4),
    global_Wm2: column(5),
    longwave_Wm2: column(6),
  }
}
