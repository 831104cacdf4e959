import { figure, said, stop, words, type Problem, type Wording } from '#model/basis/words'
import type { Site } from '#model/outdoors/weather'
import { placeMonths, usualWarming_K, type PlaceMonths } from './months.ts'
import { withOwnMonths, type ChangedMonth, type OwnMonth } from './own-months.ts'
import { nearbyClimate, usualAltitude_m, type NearbyClimate } from './nearest.ts'
import type { ClimatePlaces } from './pack.ts'
import { apart_km } from './spot.ts'
import { standardOffset_h } from './zone.ts'
import type { Town } from './towns.ts'

/** A place as asked for; null: not given. */
export interface PlaceAsked {
  readonly latitude_deg: number
  readonly longitude_deg: number
  readonly altitude_m: number | null
  readonly name: string | null
  /** Added to the means of 1961–1990; null: as usual for the latitude. */
  readonly warming_K: number | null
  /** Values of the user's own in place of those held; they are taken as they are, not warmed. */
  readonly own?: readonly OwnMonth[]
}

/** A place with its twelve monthly values, what was taken for granted, and what to beware of. */
export interface FoundPlace {
  readonly site: Site
  readonly nearby: NearbyClimate
  /** The months the year is made from, and those that are held for the place. */
  readonly months: PlaceMonths
  readonly heldMonths: PlaceMonths
  /** Where the first differ from the second. */
  readonly changed: readonly ChangedMonth[]
  readonly warming_K: number
  readonly assumed: readonly Wording[]
  readonly warnings: readonly Problem[]
}

/** A town so near gives its height and its time zone, km. */
const SAME_TOWN_KM = 15
const SAME_ZONE_KM = 400
/** Beyond this the nearest place says little, km; and beyond this difference in height, m. */
const FAR_KM = 75
const FAR_M = 300
/** Neighbours that differ more from each other are on steep ground, m. */
const STEEP_M = 600

/** @throws ProblemError for coordinates that are none, or where no climate is held */
export function findPlace(places: ClimatePlaces, towns: readonly Town[], asked: PlaceAsked): FoundPlace {
  checkAsked(asked)
  const { latitude_deg, longitude_deg } = asked
  const assumed: Wording[] = []
  const town = nearestTown(towns, asked)
  const townIsHere = town !== null && town.far_km <= SAME_TOWN_KM
  let altitude_m = asked.altitude_m
  if (altitude_m === null && townIsHere) altitude_m = town.town.altitude_m
  const ofTown = altitude_m !== null
  if (altitude_m === null) {
    altitude_m = Math.round(usualAltitude_m(places, asked))
  }
  if (asked.altitude_m === null)
    assumed.push(
      words`Height taken as ${figure(altitude_m, 'm')}${ofTown ? '' : townIsHere ? ', that of the nearest places: the town’s own is not held' : ', that of the nearest places'}.`,
    )
  const zoned = town !== null && town.far_km <= SAME_ZONE_KM
  const utcOffset_h = zoned ? standardOffset_h(town.town.zone) : Math.round(longitude_deg / 15)
  assumed.push(
    words`Local standard time taken as UTC${utcOffset_h < 0 ? ' − ' : ' + '}${figure(Math.abs(utcOffset_h), 'h')}${zoned ? '' : ', by the longitude'}.`,
  )
  const warming_K = asked.warming_K ?? usualWarming_K(latitude_deg)
  const name =
    asked.name ??
    (townIsHere
      ? town.town.name
      : `${Math.abs(latitude_deg).toFixed(2)}° ${latitude_deg < 0 ? 'S' : 'N'}, ${Math.abs(longitude_deg).toFixed(2)}° ${longitude_deg < 0 ? 'W' : 'E'}`)
  const site: Site = { name, latitude_deg, longitude_deg, altitude_m, utcOffset_h }
  const nearby = nearbyClimate(places, { latitude_deg, longitude_deg, altitude_m })
  const heldMonths = placeMonths(nearby, warming_K)
  return {
    site,
    nearby,
    heldMonths,
    ...withOwnMonths(heldMonths, asked.own ?? []),
    warming_K,
    assumed,
    warnings: warningsOf(nearby),
  }
}

function checkAsked({ latitude_deg, longitude_deg, altitude_m, warming_K }: PlaceAsked): void {
  const checks: readonly (readonly [string, number | null, number, number, string])[] = [
    ['latitude', latitude_deg, -90, 90, '°'],
    ['longitude', longitude_deg, -180, 180, '°'],
    ['height', altitude_m, -430, 6000, ' m'],
    ['warming', warming_K, -3, 6, ' K'],
  ]
  for (const [name, value, least, most, unit] of checks)
    if (value !== null && !(value >= least && value <= most))
      throw stop(
        'place-out-of-range',
        `The ${name} of the place is ${value}${unit}.`,
        `Give a number from ${least} to ${most}${unit}.`,
        { field: name },
      )
}

function nearestTown(
  towns: readonly Town[],
  { latitude_deg, longitude_deg }: PlaceAsked,
): { readonly town: Town; readonly far_km: number } | null {
  let best: { town: Town; far_km: number } | null = null
  for (const town of towns) {
    if (Math.abs(town.latitude_deg - latitude_deg) > 5) continue
    const far_km = apart_km({ latitude_deg, longitude_deg }, town.latitude_deg, town.longitude_deg)
    if (best === null || far_km < best.far_km) best = { town, far_km }
  }
  return best
}

function warningsOf({ neighbours }: NearbyClimate): Problem[] {
  const nearest = neighbours.toSorted((a, b) => a.apart_km - b.apart_km)[0]!
  const heaviest = neighbours.toSorted((a, b) => b.weight - a.weight)[0]!
  const warn = (code: string, message: Wording, remedy: string): Problem => ({
    code,
    severity: 'warning',
    ...said(message),
    remedy,
    place: {},
  })
  const found: Problem[] = []
  if (nearest.apart_km > FAR_KM)
    found.push(
      warn(
        'place-far',
        words`The nearest place whose climate is held is ${`${Math.round(nearest.apart_km)} km`} away.`,
        'Expect the answer to be further off than stated; a measured file matters more here.',
      ),
    )
  if (Math.abs(heaviest.higher_m) > FAR_M)
    found.push(
      warn(
        'place-height',
        words`The place that counts most lies ${figure(Math.abs(heaviest.higher_m), 'm', 2)} ${heaviest.higher_m > 0 ? 'higher' : 'lower'}; only the mean temperature was moved to your height.`,
        'Check the month means against a climate table of your town, and change them where they differ.',
      ),
    )
  const heights = neighbours.filter(({ weight }) => weight > 0.05).map(({ altitude_m }) => altitude_m)
  if (Math.max(...heights) - Math.min(...heights) > STEEP_M)
    found.push(
      warn(
        'place-steep',
        words`The places around differ by ${figure(Math.max(...heights) - Math.min(...heights), 'm', 2)} in height: valleys and slopes have climates of their own.`,
        'Check the month means against a climate table of your town, and change them where they differ.',
      ),
    )
  return found
}
