import { type Scenario, hold } from '#model/design/scenario'
import { exceedance, type Exceedance, yardstickOf } from '#model/design/target'
import { targetSpecOf } from '#model/design/assembly'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { YearResult } from '#model/building/year'
import type { Stages } from '#studies/stages.ts'
import { insulationComplaints } from './insulation.ts'
import { judgedLight, type OwnBuilt } from './light.ts'

/** How many designs were held against another, and how many better ones a range check refuses before they run. */
export interface Comparisons {
  made: number
  refused: number
}

/** No better design may be worse by more, K of peak and share of the hours over the limit (a whole hour at least). */
const WORSE_K = 0.02
const WORSE_frac = 0.005
/** The lower limit, K under the scenario's own. */
const LOWER_K = 0.5

/** Changes that can only help: more area, a coating that reflects or emits more. Insulation: see `insulation.ts`. */
function betterOnes(scenario: Scenario): readonly (readonly [string, Scenario])[] {
  const { coating } = scenario
  const { area_m2 } = scenario.target
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
  ]
}

/** None of the changes that can only help may leave the room hotter, and a lower limit no fewer hours over it. */
export function comparedComplaints(
  stages: Stages,
  scenario: Scenario,
  before: OwnBuilt & { readonly year: YearResult; readonly found: Exceedance },
  weather: WeatherRecord,
  comparisons: Comparisons,
): string[] {
  const { found } = before
  const heard = betterOnes(keptStore(scenario, before)).flatMap(([name, changed]) => {
    const after = judgedLight(stages, changed, weather)
    if (after === null) {
      comparisons.refused++
      return []
    }
    comparisons.made++
    return worse(found, after).map((what) => `${name}: ${what}`)
  })
  heard.push(...insulationComplaints(stages, scenario, before, weather, comparisons))
  const lower = { ...scenario.target, limit_C: scenario.target.limit_C - LOWER_K }
  const stressed = stages.skyOf(scenario, weather).weather
  const stick = yardstickOf(targetSpecOf({ ...scenario, target: lower }), stressed)
  const stricter = exceedance(before.year.room_C, stick)
  comparisons.made++
  if (stricter.hours_h >= found.hours_h) return heard
  return [...heard, `a lower limit: ${found.hours_h} → ${stricter.hours_h} h over it`]
}

/** With the tank it has: a larger one beside more area is another change, and in the room it keeps a hot day's heat longer. */
function keptStore(scenario: Scenario, { design }: OwnBuilt): Scenario {
  const { storeVolume_m3: volume_m3 } = design.candidate
  if (volume_m3 === 0) return scenario
  return { ...scenario, store: { ...scenario.store, autoVolume: false, volume_m3 } }
}

/** Peak and hours, each by itself. */
export function worse(before: Exceedance, after: Exceedance): string[] {
  const heard: string[] = []
  if (after.peak_C > before.peak_C + WORSE_K)
    heard.push(`peak ${before.peak_C.toFixed(3)} → ${after.peak_C.toFixed(3)} °C`)
  if (after.hours_h - before.hours_h > Math.max(1, WORSE_frac * before.hours_h))
    heard.push(`${before.hours_h} → ${after.hours_h} h over the limit`)
  return heard
}
