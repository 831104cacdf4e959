import { AIR_RULE, pressureGradient_Pam } from '#model/panels/loop'
import { massPipes } from './mass-pipes.ts'
import type { Plant } from './plant.ts'

/** The panel loop’s own pump is asked for no more than this in a circuit of slab or ceiling, Pa (common practice, no source). */
const CIRCUIT_Pa = 10_000
/** Air in ducts: Nusselt number of slow flow, and where it turns turbulent (handbook values, from memory). */
const LAMINAR_NU = 3.66
const TURBULENT_RE = 4000
const AIR_PRANDTL = 0.71

/** What the panel loop runs through where slab or ceiling keep the cold. */
export interface MassLoop {
  readonly kind: 'pipes' | 'duct'
  readonly length_m: number
  readonly circuits: number
  readonly inner_m: number
  readonly spacing_m: number
  readonly volume_m3: number
  /** Loss beside that of panels and pipes; the year’s electricity is counted without it, Pa. */
  readonly loss_Pa: number
}

/** Circuits of the panel loop in the mass; null with a tank, and where the kind of passage is not given. */
export function massLoop(plant: Plant): MassLoop | null {
  const { store } = plant.answer.scenario
  if (plant.tank !== null) return null
  if (plant.loopSpec.fluid === 'air') return massDuct(plant)
  if (store.kind !== 'slab' && store.deliveryKind === 'surface') return null
  return { kind: 'pipes', ...massPipes(store.delivery_WK, plant.flow_m3s, CIRCUIT_Pa) }
}

/**
 * Duct of the loop's bore laid in the mass: as long as its skin takes for the conductance, h by Nu = 0.023 Re^0.8 Pr^0.4
 * (Dittus & Boelter, handbook form, from memory).
 */
function massDuct({ answer, fluid, flow_m3s }: Plant): MassLoop {
  const bore_m = answer.loop.pipeInnerDiameter_m
  const flow_kgs = flow_m3s * fluid.density_kgm3
  const reynolds = (4 * flow_kgs) / (Math.PI * bore_m * fluid.viscosity_Pas)
  const nusselt = reynolds > TURBULENT_RE ? 0.023 * reynolds ** 0.8 * AIR_PRANDTL ** 0.4 : LAMINAR_NU
  const film_Wm2K = (nusselt * fluid.conductivity_WmK) / bore_m
  const length_m = answer.scenario.store.delivery_WK / (film_Wm2K * Math.PI * bore_m)
  return {
    kind: 'duct',
    length_m,
    circuits: 1,
    inner_m: bore_m,
    spacing_m: 2 * bore_m,
    volume_m3: 0.25 * Math.PI * bore_m * bore_m * length_m,
    loss_Pa: pressureGradient_Pam({ flow_kgs, bore_m, roughness_m: AIR_RULE.roughness_m, fluid }) * length_m,
  }
}
