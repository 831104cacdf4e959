import { relativeHumidity_frac } from '#model/outdoors/air'
import type { Finding } from './report.ts'
import { nameHour, type HourlySeries, type HourNames } from './series.ts'

/** Dew point may read this far above the dry bulb before it is said, K: the rounding of two columns. */
const ROUNDING_K = 0.25
/** Humidity read and worked out from the dew point may differ by this much before it is said, %. */
const HUMIDITY_TOLERANCE = 8

/** Sets humidity above 100 % and dew points above the dry bulb to saturation, and says so; compares the two. */
export function correctHumidity(
  given: HourlySeries,
  names: HourNames,
): { readonly series: HourlySeries; readonly findings: readonly Finding[] } {
  const series: HourlySeries = { ...given }
  const findings: Finding[] = []
  const { relativeHumidity, dewPoint, airTemp } = given
  if (relativeHumidity) {
    const above = hoursWhere(relativeHumidity, (value) => value > 100)
    series.relativeHumidity = relativeHumidity.map((value) => (value > 100 ? 100 : value))
    if (above.length > 0) {
      const first = above[0]!
      findings.push({
        ...{ kind: 'humidity', quantity: 'relativeHumidity', hours: above.length, firstHour: first },
        sentence: `Relative humidity is above 100 % in ${above.length} h, first ${nameHour(names, first)}; set to 100 %.`,
      })
    }
  }
  if (dewPoint && airTemp) {
    const above = hoursWhere(dewPoint, (dew, i) => dew > airTemp[i]! + ROUNDING_K)
    series.dewPoint = dewPoint.map((dew, i) => (dew > airTemp[i]! ? airTemp[i]! : dew))
    if (above.length > 0) {
      const first = above[0]!
      findings.push({
        ...{ kind: 'pair', quantity: 'dewPoint', hours: above.length, firstHour: first },
        sentence: `The dew point is above the air temperature in ${above.length} h, first ${nameHour(names, first)} (${dewPoint[first]!.toFixed(1)} over ${airTemp[first]!.toFixed(1)} °C); lowered to it.`,
      })
    }
  }
  if (dewPoint && airTemp && relativeHumidity)
    findings.push(...compare(airTemp, dewPoint, relativeHumidity, names))
  return { series, findings }
}

function compare(air: Float64Array, dew: Float64Array, humidity: Float64Array, names: HourNames): Finding[] {
  const apart = hoursWhere(humidity, (value, i) => {
    return air[i]! > 0 && Math.abs(100 * relativeHumidity_frac(air[i]!, dew[i]!) - value) > HUMIDITY_TOLERANCE
  })
  if (apart.length === 0) return []
  const first = apart[0]!
  return [
    {
      ...{ kind: 'pair', quantity: 'relativeHumidity', hours: apart.length, firstHour: first },
      sentence: `Humidity and dew point disagree by more than ${HUMIDITY_TOLERANCE} % in ${apart.length} h, first ${nameHour(names, first)}; the dew point is used.`,
    },
  ]
}

function hoursWhere(values: Float64Array, wrong: (value: number, hour: number) => boolean): number[] {
  const hours: number[] = []
  values.forEach((value, hour) => {
    if (wrong(value, hour)) hours.push(hour)
  })
  return hours
}
