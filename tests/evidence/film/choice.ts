import { board, heatAt, overAir_K, type Moment } from '../models/plate-case.ts'
import { FILM_CASES, type FilmCase } from './cases.ts'

/** Flutter of a single film as shipped, and what is tried beside it. */
export const SHIPPED_FLUTTER = 0.3
const FLUTTERS = [0, 0.15, SHIPPED_FLUTTER, 0.5] as const

/** Foam behind every board, W/m²K in one dimension plus a rim a metre across: 50 mm (references, discs in foam: 0.77). */
const FOAM_Wm2K = 0.77

/**
 * Forced convection on a small rigid board, W/m²K: Nu = 0.86 Re^½ Pr^⅓ (Sparrow, Ramsey & Mass 1979, the constant from
 * memory), air near 20 °C.
 */
export function smallBoard_Wm2K(wind_ms: number, across_m: number): number {
  const reynolds = (wind_ms * across_m) / 15.6e-6
  return (0.86 * Math.sqrt(reynolds) * Math.cbrt(0.71) * 0.0262) / across_m
}

/** What a rig may have besides and no source says of these: tried, never chosen by the cases. */
interface Besides {
  /** Dull walls from plate to film, as warm as the air, hide sky. */
  readonly rim?: true
  /** Loss through leads, pegs and tubing, W/m²K of plate (0.2 to 0.5: common practice, no source). */
  readonly leads_Wm2K?: number
}
const BESIDES: readonly (readonly [string, Besides])[] = [
  ['a dull rim as deep as the gap', { rim: true }],
  ['leads and pegs of 0.35 W/m²K', { leads_Wm2K: 0.35 }],
  ['both', { rim: true, leads_Wm2K: 0.35 }],
]

/** View between equal coaxial discs: 1 + (1 − √(4r² + 1))/(2r²), r radius over distance (Incropera & DeWitt, view factors, from memory). */
export function discView_frac(across_m: number, depth_m: number): number {
  const r = across_m / 2 / depth_m
  return 1 + (1 - Math.sqrt(4 * r * r + 1)) / (2 * r * r)
}

/** Plate (or water) below air by the model, K; `flutter` replaces that of a single film, a still cover keeps its own. */
export function modelledBelow_K(
  one: FilmCase,
  flutter = one.film.flutter_frac,
  { rim, leads_Wm2K = 0 }: Besides = {},
): number {
  const film = one.film.flutter_frac === 0 ? one.film : { ...one.film, flutter_frac: flutter }
  const setting = board(one.coating, film, FOAM_Wm2K + leads_Wm2K, one.across_m / 4)
  const moment: Moment = {
    ...one.moment,
    forced_Wm2K: smallBoard_Wm2K(one.wind_ms, one.across_m),
    skyView_frac: rim ? discView_frac(one.across_m, film.gap_m) : 1,
  }
  const rest_K = -overAir_K(setting, moment)
  if (one.source !== 'goldstein') return rest_K
  const rest_C = moment.air_C - rest_K
  const conductance = heatAt(setting, moment, rest_C + 0.5) - heatAt(setting, moment, rest_C - 0.5)
  const rate = (0.2 / 60) * 4186
  return (1 - Math.exp((-0.92 * conductance) / rate)) * rest_K
}

/** Model less measured, K: positive is too cold; 0 inside a band. */
export function filmError_K(one: FilmCase, flutter?: number, besides?: Besides): number {
  const [low, high] = typeof one.below_K === 'number' ? [one.below_K, one.below_K] : one.below_K
  const ours = modelledBelow_K(one, flutter, besides)
  return ours < low ? ours - low : ours > high ? ours - high : 0
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length

/** Bias and root mean square of the errors, K, and how many lie within 2 K. */
export function filmSummary(errors: readonly number[]): { bias_K: number; rmse_K: number; within: number } {
  return {
    bias_K: mean(errors),
    rmse_K: Math.sqrt(mean(errors.map((error) => error ** 2))),
    within: errors.filter((error) => Math.abs(error) <= 2).length,
  }
}

/** Each case judged by the flutter that is best at all others. */
export function leaveOneCaseOut(): {
  readonly one: FilmCase
  readonly flutter: number
  readonly error_K: number
}[] {
  return FILM_CASES.map((one) => {
    const others = FILM_CASES.filter((other) => other !== one)
    const rmse = (flutter: number) => filmSummary(others.map((other) => filmError_K(other, flutter))).rmse_K
    const flutter = FLUTTERS.reduce((best, next) => (rmse(next) < rmse(best) ? next : best))
    return { one, flutter, error_K: filmError_K(one, flutter) }
  })
}

/** Chosen at one half of the cases, judged at the other: means over all halves of five and six, both ways round. */
export function splitHalf(): { bias_K: number; within_frac: number; halves: number } {
  const table = FLUTTERS.map((flutter) => FILM_CASES.map((one) => filmError_K(one, flutter)))
  const n = FILM_CASES.length
  const judged: { bias_K: number; within_frac: number }[] = []
  for (let mask = 0; mask < 1 << n; mask++) {
    const chooses = FILM_CASES.map((_, k) => ((mask >> k) & 1) === 1)
    const size = chooses.filter(Boolean).length
    if (size !== Math.floor(n / 2) && size !== Math.ceil(n / 2)) continue
    const at = (errors: readonly number[], side: boolean) => errors.filter((_, k) => chooses[k] === side)
    const rmse = (errors: readonly number[]) => filmSummary(at(errors, true)).rmse_K
    const chosen = table.reduce((best, next) => (rmse(next) < rmse(best) ? next : best))
    const { bias_K, within } = filmSummary(at(chosen, false))
    judged.push({ bias_K, within_frac: within / (n - size) })
  }
  return {
    bias_K: mean(judged.map(({ bias_K }) => bias_K)),
    within_frac: mean(judged.map(({ within_frac }) => within_frac)),
    halves: judged.length,
  }
}

const signed = (value: number) => (value < 0 ? '' : '+') + value.toFixed(1)

/** `npm run -s evidence -- film`. */
export function printFilmChoice(): void {
  console.log(
    'Plates under film below the air, K. Error: model − measured, positive too cold; 0 inside a stated band.',
  )
  for (const one of FILM_CASES) {
    const want =
      typeof one.below_K === 'number' ? one.below_K.toFixed(1) : `${one.below_K[0]} to ${one.below_K[1]}`
    console.log(
      `\n${one.name}: measured ${want}${one.fromMemory ? ' (from memory)' : ''}, model ${modelledBelow_K(one).toFixed(1)}, error ${signed(filmError_K(one))}`,
    )
    console.log(`  assumed: ${one.assumed}; wind ${one.wind_ms} m/s, ${one.across_m} m across`)
  }
  const line = (label: string, errors: readonly number[]) => {
    const { bias_K, rmse_K, within } = filmSummary(errors)
    console.log(
      `${label}: bias ${signed(bias_K)} K, RMSE ${rmse_K.toFixed(1)} K, ${within} of ${errors.length} within 2 K`,
    )
  }
  console.log('')
  for (const flutter of FLUTTERS)
    line(
      `flutter ${flutter}${flutter === SHIPPED_FLUTTER ? ' (shipped; not chosen on these cases)' : ''}`,
      FILM_CASES.map((one) => filmError_K(one, flutter)),
    )
  console.log(
    '\nWhat a rig may have besides, with the shipped flutter; not in the model of these cases, not chosen by them:',
  )
  for (const [label, besides] of BESIDES)
    line(
      `  ${label}`,
      FILM_CASES.map((one) => filmError_K(one, SHIPPED_FLUTTER, besides)),
    )
  const left = leaveOneCaseOut()
  console.log('\nLeaving out each case in turn, the flutter that is best at the others:')
  for (const { one, flutter, error_K } of left)
    console.log(`  ${one.name}: ${flutter}, error ${signed(error_K)}`)
  line(
    '  all cases',
    left.map(({ error_K }) => error_K),
  )
  const { bias_K, within_frac, halves } = splitHalf()
  console.log(
    `Chosen at one half, judged at the other, mean of all ${halves} halves: bias ${signed(bias_K)} K, ${(100 * within_frac).toFixed(0)} % within 2 K`,
  )
}
