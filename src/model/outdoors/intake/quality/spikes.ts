import { QUANTITIES, type Quantity } from '../column/quantity.ts'
import type { Finding } from './report.ts'
import { nameHour, type HourlySeries, type HourNames } from './series.ts'

/**
 * A value this far from both neighbours, which agree with each other to a third of it, is a spike. Hour to hour, air
 * rarely moves more than a few kelvin (fronts move one way, spikes go and come back). Common practice, no source.
 */
const JUMP: Partial<Record<Quantity, number>> = {
  airTemp: 8,
  dewPoint: 10,
  pressure: 1000,
  windSpeed: 20,
  skyLongwave: 150,
}

/** Single hours that jump away and back; reported, not changed. */
export function findSpikes(series: HourlySeries, names: HourNames): Finding[] {
  const findings: Finding[] = []
  for (const [quantity, jump] of Object.entries(JUMP) as [Quantity, number][]) {
    const values = series[quantity]
    if (values === undefined) continue
    const hours: number[] = []
    for (let i = 1; i < values.length - 1; i += 1) {
      const before = values[i]! - values[i - 1]!
      const after = values[i]! - values[i + 1]!
      if (
        before * after > 0 &&
        Math.min(Math.abs(before), Math.abs(after)) > jump &&
        Math.abs(before - after) < jump / 3
      ) {
        hours.push(i)
      }
    }
    if (hours.length === 0) continue
    const first = hours[0]!
    findings.push({
      ...{ kind: 'spike', quantity, hours: hours.length, firstHour: first },
      sentence: `${QUANTITIES[quantity].label} jumps away and back in ${hours.length} h, first ${nameHour(names, first)} (${Number(values[first]!.toFixed(1))}); left as it is.`,
    })
  }
  return findings
}
