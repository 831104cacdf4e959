import type { Scenario } from './fields.ts'
import { isTank } from '#model/building/store'
import { withPanelsInWay } from './way.ts'

/** Parts of a design that are given; what is left out stays as the scenario has it. */
export interface Chosen {
  readonly area_m2?: number
  readonly storeVolume_m3?: number
  readonly flow_kgsm2?: number
}

/** The scenario with parts of its design given. A store without a tank has no volume to give; an area is one of panels in its way. */
export function hold(scenario: Scenario, { area_m2, storeVolume_m3, flow_kgsm2 }: Chosen): Scenario {
  const { target, store, loop } = scenario
  const chosen = area_m2 === undefined || area_m2 === 0 ? scenario : withPanelsInWay(scenario)
  return {
    ...chosen,
    target: area_m2 === undefined ? target : { ...target, autoArea: false, area_m2 },
    store:
      storeVolume_m3 === undefined || !isTank(store.kind)
        ? store
        : { ...store, autoVolume: false, volume_m3: storeVolume_m3 },
    loop: flow_kgsm2 === undefined ? loop : { ...loop, autoFlow: false, flow_kgsm2 },
  }
}

/** The scenario with parts of its design left to be chosen. */
export function free(scenario: Scenario, parts: readonly ('area' | 'store' | 'flow')[]): Scenario {
  const { target, store, loop } = scenario
  return {
    ...(parts.includes('area') ? withPanelsInWay(scenario) : scenario),
    target: parts.includes('area') ? { ...target, autoArea: true } : target,
    store: parts.includes('store') ? { ...store, autoVolume: true } : store,
    loop: parts.includes('flow') ? { ...loop, autoFlow: true } : loop,
  }
}
