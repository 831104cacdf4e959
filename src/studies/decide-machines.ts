/** Machines beside panels, as they are sized for a building. */
import type { AirConditionerSpec, EvaporativeSpec, Supply } from '#model/building/equipment'
import { evaporativeSupply } from '#model/building/equipment'
import { panelPrices, sumOf } from '#model/design/assembly'
import { floor_m2, volume_m3 } from '#model/design/measures'
import { PLANT_NAMES as WAY_PLANTS, type Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'

export const PLANTS = ['none', 'panels', 'direct', 'indirect', 'airConditioner'] as const
export type PlantKind = (typeof PLANTS)[number]

export const PLANT_NAMES: Readonly<Record<PlantKind, string>> = { none: 'no machine', ...WAY_PLANTS }

/** Supply air of an evaporative cooler, air changes (common practice, no source). */
const COOLER_CHANGES_1H = 20
/** Sensible output of an air conditioner for each m² of floor, and its least and most, W (common practice, no source). */
const COOLING_Wm2 = 100
const LEAST_W = 2000
const MOST_W = 12000

export function coolerOf(scenario: Scenario, kind: EvaporativeSpec['kind']): EvaporativeSpec {
  return {
    kind,
    effectiveness_frac: kind === 'direct' ? 0.75 : 0.6,
    flow_m3h: COOLER_CHANGES_1H * volume_m3(scenario),
    fan_Wm3h: kind === 'direct' ? 0.15 : 0.25,
    cycles_count: 3,
  }
}

export function airConditionerOf(scenario: Scenario): AirConditionerSpec {
  const rated_W = Math.min(MOST_W, Math.max(LEAST_W, COOLING_Wm2 * floor_m2(scenario)))
  return { rated_W, ratedCop_frac: 3.2, sensible_frac: 0.75 }
}

/** Supply of a cooler in each hour of a record. */
export function supplyHours(weather: WeatherRecord, spec: EvaporativeSpec): readonly Supply[] {
  return Array.from({ length: weather.hours }, (_, h) =>
    evaporativeSupply(
      {
        air_C: weather.airTemp_C[h]!,
        dewPoint_C: weather.dewPoint_C[h]!,
        pressure_Pa: weather.pressure_Pa[h]!,
      },
      spec,
    ),
  )
}

/** First price of a machine; panels are priced by their area elsewhere. */
export function machinePrice(scenario: Scenario, kind: PlantKind): number {
  const { prices } = scenario
  switch (kind) {
    case 'direct':
      return prices.coolerFittings_each + prices.directCooler_perm3h * coolerOf(scenario, kind).flow_m3h
    case 'indirect':
      return prices.coolerFittings_each + prices.indirectCooler_perm3h * coolerOf(scenario, kind).flow_m3h
    case 'airConditioner':
      return (
        prices.airConditioner_each + prices.airConditioner_perkW * (airConditionerOf(scenario).rated_W / 1000)
      )
    default:
      return 0
  }
}

/** Price of panels with tank, pipe, pump and what cools the room. */
export function panelPrice(scenario: Scenario, area_m2: number, storeVolume_m3: number): number {
  return sumOf(panelPrices(scenario, area_m2, storeVolume_m3))
}
