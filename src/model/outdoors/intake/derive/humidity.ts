import { dewPointFromHumidity_C } from '#model/outdoors/air'

export const DEW_POINT_NOTE =
  'Worked out from air temperature and relative humidity over water (Hyland & Wexler 1983 saturation pressure).'

/** Lowest relative humidity a dew point is worked out for, % (drier readings are a sensor's floor). */
const DRIEST = 0.5

/** Dew point over water, °C, hour by hour, never above the dry bulb. */
export function deriveDewPoint(airTemp_C: Float64Array, relativeHumidity: Float64Array): Float64Array {
  return airTemp_C.map((air, i) => {
    const humidity = relativeHumidity[i]!
    if (air !== air || humidity !== humidity) return NaN
    return Math.min(air, dewPointFromHumidity_C(air, Math.max(DRIEST, humidity) / 100))
  })
}
