import { blackbody_Wm2 } from '#model/outdoors/air'
import { isPlausible, plausibleUnit } from './plausible.ts'
import { changesSince, correlation, type Profile } from './profile.ts'
import type { Sample } from './sample.ts'
import type { UnitColumn } from './physics-moist.ts'

export interface ScoredColumn extends UnitColumn {
  /** 0…1. */
  readonly score: number
}

type Profiles = readonly (Profile | null)[]

function free(profiles: Profiles, taken: ReadonlySet<number>): { index: number; profile: Profile }[] {
  return profiles.flatMap((profile, index) =>
    profile === null || taken.has(index) || profile.count < 8 ? [] : [{ index, profile }],
  )
}

function best(scored: readonly ScoredColumn[]): ScoredColumn | null {
  return [...scored].sort((a, b) => b.score - a.score)[0] ?? null
}

/** Pressure: 50 to 110 kPa in some unit, hardly moving. A constant will do when nothing moves. */
export function guessPressure(profiles: Profiles, taken: ReadonlySet<number>): ScoredColumn | null {
  return best(
    free(profiles, taken).flatMap(({ index, profile }) => {
      const unit = plausibleUnit('pressure', profile)
      const spread = profile.deviation / profile.mean
      if (unit === null || unit === 'mmHg' || unit === 'inHg' || spread > 0.03) return []
      const score = profile.constant ? 0.4 : 0.95 - spread * 5 - (profile.roughness > 0.6 ? 0.3 : 0)
      return [{ index, unit, score: score - (unit === 'kPa' ? 0.05 : 0) }]
    }),
  )
}

/** Longwave: 100 to 500 W/m², below what a black body at air temperature sends, following it, alive at night. */
export function guessLongwave(
  sample: Sample,
  profiles: Profiles,
  taken: ReadonlySet<number>,
  air_C: Float64Array,
): ScoredColumn | null {
  return best(
    free(profiles, taken).flatMap(({ index, profile }) => {
      if (!isPlausible('skyLongwave', 'W/m2', profile) || profile.constant) return []
      const values = sample.columns[index]!
      const emissivity = values.map((value, i) => value / blackbody_Wm2(air_C[i]!)).filter((e) => e === e)
      const middle = emissivity.sort()[Math.floor(emissivity.length / 2)] ?? NaN
      const most = emissivity[Math.floor(emissivity.length * 0.99)] ?? NaN
      if (!(middle > 0.5 && middle < 1.02) || most > 1.15 || profile.roughness > 1.2) return []
      return [
        {
          index,
          unit: 'W/m2',
          score: 0.9 - (looksLikeKelvin(values, profile, air_C) ? 0.6 : 0) - Math.max(0, middle - 0.95) * 3,
        },
      ]
    }),
  )
}

/** A temperature in kelvin lies in the same range as longwave, but moves kelvin for kelvin with the air. */
function looksLikeKelvin(values: Float64Array, profile: Profile, air_C: Float64Array): boolean {
  if (profile.low < 210 || profile.high > 335) return false
  const shared = correlation(values, air_C)
  const mean = air_C.reduce((sum, value) => sum + (value === value ? value : 0), 0) / air_C.length
  const deviation = Math.sqrt(
    air_C.reduce((sum, v) => sum + (v === v ? (v - mean) ** 2 : 0), 0) / air_C.length,
  )
  const slope = (shared * profile.deviation) / deviation
  return shared > 0.75 && slope > 0.5 && slope < 1.8 && Math.abs(profile.mean - 273.15 - mean) < 25
}

/** Wind speed: never negative, low middle, a long tail, moving much from hour to hour. */
export function guessWind(profiles: Profiles, taken: ReadonlySet<number>): ScoredColumn | null {
  return best(
    free(profiles, taken).flatMap(({ index, profile }) => {
      if (
        profile.constant ||
        profile.min < 0 ||
        profile.high > 45 ||
        profile.median < 0.05 ||
        profile.max < 1.5
      )
        return []
      const calm = profile.low / profile.median
      const tail = profile.high / profile.median
      const rough = Math.min(1, profile.roughness / 0.35)
      const usual = profile.median > 0.7 && profile.median < 9 ? 1 : 0.6
      const score = 0.9 * usual * rough * (tail > 1.5 && tail < 12 ? 1 : 0.7) * (calm < 0.5 ? 1 : 0.7)
      const coded = profile.whole_frac > 0.99 && profile.max <= 12
      return [{ index, unit: 'm/s', score: coded ? score * 0.3 : score }]
    }),
  )
}

/** Wind direction: 0 to 360, all round; on a short record it may keep to one side, which is little to go by. */
export function guessDirection(profiles: Profiles, taken: ReadonlySet<number>): ScoredColumn | null {
  return best(
    free(profiles, taken).flatMap(({ index, profile }) => {
      if (profile.min < 0 || profile.max > 360 || profile.max < 200 || profile.deviation < 12) return []
      const allRound = profile.max >= 250 && profile.low <= 120 && profile.deviation > 25
      const score = allRound ? Math.min(0.9, 0.4 + profile.roughness) : Math.min(0.35, profile.roughness)
      return [{ index, unit: 'deg', score: score * (profile.zero_frac > 0.3 ? 0.4 : 1) }]
    }),
  )
}

/** Opaque and total cloud: tenths, oktas or percent that are often at an end, darkening the day. */
export function guessClouds(
  sample: Sample,
  profiles: Profiles,
  taken: ReadonlySet<number>,
  global: Float64Array | null,
): { readonly opaque: ScoredColumn | null; readonly total: ScoredColumn | null } {
  const found = free(profiles, taken).flatMap(({ index, profile }): ScoredColumn[] => {
    const unit = plausibleUnit('totalCloud', profile)
    if (unit === null || profile.min > 0 || profile.constant) return []
    const ends = endShare(sample.columns[index]!, unit)
    const full = profile.max > (unit === '%' ? 90 : unit === 'tenths' ? 9 : unit === 'oktas' ? 7 : 0.9)
    if (!full || ends < 0.25 || ends > 0.98 || profile.roughness > 1) return []
    const dims = global === null ? 0 : -dayCorrelation(sample, index, global)
    return dims < 0.1 && global !== null ? [] : [{ index, unit, score: Math.min(0.9, 0.5 + dims) }]
  })
  const [first, second] = found.sort((a, b) => b.score - a.score)
  if (first === undefined) return { opaque: null, total: null }
  if (second === undefined) return { opaque: null, total: first }
  const opaqueFirst = profiles[first.index]!.mean <= profiles[second.index]!.mean
  return opaqueFirst ? { opaque: first, total: second } : { opaque: second, total: first }
}

function endShare(values: Float64Array, unit: string): number {
  const full = unit === '%' ? 100 : unit === 'tenths' ? 10 : unit === 'oktas' ? 8 : 1
  let ends = 0
  let seen = 0
  for (const value of values) {
    if (value !== value) continue
    seen += 1
    if (value <= 0.02 * full || value >= 0.98 * full) ends += 1
  }
  return ends / seen
}

/** Correlation with global at the same time of day, so that day and night do not count. */
function dayCorrelation({ columns, dayBefore }: Sample, index: number, global: Float64Array): number {
  const values = columns[index]!
  const byDay = (of: Float64Array): Float64Array =>
    changesSince(of, dayBefore).map((change, i) => (global[i]! > 30 ? change : NaN))
  return correlation(byDay(values), byDay(global))
}
