/** One combination of measures and plant, simulated through the year. */
import { HOUR_S } from '#model/basis/hours'
import type { CoolerHours } from '#model/building/year'
import type { Combination, Prepared } from '#model/design/assembly'
import { wayPrices, yearlyCost, type WayPrices } from '#model/design/cost'
import { asItIs, type Measure } from '#model/design/measures'
import type { Scenario } from '#model/design/scenario'
import { exceedance, fanHours_h } from '#model/design/target'
import type { WeatherRecord } from '#model/outdoors/weather'
import {
  airConditionerOf,
  coolerOf,
  machinePrice,
  panelPrice,
  PLANT_NAMES,
  supplyHours,
  type PlantKind,
} from './decide-machines.ts'
import { PanelGuess } from './decide-guess.ts'
import { builtPanels, type PanelYear, type PlantYear } from './decide-panels.ts'
import { machineYear, UNDER_LIMIT_K } from './decide-machine-year.ts'
import type { Preparing } from './preparing.ts'

export type { Combination }

/**
 * Panels sized roughly, with a tank in a proportion seen before, or just as the design is: of whole modules, the tank at its
 * knee; the same where the largest area is known to be too small.
 */
export type PanelSizing = 'rough' | 'built' | 'floor'

/** A room run through its hot weeks alone differs from the same weeks of its whole year by less, K. */
const MARGIN_K = 0.05
/** Hours of the weeks that are looked at first. */
const HOT_WEEKS_h = 6 * 7 * 24

/** What a search shares between its trials. */
export class Trials {
  readonly prices: WayPrices
  readonly scenario: Scenario
  private readonly already: readonly Measure[]
  private readonly stages: Preparing
  private readonly weather: WeatherRecord
  private readonly coolers = new Map<string, CoolerHours & { readonly weather: WeatherRecord }>()
  private readonly guess = new PanelGuess()
  private hotWeeks: readonly [number, number] | null = null

  /**
   * Of the room as it is: a way taken is no part of it.
   * @param already  measures that the room has: only what their fans draw is added
   */
  constructor(
    stages: Preparing,
    scenario: Scenario,
    weather: WeatherRecord,
    already: readonly Measure[] = [],
  ) {
    this.already = already
    this.stages = stages
    this.scenario = { ...asItIs(scenario), target: { ...scenario.target, autoArea: true } }
    this.weather = weather
    this.prices = wayPrices(scenario.prices)
  }

  /** The description with measures. */
  described(measures: readonly Measure[]): Scenario {
    return measures.reduce((s, measure) => measure.apply(s, 1, this.weather), this.scenario)
  }

  /** The description with measures, and one more change, prepared. */
  with(measures: readonly Measure[], change: (s: Scenario) => Scenario = (s) => s): Prepared {
    return this.stages.prepare(change(this.described(measures)), this.weather, true)
  }

  /** True where some hot weeks show that the measures alone miss the target by more than so much. */
  missesBy(measures: readonly Measure[], much: number): boolean {
    this.hotWeeks ??= hottestWeeks(this.with([]))
    const found = this.stages.leftAlone(this.described(measures), this.weather, this.hotWeeks)
    const hours_h = this.scenario.target.kind === 'degreeHours' ? found.hours_h : 1
    return found.measure - MARGIN_K * hours_h > much
  }

  /** What measures and machine cost at the least before anything is simulated; panels without their area. */
  leastFirstCost(measures: readonly Measure[], plant: PlantKind): number {
    const bare = plant === 'panels' ? panelPrice(this.scenario, 1e-9, 0) : machinePrice(this.scenario, plant)
    return this.priceOf(measures) + bare
  }

  /** One combination through the year. */
  run(
    prepared: Prepared,
    measures: readonly Measure[],
    plant: PlantKind,
    sizing: PanelSizing = 'built',
  ): Combination {
    return this.judged(prepared, measures, plant, this.yearOf(prepared, measures, plant, sizing))
  }

  /** What a combination comes to in a year that was simulated. */
  judged(prepared: Prepared, measures: readonly Measure[], plant: PlantKind, year: PlantYear): Combination {
    const { yardstick } = prepared
    const fan = this.fanOf('ceilingFan', measures)
    const found = exceedance(year.room_C, yardstick)
    const miss = year.hoped === true ? 0 : found.measure
    const ran =
      plant === 'panels'
        ? panelPrice(this.scenario, year.panelArea_m2, year.storeVolume_m3)
        : machinePrice(this.scenario, plant)
    const firstCost = this.priceOf(measures) + ran
    const fan_W = fan?.power_W(this.scenario) ?? 0
    const electric_J = year.electric_J + fan_W * fanHours_h(year.room_C, yardstick.limit_C) * HOUR_S
    const water_m3 = year.water_kg / 1000
    const each = yearlyCost(this.prices, { electric_J, water_m3, running: ran })
    return {
      measures: measures.map(({ id }) => id),
      plant,
      names: [...measures.map(({ name }) => name), ...(plant === 'none' ? [] : [PLANT_NAMES[plant]])],
      panelArea_m2: year.panelArea_m2,
      storeVolume_m3: year.storeVolume_m3,
      hoursOver_h: found.hours_h,
      peak_C: found.peak_C,
      miss,
      meets: miss <= 0,
      firstCost,
      yearlyCost: each,
      totalCost: firstCost + this.prices.years_y * each,
      electric_J,
      water_m3,
      mostHumid_frac: year.mostHumid_frac,
      onRoof: plant === 'panels' || measures.some(({ onRoof }) => onRoof),
      ...(year.hoped === true
        ? { guess: 'enough' as const }
        : year.floor === true
          ? { guess: 'floor' as const }
          : {}),
    }
  }

  /** Operative temperature of the room in each hour of the same year, °C; panels sized as for `run`. */
  room_C(prepared: Prepared, measures: readonly Measure[], plant: PlantKind): Float64Array {
    return this.yearOf(prepared, measures, plant, 'built').room_C
  }

  private fanOf(id: 'ceilingFan' | 'nightFan', measures: readonly Measure[]): Measure | undefined {
    return [...this.already, ...measures].find((measure) => measure.id === id)
  }

  private priceOf(measures: readonly Measure[]): number {
    return measures.reduce((sum, measure) => sum + measure.price(this.scenario), 0)
  }

  /** The year of a combination; panels sized and simulated already where they are given. */
  yearOf(
    prepared: Prepared,
    measures: readonly Measure[],
    plant: PlantKind,
    sizing: PanelSizing | PanelYear = 'built',
  ): PlantYear {
    const { doNothing, weather } = prepared
    const nightFan_W = this.fanOf('nightFan', measures)?.power_W(this.scenario) ?? 0
    if (plant === 'panels') {
      const { vented_h, ...year } = this.panelYear(prepared, measures, sizing)
      return { ...year, electric_J: year.electric_J + nightFan_W * vented_h * HOUR_S }
    }
    const without = { panelArea_m2: 0, storeVolume_m3: 0 }
    if (plant === 'none') {
      const electric_J = nightFan_W * doNothing.vented_h * HOUR_S
      return { ...without, room_C: doNothing.room_C, electric_J, water_kg: 0, mostHumid_frac: 0 }
    }
    const machine = {
      cooler: plant === 'direct' || plant === 'indirect' ? this.coolerHours(plant, weather) : null,
      airConditioner: plant === 'airConditioner' ? airConditionerOf(this.scenario) : null,
      nightFan_W,
    }
    return { ...machineYear(prepared, machine), ...without }
  }

  private panelYear(
    prepared: Prepared,
    measures: readonly Measure[],
    sizing: PanelSizing | PanelYear,
  ): PanelYear {
    if (typeof sizing === 'object') return sizing
    const ids = measures.map(({ id }) => id)
    const guessed = sizing === 'rough' ? this.guess.year(prepared, ids) : null
    if (guessed !== null) return guessed
    const built = builtPanels(prepared, sizing === 'floor')
    this.guess.learnSized(ids, built.sized)
    return built
  }

  /** @param weather  as the room has it, with the stress of the description */
  private coolerHours(kind: 'direct' | 'indirect', weather: WeatherRecord): CoolerHours {
    const spec = coolerOf(this.scenario, kind)
    const known = this.coolers.get(kind)
    if (known?.weather === weather) return known
    const hours = { spec, supply: supplyHours(weather, spec), weather }
    this.coolers.set(kind, hours)
    return hours
  }
}

/** The weeks in which a room left alone is the nearest to its limit, or the furthest over it. */
function hottestWeeks({
  doNothing: { room_C },
  yardstick: { limit_C },
}: Prepared): readonly [number, number] {
  const over_K = room_C.map((temp_C, h) =>
    Number.isNaN(limit_C[h]!) ? 0 : Math.max(0, UNDER_LIMIT_K + temp_C - limit_C[h]!),
  )
  const length = Math.min(HOT_WEEKS_h, room_C.length)
  let sum = 0
  let [most, first] = [-1, 0]
  for (let h = 0; h < room_C.length; h++) {
    sum += over_K[h]! - (h >= length ? over_K[h - length]! : 0)
    if (h >= length - 1 && sum > most) [most, first] = [sum, h - length + 1]
  }
  return [first, first + length]
}
