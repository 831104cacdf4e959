import type { Profile } from './profile.ts'
import type { Sample } from './sample.ts'

/** The columns taken for the three irradiances, by index, and how sure that is. */
export interface SolarGuess {
  readonly globalHorizontal: number
  readonly directNormal: number | null
  readonly diffuseHorizontal: number | null
  readonly confidence: number
}

/** What counts as dark: share of a column's own high values. */
const DARK_FRAC = 0.015
/** Even the diffuse of one clear winter day reaches this, W/m². */
const DIMMEST_WM2 = 30
/** A triple closes when its root mean square rest is below this share of global's high values. */
const CLOSES_FRAC = 0.08

/** Columns that are dark every night and bright every noon, by the sun where place and time are known. */
export function shortwaveColumns(sample: Sample, profiles: readonly (Profile | null)[]): number[] {
  return profiles.flatMap((profile, index) => {
    if (
      profile === null ||
      profile.constant ||
      profile.high < DIMMEST_WM2 ||
      profile.high > 1500 ||
      profile.low < -30
    )
      return []
    return isDarkAtNight(sample.columns[index]!, profile.high * DARK_FRAC + 4, sample) ? [index] : []
  })
}

function isDarkAtNight(values: Float64Array, dark: number, { perDay, slot, sunSine }: Sample): boolean {
  if (sunSine !== null) {
    let night = 0
    let lit = 0
    let day = 0
    let bright = 0
    values.forEach((value, i) => {
      if (value !== value) return
      const before = sunSine[i - 1] ?? 0
      const after = sunSine[i + 1] ?? 0
      if (sunSine[i] === 0 && before === 0 && after === 0) {
        night += 1
        if (Math.abs(value) > dark) lit += 1
      } else if (sunSine[i]! > 0.2) {
        day += 1
        if (value > dark) bright += 1
      }
    })
    return night > 3 && day > 3 && lit <= night * 0.03 && bright >= day * 0.3
  }
  const darkShare = new Float64Array(perDay)
  const seen = new Float64Array(perDay)
  values.forEach((value, i) => {
    if (value !== value) return
    seen[slot[i]!]! += 1
    if (Math.abs(value) <= dark) darkShare[slot[i]!]! += 1
  })
  const shares = Array.from(darkShare, (count, i) => (seen[i] === 0 ? NaN : count / seen[i]!)).filter(
    (s) => s === s,
  )
  return (
    shares.filter((s) => s > 0.97).length >= perDay / 6 && shares.filter((s) => s < 0.4).length >= perDay / 12
  )
}

/** Assigns global, direct normal and diffuse among the shortwave columns by their closure; null when there are none. */
export function guessSolar(sample: Sample, profiles: readonly (Profile | null)[]): SolarGuess | null {
  const found = shortwaveColumns(sample, profiles)
  if (found.length === 0) return null
  const mean = (index: number): number => profiles[index]!.mean
  const triples: { g: number; b: number; d: number; rest: number }[] = []
  for (const g of found) {
    for (const d of found) {
      if (d === g || mean(d) > mean(g) || !isBelow(sample.columns[d]!, sample.columns[g]!)) continue
      for (const b of found) {
        if (b === g || b === d) continue
        const rest = closureRest(sample, g, b, d) / profiles[g]!.high
        if (rest < CLOSES_FRAC) triples.push({ g, b, d, rest })
      }
    }
  }
  if (triples.length > 0) return bestTriple(triples, sample, mean)
  const [g] = [...found].sort((a, b) => variable(sample, b) - variable(sample, a) || mean(b) - mean(a))
  const below = found.filter((d) => d !== g && isBelow(sample.columns[d]!, sample.columns[g!]!))
  return {
    globalHorizontal: g!,
    directNormal: null,
    diffuseHorizontal: below[0] ?? null,
    confidence: found.length === 1 ? 0.9 : 0.4,
  }
}

function bestTriple(
  triples: readonly { g: number; b: number; d: number; rest: number }[],
  sample: Sample,
  mean: (index: number) => number,
): SolarGuess {
  const least = Math.min(...triples.map(({ rest }) => rest))
  const closest = triples.filter(({ g, rest }) =>
    triples.every((other) => other.g !== g || other.rest >= rest),
  )
  const close = closest.filter(({ rest }) => rest < Math.max(2.5 * least, 0.012))
  const [best] = close.sort((a, b) => mean(a.g) - mean(b.g) || variable(sample, b.g) - variable(sample, a.g))
  const { g, b, d, rest } = best!
  return {
    globalHorizontal: g,
    directNormal: b,
    diffuseHorizontal: d,
    confidence: Math.max(0.5, 1 - rest * 5),
  }
}

function isBelow(lower: Float64Array, upper: Float64Array): boolean {
  let above = 0
  let seen = 0
  lower.forEach((value, i) => {
    if (value !== value || upper[i]! !== upper[i]!) return
    seen += 1
    if (value > upper[i] * 1.1 + 10) above += 1
  })
  return seen > 0 && above < seen * 0.02
}

/** How much a column differs from itself a day later, over its mean: 0 for a sun without weather. */
function variable({ columns, dayBefore }: Sample, index: number): number {
  const values = columns[index]!
  let apart = 0
  let sum = 0
  for (let i = 0; i < values.length; i += 1) {
    const step = Math.abs(values[i]! - (values[dayBefore[i]!] ?? NaN))
    if (step !== step) continue
    apart += step
    sum += values[i]!
  }
  return sum > 0 ? Math.min(0.3, apart / sum) : 0
}

/**
 * Root mean square of global − direct · s − diffuse. The sine s is the sun's where place and time are known; else the
 * one the same hour of the day before would give, which hardly changes from day to day.
 */
function closureRest({ columns, dayBefore, sunSine }: Sample, g: number, b: number, d: number): number {
  const [global, direct, diffuse] = [columns[g]!, columns[b]!, columns[d]!]
  const ratio = (i: number): number => (direct[i]! > 50 ? (global[i]! - diffuse[i]!) / direct[i]! : NaN)
  let square = 0
  let seen = 0
  for (let i = 0; i < global.length; i += 1) {
    const sine = sunSine === null ? ratio(dayBefore[i]!) : sunSine[i]!
    if (!(direct[i]! > 50) || !(sine > 0.1) || sine > 1.1) continue
    const rest = global[i]! - direct[i]! * sine - diffuse[i]!
    if (rest !== rest) continue
    square += rest * rest
    seen += 1
  }
  return seen < 5 ? Infinity : Math.sqrt(square / seen)
}
