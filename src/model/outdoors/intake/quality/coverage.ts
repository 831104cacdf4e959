import type { Quantity } from '../column/quantity.ts'
import type { Coverage } from './report.ts'
import { monthOfHour, type HourlySeries, type HourNames } from './series.ts'

/** Share of hours with a value, by month and altogether, for every quantity the file has. */
export function measureCoverage(series: HourlySeries, names: HourNames): Coverage[] {
  const quantities = Object.keys(series) as Quantity[]
  const hours = quantities.length === 0 ? 0 : series[quantities[0]!]!.length
  const months = Uint8Array.from({ length: hours }, (_, hour) => monthOfHour(names, hour))
  const perMonth = new Float64Array(12)
  for (const month of months) perMonth[month]! += 1
  return quantities.map((quantity) => {
    const said = new Float64Array(12)
    let all = 0
    series[quantity]!.forEach((value, hour) => {
      if (value !== value) return
      said[months[hour]!]! += 1
      all += 1
    })
    const monthly_frac = Array.from(said, (count, month) =>
      perMonth[month] === 0 ? null : count / perMonth[month]!,
    )
    return { quantity, monthly_frac, overall_frac: hours === 0 ? 0 : all / hours }
  })
}
