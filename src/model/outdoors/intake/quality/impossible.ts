import type { SunHours } from '#model/outdoors/sun'
import { QUANTITIES, type Quantity } from '../column/quantity.ts'
import type { Finding } from './report.ts'
import { nameHour, type HourlySeries, type HourNames } from './series.ts'

/**
 * What hourly surface weather lies between, in our units. Temperatures and pressure: the world records with a margin;
 * irradiances: the solar constant and cloud enhancement; longwave: a blackbody from −60 to 50 °C. Common practice, no source.
 */
const LIMITS: Partial<Record<Quantity, readonly [number, number]>> = {
  airTemp: [-90, 60],
  dewPoint: [-100, 40],
  relativeHumidity: [0, 110],
  wetBulb: [-90, 45],
  vapourPressure: [0, 7000],
  vapourDeficit: [-100, 15_000],
  specificHumidity: [0, 0.05],
  mixingRatio: [0, 0.05],
  windEast: [-80, 80],
  windNorth: [-80, 80],
  pressure: [40_000, 110_000],
  windSpeed: [0, 80],
  globalHorizontal: [-30, 1500],
  directNormal: [-30, 1400],
  diffuseHorizontal: [-30, 1000],
  directHorizontal: [-30, 1400],
  opaqueCloud: [0, 1.001],
  totalCloud: [0, 1.001],
  skyLongwave: [50, 600],
}
const SHORTWAVE: readonly Quantity[] = [
  'globalHorizontal',
  'directNormal',
  'diffuseHorizontal',
  'directHorizontal',
]
/** Sun lower than this for the whole hour: it is night, degrees. */
const NIGHT_DEG = -9
/** More than a lamp or a sensor's zero: W/m². */
const BRIGHT_WM2 = 20

/** Takes out what cannot be, sets small negative night radiation to zero, and says both. */
export function removeImpossible(
  read: HourlySeries,
  sun: SunHours,
  names: HourNames,
): { readonly series: HourlySeries; readonly findings: readonly Finding[] } {
  const series: HourlySeries = { ...read }
  const findings: Finding[] = []
  for (const quantity of Object.keys(read) as Quantity[]) {
    const limits = LIMITS[quantity]
    if (limits === undefined) continue
    const [lowest, highest] = limits
    const bad = pick(read[quantity]!, (value) => value < lowest || value > highest)
    const values = read[quantity]!.slice()
    for (const hour of bad) values[hour] = NaN
    if (bad.length > 0) findings.push(impossible(quantity, bad, read[quantity]!, names))
    if (SHORTWAVE.includes(quantity)) findings.push(...zeroNights(quantity, values, sun, names))
    series[quantity] = values
  }
  return { series, findings }
}

function pick(values: Float64Array, wrong: (value: number, hour: number) => boolean): number[] {
  const hours: number[] = []
  values.forEach((value, hour) => {
    if (wrong(value, hour)) hours.push(hour)
  })
  return hours
}

function impossible(
  quantity: Quantity,
  bad: readonly number[],
  values: Float64Array,
  names: HourNames,
): Finding {
  const first = bad[0]!
  return {
    ...{ kind: 'impossible', quantity, hours: bad.length, firstHour: first },
    sentence: `${QUANTITIES[quantity].label} cannot be in ${bad.length} h, first ${nameHour(names, first)} (${Number(values[first]!.toFixed(2))}); counted as missing.`,
  }
}

function zeroNights(quantity: Quantity, values: Float64Array, sun: SunHours, names: HourNames): Finding[] {
  const findings: Finding[] = []
  const negative = pick(values, (value) => value < 0)
  for (const hour of negative) values[hour] = 0
  if (negative.length > 0) {
    findings.push({
      ...{ kind: 'offset', quantity, hours: negative.length, firstHour: negative[0]! },
      sentence: `${QUANTITIES[quantity].label} is a little below zero in ${negative.length} h (a sensor’s zero at night); set to 0.`,
    })
  }
  const lit = pick(values, (value, hour) => value > BRIGHT_WM2 && sun.altitude_deg[hour]! < NIGHT_DEG)
  if (lit.length > 0) {
    findings.push({
      ...{ kind: 'pair', quantity, hours: lit.length, firstHour: lit[0]! },
      sentence: `${QUANTITIES[quantity].label} shines in ${lit.length} h of night, first ${nameHour(names, lit[0]!)}; left as it is: check the clock and the place.`,
    })
  }
  return findings
}
