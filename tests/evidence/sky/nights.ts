import { blackbody_Wm2, vapourPressure_Pa } from '#model/outdoors/air'
import { matsunobuCoimbra2024, matsunobuCoimbraPrata, prata1996 } from '#inside/model/outdoors/sky/clear.ts'
import { cloudyCrawfordDuchon } from '#inside/model/outdoors/sky/cloud.ts'
import { clearSkyIndex_frac } from '#model/outdoors/sun'
import {
  carryOverNight,
  cloudFromIndex,
  CLOUD_SUN_DEG,
  type NightRule,
} from '#inside/model/outdoors/intake/derive/cloud.ts'
import { hiddenSun } from '#inside/model/outdoors/intake/derive/hidden-sun.ts'
import type { SkySite } from './sites.ts'

/** Sun at least this far down is night, degrees: sunset to the eye. */
const NIGHT_DEG = -0.833
/** A night needs so many measured hours, and its two days so many hours that give cloud. */
const LEAST_HOURS = 4
const LEAST_DAY_HOURS = 3
/** Hours before and after a night that are its days. */
const DAY_h = 16

export type StudyRule = NightRule | 'none'
export const NIGHT_RULES: readonly StudyRule[] = ['none', 'wholeDays', 'duskAndDawn', 'meanOfBoth']

/** What a clear hour reads: the formula’s clear sky, or the record’s own hours, of which this share reads less. */
export const CLEAR_HOURS = ['formula', 0.75, 0.85, 0.9, 0.95] as const
export type ClearHours = (typeof CLEAR_HOURS)[number]

export const FORMULAS = {
  matsunobuCoimbra2024,
  prata1996,
  matsunobuCoimbraPrata,
} as const
export type Formula = keyof typeof FORMULAS

/** Mean longwave of one night, measured and modelled, W/m². */
export interface NightMean {
  readonly measured_Wm2: number
  readonly modelled_Wm2: number
  /** First hour of the night in the site’s series. */
  readonly hour: number
  /** What the night lacks to a black sky, as measured, W/m². */
  readonly lack_Wm2: number
}

/** Nightly means of one place under a rule for the night's cloud and a clear-sky formula. */
export function nightMeans(
  site: SkySite,
  rule: StudyRule,
  clearHours: ClearHours,
  formula: Formula,
): NightMean[] {
  const seen = seenCloud(site, clearHours)
  const none = new Float64Array(site.hours)
  const cloud = rule === 'none' ? none : (carryOverNight(seen, false, rule) ?? none)
  const night = (h: number) => h < site.hours && site.sun.altitude_deg[h]! < NIGHT_DEG
  const found: NightMean[] = []
  for (let h = 0; h < site.hours; h++) {
    if (!night(h)) continue
    const begin = h
    while (night(h)) h++
    const hours = measuredHours(site, begin, h)
    if (hours.length < LEAST_HOURS || !hasDays(seen, begin, h)) continue
    const mean = (of: (hour: number) => number) =>
      hours.reduce((sum, hour) => sum + of(hour), 0) / hours.length
    found.push({
      hour: begin,
      lack_Wm2: mean((hour) => blackbody_Wm2(site.airTemp_C[hour]!) - site.longwave_Wm2[hour]!),
      measured_Wm2: mean((hour) => site.longwave_Wm2[hour]!),
      modelled_Wm2: mean((hour) => {
        const air_C = site.airTemp_C[hour]!
        const clear = FORMULAS[formula](vapourPressure_Pa(site.dewPoint_C[hour]!), air_C)
        return blackbody_Wm2(air_C) * cloudyCrawfordDuchon(clear, cloud[hour]!)
      }),
    })
  }
  return found
}

/** Cloud of the hours that give it, NaN elsewhere: as the reader of weather files has it. */
function seenCloud(site: SkySite, clearHours: ClearHours): Float64Array {
  const hidden = hiddenSun(site.global_Wm2, site.sun, site.altitude_m, CLOUD_SUN_DEG)
  const index = site.global_Wm2.map((global, h) => {
    if (Number.isNaN(global) || hidden[h] === 1) return NaN
    return clearSkyIndex_frac(
      global,
      site.sun.altitude_deg[h]!,
      site.sun.extraterrestrial_Wm2[h]!,
      site.altitude_m,
      CLOUD_SUN_DEG,
    )
  })
  if (clearHours !== 'formula') return cloudFromIndex(index, site.sun, clearHours)
  return index.map((value) => Math.min(1, Math.max(0, 1 - value)))
}

function measuredHours(site: SkySite, begin: number, end: number): number[] {
  return Array.from({ length: end - begin }, (_, k) => begin + k).filter(
    (h) => Number.isFinite(site.longwave_Wm2[h]!) && Number.isFinite(site.dewPoint_C[h]!),
  )
}

function hasDays(seen: Float64Array, begin: number, end: number): boolean {
  const gives = (from: number, until: number) =>
    seen.slice(Math.max(0, from), until).filter((value) => !Number.isNaN(value)).length >= LEAST_DAY_HOURS
  return gives(begin - DAY_h, begin) && gives(end, end + DAY_h)
}

/** Errors of nightly means, W/m²; `spread` is the standard deviation of the modelled over that of the measured. */
export interface NightErrors {
  readonly nights: number
  readonly bias_Wm2: number
  readonly rmse_Wm2: number
  readonly spread: number
}

export function nightErrors(nights: readonly NightMean[]): NightErrors {
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
  const spread = (values: readonly number[]) => Math.sqrt(mean(values.map((v) => (v - mean(values)) ** 2)))
  const off = nights.map(({ measured_Wm2, modelled_Wm2 }) => modelled_Wm2 - measured_Wm2)
  return {
    nights: nights.length,
    bias_Wm2: mean(off),
    rmse_Wm2: Math.sqrt(mean(off.map((value) => value ** 2))),
    spread:
      spread(nights.map(({ modelled_Wm2 }) => modelled_Wm2)) /
      spread(nights.map(({ measured_Wm2 }) => measured_Wm2)),
  }
}
