import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import {
  findPlace,
  indexTowns,
  readClimatePlaces,
  readTowns,
  townsLike,
  townsNamed,
  trustLine,
  USUAL_PLACE,
  type FoundPlace,
  monthChangeText,
  type PlaceAsked,
  readMonthsTable,
  type PlaceChoices,
  type Town,
} from '#model/outdoors/place'
import { problemSentence, stop, wordingText } from '#model/basis/words'
import type { WeatherRecord } from '#model/outdoors/weather'
import { answered, studies } from './answered.ts'
import type { Options } from './options.ts'
import { note } from './output.ts'

const FOLDER = fileURLToPath(new URL('../../static/places/', import.meta.url))
const bytesOf = (file: string): Uint8Array => new Uint8Array(readFileSync(FOLDER + file))

const placesHeld = () => readClimatePlaces(bytesOf('climate-places.bin'))
const townsHeld = (): Town[] => readTowns(bytesOf('towns.bin'), (bytes) => new TextDecoder().decode(bytes))

/** True when a place is asked for instead of a weather file. */
export function asksForPlace({ values }: Options): boolean {
  return values['town'] !== undefined || values['at'] !== undefined
}

/** The place that --town or --at names. @throws ProblemError when there is none, naming what is like it */
export function foundPlace(options: Options): FoundPlace {
  const { values } = options
  if (values['town'] !== undefined && values['at'] !== undefined)
    throw stop('two-places', 'Both --town and --at are given.', 'Give one of them.')
  const towns = townsHeld()
  const warming_K = numberOf(values['warming'], 'warming')
  const { months } = values
  const own = months === undefined ? [] : readMonthsTable(textFrom(String(months)), String(months))
  const where =
    values['at'] === undefined ? askedTown(towns, String(values['town'])) : askedSpot(String(values['at']))
  return findPlace(placesHeld(), towns, { ...where, warming_K, own })
}

/** @throws ProblemError for a file that cannot be read */
function textFrom(file: string): string {
  try {
    return readFileSync(file, 'utf8')
  } catch {
    throw stop('no-months', 'The table of months cannot be read.', 'Name a file that is there.', { file })
  }
}

/** What was taken for granted, what to beware of, what was changed, and how far to trust it, on standard error. */
export function notePlace(found: FoundPlace): void {
  for (const assumed of found.assumed) note(`assumed: ${wordingText(assumed, 'si')}`)
  for (const warning of found.warnings) note(`warning: ${problemSentence(warning)}`)
  for (const change of found.changed) note(`changed: ${monthChangeText(change)}`)
  note(wordingText(trustLine(found), 'si'))
}

/** The year of that place, with all that was taken for granted said on standard error. */
export function weatherOfPlace(options: Options): WeatherRecord {
  const found = foundPlace(options)
  notePlace(found)
  return answered(studies.year({ found, ...choicesOf(options) }))
}

export function choicesOf({ values }: Options): PlaceChoices {
  return {
    hottest_C: numberOf(values['hottest'], 'hottest'),
    hotSummer: values['hot-summer'] === true,
    another: numberOf(values['another-year'], 'another-year') ?? USUAL_PLACE.another,
  }
}

function askedTown(towns: readonly Town[], asked: string): Omit<PlaceAsked, 'warming_K' | 'own'> {
  const index = indexTowns(towns)
  const [town, ...others] = townsNamed(index, asked, 6)
  if (town === undefined) {
    const like = townsLike(index, asked).map(written)
    throw stop(
      'no-such-town',
      `There is no town called “${asked}” among ${towns.length} of 15 000 people and more.`,
      like.length > 0
        ? `Did you mean ${like.join(', ')}? Or give --at LATITUDE,LONGITUDE.`
        : 'Write it in Latin letters, name a larger town near it, or give --at LATITUDE,LONGITUDE.',
      { field: '--town' },
    )
  }
  note(
    `place: ${written(town)}, ${town.latitude_deg.toFixed(2)}, ${town.longitude_deg.toFixed(2)}, ${town.altitude_m === null ? 'height unknown' : `${town.altitude_m} m`}`,
  )
  const alike = others.filter(({ name }) => name === town.name)
  if (alike.length > 0)
    note(`Other towns of that name: ${alike.map(written).join('; ')}. “Name, CC” chooses by country.`)
  const { name, nativeName, latitude_deg, longitude_deg, altitude_m } = town
  return { name: nativeName ?? name, latitude_deg, longitude_deg, altitude_m }
}

const written = ({ name, nativeName, country }: Town): string => `${nativeName ?? name}, ${country}`

function askedSpot(given: string): Omit<PlaceAsked, 'warming_K'> {
  const parts = given.split(',').map((part) => (part.trim() === '' ? NaN : Number(part)))
  const [latitude_deg, longitude_deg, altitude_m] = parts
  if (parts.length < 2 || parts.length > 3 || parts.some((part) => !Number.isFinite(part)))
    throw stop(
      'bad-at',
      `--at ${given} is not a place.`,
      'Give latitude,longitude in degrees and, where you know it, the height in m: --at 36.1,-79.95,270.',
      { field: '--at' },
    )
  return {
    latitude_deg: latitude_deg!,
    longitude_deg: longitude_deg!,
    altitude_m: altitude_m ?? null,
    name: null,
  }
}

function numberOf(given: unknown, name: string): number | null {
  if (given === undefined) return null
  const value = Number(given)
  if (String(given).trim() !== '' && Number.isFinite(value)) return value
  throw stop('bad-number', `--${name} ${String(given)} is not a number.`, 'Give a number.', {
    field: `--${name}`,
  })
}
