import { base } from '$app/paths'
import { stop } from '#model/basis/words'
import {
  findPlace,
  indexTowns,
  readClimatePlaces,
  readTowns,
  type ClimatePlaces,
  type FoundPlace,
  type TownIndex,
} from '#model/outdoors/place'
import type { WeatherRecord } from '#model/outdoors/weather'
import { readPlaceId } from '#live/place-id.ts'
import { finish } from '#studies/study.ts'
import { year } from '#studies/year.ts'

/* Loaded only when a place is asked for. */

let towns: Promise<TownIndex> | null = null
let places: Promise<ClimatePlaces> | null = null

/** The towns, fetched once; a failed fetch is tried again when asked again. */
export function heldTowns(): Promise<TownIndex> {
  towns ??= bytesOf('towns.bin').then(
    (bytes) => indexTowns(readTowns(bytes, (part) => new TextDecoder().decode(part))),
    (reason: unknown) => {
      towns = null
      throw reason
    },
  )
  return towns
}

/** The places whose climate is held, fetched once. */
export function heldPlaces(): Promise<ClimatePlaces> {
  places ??= bytesOf('climate-places.bin').then(readClimatePlaces, (reason: unknown) => {
    places = null
    throw reason
  })
  return places
}

async function bytesOf(file: string): Promise<Uint8Array> {
  const response = await fetch(`${base}/places/${file}`).catch(() => null)
  if (!response?.ok)
    throw stop(
      'places-not-loaded',
      'The towns and their climates could not be loaded.',
      'Check the connection and try again; once loaded they work without one.',
    )
  return new Uint8Array(await response.arrayBuffer())
}

/** The place of a climate id. @throws ProblemError for an id that names none */
export async function placeOf(id: string): Promise<FoundPlace> {
  const asked = readPlaceId(id)
  const [index, climate] = await Promise.all([heldTowns(), heldPlaces()])
  return findPlace(climate, index.towns, asked)
}

/** Its hourly year. */
export async function placeRecord(id: string): Promise<WeatherRecord> {
  const { hottest_C, hotSummer } = readPlaceId(id)
  return finish(year(null, { found: await placeOf(id), hottest_C, hotSummer })).result
}
