import { stop } from '#model/basis/words'

/** A climate made for a place: all that its year depends on, so that a link gives the same year anywhere. */
export interface PlaceClimate {
  readonly latitude_deg: number
  readonly longitude_deg: number
  /** Null: by the town or the places near it. */
  readonly altitude_m: number | null
  readonly warming_K: number | null
  /** Hottest hour of an ordinary year, °C, where it is known. */
  readonly hottest_C: number | null
  readonly hotSummer: boolean
}

const MARK = 'at:'

/** True for the id of a place's climate, beside those of samples and of the user's own weather. */
export function isPlaceId(id: string): boolean {
  return id.startsWith(MARK)
}

/** e.g. `at:50.06,19.94,220;hottest=33;hotSummer`. */
export function placeId(place: PlaceClimate): string {
  const { latitude_deg, longitude_deg, altitude_m, warming_K, hottest_C, hotSummer } = place
  const where = [latitude_deg, longitude_deg, ...(altitude_m === null ? [] : [altitude_m])]
  return [
    MARK + where.join(','),
    ...(warming_K === null ? [] : [`warming=${warming_K}`]),
    ...(hottest_C === null ? [] : [`hottest=${hottest_C}`]),
    ...(hotSummer ? ['hotSummer'] : []),
  ].join(';')
}

/** @throws ProblemError for an id that `placeId` did not write */
export function readPlaceId(id: string): PlaceClimate {
  const [where = '', ...choices] = id.slice(MARK.length).split(';')
  const [latitude_deg, longitude_deg, altitude_m] = where.split(',').map(numberIn)
  const value = (name: string): number | null => {
    const found = choices.find((choice) => choice.startsWith(`${name}=`))
    return found === undefined ? null : numberIn(found.slice(name.length + 1))
  }
  const place = {
    latitude_deg: latitude_deg ?? NaN,
    longitude_deg: longitude_deg ?? NaN,
    altitude_m: altitude_m ?? null,
    warming_K: value('warming'),
    hottest_C: value('hottest'),
    hotSummer: choices.includes('hotSummer'),
  }
  if (!isPlaceId(id) || Object.values(place).some((one) => Number.isNaN(one)))
    throw stop('place-id', `“${id}” is no place.`, 'Pick a town, or give latitude and longitude.')
  return place
}

const numberIn = (text: string): number => (text.trim() === '' ? NaN : Number(text))
