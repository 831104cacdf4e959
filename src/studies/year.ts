import { placeWeather, USUAL_PLACE, type FoundPlace, type PlaceChoices } from '#model/outdoors/place'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Study } from './study.ts'

/** A place, and what of its year is chosen; the rest is usual. */
export type AskedYear = { readonly found: FoundPlace } & Partial<PlaceChoices>

/** The hourly year of a place, marked as made from monthly values. */
export function* year(_stages: unknown, q: AskedYear): Study<WeatherRecord> {
  const {
    found,
    hottest_C = USUAL_PLACE.hottest_C,
    hotSummer = USUAL_PLACE.hotSummer,
    another = USUAL_PLACE.another,
  } = q
  return { result: placeWeather(found, { hottest_C, hotSummer, another }), remarks: [] }
}
