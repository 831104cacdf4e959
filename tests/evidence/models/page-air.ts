/* Air, vapour and black radiation of the second model, written from src/model/README.md alone (parts Air and One hour, step
 * by step) by someone who had not read the code. Shares no code with the project: black radiation in a band is Planck's law
 * integrated here. The constants of Hyland & Wexler 1983 are those of ASHRAE Fundamentals 2017, ch. 1 (from memory). */

export const ZERO_K = 273.15
const SIGMA = 5.670374419e-8
/** Second constant of radiation, µm K. */
const C2_UMK = 14387.76877

const overWater = (T: number) =>
  Math.exp(
    -5800.2206 / T +
      1.3914993 -
      0.048640239 * T +
      4.1764768e-5 * T ** 2 -
      1.4452093e-8 * T ** 3 +
      6.5459673 * Math.log(T),
  )

const overIce = (T: number) =>
  Math.exp(
    -5674.5359 / T +
      6.3925247 -
      0.009677843 * T +
      6.2215701e-7 * T ** 2 +
      2.0747825e-9 * T ** 3 -
      9.484024e-13 * T ** 4 +
      4.1635019 * Math.log(T),
  )

/** Pressure of vapour over a face at t, Pa: over ice below the triple point. */
export const saturation_Pa = (t_C: number) => (t_C < 0.01 ? overIce : overWater)(t_C + ZERO_K)

/** Vapour pressure of air with this dew point, Pa: over water also below 0 °C. */
export const vapour_Pa = (dewPoint_C: number) => overWater(dewPoint_C + ZERO_K)

/** Heat of evaporation, or of sublimation on a face below freezing, J/kg. */
export function latent_Jkg(t_C: number): number {
  const ice = 2.8346e6
  const water = (t: number) => 2.501e6 - 2361 * t
  if (t_C >= 0.5) return water(t_C)
  if (t_C <= -0.5) return ice
  return ice + (water(0.5) - ice) * (t_C + 0.5)
}

/** Simpson's rule over n (even) intervals. */
export function integral(f: (x: number) => number, low: number, high: number, n: number): number {
  if (high <= low) return 0
  const step = (high - low) / n
  let sum = f(low) + f(high)
  for (let i = 1; i < n; i++) sum += (i % 2 === 1 ? 4 : 2) * f(low + i * step)
  return (sum * step) / 3
}

/** Share of black radiation at T (K) between two wavelengths in µm: Planck's law in x = c₂/(λT). */
export function blackShare(T_K: number, from_um: number, to_um: number): number {
  const planck = (x: number) => x ** 3 / Math.expm1(x)
  return (15 / Math.PI ** 4) * integral(planck, C2_UMK / (to_um * T_K), C2_UMK / (from_um * T_K), 60)
}

/** Black emission at t, W/m²: all, in the window of 8–13 µm, and in the rest. */
export function black(t_C: number): { all: number; window: number; rest: number } {
  const T = t_C + ZERO_K
  const all = SIGMA * T ** 4
  const window = all * blackShare(T, 8, 13)
  return { all, window, rest: all - window }
}

interface Air {
  readonly conductivity_WmK: number
  /** g β/(ν α), to be multiplied by ΔT L³. */
  readonly rayleigh_perKm3: number
}

/** Air at a film temperature and pressure. */
export function airAt(t_C: number, pressure_Pa: number): Air {
  const T = t_C + ZERO_K
  const conductivity_WmK = (0.0241 * (T / 273) ** 1.5 * 467) / (T + 194)
  const viscosity = (1.716e-5 * (T / 273) ** 1.5 * 384) / (T + 111)
  const density = pressure_Pa / (287.055 * T)
  const nu = viscosity / density
  const alpha = conductivity_WmK / (density * 1006)
  return { conductivity_WmK, rayleigh_perKm3: 9.80665 / T / (nu * alpha) }
}
