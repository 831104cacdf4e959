import type { WeatherRecord } from '#model/outdoors/weather'
import type { Spread } from './spread.ts'

/** An even draw reaches so many standard deviations to either side. */
const EVEN = Math.sqrt(3)
/** Where nobody gives the errors: against stations, and of a year of mid-latitudes, K. */
const USUAL = { months_K: 1.6, hotSpell_K: 1.2 }
/** Standard deviation of the night deficit of made years, 9.4 of about 67 W/m². */
const DEFICIT_frac = 0.14

/**
 * What is off besides, or by more, where the hours were made from monthly climate: the place method's errors against station
 * years, and how years differ there, as even draws of the same standard deviation.
 * @param ofFile  the ranges for a measured file
 * @param errors  standard errors of month means and hottest spells
 */
export function madeSpreads(
  ofFile: readonly Spread[],
  { months_K, hotSpell_K }: NonNullable<WeatherRecord['madeErrors']> = USUAL,
): readonly Spread[] {
  const endsOf = (field: string, by: 'plus' | 'times') =>
    ofFile.find((spread) => spread.field === field)![by]!
  const [milder_K, hotter_K] = endsOf('site.hotSpell_K', 'plus')
  const middle_K = (milder_K + hotter_K) / 2
  const [less, more] = endsOf('sky.deficitFactor_frac', 'times')
  const spell_K = EVEN * hotSpell_K
  const deficit_frac = Math.hypot(EVEN * DEFICIT_frac, (more - less) / 2)
  return [
    {
      field: 'site.wholeYear_K',
      label: 'Month means of the place',
      plus: [-EVEN * months_K, EVEN * months_K],
      reason:
        'Warmest month of the gridded climate against 190 station years: standard deviation 1.4 K, more where its places are far or at other heights; and a year’s summer departs from the ordinary one by 0.35 of what its days do.',
    },
    {
      field: 'site.hotSpell_K',
      label: 'Hot spells of the place',
      plus: [middle_K - spell_K, middle_K + spell_K],
      reason:
        'Hottest hours of made years against their stations: standard deviation 1.2 K, more where the two ways to the day-to-day spread disagree; about the middle of the range for a measured file, as typical years leave out the hottest.',
    },
    {
      field: 'sky.deficitFactor_frac',
      label: 'Sky radiation and cloud of the place',
      times: [1 - deficit_frac, 1 + deficit_frac],
      reason:
        'Night deficit of made years against their stations: standard deviation 9.4 of about 67 W/m²; and the formulas differ as for a measured file.',
    },
  ]
}
