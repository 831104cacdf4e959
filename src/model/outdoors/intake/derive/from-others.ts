import {
  dewPoint_C,
  saturationPressure_Pa,
  standardPressure_Pa,
  vapourPressure_Pa,
  WATER_AIR_MOLAR_RATIO,
} from '#model/outdoors/air'
import type { Quantity } from '../column/quantity.ts'
import type { HourlySeries } from '../quality/series.ts'

/** Quantities as read and as worked out from others, with the reason of each that was worked out. */
export interface WithWorked {
  readonly series: HourlySeries
  readonly notes: Partial<Record<Quantity, string>>
}

/** Psychrometer coefficient of a ventilated wet bulb, 1/K: over water and over ice. WMO-No. 8, annex 4.B. */
const OVER_WATER_1K = 6.53e-4
const OVER_ICE_1K = 5.75e-4
const GROWTH_1K = 9.44e-4

/** Driest air a dew point is worked out for, share of saturation: a sensor's floor (as `humidity.ts`). */
const DRIEST_frac = 0.005

interface Way {
  readonly from: Quantity
  readonly note: string
  /** Vapour pressure, Pa, from the column's value, air temperature in °C and pressure in Pa. */
  readonly vapour_Pa: (value: number, air_C: number, pressure_Pa: number) => number
}

/** Ways to the dew point where neither it nor relative humidity is a column, the surest first. */
const WAYS: readonly Way[] = [
  { from: 'vapourPressure', note: 'vapour pressure', vapour_Pa: (e) => e },
  {
    from: 'mixingRatio',
    note: 'mixing ratio and pressure: e = p r / (0.622 + r)',
    vapour_Pa: (r, _, p) => (p * r) / (WATER_AIR_MOLAR_RATIO + r),
  },
  {
    from: 'specificHumidity',
    note: 'specific humidity and pressure: e = p q / (0.622 + 0.378 q)',
    vapour_Pa: (q, _, p) => (p * q) / (WATER_AIR_MOLAR_RATIO + (1 - WATER_AIR_MOLAR_RATIO) * q),
  },
  {
    from: 'vapourDeficit',
    note: 'air temperature and vapour pressure deficit: e = saturation − deficit',
    vapour_Pa: (deficit, air) => vapourPressure_Pa(air) - deficit,
  },
  {
    from: 'wetBulb',
    note: 'air and wet bulb by the psychrometer formula of WMO-No. 8',
    vapour_Pa: psychrometer_Pa,
  },
]

/** Vapour pressure at a ventilated wet bulb, Pa: e = e_w(wet) − A (1 + 0.000944 wet) p (air − wet). Source: WMO-No. 8, annex 4.B. */
function psychrometer_Pa(wet_C: number, air_C: number, pressure_Pa: number): number {
  const frozen = wet_C < 0
  const coefficient_1K = frozen ? OVER_ICE_1K : OVER_WATER_1K * (1 + GROWTH_1K * wet_C)
  return saturationPressure_Pa(wet_C) - coefficient_1K * pressure_Pa * (air_C - wet_C)
}

/**
 * Works out wind speed from its two components and the dew point from what other humidity there is, hour by hour, where the
 * quantity itself is no column with values. Missing stays missing.
 * @param altitude_m height of the site, for the pressure where none was read
 */
export function fromOthers(read: HourlySeries, altitude_m: number): WithWorked {
  const series: HourlySeries = { ...read }
  const notes: Partial<Record<Quantity, string>> = {}
  const { windEast, windNorth, airTemp } = read
  if (!has(read.windSpeed) && windEast && windNorth) {
    series.windSpeed = windEast.map((east, i) => Math.hypot(east, windNorth[i]!))
    notes.windSpeed = 'Worked out from the winds towards the east and the north.'
  }
  const way = WAYS.find(({ from }) => has(read[from]))
  if (has(read.dewPoint) || has(read.relativeHumidity) || way === undefined || airTemp === undefined)
    return { series, notes }
  const standard_Pa = standardPressure_Pa(altitude_m)
  series.dewPoint = read[way.from]!.map((value, i) => {
    const air_C = airTemp[i]!
    const pressure_Pa = read.pressure?.[i] ?? standard_Pa
    const vapour_Pa = way.vapour_Pa(value, air_C, pressure_Pa === pressure_Pa ? pressure_Pa : standard_Pa)
    return vapour_Pa === vapour_Pa
      ? dewPoint_C(Math.max(vapour_Pa, DRIEST_frac * vapourPressure_Pa(air_C)))
      : NaN
  })
  notes.dewPoint = `Worked out from ${way.note}.`
  return { series, notes }
}

const has = (values: Float64Array | undefined): boolean => values !== undefined && !values.every(Number.isNaN)
