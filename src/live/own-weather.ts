import { get, set } from 'idb-keyval'
import { stop } from '#model/problem.ts'
import type { WeatherRecord } from '#model/weather/record.ts'

const KEY = 'duskbank.own-weather'

/** The record kept in this browser. @throws ProblemError when there is none */
export async function ownWeather(): Promise<WeatherRecord> {
  const record = await get<WeatherRecord>(KEY).catch(() => undefined)
  if (record) return record
  throw stop(
    'own-weather-missing',
    'Your own weather file is not kept in this browser.',
    'Open the file again, or pick a sample climate.',
  )
}

/** Keeps it for the next visit; false when the browser refuses, which is no error: the record still works now. */
export async function keepOwnWeather(record: WeatherRecord): Promise<boolean> {
  return set(KEY, record).then(
    () => true,
    () => false,
  )
}
