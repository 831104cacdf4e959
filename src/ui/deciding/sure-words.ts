import type { HoursSpread } from '#studies/decide-sure.ts'

/** Drawn in fewer than this share of the draws, a target is rather missed than met. */
const EVEN = 0.5

/** "In practice 5 to 90 h, eight times in ten; the target is met in 12 of 24 years tried …" */
export function sureWords({ low_h, high_h, met_frac, draws }: HoursSpread): string {
  const range = `In practice ${Math.round(low_h)} to ${Math.round(high_h)} h, eight times in ten`
  const met = Math.round(met_frac * draws)
  const often = `the target is met in ${met} of ${draws} years tried with other weather and workmanship`
  return met_frac < EVEN ? `${range}: rather unsure, ${often}.` : `${range}; ${often}.`
}
