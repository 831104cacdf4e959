import { interpolatingPolynomial, polynomial, type Polynomial5 } from '#model/basis/numbers'
import { KELVIN_OFFSET } from '#model/basis/units'

/** Stefan–Boltzmann constant, W/m²K⁴ (CODATA 2018, exact). */
export const STEFAN_BOLTZMANN = 5.670374419e-8
/** Second radiation constant, µm K (CODATA 2018, exact). */
const SECOND_RADIATION_UM_K = 14387.76877
/** The atmospheric window, µm. */
export const WINDOW_FROM_UM = 8
export const WINDOW_TO_UM = 13

/** Blackbody emission at all wavelengths, W/m². */
export function blackbody_Wm2(temp_C: number): number {
  const T2 = (temp_C + KELVIN_OFFSET) ** 2
  return STEFAN_BOLTZMANN * T2 * T2
}

/**
 * Share of blackbody emission below a wavelength, 0…1.
 *   F(0→λ) = 15/π⁴ Σ e^(−nz)/n (z³ + 3z²/n + 6z/n² + 6/n³), z = c₂/(λT)
 * Source: Chang & Rhee 1984, Int. Comm. Heat Mass Transfer 11, 451; Siegel & Howell, Thermal Radiation, eq. 1-33.
 */
export function emissionBelow_frac(wavelength_um: number, temp_K: number): number {
  const z = SECOND_RADIATION_UM_K / (wavelength_um * temp_K)
  let sum = 0
  for (let n = 1; n <= 200; n++) {
    const term = (Math.exp(-n * z) / n) * (z ** 3 + (3 * z * z) / n + (6 * z) / (n * n) + 6 / n ** 3)
    sum += term
    if (term < 1e-16 * sum) break
  }
  return (15 / Math.PI ** 4) * sum
}

/** Share of blackbody emission inside 8–13 µm, 0…1, exact. */
export function windowFraction(temp_K: number): number {
  return emissionBelow_frac(WINDOW_TO_UM, temp_K) - emissionBelow_frac(WINDOW_FROM_UM, temp_K)
}

/** Emission at all wavelengths as a polynomial of °C: (t + 273.15)⁴ written out, exact. */
export const TOTAL_EMISSION: Polynomial5 = polynomial([
  STEFAN_BOLTZMANN * KELVIN_OFFSET ** 4,
  4 * STEFAN_BOLTZMANN * KELVIN_OFFSET ** 3,
  6 * STEFAN_BOLTZMANN * KELVIN_OFFSET ** 2,
  4 * STEFAN_BOLTZMANN * KELVIN_OFFSET,
  STEFAN_BOLTZMANN,
  0,
])

/**
 * Emission inside 8–13 µm as a polynomial of °C, W/m²: through the exact values at six Chebyshev points of
 * −60…90 °C, within 0.02 W/m² there.
 */
export const WINDOW_EMISSION: Polynomial5 = interpolatingPolynomial(
  (temp_C) => windowFraction(temp_C + KELVIN_OFFSET) * blackbody_Wm2(temp_C),
  -60,
  90,
)

/** Emission outside 8–13 µm as a polynomial of °C, W/m²: the rest, so that both add up exactly. */
export const OFF_WINDOW_EMISSION: Polynomial5 = polynomial(
  Array.from(TOTAL_EMISSION, (coefficient, i) => coefficient - WINDOW_EMISSION[i]!),
)
