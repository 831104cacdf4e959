import { KELVIN_OFFSET } from '#model/basis/units'

/** Molar mass of water over that of dry air. ASHRAE Handbook of Fundamentals 2017, ch. 1 (as psychrolib). */
export const WATER_AIR_MOLAR_RATIO = 0.621945
/** Triple point of water, °C: below it saturation is over ice. */
export const TRIPLE_POINT_C = 0.01
/** Standard sea-level pressure, Pa. */
export const SEA_LEVEL_PRESSURE_PA = 101325

/**
 * Saturation pressure of water vapour over liquid water (supercooled below 0 °C), Pa.
 *   ln p = C8/T + C9 + C10 T + C11 T² + C12 T³ + C13 ln T
 * Source: Hyland & Wexler 1983; coefficients as printed in ASHRAE Handbook of Fundamentals, ch. 1, eq. 6.
 */
export function saturationPressureOverWater_Pa(temp_C: number): number {
  const T = temp_C + KELVIN_OFFSET
  const T2 = T * T
  return Math.exp(
    -5.8002206e3 / T +
      1.3914993 -
      4.8640239e-2 * T +
      4.1764768e-5 * T2 -
      1.4452093e-8 * T2 * T +
      6.5459673 * Math.log(T),
  )
}

/** Saturation pressure over ice, Pa. Source: Hyland & Wexler 1983; ASHRAE Fundamentals ch. 1, eq. 5. */
export function saturationPressureOverIce_Pa(temp_C: number): number {
  const T = temp_C + KELVIN_OFFSET
  const T2 = T * T
  return Math.exp(
    -5.6745359e3 / T +
      6.3925247 -
      9.677843e-3 * T +
      6.2215701e-7 * T2 +
      2.0747825e-9 * T2 * T -
      9.484024e-13 * T2 * T2 +
      4.1635019 * Math.log(T),
  )
}

/** Saturation pressure, Pa: over ice below the triple point, over water above it. −100…200 °C. */
export function saturationPressure_Pa(temp_C: number): number {
  return temp_C <= TRIPLE_POINT_C
    ? saturationPressureOverIce_Pa(temp_C)
    : saturationPressureOverWater_Pa(temp_C)
}

/** Slope of the saturation pressure with temperature, Pa/K: the derivative of the formula in force. */
export function saturationSlope_PaK(temp_C: number): number {
  const T = temp_C + KELVIN_OFFSET
  const lnSlope =
    temp_C <= TRIPLE_POINT_C
      ? 5.6745359e3 / (T * T) -
        9.677843e-3 +
        2 * 6.2215701e-7 * T +
        3 * 2.0747825e-9 * T * T -
        4 * 9.484024e-13 * T * T * T +
        4.1635019 / T
      : waterLnSlope(T)
  return saturationPressure_Pa(temp_C) * lnSlope
}

function waterLnSlope(T: number): number {
  return (
    5.8002206e3 / (T * T) - 4.8640239e-2 + 2 * 4.1764768e-5 * T - 3 * 1.4452093e-8 * T * T + 6.5459673 / T
  )
}

/**
 * Dew point over water, °C, from the vapour pressure: the inverse of `saturationPressureOverWater_Pa`, by Newton's
 * rule on its logarithm from the Magnus inverse. Vapour pressures at or below zero give the dew point of 1e-3 Pa.
 */
export function dewPoint_C(vapour_Pa: number): number {
  const e = Math.max(vapour_Pa, 1e-3)
  const magnus = Math.log(e / 611.2)
  let t = Math.max(-110, (243.12 * magnus) / (17.62 - magnus))
  for (let i = 0; i < 20; i++) {
    const step = Math.log(saturationPressureOverWater_Pa(t) / e) / waterLnSlope(t + KELVIN_OFFSET)
    t -= step
    if (Math.abs(step) < 1e-9) break
  }
  return t
}

/** Dew point over water, °C, from dry bulb and relative humidity over water (0…1, as hygrometers report it). */
export function dewPointFromHumidity_C(air_C: number, humidity_frac: number): number {
  return dewPoint_C(humidity_frac * saturationPressureOverWater_Pa(air_C))
}

/** Relative humidity over water, 0…1, from dry bulb and dew point over water. */
export function relativeHumidity_frac(air_C: number, dew_C: number): number {
  return saturationPressureOverWater_Pa(dew_C) / saturationPressureOverWater_Pa(air_C)
}

/** Vapour pressure, Pa, from the dew point over water. */
export function vapourPressure_Pa(dew_C: number): number {
  return saturationPressureOverWater_Pa(dew_C)
}

/** Humidity ratio, kg water per kg dry air. Source: ASHRAE Fundamentals ch. 1, eq. 20. */
export function humidityRatio_frac(vapour_Pa: number, pressure_Pa: number): number {
  return (WATER_AIR_MOLAR_RATIO * vapour_Pa) / (pressure_Pa - vapour_Pa)
}

/** Pressure of the standard atmosphere at a height above sea level, Pa. Source: ASHRAE Fundamentals ch. 1, eq. 3. */
export function standardPressure_Pa(altitude_m: number): number {
  return SEA_LEVEL_PRESSURE_PA * (1 - 2.25577e-5 * altitude_m) ** 5.2559
}

/** Heat of evaporation at 0 °C, J/kg, and its fall with temperature, J/kg K. */
export const EVAPORATION_HEAT_JKG = 2.501e6
export const EVAPORATION_HEAT_FALL_JKGK = 2361

/** Heat of evaporation of water at a temperature, J/kg. Linear in °C; ASHRAE Fundamentals ch. 1 (2501 − 2.361 t kJ/kg). */
export function evaporationHeat_Jkg(temp_C: number): number {
  return EVAPORATION_HEAT_JKG - EVAPORATION_HEAT_FALL_JKGK * temp_C
}

/** Heat of sublimation of ice, J/kg, near 0 °C: 2501 + 333.6 kJ/kg. */
export const SUBLIMATION_HEAT_JKG = 2.8346e6
