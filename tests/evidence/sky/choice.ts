import { CLEAR_SHARE } from '#inside/model/outdoors/intake/derive/cloud.ts'
import {
  CLEAR_HOURS,
  type ClearHours,
  FORMULAS,
  nightErrors,
  nightMeans,
  NIGHT_RULES,
  type Formula,
  type NightErrors,
  type StudyRule,
} from './nights.ts'
import { skySites } from './sites.ts'

/** What a new design has. */
export const SHIPPED = {
  rule: 'meanOfBoth',
  clearHours: CLEAR_SHARE,
  formula: 'matsunobuCoimbraPrata',
} as const satisfies Partial<Candidate>

/**
 * Candidates this near to the best count as equal, W/m² (the smallest place has nine nights). Among them both blends are taken,
 * the mean of the two night rules and of the two formulas: at fourteen other places, not held here, the first had no bad
 * place and the second lay between its two formulas. The margin was set after a first table of these five places was known.
 */
const NEAR_Wm2 = 0.3

/** One way to work out a night's sky, and its errors at every place. */
export interface Candidate {
  readonly rule: StudyRule
  readonly clearHours: ClearHours
  readonly formula: Formula
  readonly errors: Readonly<Record<string, NightErrors>>
}

/** All rules × clear hours × formulas at all places. */
export function candidates(): Candidate[] {
  const sites = skySites()
  return NIGHT_RULES.flatMap((rule) =>
    // Without cloud there are no clear hours to choose.
    (rule === 'none' ? (['formula'] as const) : CLEAR_HOURS).flatMap((clearHours) =>
      (Object.keys(FORMULAS) as Formula[]).map((formula) => ({
        rule,
        clearHours,
        formula,
        errors: Object.fromEntries(
          sites.map((site) => [site.name, nightErrors(nightMeans(site, rule, clearHours, formula))]),
        ),
      })),
    ),
  )
}

/** Root of the mean square over places, each place counting once, W/m². */
export function pooled_Wm2(candidate: Candidate, places: readonly string[]): number {
  return Math.sqrt(
    places.reduce((sum, place) => sum + candidate.errors[place]!.rmse_Wm2 ** 2, 0) / places.length,
  )
}

/** What the procedure takes by its errors at some places: the best, or the best with both blends where that is as good. */
export function chooseBy(all: readonly Candidate[], places: readonly string[]): Candidate {
  const rmse = (one: Candidate) => pooled_Wm2(one, places)
  const least = (some: readonly Candidate[]) =>
    some.reduce((best, one) => (rmse(one) < rmse(best) ? one : best))
  const best = least(all)
  const blends = all.filter(({ rule, formula }) => rule === SHIPPED.rule && formula === SHIPPED.formula)
  const blend = blends.length === 0 ? best : least(blends)
  return rmse(blend) <= rmse(best) + NEAR_Wm2 ? blend : best
}

/** The candidate that is chosen at all places but one, and its errors at that one. */
export interface LeftOut {
  readonly place: string
  readonly chosen: Candidate
  readonly errors: NightErrors
}

export function leaveOneOut(all: readonly Candidate[]): LeftOut[] {
  const places = Object.keys(all[0]!.errors)
  return places.map((place) => {
    const others = places.filter((other) => other !== place)
    const chosen = chooseBy(all, others)
    return { place, chosen, errors: chosen.errors[place]! }
  })
}

/** `npm run -s evidence -- sky`. */
export function printSkyChoice(): void {
  const all = candidates()
  if (all.length === 0 || Object.keys(all[0]!.errors).length === 0) {
    console.log('../shared/data/sky is not there: the choice of the night’s sky cannot be shown here.')
    return
  }
  const places = Object.keys(all[0]!.errors)
  const figures = ({ bias_Wm2, rmse_Wm2, spread }: NightErrors) =>
    `bias ${bias_Wm2.toFixed(1).padStart(5)}, RMSE ${rmse_Wm2.toFixed(1).padStart(4)}, spread ${spread.toFixed(2)}`
  console.log(
    'Nightly mean longwave, model − measured, W/m²; spread: standard deviation of nights over the measured',
  )
  for (const one of all) {
    console.log(
      `\n${one.rule}, clear hours ${one.clearHours}, ${one.formula}: all places ${pooled_Wm2(one, places).toFixed(1)}`,
    )
    for (const place of places)
      console.log(`  ${place.padEnd(20)} ${one.errors[place]!.nights} nights: ${figures(one.errors[place]!)}`)
  }
  console.log('\nClear-sky formulas by place, night rule and clear hours as shipped (bias, RMSE):')
  for (const formula of Object.keys(FORMULAS) as Formula[]) {
    const one = all.find(
      (each) =>
        each.rule === SHIPPED.rule && each.clearHours === SHIPPED.clearHours && each.formula === formula,
    )!
    console.log(
      `  ${formula.padEnd(22)} ${places.map((place) => `${place} ${one.errors[place]!.bias_Wm2.toFixed(1)}, ${one.errors[place]!.rmse_Wm2.toFixed(1)}`).join('; ')}`,
    )
  }
  const said = ({ rule, clearHours, formula }: Candidate) => `${rule}, ${clearHours}, ${formula}`
  console.log(
    `\nThe lowest RMSE is taken, or both blends within ${NEAR_Wm2} W/m² of it. With all places: ${said(chooseBy(all, places))}`,
  )
  console.log('Leaving out each place in turn, what the others choose:')
  const left = leaveOneOut(all)
  for (const { place, chosen, errors } of left)
    console.log(`  ${place.padEnd(20)} ${said(chosen)}: ${figures(errors)}`)
  console.log(`  all places ${overall_Wm2(left).toFixed(1)} W/m²`)
}

/** Root of the mean square over the places, each judged by what the others choose, W/m². */
export function overall_Wm2(left: readonly LeftOut[]): number {
  return Math.sqrt(left.reduce((sum, { errors }) => sum + errors.rmse_Wm2 ** 2, 0) / left.length)
}
