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

/** Clear-sky formula of a new design. */
export const SHIPPED_FORMULA: Formula = 'prata1996'

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

/** The candidate that is best at all places but one, and its errors at that one. */
export interface LeftOut {
  readonly place: string
  readonly chosen: Candidate
  readonly errors: NightErrors
}

export function leaveOneOut(all: readonly Candidate[]): LeftOut[] {
  const places = Object.keys(all[0]!.errors)
  return places.map((place) => {
    const others = places.filter((other) => other !== place)
    const chosen = all.reduce((best, one) =>
      pooled_Wm2(one, others) < pooled_Wm2(best, others) ? one : best,
    )
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
  const shipped = all.filter(({ formula }) => formula === SHIPPED_FORMULA)
  for (const [title, from] of [
    ['among all of them', all],
    [`with the formula that is shipped, ${SHIPPED_FORMULA}`, shipped],
  ] as const) {
    console.log(`\nLeaving out each place in turn, the best at the others, ${title}:`)
    const left = leaveOneOut(from)
    for (const { place, chosen, errors } of left)
      console.log(
        `  ${place.padEnd(20)} ${chosen.rule}, ${chosen.clearHours}, ${chosen.formula}: ${figures(errors)}`,
      )
    console.log(`  all places ${overall_Wm2(left).toFixed(1)} W/m²`)
  }
}

/** Root of the mean square over the places, each judged by what the others choose, W/m². */
export function overall_Wm2(left: readonly LeftOut[]): number {
  return Math.sqrt(left.reduce((sum, { errors }) => sum + errors.rmse_Wm2 ** 2, 0) / left.length)
}
