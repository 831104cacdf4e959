/**
 * `npm run -s evidence -- every-place [STEP]`: the year of every town (or of every STEP-th) and of 1000 points on land is finite, can be,
 * and holds its months. All 26,416 towns take about three quarters of an hour on one core.
 */
import { findPlace, placeWeather } from '#model/outdoors/place'
import { PLACES, TOWNS } from '../../rooms/outdoors/place/held-data.ts'
import { impossible, landPoints, monthMisses, townPoints } from './sound-year.ts'

const HELD: Readonly<Record<string, number>> = {
  air_K: 0.05,
  dew_K: 0.05,
  range_K: 0.05,
  cloud_frac: 0.01,
  wind: 0.01,
}

export function printEveryPlace(step: number): void {
  const towns = townPoints(step)
  const points = landPoints(1000, 7)
  const worst: Record<string, number> = {}
  const failures: string[] = []
  for (const asked of [...towns, ...points]) {
    const where = `${asked.latitude_deg.toFixed(2)}, ${asked.longitude_deg.toFixed(2)}`
    const place = findPlace(PLACES, TOWNS, asked)
    const record = placeWeather(place)
    const cannotBe = impossible(record)
    if (cannotBe !== null) failures.push(`${where}: ${cannotBe}`)
    for (const [name, off] of Object.entries(monthMisses(place, record))) {
      worst[name] = Math.max(worst[name] ?? 0, off)
      if (off > HELD[name]!) failures.push(`${where}: ${name} off by ${off.toFixed(3)}`)
    }
  }
  for (const failure of failures.slice(0, 40)) console.log(failure)
  const worstText = Object.entries(worst).map(([name, off]) => `${name} ${off.toFixed(3)}`)
  console.log(
    `${towns.length} towns and ${points.length} points: ${failures.length} failures; months held to ${worstText.join(', ')}.`,
  )
  if (failures.length > 0) process.exitCode = 1
}
