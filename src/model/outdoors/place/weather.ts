import { figure, stop, words, type Wording } from '#model/basis/words'
import type { WeatherRecord } from '#model/outdoors/weather'
import { madeErrors } from './errors.ts'
import type { FoundPlace } from './found.ts'
import { airSpreadFor } from './hottest.ts'
import { placeYear } from './year.ts'

/** What of a place's year is chosen; null: as the monthly values say. */
export interface PlaceChoices {
  /** The hottest hour of an ordinary year, °C, where somebody knows it. */
  readonly hottest_C: number | null
  /** A summer as it comes once in ten years. */
  readonly hotSummer: boolean
  /** 0 the place's own draw; 1, 2, … other years of the same months. */
  readonly another: number
}

export const USUAL_PLACE: PlaceChoices = { hottest_C: null, hotSummer: false, another: 0 }

/** What the year of a place is, and what it is not: for every answer that rests on it. */
export function trustLine({ warming_K }: FoundPlace): Wording {
  return words`Made from the monthly climate of 1961–1990 ${warming_K < 0 ? '−' : '+'} ${figure(Math.abs(warming_K), 'K')}, not from measured hours. It was tried at four places that have a measured year. The panel area came out at 1.1 times and 1.6 times the measured one at two of them, at a fifth of it (far too small, in the mountains, in an unusually hot year) at the third, and at the fourth no area was enough although one was. Three of the four were inside the range given here. With the twelve monthly temperatures of that very year typed in, all four came within a factor of 1.4: type in yours if you have them, and size with a measured hourly file before you build.`
}

/** The same in two sentences: what an area may be off by, and what to do about it. */
export const TRUST_IN_SHORT =
  'Made from monthly means, not from measured hours: where that could be tried, the panel area came out between a fifth of the right one and 1.6 times it, and once none was enough. Type in the monthly temperatures of a recent year below, and size with a measured hourly file before you build.'

/**
 * The hourly year of a place. `madeFrom` marks it, so that its range is drawn wider and every output says what it is.
 * @throws ProblemError for a hottest hour that no spread of days gives
 */
export function placeWeather(found: FoundPlace, choices: PlaceChoices = USUAL_PLACE): WeatherRecord {
  const { site, months, changed, warming_K } = found
  const { airGradient_Kkm } = found.nearby
  if (!(Number.isInteger(choices.another) && choices.another >= 0 && choices.another < 1000))
    throw stop('bad-another-year', `Another year is asked for as ${choices.another}.`, 'Give 0, 1, 2 … 999.')
  const airSpread_frac =
    choices.hottest_C === null ? 1 : airSpreadFor(site, months, airGradient_Kkm, choices.hottest_C)
  const basis = [
    `Made from monthly climate of 1961–1990 (${warming_K < 0 ? '−' : '+'} ${Math.abs(warming_K)} K) at ${site.name}, not measured`,
    choices.hottest_C === null ? '' : `; hottest hour of an ordinary year ${choices.hottest_C} °C`,
    changed.length === 0 ? '' : `; ${changed.length} of its 60 monthly values changed by the user`,
    choices.hotSummer ? '; a summer of one year in ten' : '',
    choices.another === 0 ? '' : `; year ${choices.another}`,
    '. Monthly climate: CRU CL 2.0 (New et al. 2002).',
  ].join('')
  const { hotSummer, another } = choices
  return {
    ...placeYear(site, months, { another, airSpread_frac, airGradient_Kkm, hotSummer, basis }),
    madeFrom: 'months',
    madeErrors: madeErrors(found, choices.hottest_C !== null),
  }
}
