import { hasPrices } from '#model/design/cost'
import type { Scenario } from './fields.ts'
import { free, hold, type Chosen } from './hold.ts'
import type { MapTask, MapKind, Candidate } from '#model/design/sizing'

/** What is held while the map varies area and flow: the tank of the design it is drawn around. */
export type HeldDesign = Pick<MapTask, 'storeVolume_m3'>

/** The scenario with a point of the map as the user's own design. */
export function withCandidate(scenario: Scenario, kind: MapKind, candidate: Candidate): Scenario {
  return hold(scenario, { area_m2: candidate.area_m2, ...heldBy(kind, candidate) })
}

/** The scenario sized with the store or flow of a point: its area is then found to the target exactly. */
export function sizedWith(scenario: Scenario, kind: MapKind, candidate: Candidate): Scenario {
  return hold(free(scenario, ['area']), heldBy(kind, candidate))
}

/** A map of stores leaves the flow to be chosen; a map of flows holds both. */
function heldBy(kind: MapKind, { storeVolume_m3, flow_kgsm2 }: Candidate): Chosen {
  return kind === 'store' ? { storeVolume_m3 } : { storeVolume_m3, flow_kgsm2 }
}

/** The pump's energy counts only where it has a price; without one the map need not add it up. */
export function energyPriced({ prices }: Scenario): boolean {
  return hasPrices(prices) && prices.energy_perkWh > 0
}

/**
 * True when two scenarios differ in nothing but words, prices, and the area, tank and flow chosen in them. A first
 * price for energy is a difference: the pump's energy has then to be worked out.
 */
export function sameBesidesDesign(a: Scenario, b: Scenario): boolean {
  return undesigned(a) === undesigned(b)
}

function undesigned(scenario: Scenario): string {
  return JSON.stringify({
    ...scenario,
    job: null,
    prices: energyPriced(scenario),
    target: { ...scenario.target, autoArea: true, area_m2: 0 },
    store: { ...scenario.store, autoVolume: true, volume_m3: 0 },
    loop: { ...scenario.loop, autoFlow: true, flow_kgsm2: 0 },
  })
}
