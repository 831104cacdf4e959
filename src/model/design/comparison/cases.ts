import { KNOWN_COATINGS } from '#model/panels/coating'
import type { DesignAnswer } from '#model/design/assembly'
import type { Scenario } from '#model/design/scenario'
import { LOAD_CUTS } from '#model/design/measures'
import type { WeatherRecord } from '#model/outdoors/weather'
import { PLAN_KINDS, type PlanKind } from '#model/building/year'

/** One thing to compare: a scenario in a climate, with the words that set it apart from the others. */
export interface ComparisonCase {
  readonly climate: string
  readonly plan: string
  readonly coating: string
  readonly cover: string
  /** `as described`, or the load cut that was applied. */
  readonly building: string
  readonly scenario: Scenario
  readonly weather: WeatherRecord
}

/** What is set side by side. Energies in J, areas in m². */
export interface ComparisonRow extends Omit<ComparisonCase, 'scenario' | 'weather'> {
  readonly kind: DesignAnswer['sizing']['kind']
  /** Area that meets the target; null when none does (then `peak_C` is the floor at the largest area). */
  readonly area_m2: number | null
  readonly storeVolume_m3: number
  readonly flow_kgs: number
  readonly pumpPower_W: number
  readonly panelHeat_J: number
  readonly electric_J: number
  readonly pumpRun_h: number
  readonly peak_C: number
  readonly hoursOver_h: number
  readonly doNothingPeak_C: number
  readonly doNothingHoursOver_h: number
  readonly hotDaysHeld: number
  readonly hotDays: number
}

export interface ComparisonAxes {
  readonly climates: readonly { readonly name: string; readonly weather: WeatherRecord }[]
  readonly plans: readonly PlanKind[]
  /** `own`, or ids of the coating library. */
  readonly coatings: readonly string[]
  readonly covers: readonly Scenario['cover']['kind'][]
  /** Names of load cuts to set beside the building as described. */
  readonly cuts: readonly string[]
}

/** Coatings a comparison may name. */
export const COATING_IDS: readonly string[] = ['own', ...KNOWN_COATINGS.map((coating) => coating.id)]
export const COVER_KINDS: readonly Scenario['cover']['kind'][] = ['bare', 'film']
export { PLAN_KINDS }

/** The building of a case to which no load cut was applied. */
export const AS_DESCRIBED = 'as described'

/**
 * Every combination of the axes, climates slowest and covers fastest: what is dear to work out (sky, panel hours,
 * the room) stays the same for as many cases in a row as can be, and is remembered by the stages.
 */
export function comparisonCases(base: Scenario, axes: ComparisonAxes): ComparisonCase[] {
  const cases: ComparisonCase[] = []
  for (const { name, weather } of axes.climates)
    for (const coating of axes.coatings)
      for (const building of [AS_DESCRIBED, ...axes.cuts])
        for (const plan of axes.plans)
          for (const cover of axes.covers) {
            const scenario = varied(base, plan, coating, cover, building)
            cases.push({ climate: name, plan, coating, cover, building, scenario, weather })
          }
  return cases
}

function varied(
  base: Scenario,
  plan: PlanKind,
  coating: string,
  cover: Scenario['cover']['kind'],
  building: string,
): Scenario {
  const known = KNOWN_COATINGS.find((entry) => entry.id === coating)
  const optics =
    known === undefined
      ? {}
      : {
          solarReflectance_frac: known.solarReflectance_frac,
          windowEmittance_frac: known.windowEmittance_frac,
          offWindowEmittance_frac: known.offWindowEmittance_frac,
        }
  const cut = LOAD_CUTS.find((option) => option.name === building)
  const scenario: Scenario = {
    ...base,
    plan: { ...base.plan, kind: plan },
    coating: { ...base.coating, ...optics },
    cover: { ...base.cover, kind: cover },
  }
  return cut === undefined ? scenario : cut.apply(scenario)
}

/** One case's answer as a row. */
export function comparisonRow(one: ComparisonCase, answer: DesignAnswer): ComparisonRow {
  const { sizing, months } = answer
  const total = (pick: (month: (typeof months)[number]) => number): number =>
    months.reduce((sum, month) => sum + pick(month), 0)
  return {
    climate: one.climate,
    plan: one.plan,
    coating: one.coating,
    cover: one.cover,
    building: one.building,
    kind: sizing.kind,
    area_m2: sizing.kind === 'floor' ? null : sizing.area_m2,
    storeVolume_m3: sizing.storeVolume_m3,
    flow_kgs: answer.loop.flow_kgs,
    pumpPower_W: answer.loop.pumpPower_W,
    panelHeat_J: total((month) => month.panelHeat_J),
    electric_J: total((month) => month.electric_J),
    pumpRun_h: total((month) => month.pumpRun_h),
    peak_C: sizing.withPanels.peak_C,
    hoursOver_h: sizing.withPanels.hours_h,
    doNothingPeak_C: sizing.doNothing.peak_C,
    doNothingHoursOver_h: sizing.doNothing.hours_h,
    hotDaysHeld: sizing.withPanels.hotDaysHeld,
    hotDays: sizing.withPanels.hotDays,
  }
}
