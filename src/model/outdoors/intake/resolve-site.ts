import type { TableMapping } from './mapping.ts'
import type { ProblemList } from './problems.ts'
import type { Site } from '#model/outdoors/weather'
import type { RawTable } from './table/raw.ts'
import { withoutFill } from './hourly-series.ts'

/** Zones lie up to this far from the sun's own, h (western China, Spain in summer, Kiribati). */
const FARTHEST_ZONE_H = 3.5

/** The site from the user, the file and the columns of latitude and longitude, in that order; null when unknown. */
export function resolveSite(
  raw: RawTable,
  mapping: TableMapping,
  chosen: Partial<Site>,
  file: string,
  problems: ProblemList,
): Site | null {
  const known = { ...mapping.site, ...defined(chosen) }
  const latitude_deg = known.latitude_deg ?? columnMean(raw, mapping, 'latitude')
  const longitude_deg = known.longitude_deg ?? columnMean(raw, mapping, 'longitude')
  if (!(Math.abs(latitude_deg) <= 90) || !(Math.abs(longitude_deg) <= 180)) {
    problems.error(
      'weather-site-missing',
      'The file does not say where it was measured (latitude −90 to 90, longitude −180 to 180, east positive).',
      'Give the latitude and longitude of the place.',
      { field: 'site' },
    )
    return null
  }
  if (known.altitude_m === undefined) {
    problems.warn(
      'weather-altitude-missing',
      'The file does not say how high the place lies; sea level is taken.',
      'Give the altitude of the place.',
      { field: 'site' },
    )
  }
  // What a file calls its zone may be its clock alone: a table on UTC from the other side of the Earth is not at home there.
  const bySun_h = Math.round(longitude_deg / 15)
  const named_h = mapping.site.utcOffset_h
  const athome = named_h !== undefined && Math.abs(named_h - bySun_h) <= FARTHEST_ZONE_H
  const utcOffset_h = chosen.utcOffset_h ?? (athome ? named_h : bySun_h)
  return {
    name: known.name || file,
    latitude_deg,
    longitude_deg,
    altitude_m: known.altitude_m ?? 0,
    utcOffset_h,
  }
}

function defined(chosen: Partial<Site>): Partial<Site> {
  return Object.fromEntries(Object.entries(chosen).filter(([, value]) => value !== undefined))
}

function columnMean(raw: RawTable, mapping: TableMapping, quantity: 'latitude' | 'longitude'): number {
  const column =
    raw.columns[mapping.columns.find((candidate) => candidate.quantity === quantity)?.index ?? -1]
  if (column === undefined) return NaN
  let sum = 0
  let count = 0
  for (const value of withoutFill(column.values, mapping.missing)) {
    if (value !== value) continue
    sum += value
    count += 1
  }
  return sum / count
}
