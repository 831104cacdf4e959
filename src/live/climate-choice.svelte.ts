import { readSampleCsv } from '#model/outdoors/climate'
import { stop, type Problem } from '#model/basis/words'
import type { WeatherRecord } from '#model/outdoors/weather'
import { keepOwnWeather, ownWeather } from '#live/own-weather.ts'
import { isPlaceId } from '#live/place-id.ts'
import { problemsOf } from '#live/problems-of.ts'
import { SAMPLE_CLIMATES, sampleUrl } from '#live/sample-climates.ts'

/** Id of the weather the user brought, beside those of the samples. */
export const OWN_CLIMATE = 'own'

/** The weather of the climate the design stands in: a sample, fetched when chosen, or the user's own record. */
export class ClimateChoice {
  /** What `record` is, or will be once it is loaded. */
  id = $state('')
  record = $state.raw<WeatherRecord | null>(null)
  problems = $state.raw<readonly Problem[]>([])
  loading = $state(false)
  /** Name of the user's own record, once there is one. */
  ownName = $state<string | null>(null)
  /** Records read so far; nothing on screen follows it. */
  readonly #read: Record<string, WeatherRecord | undefined> = {}

  /** Loads a sample or a place by id, or `OWN_CLIMATE`; the last one wins when several are under way. */
  async load(id: string): Promise<void> {
    this.id = id
    this.loading = true
    this.problems = []
    try {
      const record = await this.recordOf(id)
      if (this.id === id) this.record = record
    } catch (reason) {
      if (this.id !== id) return
      this.problems = problemsOf(reason)
      this.record = null
    } finally {
      if (this.id === id) this.loading = false
    }
  }

  /** The record of any climate on offer, read at most once; for pages that need several. */
  async recordOf(id: string): Promise<WeatherRecord> {
    const known = this.#read[id]
    if (known) return known
    const record = await read(id)
    this.#read[id] = record
    return record
  }

  /** Takes the user's own record and keeps it in this browser; false when the browser does not keep it. */
  async takeOwn(record: WeatherRecord): Promise<boolean> {
    this.#read[OWN_CLIMATE] = record
    this.ownName = record.site.name
    if (this.id === OWN_CLIMATE) await this.load(OWN_CLIMATE)
    return keepOwnWeather(record)
  }

  /** Looks whether an earlier visit left a record of the user's own. */
  async recallOwn(): Promise<void> {
    const record = await ownWeather().catch(() => null)
    if (!record) return
    this.#read[OWN_CLIMATE] = record
    this.ownName = record.site.name
  }
}

async function read(id: string): Promise<WeatherRecord> {
  if (id === OWN_CLIMATE) return ownWeather()
  // The towns and their climates are loaded only when a place is asked for.
  if (isPlaceId(id)) return (await import('#live/place-data.ts')).placeRecord(id)
  return fetchSample(id)
}

async function fetchSample(id: string): Promise<WeatherRecord> {
  const sample = SAMPLE_CLIMATES.find((candidate) => candidate.id === id)
  if (!sample) {
    throw stop('climate-unknown', `There is no climate called “${id}” here.`, 'Pick one from the list.')
  }
  const response = await fetch(sampleUrl(sample)).catch(() => null)
  if (!response?.ok) {
    throw stop(
      'climate-not-loaded',
      `The climate ${sample.name} could not be loaded.`,
      'Check the connection and pick it again; climates loaded before still work.',
    )
  }
  return readSampleCsv(await response.text(), sample.file)
}
