import { SEA_LEVEL_PRESSURE_PA, standardPressure_Pa } from '#model/outdoors/air'
import { hourlyFromDays } from '#model/basis/hours'
import { solarHour_h } from './day-shape.ts'
import type { InventedPlace } from './place.ts'

/** Half the swing of the twice-daily pressure tide at the equator at sea level, Pa (common practice, no source). */
const TIDE_PA = 120

/** Hourly station pressure, Pa: standard atmosphere at the altitude, slow weather, and the tide of 10 and 22 h. */
export function pressureYear(place: InventedPlace, dayState: Float64Array): Float64Array {
  const { altitude_m, latitude_deg } = place.site
  const standard_Pa = standardPressure_Pa(altitude_m)
  const thinner = standard_Pa / SEA_LEVEL_PRESSURE_PA
  const tide_Pa = TIDE_PA * Math.cos((latitude_deg * Math.PI) / 180) ** 3
  return hourlyFromDays(dayState).map((state, hour) => {
    const phase = (2 * Math.PI * (solarHour_h(place.site, hour) - 10)) / 12
    return standard_Pa + thinner * (place.pressureSpread_Pa * state + tide_Pa * Math.cos(phase))
  })
}
