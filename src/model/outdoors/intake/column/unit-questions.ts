import { QUANTITIES, type Quantity, type Unit } from './quantity.ts'
import { isPlausible } from './plausible.ts'
import type { Profile } from './profile.ts'
import { conversion } from './unit.ts'

/** A unit that nobody named and values do not settle: what was taken, and what fits as well. */
export interface UnitQuestion {
  readonly quantity: Quantity
  readonly header: string
  readonly taken: Unit
  /** Every unit that fits, with the column's mean in our units. */
  readonly fitting: readonly { readonly unit: Unit; readonly mean: number }[]
}

/** Quantities whose wrong unit would pass unseen. */
const ASKED: readonly Quantity[] = ['airTemp', 'windSpeed', 'globalHorizontal']
/** Units so rare that a table that uses one names it. */
const NAMED_ONLY: readonly Unit[] = ['Ly', 'Ly/day', 'cal/cm2min', 'J/m2', 'Wh/m2']
/** Mean wind over a record, m/s: between a calm valley and an exposed ridge (common practice, no source). */
const WIND_MS = [0.5, 12] as const
/**
 * Yearly mean temperature by latitude, °C: 27 at the equator, 0.75 K less for each degree beyond 15, within 16 K for height
 * and season (common practice, no source).
 */
const WARMEST_C = 27
const FALL_K_DEG = 0.75
const WITHIN_K = 16
/** The strongest sunshine of a record, W/m²: clear noon of a summer or of a winter month. */
const STRONGEST_Wm2 = [350, 1250] as const

/**
 * The question a column without a named unit raises, or null when only one unit fits. Physics alone decides where only one
 * unit can be meant, never where two can.
 */
export function unitQuestion(
  quantity: Quantity,
  header: string,
  taken: Unit,
  profile: Profile,
  latitude_deg: number | undefined,
): UnitQuestion | null {
  const fitting = fittingUnits(quantity, profile, latitude_deg)
  const meanings = new Set(fitting.map(({ mean }) => mean.toPrecision(3)))
  return meanings.size < 2 ? null : { quantity, header, taken, fitting }
}

/** Units of a quantity that go with a column's values and the place; none for quantities not asked about. */
export function fittingUnits(
  quantity: Quantity,
  profile: Profile,
  latitude_deg: number | undefined,
): UnitQuestion['fitting'] {
  if (!ASKED.includes(quantity)) return []
  return (QUANTITIES[quantity].units as readonly Unit[]).flatMap((unit) => {
    if (NAMED_ONLY.includes(unit)) return []
    const { factor, offset } = conversion(quantity, unit)
    const inside = (value: number): number => value * factor + offset
    const mean = inside(profile.mean)
    const fits =
      isPlausible(quantity, unit, profile) && isUsual(quantity, mean, inside(profile.high), latitude_deg)
    return fits ? [{ unit, mean }] : []
  })
}

function isUsual(quantity: Quantity, mean: number, high: number, latitude_deg: number | undefined): boolean {
  if (quantity === 'windSpeed') return mean >= WIND_MS[0] && mean <= WIND_MS[1]
  if (quantity === 'globalHorizontal') return high >= STRONGEST_Wm2[0] && high <= STRONGEST_Wm2[1]
  if (quantity === 'airTemp' && latitude_deg !== undefined) {
    const usual_C = WARMEST_C - FALL_K_DEG * Math.max(0, Math.abs(latitude_deg) - 15)
    return Math.abs(mean - usual_C) <= WITHIN_K
  }
  return true
}

/** Names of open networks and services whose units are fixed by their own rules: SI. */
const FIXED =
  /^(WS(_F|_\d+_\d+_\d+)|TA(_F|_ERA)?|SW_IN\w*|WindSpeed10m|AirTemp|Ghi|wind_?speed_?10m|WS10M|T2M|ALLSKY\w*)$/

export const isFixedName = (header: string): boolean => FIXED.test(header)

/** In a sentence, with every reading's mean. */
export function questionSentence({ quantity, header, taken, fitting }: UnitQuestion): string {
  const own = QUANTITIES[quantity].units[0]
  const means = fitting.map(({ unit, mean }) => `${unit} (mean ${mean.toFixed(1)} ${own})`).join(' or ')
  return `"${header}" is ${QUANTITIES[quantity].label.toLowerCase()} without a unit: ${means} fit its values; ${taken} was taken.`
}
