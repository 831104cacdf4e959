import type { FoundPlace } from './found.ts'
import { monthTargets, SUMMER_MONTHS, warmestMonths } from './months.ts'
import { daySpreads } from './spreads.ts'

/** Standard deviation of the warmest month's mean at 190 station years, most of them a few km from a held place, K. */
const AT_STATIONS_K = 1.4
/** The same where the user gave the means of the warmest months: a climate table of the town (common practice, no source). */
const OWN_TABLE_K = 0.5
/** More variance by distance, K²/(100 km)², and by difference in height, K²/km². */
const MORE_K2 = { per100km: 0.12, perKm: 4.8 }
/** Standard deviation of the hottest hours of made years against their stations, K. */
const HOT_SPELL_K = 1.2
/** The hottest days in a row lie so many standard deviations over their month. */
const SPELL_OVER_SPREAD = 1.5

/**
 * Standard deviation of a summer's mean over that of its days (0.23 by the days' persistence alone; the rest from memory of
 * records of summer means).
 */
export const SUMMER_frac = 0.35

/** Standard errors of a made year, K: of the month means in any one year, and of the hottest spells over them. */
export interface MadeErrors {
  readonly months_K: number
  readonly hotSpell_K: number
}

/**
 * How far a made year may be off. Months: as against stations, more where the neighbours are far or at other heights (least squares
 * over 2000 places of the climate data, worked out from others 15, 40, 80 and 160 km away and more), and what one summer departs
 * from the ordinary one. Hot spells: as against stations, and more where the two ways to the day-to-day spread disagree.
 */
export function madeErrors(
  { site, nearby, months, changed }: Pick<FoundPlace, 'site' | 'nearby' | 'months' | 'changed'>,
  spreadGiven: boolean,
): MadeErrors {
  const targets = monthTargets(months)
  const warmest = warmestMonths(targets.airTemp_C)
  const spreads = daySpreads(targets, site, nearby.airGradient_Kkm)
  const summer = (values: readonly number[]): number =>
    warmest.reduce((sum, month) => sum + values[month]! / SUMMER_MONTHS, 0)
  const given = (month: number): boolean =>
    changed.some((one) => one.column === 'airTemp_C' && one.month === month)
  const own_K = warmest.every(given) ? OWN_TABLE_K : Math.hypot(AT_STATIONS_K, interpolation_K(nearby))
  const doubt_K = spreadGiven ? 0 : SPELL_OVER_SPREAD * summer(spreads.airDoubt_K)
  return {
    months_K: Math.hypot(own_K, SUMMER_frac * summer(spreads.air_K)),
    hotSpell_K: spreadGiven ? 0.5 * HOT_SPELL_K : Math.hypot(HOT_SPELL_K, doubt_K),
  }
}

function interpolation_K({ neighbours }: FoundPlace['nearby']): number {
  let [far_km, gap_m] = [0, 0]
  for (const { weight, apart_km, higher_m } of neighbours) {
    far_km += weight * apart_km
    gap_m += weight * Math.abs(higher_m)
  }
  return Math.sqrt(MORE_K2.per100km * (far_km / 100) ** 2 + MORE_K2.perKm * (gap_m / 1000) ** 2)
}
