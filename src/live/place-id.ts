import { stop } from '#model/basis/words'
import type { OwnMonth } from '#model/outdoors/place'

/** A climate made for a place: all that its year depends on, so that a link gives the same year anywhere. */
export interface PlaceClimate {
  readonly latitude_deg: number
  readonly longitude_deg: number
  /** Null: by the town or the places near it. */
  readonly altitude_m: number | null
  /** What the user calls it; null: by the town near it. */
  readonly name: string | null
  readonly warming_K: number | null
  /** Hottest hour of an ordinary year, °C, where it is known. */
  readonly hottest_C: number | null
  readonly hotSummer: boolean
  /** Monthly values of the user's own. */
  readonly own: readonly OwnMonth[]
}

const MARK = 'at:'

/** Letters of the columns in an id, and what a written number is in SI. */
const COLUMNS = [
  { letter: 'T', column: 'airTemp_C', perUnit: 1 },
  { letter: 'R', column: 'dailyRange_K', perUnit: 1 },
  { letter: 'H', column: 'humidity_frac', perUnit: 100 },
  { letter: 'S', column: 'sunshine_frac', perUnit: 100 },
  { letter: 'W', column: 'wind_ms', perUnit: 1 },
] as const

/** True for the id of a place's climate, beside those of samples and of the user's own weather. */
export function isPlaceId(id: string): boolean {
  return id.startsWith(MARK)
}

/** A place by itself, nothing chosen. */
export function plainPlace(
  where: Pick<PlaceClimate, 'latitude_deg' | 'longitude_deg' | 'altitude_m'>,
  name: string | null = null,
): PlaceClimate {
  return { ...where, name, warming_K: null, hottest_C: null, hotSummer: false, own: [] }
}

/** e.g. `at:50.06,19.94,220;name=Krak%C3%B3w;hottest=33;hotSummer;months=T7_24.5`. */
export function placeId(place: PlaceClimate): string {
  const { latitude_deg, longitude_deg, altitude_m, name, warming_K, hottest_C, hotSummer, own } = place
  const where = [latitude_deg, longitude_deg, ...(altitude_m === null ? [] : [altitude_m])]
  return [
    MARK + where.join(','),
    ...(name === null ? [] : [`name=${encodeURIComponent(name)}`]),
    ...(warming_K === null ? [] : [`warming=${warming_K}`]),
    ...(hottest_C === null ? [] : [`hottest=${hottest_C}`]),
    ...(hotSummer ? ['hotSummer'] : []),
    ...(own.length === 0 ? [] : [`months=${own.map(monthWord).join(',')}`]),
  ].join(';')
}

function monthWord({ column, month, value }: OwnMonth): string {
  const { letter, perUnit } = COLUMNS.find((one) => one.column === column)!
  return `${letter}${month + 1}_${Number((value * perUnit).toFixed(3))}`
}

/** @throws ProblemError for an id that `placeId` did not write */
export function readPlaceId(id: string): PlaceClimate {
  const [where = '', ...choices] = id.slice(MARK.length).split(';')
  const [latitude_deg, longitude_deg, altitude_m] = where.split(',').map(numberIn)
  const text = (name: string): string | null =>
    choices.find((choice) => choice.startsWith(`${name}=`))?.slice(name.length + 1) ?? null
  const value = (name: string): number | null => {
    const found = text(name)
    return found === null ? null : numberIn(found)
  }
  const months = text('months')
  const place = {
    latitude_deg: latitude_deg ?? NaN,
    longitude_deg: longitude_deg ?? NaN,
    altitude_m: altitude_m ?? null,
    name: nameIn(text('name')),
    warming_K: value('warming'),
    hottest_C: value('hottest'),
    hotSummer: choices.includes('hotSummer'),
    own: months === null ? [] : months.split(',').map(monthIn),
  }
  const numbers = [...Object.values(place), ...place.own.flatMap(({ month, value: own }) => [month, own])]
  if (!isPlaceId(id) || numbers.some((one) => Number.isNaN(one)))
    throw stop('place-id', `“${id}” is no place.`, 'Pick a town, or give latitude and longitude.')
  return place
}

/** A month of the user's own; NaN for what cannot be read. */
function monthIn(word: string): OwnMonth {
  const [, letter, month, value] = /^([A-Z])(\d{1,2})_(.+)$/.exec(word) ?? []
  const column = COLUMNS.find((one) => one.letter === letter)
  const at = Number(month)
  const known = column !== undefined && at >= 1 && at <= 12
  return {
    column: column?.column ?? 'airTemp_C',
    month: known ? at - 1 : NaN,
    value: numberIn(value ?? '') / (column?.perUnit ?? 1),
  }
}

/** A name that was cut short in a link is left as it is. */
function nameIn(text: string | null): string | null {
  if (text === null) return null
  try {
    return decodeURIComponent(text)
  } catch {
    return text
  }
}

const numberIn = (text: string): number => (text.trim() === '' ? NaN : Number(text))
