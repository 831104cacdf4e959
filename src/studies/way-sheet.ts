/** The builder's sheet of a way without panels: its year, the year before it, its winter, and how sure all that is. */
import {
  eightInTen,
  waySheet as sheetOf,
  type MachineSpec,
  type WayFound,
  type WaySheet,
} from '#model/handover/sheet'
import { J_PER_KWH } from '#model/basis/hours'
import { billOf, measurePrices } from '#model/design/assembly'
import { takenMeasures, withWay } from '#model/design/measures'
import { firstDraws, machineOf, type MachineId, type Scenario } from '#model/design/scenario'
import { DEMO_JOB, DEMO_RECIPE, type CoatingRecipe, type CoatJob } from '#model/panels/paint'
import type { WeatherRecord } from '#model/outdoors/weather'
import { startsAt_C } from './decide-machine-year.ts'
import { airConditionerOf, coolerOf, machinePrice, PLANT_NAMES, supplyHours } from './decide-machines.ts'
import { Trials } from './decide-trial.ts'
import { Winter } from './decide-winter.ts'
import type { Stages } from './stages.ts'
import type { Asked, Study } from './study.ts'
import { HOURS_DRAWS } from './usual.ts'

/** The sheet of the way taken. @returns null where it has neither measures nor a machine */
export function* waySheet(
  stages: Stages,
  {
    scenario,
    weather,
    recipe = DEMO_RECIPE,
    coat = DEMO_JOB,
    draws = HOURS_DRAWS,
  }: Asked & {
    readonly recipe?: CoatingRecipe
    readonly coat?: Omit<CoatJob, 'area_m2'>
    /** 0: no ranges. */
    readonly draws?: number
  },
): Study<WaySheet | null, WaySheet | null> {
  const measures = takenMeasures(scenario)
  const machine = machineOf(scenario)
  if (measures.length === 0 && machine === 'none') return { result: null, remarks: [] }
  const ids = measures.map(({ id }) => id)
  const trials = new Trials(stages, scenario, weather)
  const ran = trials.run(trials.with(measures), measures, machine)
  const bare = trials.run(trials.with([]), [], 'none')
  const found: WayFound = {
    with: {
      hours_h: ran.hoursOver_h,
      peak_C: ran.peak_C,
      electric_J: ran.electric_J,
      water_m3: ran.water_m3,
      meets: ran.meets,
    },
    before: { hours_h: bare.hoursOver_h, peak_C: bare.peak_C },
    winter: new Winter(trials, weather).of(ids),
    bill: billOf(scenario, (s) => {
      const price = machinePrice(s, machine)
      const name = machine === 'none' ? 'no machine' : PLANT_NAMES[machine]
      return {
        first: [...measurePrices(s, measures), { what: name, price }],
        yearly: [
          { what: 'electricity', price: (s.prices.energy_perkWh * ran.electric_J) / J_PER_KWH },
          { what: 'water', price: s.prices.water_perm3 * ran.water_m3 },
          { what: 'upkeep', price: s.prices.upkeep_frac * price },
        ],
      }
    }),
    ranges: null,
  }
  const simulated = withWay(scenario, weather)
  const asked = {
    scenario: simulated,
    asItIs: scenario.room,
    way: ran.names.join(' + '),
    weather,
    measures: ids,
    machine:
      machine === 'none' ? null : machineSpecOf(scenario, stages.skyOf(scenario, weather).weather, machine),
    recipe,
    coat,
  }
  const first = sheetOf({ ...asked, found })
  if (draws === 0) return { result: first, remarks: [] }
  yield { share: 0.05, soFar: first }
  const outcomes: { hours_h: number; peak_C: number }[] = []
  for (const drawn of firstDraws(simulated, weather, draws)) {
    const one = new Trials(stages, drawn, weather, measures)
    const { hoursOver_h, peak_C } = one.run(one.with([]), [], machine)
    outcomes.push({ hours_h: hoursOver_h, peak_C })
    yield { share: 0.05 + (0.95 * outcomes.length) / draws }
  }
  const ranges = {
    draws,
    hours_h: eightInTen(outcomes.map(({ hours_h }) => hours_h)),
    peak_C: eightInTen(outcomes.map(({ peak_C }) => peak_C)),
  }
  return { result: sheetOf({ ...asked, found: { ...found, ranges } }), remarks: [] }
}

/** @param weather  with the stress of the description */
function machineSpecOf(scenario: Scenario, weather: WeatherRecord, kind: MachineId): MachineSpec {
  if (kind === 'airConditioner') {
    const { rated_W, ratedCop_frac, sensible_frac } = airConditionerOf(scenario)
    return {
      kind,
      rated_W,
      ratedCop_frac,
      total_W: rated_W / sensible_frac,
      startsAt_C: startsAt_C(scenario),
    }
  }
  const spec = coolerOf(scenario, kind)
  const times = spec.cycles_count / (spec.cycles_count - 1)
  const most_kgh = Math.max(...supplyHours(weather, spec).map(({ evaporated_kgh }) => evaporated_kgh))
  return {
    kind,
    flow_m3h: spec.flow_m3h,
    fan_W: spec.fan_Wm3h * spec.flow_m3h,
    effectiveness_frac: spec.effectiveness_frac,
    mostWater_kgh: times * most_kgh,
    bled_frac: 1 - 1 / times,
    mostHumid_frac: scenario.target.mostHumid_frac,
    startsAt_C: startsAt_C(scenario),
  }
}
