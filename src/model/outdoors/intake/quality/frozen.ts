import type { SunHours } from '#model/outdoors/sun'
import { QUANTITIES, type Quantity } from '../column/quantity.ts'
import type { Finding } from './report.ts'
import { nameHour, type HourlySeries, type HourNames } from './series.ts'

/** Hours without any change at which a sensor counts as frozen (files rounded to whole units repeat for a while). */
const FROZEN_H: Partial<Record<Quantity, number>> = {
  airTemp: 24,
  dewPoint: 36,
  relativeHumidity: 48,
  windSpeed: 36,
  globalHorizontal: 6,
  pressure: 96,
  skyLongwave: 12,
}

/** Stretches in which a value that always moves is still; reported, not changed. Saturation does not count. */
export function findFrozen(series: HourlySeries, sun: SunHours, names: HourNames): Finding[] {
  const findings: Finding[] = []
  for (const [quantity, limit] of Object.entries(FROZEN_H) as [Quantity, number][]) {
    const values = series[quantity]
    if (values === undefined) continue
    const exempt = (i: number): boolean =>
      (quantity === 'globalHorizontal' && (sun.altitude_deg[i]! < 5 || values[i] === 0)) ||
      (quantity === 'relativeHumidity' && values[i]! >= 99)
    const { hours, first, longest } = stillHours(values, limit, exempt)
    if (hours === 0) continue
    findings.push({
      ...{ kind: 'frozen', quantity, hours, firstHour: first },
      sentence: `${QUANTITIES[quantity].label} does not move for up to ${longest} h, first from ${nameHour(names, first)} (${Number(values[first]!.toFixed(2))}): a frozen sensor or a constant; left as it is.`,
    })
  }
  return findings
}

function stillHours(values: Float64Array, limit: number, exempt: (hour: number) => boolean) {
  let hours = 0
  let first = -1
  let longest = 0
  let start = 0
  for (let i = 1; i <= values.length; i += 1) {
    if (i < values.length && values[i] === values[i - 1] && !exempt(i)) continue
    const length = i - start
    if (length >= limit) {
      hours += length
      if (first < 0) first = start
      longest = Math.max(longest, length)
    }
    start = i
  }
  return { hours, first, longest }
}
