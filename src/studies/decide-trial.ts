/** One combination of measures and plant, simulated through the year. */
import { equippedYear, idealLoad, simulateYear, type CoolerHours } from '#model/building/year'
import { designOf, taskOf, type Prepared } from '#model/design/assembly'
import { wayPrices, yearlyCost, type WayPrices } from '#model/design/cost'
import { AIR_MEASURES, BUILDING_MEASURES, fanOffset_K, felt_C, type Measure } from '#model/design/measures'
import type { Scenario } from '#model/design/scenario'
import { areaOnly, seasonAtRisk, type SizingTask } from '#model/design/sizing'
import { exceedance, type Yardstick } from '#model/design/target'
import type { WeatherRecord } from '#model/outdoors/weather'
import {
  airConditionerOf,
  coolerOf,
  machinePrice,
  PLANT_NAMES,
  supplyHours,
  type PlantKind,
} from './decide-machines.ts'
import type { Stages } from './stages.ts'

/** What a combination is made of and comes to. Prices in the user's currency. */
export interface Combination {
  readonly measures: readonly Measure['id'][]
  readonly plant: PlantKind
  /** In words. */
  readonly names: readonly string[]
  readonly panelArea_m2: number
  readonly hoursOver_h: number
  /** As it feels, where a fan moves the air, °C. */
  readonly peak_C: number
  /** Distance from the target: 0 or less when it is met. */
  readonly miss: number
  readonly meets: boolean
  readonly firstCost: number
  readonly yearlyCost: number
  /** First and yearly cost over the years counted. */
  readonly totalCost: number
  readonly electric_J: number
  readonly water_m3: number
  /** Highest relative humidity that an evaporative cooler was let run to, 0…1; 0 without one. */
  readonly mostHumid_frac: number
  readonly onRoof: boolean
}

/** Air speed of a ceiling fan at people, m/s; its limit of credit and the humidity let in (common practice, no source). */
const FAN_SPEED_MS = 0.6
const MOST_HUMID_frac = 0.7
/** Machines start this far under the limit, K, and may run so long before hours that count. */
const UNDER_LIMIT_K = 1
const AHEAD_h = 3
/** Tank for each m² of panel, m³/m². */
const STORE_m3m2 = 0.08
/** The room is heated to this operative temperature for the winter line, °C (common practice, no source). */
const HEATED_C = 18
const HEATED = { heat_C: HEATED_C, cool_C: null, stepsPerHour: 4, warmUp_h: 21 * 24 }
/** Ceiling fans run above this, °C. */
const FAN_FROM_C = 25

/** What a search shares between its trials. */
export class Trials {
  readonly prices: WayPrices
  private readonly stages: Stages
  private readonly scenario: Scenario
  private readonly weather: WeatherRecord
  private readonly coolers = new Map<string, CoolerHours>()
  private guess_m2: number | null = null

  constructor(stages: Stages, scenario: Scenario, weather: WeatherRecord) {
    this.stages = stages
    this.scenario = scenario
    this.weather = weather
    this.prices = wayPrices(scenario.prices)
  }

  /** The description with measures, prepared. */
  with(measures: readonly Measure[]): Prepared {
    const changed = measures.reduce((s, measure) => measure.apply(s, 1, this.weather), this.scenario)
    return this.stages.prepare(changed, this.weather)
  }

  /** Heat that keeps the room at 18 °C through the year with these measures, windows shut, J. */
  heating_J(ids: readonly Measure['id'][]): number {
    const measures = [...BUILDING_MEASURES, ...AIR_MEASURES].filter(({ id }) => ids.includes(id))
    return idealLoad(this.with(measures).room, HEATED).heating_J
  }

  /** One combination through the year. */
  run(prepared: Prepared, measures: readonly Measure[], plant: PlantKind): Combination {
    const { yardstick } = prepared
    const fan = measures.some(({ id }) => id === 'ceilingFan')
    const offset_K = fan ? fanOffset_K(FAN_SPEED_MS) : 0
    const year = this.yearOf(prepared, measures, plant, offset_K)
    const found = exceedance(felt_C(year.room_C, offset_K), yardstick)
    const ofMeasures = measures.map((measure) => measure.price(this.scenario))
    const ran =
      plant === 'panels'
        ? this.panelPrice(year.panelArea_m2)
        : machinePrice(this.prices, this.scenario, plant)
    const firstCost = ofMeasures.reduce((sum, price) => sum + price, 0) + ran
    const electric_J = year.electric_J + (fan ? this.ceilingFan_J(measures, year.room_C, yardstick) : 0)
    const water_m3 = year.water_kg / 1000
    const each = yearlyCost(this.prices, { electric_J, water_m3, running: ran })
    return {
      measures: measures.map(({ id }) => id),
      plant,
      names: [...measures.map(({ name }) => name), ...(plant === 'none' ? [] : [PLANT_NAMES[plant]])],
      panelArea_m2: year.panelArea_m2,
      hoursOver_h: found.hours_h,
      peak_C: found.peak_C,
      miss: found.measure,
      meets: found.measure <= 0,
      firstCost,
      yearlyCost: each,
      totalCost: firstCost + this.prices.years_y * each,
      electric_J,
      water_m3,
      mostHumid_frac: year.mostHumid_frac,
      onRoof: plant === 'panels' || measures.some(({ onRoof }) => onRoof),
    }
  }

  private yearOf(prepared: Prepared, measures: readonly Measure[], plant: PlantKind, offset_K: number) {
    if (plant === 'panels') return this.panelYear(prepared, offset_K)
    const nightFan = measures.find(({ id }) => id === 'nightFan')
    if (plant === 'none' && nightFan === undefined)
      return {
        room_C: prepared.doNothing.room_C,
        electric_J: 0,
        water_kg: 0,
        mostHumid_frac: 0,
        panelArea_m2: 0,
      }
    const { target, plan, room } = prepared.scenario
    const limit_C = target.kind === 'adaptive' ? plan.setpoint_C + UNDER_LIMIT_K : target.limit_C
    const year = equippedYear({
      room: prepared.room,
      cooler: plant === 'direct' || plant === 'indirect' ? this.coolerHours(plant) : null,
      airConditioner: plant === 'airConditioner' ? airConditionerOf(this.scenario) : null,
      setpoint_C: limit_C - UNDER_LIMIT_K + offset_K,
      nightVentStop_C: prepared.nightVentStop_C,
      nightFan_W: nightFan?.power_W(this.scenario) ?? 0,
      moisture_kgh: room.moisture_kgh,
      pressure_Pa: prepared.weather.pressure_Pa[0]!,
      mostHumid_frac: MOST_HUMID_frac,
      allowed: hoursAhead(prepared.yardstick.limit_C),
    })
    return { ...year, panelArea_m2: 0 }
  }

  /** Panels of the smallest area that meets the target, or the largest there is room for. */
  private panelYear(prepared: Prepared, offset_K: number) {
    const task = feltTask(taskOf(prepared), offset_K)
    const guess_m2 = this.guess_m2 ?? task.guess_m2
    const found_m2 = areaOnly(task, { ratio_m3m2: STORE_m3m2, guess_m2, slope: null })
    const panelArea_m2 = found_m2 ?? task.maxArea_m2
    // Where the largest area was not enough, the next one begins with it: one run then settles most.
    this.guess_m2 = panelArea_m2 > 0 ? panelArea_m2 : null
    const storeVolume_m3 = task.storeVolume_m3 ?? STORE_m3m2 * panelArea_m2
    const candidate = { area_m2: panelArea_m2, storeVolume_m3, flow_kgsm2: task.flow_kgsm2(panelArea_m2) }
    const { room_C, ledger } = simulateYear(designOf(prepared, candidate).inputs, { lean: true })
    return { room_C, electric_J: ledger.pumpHeat_J, water_kg: 0, mostHumid_frac: 0, panelArea_m2 }
  }

  private coolerHours(kind: 'direct' | 'indirect'): CoolerHours {
    const spec = coolerOf(this.scenario, kind)
    const known = this.coolers.get(kind) ?? { spec, supply: supplyHours(this.weather, spec) }
    this.coolers.set(kind, known)
    return known
  }

  private panelPrice(area_m2: number): number {
    const { panel_perm2, store_perm3, pipe_perm, pump_each } = this.prices
    const tank_m3 = STORE_m3m2 * area_m2
    return (
      area_m2 * panel_perm2 + tank_m3 * store_perm3 + this.scenario.loop.pipeLength_m * pipe_perm + pump_each
    )
  }

  private ceilingFan_J(measures: readonly Measure[], room_C: Float64Array, { limit_C }: Yardstick): number {
    const power_W = measures.find(({ id }) => id === 'ceilingFan')?.power_W(this.scenario) ?? 0
    const hours = room_C.reduce(
      (n, temp_C, h) => n + (temp_C > FAN_FROM_C && !Number.isNaN(limit_C[h]!) ? 1 : 0),
      0,
    )
    return power_W * hours * 3600
  }
}

/** Hours that count, and the few before them. */
function hoursAhead(limit_C: Float64Array): Uint8Array {
  return Uint8Array.from(limit_C, (_, h) => {
    for (let k = 0; k <= AHEAD_h; k++) if (!Number.isNaN(limit_C[(h + k) % limit_C.length]!)) return 1
    return 0
  })
}

/** The sizing task of people in moving air. */
function feltTask(task: SizingTask, offset_K: number): SizingTask {
  if (offset_K === 0) return task
  const doNothing_C = felt_C(task.doNothing_C, offset_K)
  return {
    ...task,
    doNothing_C,
    season: seasonAtRisk(doNothing_C, task.yardstick),
    room_C: (candidate) => felt_C(task.room_C(candidate), offset_K),
    seasonRoom_C: (candidate, season) => felt_C(task.seasonRoom_C(candidate, season), offset_K),
  }
}
