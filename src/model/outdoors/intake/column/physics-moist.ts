import { relativeHumidity_frac } from '#model/outdoors/air'
import { plausibleUnit } from './plausible.ts'
import { changesSince, correlation, type Profile } from './profile.ts'
import type { Unit } from './quantity.ts'
import type { Sample } from './sample.ts'
import { conversion } from './unit.ts'

export interface UnitColumn {
  readonly index: number
  readonly unit: Unit
}
/** The columns taken for air temperature, dew point and humidity, and how sure that is. */
export interface MoistGuess {
  readonly airTemp: UnitColumn
  readonly dewPoint: UnitColumn | null
  readonly relativeHumidity: UnitColumn | null
  readonly confidence: number
}

interface Candidate extends UnitColumn {
  readonly values: Float64Array
  /** Change in an hour. */
  readonly changes: Float64Array
}

/** A triple fits when humidity from the dew point agrees with the column to this root mean square, %. */
const FITS_RMS = 4

/** Air temperature, dew point and humidity found together: the three determine each other; two go against each other. */
export function guessMoist(
  sample: Sample,
  profiles: readonly (Profile | null)[],
  taken: ReadonlySet<number>,
): MoistGuess | null {
  const warm = candidates(sample, profiles, taken, ['C', 'K'], 'airTemp')
  const humid = candidates(sample, profiles, taken, ['%', 'frac'], 'relativeHumidity')
  const triple = bestTriple(warm, humid)
  if (triple !== null) return triple
  const below = bestBelow(warm)
  let best: { score: number; guess: MoistGuess } | null = null
  for (const air of warm) {
    for (const humidity of humid) {
      if (humidity.index === air.index) continue
      const against = -correlation(air.changes, humidity.changes)
      const score = against + (air.unit === 'C' ? 0.15 : 0) - (hasTwin(air, warm) ? 0.3 : 0)
      if (best === null || score > best.score) {
        best = {
          score,
          guess: {
            airTemp: air,
            dewPoint: null,
            relativeHumidity: humidity,
            confidence: Math.min(0.9, Math.max(0.2, against)),
          },
        }
      }
    }
  }
  if (below !== null && (best === null || best.score < 0.35)) return below
  if (best !== null) return best.guess
  return warm.length === 0
    ? null
    : { airTemp: warm[0]!, dewPoint: null, relativeHumidity: null, confidence: 0.3 }
}

/** True when another column says nearly the same: the case and dome of one instrument, or one water twice. */
function hasTwin(one: Candidate, warm: readonly Candidate[]): boolean {
  return warm.some((other) => {
    if (other.index === one.index || other.unit !== one.unit) return false
    const apart = one.values
      .map((value, i) => Math.abs(value - other.values[i]!))
      .filter((step) => step === step)
    const mean = apart.reduce((sum, step) => sum + step, 0) / apart.length
    return mean < 0.06 * spread(one.values)
  })
}

function spread(values: Float64Array): number {
  const known = values.filter((value) => value === value).sort()
  return known[Math.floor(known.length * 0.9)]! - known[Math.floor(known.length * 0.1)]!
}

function candidates(
  sample: Sample,
  profiles: readonly (Profile | null)[],
  taken: ReadonlySet<number>,
  units: readonly Unit[],
  quantity: 'airTemp' | 'relativeHumidity',
): Candidate[] {
  return profiles.flatMap((profile, index) => {
    if (profile === null || taken.has(index) || profile.constant || profile.count < 8) return []
    const unit = plausibleUnit(quantity, profile)
    if (unit === null || !units.includes(unit)) return []
    if (quantity === 'relativeHumidity' && profile.deviation < (unit === 'frac' ? 0.015 : 1.5)) return []
    if (quantity === 'airTemp' && (profile.deviation < 0.3 || profile.roughness > 0.9)) return []
    const { factor, offset } = conversion(quantity, unit)
    const values = sample.columns[index]!.map((value) => value * factor + offset)
    return [{ index, unit, values, changes: changesSince(values, sample.hourBefore) }]
  })
}

function bestTriple(warm: readonly Candidate[], humid: readonly Candidate[]): MoistGuess | null {
  let best: { rms: number; guess: MoistGuess } | null = null
  for (const air of warm) {
    for (const dew of warm) {
      if (dew.index === air.index || !staysBelow(dew.values, air.values)) continue
      for (const humidity of humid) {
        if (humidity.index === air.index || humidity.index === dew.index) continue
        const rms = humidityRms(air.values, dew.values, humidity.values)
        if (rms < FITS_RMS && (best === null || rms < best.rms)) {
          best = {
            rms,
            guess: { airTemp: air, dewPoint: dew, relativeHumidity: humidity, confidence: 1 - rms / 20 },
          }
        }
      }
    }
  }
  return best?.guess ?? null
}

function humidityRms(air: Float64Array, dew: Float64Array, humidity: Float64Array): number {
  const stride = Math.max(1, Math.floor(air.length / 500))
  let square = 0
  let seen = 0
  for (let i = 0; i < air.length; i += stride) {
    const apart = 100 * relativeHumidity_frac(air[i]!, dew[i]!) - humidity[i]!
    if (apart !== apart) continue
    square += apart * apart
    seen += 1
  }
  return seen < 5 ? Infinity : Math.sqrt(square / seen)
}

function staysBelow(lower: Float64Array, upper: Float64Array): boolean {
  let above = 0
  let apart = 0
  lower.forEach((value, i) => {
    if (value > upper[i]! + 0.3) above += 1
    if (value < upper[i]! - 0.5) apart += 1
  })
  return above < lower.length * 0.01 && apart > lower.length * 0.2
}

/** Two temperatures of which one never rises above the other, when there is no humidity. */
function bestBelow(warm: readonly Candidate[]): MoistGuess | null {
  for (const air of warm) {
    for (const dew of warm) {
      if (dew.index === air.index || !staysBelow(dew.values, air.values)) continue
      if (correlation(air.values, dew.values) > 0.3)
        return { airTemp: air, dewPoint: dew, relativeHumidity: null, confidence: 0.6 }
    }
  }
  return null
}
