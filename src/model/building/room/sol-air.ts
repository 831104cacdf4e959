import { STEFAN_BOLTZMANN } from '#model/outdoors/air'
import { KELVIN_OFFSET } from '#model/basis/units'

/** An outside surface seen from within: the temperature and conductance that take the place of sun, sky, ground and wind. */
export interface SolAir {
  /** Temperature of the surface when no heat crosses it, °C. */
  readonly temp_C: number
  /** Conductance from the surface to that temperature, W/m²K: convection, and the secant of its own radiation between the air's temperature and this one. */
  readonly film_Wm2K: number
}

/** What falls on the surface. */
export interface SurfaceWeather {
  readonly air_C: number
  readonly absorbedSun_Wm2: number
  /** Longwave that reaches it from sky and ground, W/m². */
  readonly longwave_Wm2: number
  readonly emittance_frac: number
  readonly convection_Wm2K: number
}

/**
 * The secant is right for a light wall (whose surface is at the sol-air temperature) and for a heavy one (at the air's); the
 * tangent makes bare concrete 0.2 K too warm. Solves α I + ε (L − σ T⁴) + h_c (T_air − T) = 0 by Newton's rule; T⁴ is kept, for a dark roof is 40 K over the air. With
 * all of it linear about the air this is the sol-air temperature of the ASHRAE Handbook of Fundamentals, ch. 18.
 */
export function solAir(w: SurfaceWeather): SolAir {
  const air_K = w.air_C + KELVIN_OFFSET
  const grey = w.emittance_frac * STEFAN_BOLTZMANN
  let T = air_K
  for (let round = 0; round < 20; round++) {
    const cube = T * T * T
    const gain =
      w.absorbedSun_Wm2 +
      w.emittance_frac * w.longwave_Wm2 -
      grey * cube * T +
      w.convection_Wm2K * (air_K - T)
    const step = gain / (w.convection_Wm2K + 4 * grey * cube)
    T += step
    if (Math.abs(step) < 1e-6) break
  }
  const radiation_Wm2K = grey * (T * T + air_K * air_K) * (T + air_K)
  return { temp_C: T - KELVIN_OFFSET, film_Wm2K: w.convection_Wm2K + radiation_Wm2K }
}
