import { existsSync, readFileSync } from 'node:fs'
import { dewPointFromHumidity_C } from '#model/air/moist-air.ts'
import { clearSkyIndex_frac } from '#model/sun/clear-sky.ts'
import type { SunHours } from '#model/sun/hours.ts'
import { sunHours } from '#model/sun/position.ts'
import type { WeatherRecord } from '#model/weather/record.ts'

/**
 * The three open files with measured longwave, read in the simplest way (the project's own reader is tested
 * elsewhere): hour means on UTC hours, cloud from the clear-sky index carried over the night by straight lines.
 */
export interface MeasuredFile {
  readonly name: string
  readonly weather: WeatherRecord
  readonly sun: SunHours
}

const DATA = new URL('../../../../shared/data/', import.meta.url)

/** One reading: hour since the start, and what was measured (NaN where missing). */
interface Reading {
  readonly hour: number
  readonly temp_C: number
  readonly humidity: number
  readonly pressure_Pa: number
  readonly wind_ms: number
  readonly global: number
  readonly longwave: number
}

function rows(file: string, skip: number): number[][] | null {
  const url = new URL(file, DATA)
  if (!existsSync(url)) {
    console.log(`../shared/data/${file} is not there: its longwave is not compared.`)
    return null
  }
  const lines = readFileSync(url, 'utf8').split('\n').slice(skip)
  return lines.filter((line) => line.trim() !== '').map((line) => line.trim().split(/\s+/).map(Number))
}

function mean(values: number[]): number {
  const there = values.filter(Number.isFinite)
  return there.length === 0 ? NaN : there.reduce((sum, value) => sum + value, 0) / there.length
}

function assemble(
  name: string,
  start_utcMs: number,
  place: readonly [number, number, number],
  readings: readonly Reading[],
): MeasuredFile {
  const hours = Math.max(...readings.map((reading) => Math.floor(reading.hour))) + 1
  const byHour = Array.from({ length: hours }, () => [] as Reading[])
  for (const reading of readings) if (reading.hour >= 0) byHour[Math.floor(reading.hour)]!.push(reading)
  const column = (pick: (reading: Reading) => number) =>
    Float64Array.from(byHour, (list) => mean(list.map(pick)))
  const [latitude_deg, longitude_deg, altitude_m] = place
  const sun = sunHours(start_utcMs, hours, 0.5, latitude_deg, longitude_deg)
  const airTemp_C = column((reading) => reading.temp_C)
  const humidity = column((reading) => reading.humidity)
  const global = column((reading) => Math.max(0, reading.global))
  const weather: WeatherRecord = {
    site: { name, latitude_deg, longitude_deg, altitude_m, utcOffset_h: 0 },
    start_utcMs,
    hours,
    radiationMiddle_h: 0.5,
    airTemp_C,
    dewPoint_C: airTemp_C.map((temp, i) => dewPointFromHumidity_C(temp, Math.min(1, humidity[i]! / 100))),
    pressure_Pa: column((reading) => reading.pressure_Pa),
    wind_ms: column((reading) => reading.wind_ms),
    globalHorizontal_Wm2: global,
    directNormal_Wm2: new Float64Array(hours),
    diffuseHorizontal_Wm2: global.slice(),
    cloud_frac: cloudOver(global, sun, altitude_m),
    skyLongwave_Wm2: column((reading) => reading.longwave),
    origins: { cloud_frac: { kind: 'derived', note: 'clear-sky index', filledHours: 0 } },
    basis: `${name}, open data`,
  }
  return { name, weather, sun }
}

/** 1 − clear-sky index where the sun stands above 10°, straight lines between. */
function cloudOver(global: Float64Array, sun: SunHours, altitude_m: number): Float64Array {
  const cloud = global.map((value, i) => {
    const index = clearSkyIndex_frac(
      value,
      sun.altitude_deg[i]!,
      sun.extraterrestrial_Wm2[i]!,
      altitude_m,
      10,
    )
    return Math.min(1, Math.max(0, 1 - index))
  })
  let last = -1
  for (let i = 0; i <= cloud.length; i++) {
    if (i < cloud.length && !Number.isFinite(cloud[i]!)) continue
    const to = i < cloud.length ? cloud[i]! : cloud[last]!
    const from = last < 0 ? to : cloud[last]!
    for (let k = last + 1; k < i; k++) cloud[k] = from + ((to - from) * (k - last)) / (i - last)
    last = i
  }
  return cloud
}

export function surfradDay(): MeasuredFile | null {
  const table = rows('surfrad-slv16001.dat', 2)
  if (table === null) return null
  const known = (value: number) => (value < -9000 ? NaN : value)
  const readings = table.map((row) => ({
    hour: row[4]! + (row[5]! - 0.5) / 60,
    temp_C: known(row[38]!),
    humidity: known(row[40]!),
    wind_ms: known(row[42]!),
    pressure_Pa: known(row[46]!) * 100,
    global: known(row[8]!),
    longwave: known(row[16]!),
  }))
  return assemble('SURFRAD station day', Date.UTC(2016, 0, 1), [37.7, -105.92, 2317], readings)
}

export function tropicalShip(): MeasuredFile | null {
  const table = rows('ship-tropical-atlantic.txt', 1)
  if (table === null) return null
  const readings = table.map((row) => ({
    hour: (row[0]! - 1) * 24 + 1e-6,
    temp_C: row[3]!,
    humidity: row[5]!,
    wind_ms: row[1]!,
    pressure_Pa: row[7]! * 100,
    global: row[9]!,
    longwave: row[10]!,
  }))
  const place = [mean(table.map((row) => row[11]!)), mean(table.map((row) => row[12]!)), 0] as const
  return assemble('Ship, tropical Atlantic', Date.UTC(2020, 0, 1), place, readings)
}

export function alpineWinter(): MeasuredFile | null {
  const table = rows('alpine-winter-47N-9E.txt', 0)
  if (table === null) return null
  const start = Date.UTC(2004, 9, 1)
  const readings = table.map((row) => ({
    hour: (Date.UTC(row[0]!, row[1]! - 1, row[2]!, row[3]!) - start) / 3_600_000 - 0.5,
    temp_C: row[8]! - 273.15,
    humidity: row[9]!,
    wind_ms: row[10]!,
    pressure_Pa: row[11]!,
    global: row[4]!,
    longwave: row[5]!,
  }))
  return assemble('Mountain station, winter', start, [47.05, 8.72, 1200], readings)
}
