import type { Yardstick } from '#model/design/target'
import type { Limit, LimitCause, LimitShare } from './result.ts'
import { figure, words, type Wording } from '#model/basis/words'
import type { YearInputs, YearResult } from '#model/building/year'

/** Of the causes, in words: heat that comes in by nature, limits of the plant as what lifting them would be. */
export const LIMIT_NAMES: Readonly<Record<LimitCause, string>> = {
  walls: 'walls',
  roof: 'roof',
  floor: 'floor',
  sunGain: 'windows and sun',
  airChange: 'outdoor air',
  gains: 'people and machines',
  dewPoint: 'dew point',
  store: 'store, against twice the size',
  delivery: 'delivery, against twice the size',
  sky: 'panels, against twice the area',
}

/** Sunlight that a common white paint sends back (common practice, no source): who has as much gains nothing by painting. */
export const WHITE_frac = 0.8
export const isPainted = (reflectance_frac: number): boolean => reflectance_frac >= WHITE_frac

/** Hours around the worst one that are looked at. */
const AROUND_h = 12

/** The hour furthest over its limit. */
export function worstHour(year: YearResult, stick: Yardstick): number {
  let worst = 0
  let over_K = -Infinity
  for (let h = 0; h < year.hours; h++) {
    const above_K = year.room_C[h]! - stick.limit_C[h]!
    if (above_K > over_K) {
      over_K = above_K
      worst = h
    }
  }
  return worst
}

/** Names what keeps the room from being cooler in its worst hours: the largest of the shares, in a sentence. */
export function limitOf(
  year: YearResult,
  inputs: YearInputs,
  shares: readonly LimitShare[],
  worst: number,
  roofReflectance_frac: number,
): Limit {
  const { cause, share_K } = shares.reduce((most, one) => (one.share_K > most.share_K ? one : most))
  const hours = Array.from({ length: 2 * AROUND_h + 1 }, (_, k) => worst - AROUND_h + k).filter(
    (h) => h >= 0 && h < year.hours,
  )
  const mean = (column: Float64Array): number => hours.reduce((sum, h) => sum + column[h]!, 0) / hours.length
  const { room, plant } = inputs
  return {
    cause,
    shares,
    sentence: SENTENCES[cause]({
      share_K,
      painted: isPainted(roofReflectance_frac),
      lowestSurface_C: mean(room.indoorDewPoint_C) + (plant?.store.dewMargin_K ?? 0),
      colder_K: mean(year.room_C) - mean(plant === null ? year.room_C : year.storeBottom_C),
      room_C: mean(year.room_C),
    }),
  }
}

interface Seen {
  /** The roof is white already. */
  readonly painted: boolean
  readonly share_K: number
  readonly lowestSurface_C: number
  readonly colder_K: number
  readonly room_C: number
}

/** `… 1.2 K of the hottest hour: …` */
const ofHottest =
  (makes: string, advice: string) =>
  ({ share_K }: Seen): Wording => [`${makes} `, figure(share_K, 'K'), ` of the hottest hour: ${advice}`]

/** A share of one hour is no verdict on the year: insulation, for one, also keeps in what people, machines and sun bring. */
const TRIED = 'The step “Cooling” works out what each of them brings in a whole year.'

const SENTENCES: Readonly<Record<LimitCause, (seen: Seen) => Wording>> = {
  walls: ofHottest(
    'Heat through the walls makes',
    `shade, white paint or insulation would lower it. ${TRIED}`,
  ),
  roof: (seen) =>
    ofHottest(
      'Heat through the roof makes',
      `${seen.painted ? 'it is painted white already; insulation' : 'white paint or insulation'} would lower it. ${TRIED}`,
    )(seen),
  floor: ofHottest('Heat from the floor makes', `insulation under it would lower it. ${TRIED}`),
  sunGain: ofHottest(
    'Windows, and the sunlight through them, make',
    `outside shade would lower it. ${TRIED}`,
  ),
  airChange: ofHottest('Outdoor air that comes in makes', `fewer leaks by day would lower it. ${TRIED}`),
  gains: ofHottest('People and machines make', 'take out what need not run there.'),
  dewPoint: ({ lowestSurface_C }) =>
    words`Humid air: the indoor dew point and its margin keep cooled surfaces at ${figure(lowestSurface_C, 'C')} or above, however cold the store is.`,
  store: ({ share_K }) =>
    words`The store holds too little for the hottest days: one that holds more, or may get colder, would take ${figure(share_K, 'K')} off.`,
  delivery: ({ colder_K }) =>
    words`The store is ${figure(colder_K, 'K')} colder than the room, but the delivery cannot carry it over: a larger fan coil or cooled ceiling helps more than panel.`,
  sky: ({ room_C }) =>
    words`In the worst days the nights are too warm, cloudy or humid for the sky to take more: the store never gets far below the room’s ${figure(room_C, 'C')}.`,
}
