import { bisected } from '#model/basis/numbers'
import { humidityRatio_frac, saturationPressure_Pa, vapourPressure_Pa } from '#model/outdoors/air'

const MOST_STEPS = 60
const CLOSE_K = 1e-6

/**
 * Wet-bulb temperature, °C: where adiabatic saturation ends,
 *   w = ((2501 − 2.326 t_wb) w_s(t_wb) − 1.006 (t − t_wb)) / (2501 + 1.86 t − 4.186 t_wb)
 * found by bisection between dew point and air. Above freezing only: below it the air's own temperature is given.
 * Source: ASHRAE Handbook of Fundamentals 2017, ch. 1, eq. 33.
 */
export function wetBulb_C(air_C: number, dewPoint_C: number, pressure_Pa: number): number {
  if (dewPoint_C >= air_C || air_C <= 0) return air_C
  const w = humidityRatio_frac(vapourPressure_Pa(dewPoint_C), pressure_Pa)
  const ends = (t: number): number => {
    const saturated = humidityRatio_frac(saturationPressure_Pa(t), pressure_Pa)
    return ((2501 - 2.326 * t) * saturated - 1.006 * (air_C - t)) / (2501 + 1.86 * air_C - 4.186 * t)
  }
  return bisected(ends, w, [Math.max(0, dewPoint_C), air_C], MOST_STEPS, CLOSE_K)
}
