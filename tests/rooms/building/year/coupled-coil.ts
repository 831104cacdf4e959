import {
  AIR_SPECIFIC_HEAT_JKGK,
  evaporationHeat_Jkg,
  humidityRatio_frac,
  vapourPressure_Pa,
} from '#model/outdoors/air'
import { type YearInputs } from '#model/building/year'

/**
 * The coil with a tray: its surface is where sensible and latent heat pass on to the water, found by bisection on the
 * saturation curve itself. `sensible_W` of the surface's temperature, at a share of the air flow.
 */
export function coilAt(
  { room, plant }: YearInputs,
  hour: number,
  { air_C, water_C }: { air_C: number; water_C: number },
  share: number,
  sensible_W: (surface_C: number) => number,
): { sensible_W: number; latent_W: number } {
  const UA = plant!.store.delivery_WK
  const change_WK = room.ventilation_WK[hour]!
  const dew_C = Math.min(room.indoorDewPoint_C[hour]!, air_C)
  const ratio = (t_C: number): number => humidityRatio_frac(vapourPressure_Pa(t_C), room.pressure_Pa)
  const carried_kgs = 1 / (1 / change_WK + 0.7 / (share * UA)) / AIR_SPECIFIC_HEAT_JKGK
  const latent_W = (s_C: number): number =>
    Math.max(0, carried_kgs * evaporationHeat_Jkg(dew_C) * (ratio(dew_C) - ratio(s_C)))
  let [low, high] = [water_C - 60, water_C + 60]
  for (let k = 0; k < 45; k++) {
    const s_C = (low + high) / 2
    if (sensible_W(s_C) + latent_W(s_C) > (UA / 0.3) * (s_C - water_C)) low = s_C
    else high = s_C
  }
  return { sensible_W: sensible_W(low), latent_W: latent_W(low) }
}
