import type { DesignAnswer } from '#model/design/assembly'
import { type Scenario, hold } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import { finish, type Studies } from '#studies/index.ts'

/** How many designs were held against another: every one that is due, none is let off. */
export interface Comparisons {
  made: number
}

/** No better design may be worse by more, K of peak and share of the hours over the limit (a whole hour at least). */
const WORSE_K = 0.02
const WORSE_frac = 0.005

/** Changes that can only help: more area, a coating that reflects or emits more, pipes and tank kept better. */
function betterOnes(scenario: Scenario, area_m2: number): readonly (readonly [string, Scenario])[] {
  const { coating, store } = scenario
  const more = (share: number): number => Math.min(1, share)
  return [
    ['a tenth more area', hold(scenario, { area_m2: area_m2 * 1.1 })],
    ['half as much area again', hold(scenario, { area_m2: area_m2 * 1.5 })],
    [
      'a whiter coating',
      {
        ...scenario,
        coating: { ...coating, solarReflectance_frac: more(coating.solarReflectance_frac + 0.03) },
      },
    ],
    [
      'an emittance higher by 0.02',
      {
        ...scenario,
        coating: { ...coating, windowEmittance_frac: more(coating.windowEmittance_frac + 0.02) },
      },
    ],
    [
      'a thicker insulation of the tank',
      { ...scenario, store: { ...store, insulation_m: store.insulation_m * 1.5 } },
    ],
  ]
}

/** None of the changes that can only help may leave the room hotter, and a lower limit no fewer hours over it. */
export function comparedComplaints(
  studies: Studies,
  scenario: Scenario,
  answer: DesignAnswer,
  weather: WeatherRecord,
  comparisons: Comparisons,
): string[] {
  const before = answer.sizing.withPanels
  const heard = betterOnes(scenario, answer.area_m2).flatMap(([name, changed]) => {
    const { withPanels: after } = finish(studies.size({ scenario: changed, weather })).result.sizing
    comparisons.made++
    const hours_h = after.hours_h - before.hours_h
    if (after.peak_C > before.peak_C + WORSE_K)
      return [`${name}: peak ${before.peak_C.toFixed(3)} → ${after.peak_C.toFixed(3)} °C`]
    return hours_h > Math.max(1, WORSE_frac * before.hours_h)
      ? [`${name}: ${before.hours_h} → ${after.hours_h} h over the limit`]
      : []
  })
  const { target } = scenario
  const lower = { ...scenario, target: { ...target, limit_C: target.limit_C - 0.5 } }
  const stricter = finish(studies.size({ scenario: lower, weather })).result.sizing.withPanels
  comparisons.made++
  if (stricter.hours_h >= before.hours_h) return heard
  return [...heard, `a lower limit: ${before.hours_h} → ${stricter.hours_h} h over it`]
}
