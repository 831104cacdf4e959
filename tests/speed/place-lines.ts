import { readFileSync } from 'node:fs'
import { readSampleCsv } from '#model/outdoors/climate'
import { findPlace, placeWeather, townsNamed } from '#model/outdoors/place'
import { INDEX, PLACES, TOWNS } from '../rooms/outdoors/place/held-data.ts'
import { median, timed_s } from './measure.ts'
import type { Row } from './table.ts'

const TABLE = new URL('../../climate-samples/continental.csv', import.meta.url)
const RUNS = 9
const ASKED = { latitude_deg: 50.06, longitude_deg: 19.94, altitude_m: null, name: null, warming_K: null }

/** The year of a place, found and made, by itself and against reading a table of a year; and one letter of a town's name. */
export function placeYears(): Row[] {
  const table = readFileSync(TABLE, 'utf8')
  const made_s = timed_s(() => placeWeather(findPlace(PLACES, TOWNS, ASKED)), RUNS)
  const table_s = timed_s(() => readSampleCsv(table, 'continental.csv'), RUNS)
  const letter_s = timed_s(() => townsNamed(INDEX, 'sa'), RUNS)
  return [
    {
      name: 'year of a place, found and made',
      goal: '≤ 0.3',
      unit: 's',
      values: made_s,
      met: (value) => value <= 0.3,
    },
    {
      name: 'year of a place / reading a table of a year',
      goal: '',
      unit: '×',
      values: made_s.map((value) => value / median(table_s)),
      met: null,
    },
    {
      name: 'towns for one more letter',
      goal: '≤ 20',
      unit: 'ms',
      values: letter_s.map((value) => 1000 * value),
      met: (value) => value <= 20,
    },
  ]
}
