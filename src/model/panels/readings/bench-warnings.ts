import type { BenchFit } from './bench-fit.ts'
import type { BenchReadings, WindClass } from './reading.ts'
import { unknownName, type BenchUnknown } from './unknowns.ts'
import type { FitResult } from '#model/basis/numbers'
import type { Problem } from '#model/basis/words'

/** A number is called unseen when the readings left more than this share of its first uncertainty. */
const UNSEEN_SHARE = 0.85
/** Two numbers are called tied when their errors go together this closely and one of them is still loose. */
const TIED_CORRELATION = 0.85
const LOOSE_SHARE = 0.5
/** Readings that scatter this many times more than stated are doubted. */
const DOUBTFUL_SCATTER = 1.6

/** What the readings cannot decide, in words, from the covariance of the fit. */
export function benchWarnings(readings: BenchReadings, fit: BenchFit, result: FitResult): Problem[] {
  return [
    ...dewWarning(readings, fit),
    ...sameCondition(readings, fit),
    ...unseen(readings, fit, result),
    ...windUnseen(readings, fit, result),
    ...tiedToWind(readings, fit, result),
    ...tiedWithin(readings, fit, result),
    ...atLimit(readings, fit, result),
    ...scatterWarning(result),
    ...referenceWarning(readings, fit, result),
  ]
}

/** Share of the first uncertainty that is left, per unknown. */
function leftShare(fit: BenchFit, result: FitResult, k: number): number {
  return result.standardErrors[k]! / fit.parameters[k]!.priorSd
}

function correlation(result: FitResult, i: number, j: number): number {
  return result.covariance.get(i, j) / (result.standardErrors[i]! * result.standardErrors[j]!)
}

function isOpen(readings: BenchReadings, unknown: BenchUnknown): boolean {
  return unknown.kind !== 'wind' && readings.samples[unknown.sample]!.known === null
}

function dewWarning(readings: BenchReadings, fit: BenchFit): Problem[] {
  const all = readings.moments.reduce((sum, moment) => sum + moment.surfaces.length, 0)
  const wet = all - fit.rows.length
  if (wet === 0) return []
  return [
    warning(
      'bench-wet',
      `${wet} of ${all} surface readings lie at or below the dew point and were left out: dew radiates as water does and hides the paint.`,
      'Read on a drier night, or earlier in the evening.',
    ),
  ]
}

function sameCondition(readings: BenchReadings, fit: BenchFit): Problem[] {
  const used = new Set(fit.rows.map((row) => row.moment))
  const kinds = new Set([...used].map((i) => `${readings.moments[i]!.light}, ${readings.moments[i]!.wind}`))
  if (kinds.size > 1) return []
  return [
    warning(
      'bench-one-condition',
      'All readings were taken in one condition, so errors of sky, wind and meter go straight into the result.',
      'Add a reading in another light: sun and night together show most.',
    ),
  ]
}

function unseen(readings: BenchReadings, fit: BenchFit, result: FitResult): Problem[] {
  const light = new Set(fit.rows.map((row) => readings.moments[row.moment]!.light))
  const found: Problem[] = []
  for (const kind of ['reflectance', 'emittance'] as const) {
    const names = fit.unknowns
      .filter((u, k) => u.kind === kind && isOpen(readings, u) && leftShare(fit, result, k) > UNSEEN_SHARE)
      .map((u) => unknownName(u, readings.samples))
    if (names.length === 0) continue
    const dark = kind === 'reflectance' && !light.has('sun')
    const why = !dark
      ? ''
      : light.has('shade')
        ? ' Shade has too little sunlight to show it.'
        : ' At night there is no sunlight to reflect: night readings say nothing about solar reflectance.'
    found.push(
      warning(
        kind === 'reflectance' ? 'bench-reflectance-unseen' : 'bench-emittance-unseen',
        `The readings say next to nothing about ${inWords(names)}.${why}`,
        kind === 'reflectance'
          ? 'Read all samples in full sun, with a reference paint beside them.'
          : 'Read all samples on a clear, dry, calm night.',
      ),
    )
  }
  return found
}

function tiedToWind(readings: BenchReadings, fit: BenchFit, result: FitResult): Problem[] {
  const found: Problem[] = []
  fit.unknowns.forEach((wind, w) => {
    if (wind.kind !== 'wind') return
    const tied = fit.unknowns.filter((u, k) => {
      if (!isOpen(readings, u)) return false
      const loose = Math.max(leftShare(fit, result, k), leftShare(fit, result, w)) > LOOSE_SHARE
      return loose && Math.abs(correlation(result, k, w)) > TIED_CORRELATION
    })
    if (tied.length === 0) return
    const names = tied.map((u) => unknownName(u, readings.samples))
    found.push(
      warning(
        'bench-wind-tied',
        `The readings cannot separate ${inWords(names)} from ${unknownName(wind, readings.samples)}.${bareReason(readings, fit, wind.wind)}`,
        'Add a reference paint of known optics, a reading under film, or one in another wind.',
      ),
    )
  })
  return found
}

/** Bare samples alone do not show the wind they share. */
function windUnseen(readings: BenchReadings, fit: BenchFit, result: FitResult): Problem[] {
  const found: Problem[] = []
  fit.unknowns.forEach((wind, w) => {
    if (wind.kind !== 'wind' || leftShare(fit, result, w) <= UNSEEN_SHARE) return
    const reason = bareReason(readings, fit, wind.wind)
    if (reason === '') return
    found.push(
      warning(
        'bench-wind-unseen',
        `The readings say next to nothing about ${unknownName(wind, readings.samples)}.${reason}`,
        'The difference between the coatings is sound; for their levels add a reference paint of known optics or a reading under film.',
      ),
    )
  })
  return found
}

/** Why bare samples alone do not show the wind; empty where something else is beside them. */
function bareReason(readings: BenchReadings, fit: BenchFit, wind: WindClass): string {
  const rows = fit.rows.filter((row) => readings.moments[row.moment]!.wind === wind)
  const bare = rows.every((row) => row.surface.cover === 'bare')
  const reference = rows.some((row) => readings.samples[row.surface.sample]!.known !== null)
  const several = new Set(rows.map((row) => row.surface.sample)).size > 1
  if (!bare || reference || !several) return ''
  return ' Bare samples side by side feel the same wind, so comparing them cancels it.'
}

function tiedWithin(readings: BenchReadings, fit: BenchFit, result: FitResult): Problem[] {
  const found: Problem[] = []
  readings.samples.forEach((sample, i) => {
    if (sample.known !== null) return
    const [r, e] = [2 * i, 2 * i + 1]
    const loose = Math.max(leftShare(fit, result, r), leftShare(fit, result, e)) > LOOSE_SHARE
    if (!loose || Math.abs(correlation(result, r, e)) <= TIED_CORRELATION) return
    found.push(
      warning(
        'bench-optics-tied',
        `The readings cannot separate the solar reflectance of ${sample.name} from its emittance.`,
        'Add a night reading: without sun only the emittance is left.',
      ),
    )
  })
  return found
}

/** A property that came to rest at its physical limit: the interval is one-sided there. */
function atLimit(readings: BenchReadings, fit: BenchFit, result: FitResult): Problem[] {
  const names = fit.unknowns
    .filter((u, k) => isOpen(readings, u) && result.values[k]! >= fit.parameters[k]!.max - 1e-6)
    .map((u) => unknownName(u, readings.samples))
  if (names.length === 0) return []
  return [
    warning(
      'bench-at-limit',
      `The readings put ${inWords(names)} at 1, which no surface reaches: take the lower end of the interval as the safe value.`,
      'Check the air temperature (in shade, moving air) and the cloud; another clear night narrows it.',
    ),
  ]
}

function scatterWarning(result: FitResult): Problem[] {
  const scatter = Math.sqrt(result.scale)
  if (scatter < DOUBTFUL_SCATTER) return []
  return [
    warning(
      'bench-scatter',
      `The readings scatter ${scatter.toFixed(1)} times more than their stated errors; the intervals were widened.`,
      'Look for a slip of the pen, a passing cloud, a sample that had not settled, or a warm hand on the board.',
    ),
  ]
}

function referenceWarning(readings: BenchReadings, fit: BenchFit, result: FitResult): Problem[] {
  const found: Problem[] = []
  fit.unknowns.forEach((unknown, k) => {
    if (unknown.kind === 'wind' || isOpen(readings, unknown)) return
    const { priorMean, priorSd } = fit.parameters[k]!
    if (Math.abs(result.values[k]! - priorMean) < 2 * priorSd) return
    found.push(
      warning(
        'bench-reference',
        `The readings put ${unknownName(unknown, readings.samples)} at ${result.values[k]!.toFixed(2)}, far from the ${priorMean.toFixed(2)} it was taken for.`,
        'Check the reference: its age, its dirt, or the reading beside it.',
      ),
    )
  })
  return found
}

/** a, b and c. */
function inWords(names: readonly string[]): string {
  if (names.length <= 1) return names.join('')
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}

function warning(code: string, message: string, remedy: string): Problem {
  return { code, severity: 'warning', message, remedy, place: {} }
}
