import {
  AIR_SPECIFIC_HEAT_JKGK,
  airConductivity_WmK,
  airDensity_kgm3,
  airViscosity_Pas,
  SEA_LEVEL_PRESSURE_PA,
} from '#model/outdoors/air'
import { glycolProperties } from './glycol.ts'
import type { FluidProperties } from './properties.ts'
import type { FluidKind } from './spec.ts'
import { waterProperties } from './water.ts'

/**
 * Fluid properties at `temp_C` (°C, −60…120). `glycol_frac`: propylene glycol by mass, 0…0.6, read only for
 * `glycol`. Liquids are held at the ends of their tables. Throws RangeError for a value outside those ranges.
 */
export function fluidProperties(kind: FluidKind, glycol_frac: number, temp_C: number): FluidProperties {
  if (!(temp_C >= -60 && temp_C <= 120))
    throw new RangeError(`fluid temperature must be −60…120 °C, got ${temp_C}`)
  if (kind === 'air') return airProperties(temp_C)
  if (kind === 'water') return waterProperties(temp_C)
  if (!(glycol_frac >= 0 && glycol_frac <= 0.6))
    throw new RangeError(`glycol share by mass must be 0…0.6, got ${glycol_frac}`)
  return glycolProperties(glycol_frac, temp_C, waterProperties(temp_C))
}

/** Dry air at sea level, from the air room. */
function airProperties(temp_C: number): FluidProperties {
  return {
    density_kgm3: airDensity_kgm3(temp_C, SEA_LEVEL_PRESSURE_PA),
    specificHeat_JkgK: AIR_SPECIFIC_HEAT_JKGK,
    viscosity_Pas: airViscosity_Pas(temp_C),
    conductivity_WmK: airConductivity_WmK(temp_C),
    freezing_C: -Infinity,
  }
}
