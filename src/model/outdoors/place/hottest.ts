import { median } from '#model/basis/numbers'
import { stop } from '#model/basis/words'
import type { Site } from '#model/outdoors/weather'
import type { PlaceMonths } from './months.ts'
import { hottestHour_C } from './year.ts'

/** Years whose median is held to the hottest hour that was given. */
const YEARS = [1, 2, 3, 4, 5]
const LEAST = 0.3
const MOST = 2.5
const STEPS = 3

/**
 * Factor on the day-to-day spread with which the median year's hottest hour is the one given, by false position: the one number
 * that mends what monthly means cannot show.
 * @throws ProblemError when no factor from 0.3 to 2.5 gives it, naming what they give
 */
export function airSpreadFor(
  site: Site,
  months: PlaceMonths,
  airGradient_Kkm: readonly number[] | null,
  hottest_C: number,
): number {
  const median_C = (factor: number): number =>
    median(
      YEARS.map((another) =>
        hottestHour_C(site, months, { another, airSpread_frac: factor, airGradient_Kkm }),
      ),
    )
  let [low, high] = [LEAST, MOST]
  const [coolest_C, hottestPossible_C] = [median_C(low), median_C(high)]
  if (!(hottest_C >= coolest_C && hottest_C <= hottestPossible_C))
    throw stop(
      'hottest-out-of-range',
      `${hottest_C} °C as the hottest hour of an ordinary year does not go with the monthly values of this place.`,
      `They allow ${coolest_C.toFixed(1)} to ${hottestPossible_C.toFixed(1)} °C: check the number, the month means and the height.`,
      { field: 'hottest' },
    )
  let [under_C, over_C] = [coolest_C, hottestPossible_C]
  for (let step = 0; ; step++) {
    const next = low + ((high - low) * (hottest_C - under_C)) / Math.max(1e-9, over_C - under_C)
    if (step === STEPS) return next
    const got_C = median_C(next)
    if (got_C < hottest_C) [low, under_C] = [next, got_C]
    else [high, over_C] = [next, got_C]
  }
}
