import { KELVIN_OFFSET } from '#model/basis/units'
import type { FluidProperties } from './properties.ts'

/** Validity of the water relations, °C; outside it the nearest end is used. */
const LIQUID_C = [0, 80] as const

/** Liquid water at 1 atm, `temp_C` held to 0…80 °C. */
export function waterProperties(temp_C: number): FluidProperties {
  const t = Math.min(LIQUID_C[1], Math.max(LIQUID_C[0], temp_C))
  return {
    density_kgm3: waterDensity(t),
    specificHeat_JkgK: waterSpecificHeat(t),
    viscosity_Pas: 1e-6 * powerSum((t + KELVIN_OFFSET) / 300, VISCOSITY_TERMS),
    conductivity_WmK: powerSum((t + KELVIN_OFFSET) / 300, CONDUCTIVITY_TERMS),
    freezing_C: 0,
  }
}

/** Kell 1975, J. Chem. Eng. Data 20, 97: density of water at 1 atm, kg/m³, 0…150 °C. */
function waterDensity(t: number): number {
  const rational =
    999.83952 +
    t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))))
  return rational / (1 + 16.87985e-3 * t)
}

type PowerTerms = readonly (readonly [coefficient: number, exponent: number])[]

/** IAPWS SR6-08, eq. 7: viscosity of liquid water at 0.1 MPa, µPa s, in powers of T/300 K. */
const VISCOSITY_TERMS: PowerTerms = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
]

/** IAPWS SR6-08, eq. 8: thermal conductivity of liquid water at 0.1 MPa, W/mK, in powers of T/300 K. */
const CONDUCTIVITY_TERMS: PowerTerms = [
  [1.663, -1.15],
  [-1.7781, -3.4],
  [1.1567, -6],
  [-0.432115, -7.6],
]

function powerSum(reduced: number, terms: PowerTerms): number {
  return terms.reduce((sum, [coefficient, exponent]) => sum + coefficient * reduced ** exponent, 0)
}

/** Specific heat of water at 1 atm by IAPWS-95 (Wagner & Pruß 2002), J/kgK, against °C. */
const SPECIFIC_HEAT_JkgK: readonly (readonly [temp_C: number, value: number])[] = [
  [0, 4219.4],
  [5, 4205.0],
  [10, 4195.2],
  [15, 4188.5],
  [20, 4184.1],
  [25, 4181.3],
  [30, 4179.8],
  [40, 4179.4],
  [50, 4181.3],
  [60, 4185.0],
  [80, 4196.8],
]

function waterSpecificHeat(t: number): number {
  const upper = Math.max(
    1,
    SPECIFIC_HEAT_JkgK.findIndex(([temp_C]) => temp_C >= t),
  )
  const [lowTemp, low] = SPECIFIC_HEAT_JkgK[upper - 1]!
  const [highTemp, high] = SPECIFIC_HEAT_JkgK[upper]!
  return low + ((high - low) * (t - lowTemp)) / (highTemp - lowTemp)
}
