import { unpackSample } from '#model/outdoors/climate'
import { stop, type Problem } from '#model/basis/words'
import type { WeatherRecord } from '#model/outdoors/weather'
import { isOwnId, OWN_CLIMATE, ownId } from '#live/own-id.ts'
import { keepOwnWeather, ownWeather } from '#live/own-weather.ts'
import { isPlaceId } from '#live/place-id.ts'
import { problemsOf } from '#live/problems-of.ts'
import { inflated, SAMPLE_CLIMATES, sampleUrl } from '#live/sample-climates.ts'

/** The weather the user brought, beside the samples. */
export interface OwnClimate {
  readonly id: string
  readonly name: string
}

/** The weather of the climate the design uses: a sample, fetched when chosen, or the user's own record. */
export class ClimateChoice {
  /** What `record` is, or will be once it is loaded. */
  id = $state('')
  record = $state.raw<WeatherRecord | null>(null)
  problems = $state.raw<readonly Problem[]>([])
  loading = $state(false)
  /** The user's own record, once there is one. */
  own = $state.raw<OwnClimate | null>(null)
  /** Records read so far; nothing on screen follows it. */
  readonly #read: Record<string, WeatherRecord | undefined> = {}

  /** Loads a sample, a place or the user's own weather by id; the last one wins when several are under way. */
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
    const { id } = this.#hold(record)
    if (this.id === id || this.id === OWN_CLIMATE) await this.load(this.id)
    return keepOwnWeather(record)
  }

  /** Looks whether an earlier visit left a record of the user's own. */
  async recallOwn(): Promise<void> {
    const record = await ownWeather().catch(() => null)
    if (record) this.#hold(record)
  }

  #hold(record: WeatherRecord): OwnClimate {
    const own = { id: ownId(record), name: record.site.name }
    this.#read[own.id] = this.#read[OWN_CLIMATE] = record
    return (this.own = own)
  }
}

async function read(id: string): Promise<WeatherRecord> {
  if (isOwnId(id)) return ownRecord(id)
  // The towns and their climates are loaded only when a place is asked for.
  if (isPlaceId(id)) return (await import('#live/place-data.ts')).placeRecord(id)
  return fetchSample(id)
}

/** The record kept here, if it is the one the id names. @throws ProblemError when there is none, or another */
async function ownRecord(id: string): Promise<WeatherRecord> {
  const record = await ownWeather()
  if (id === OWN_CLIMATE || id === ownId(record)) return record
  throw stop(
    'own-weather-other',
    `The design uses a weather file that is not here; the one kept in this browser, “${record.site.name}”, is another or was read in another way.`,
    'Open that file on the climate page, or pick another climate: the answer may change.',
  )
}

async function fetchSample(id: string): Promise<WeatherRecord> {
  const sample = SAMPLE_CLIMATES.find((candidate) => candidate.id === id)
  if (!sample) {
    throw stop('climate-unknown', `There is no climate called “${id}” here.`, 'Pick one from the list.')
  }
  const packed = await fetch(sampleUrl(sample))
    .then((response) => (response.ok ? inflated(response) : null))
    .catch(() => null)
  if (!packed) {
    throw stop(
      'climate-not-loaded',
      `The climate ${sample.name} could not be loaded.`,
      'Check the connection and pick it again; climates loaded before still work.',
    )
  }
  return unpackSample(packed, sample.file)
}
