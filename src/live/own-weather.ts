import { get, set } from 'idb-keyval'
import { stop } from '#model/basis/words'
import { WEATHER_COLUMNS, type WeatherRecord } from '#model/outdoors/weather'

const KEY = 'duskbank.own-weather'

/** The record kept in this browser. @throws ProblemError when there is none */
export async function ownWeather(): Promise<WeatherRecord> {
  const record = await keptRecord()
  if (isRecord(record)) return record
  throw stop(
    'own-weather-missing',
    'The design uses a weather file that is not kept in this browser.',
    'Open the file on the climate page, or pick another climate: the answer may change.',
  )
}

/** Keeps it for the next visit; false when the browser refuses, which is no error: the record still works now. */
export async function keepOwnWeather(record: WeatherRecord): Promise<boolean> {
  try {
    await set(KEY, record)
    return true
  } catch {
    return false
  }
}

async function keptRecord(): Promise<unknown> {
  try {
    return await get(KEY)
  } catch {
    return undefined
  }
}

/** True for a whole record: what another version or a half-written database left is not simulated. */
function isRecord(value: unknown): value is WeatherRecord {
  if (typeof value !== 'object' || value === null) return false
  const record = value as Partial<WeatherRecord>
  const whole = (column: unknown) =>
    column instanceof Float64Array && column.length === record.hours && column.every(Number.isFinite)
  return typeof record.site?.name === 'string' && WEATHER_COLUMNS.every((name) => whole(record[name]))
}
