import { J_PER_KWH } from '#model/basis/hours'
import { count, line, words, type SheetLine, type Text, type Wording } from '#model/basis/words'
import { type Bill, billOf, measurePrices, panelPrices, sumOf } from '#model/design/assembly'
import { fanHours_h } from '#model/design/target'
import type { Plant } from './plant.ts'
import { takenMeasures } from '#model/design/measures'

const HOUR_S = 3600

/** First and yearly cost in the user's currency, with what they rest on. */
export function moneyLines(bill: Bill): SheetLine[] {
  return [
    line('Cost at first', sumWords(bill.first)),
    line('Cost each year', sumWords(bill.yearly)),
    line('Prices', whose(bill)),
  ]
}

function sumWords(all: Bill['first']): Wording {
  const whole = (price: number) => count(Math.round(price))
  if (all.length === 0) return words`nothing`
  const parts = all.flatMap(({ what, price }, i): Text[] => [
    i === 0 ? '' : ', ',
    words`${what} ${whole(price)}`,
  ])
  return words`${whole(sumOf(all))}: ${parts.flat()}`
}

function whose({ own_count, invented_count }: Bill): Wording {
  if (own_count + invented_count === 0) return words`none is needed.`
  if (invented_count === 0) return words`Your prices, in your currency.`
  if (own_count === 0)
    return words`Invented start values, in your currency: put in your own before you rely on them.`
  return words`In your currency: ${count(own_count)} of ${count(own_count + invented_count)} are your prices, the others invented start values.`
}

/** The bill of panels and of what was chosen with them. Electricity is that of pump and delivery, and of the fans chosen. */
export function plantBill({ answer }: Plant): Bill {
  const { area_m2, storeVolume_m3, months, year, limit_C } = answer
  const { scenario } = answer
  const measures = takenMeasures(scenario)
  const fans_J = measures.map(({ id, power_W }) =>
    id === 'ceilingFan' || id === 'nightFan'
      ? power_W(scenario) * HOUR_S * (id === 'nightFan' ? year.vented_h : fanHours_h(year.room_C, limit_C))
      : 0,
  )
  const electric_J = [...fans_J, ...months.map((month) => month.electric_J)].reduce(
    (sum, one) => sum + one,
    0,
  )
  return billOf(answer.scenario, (s) => {
    const plant = panelPrices(s, area_m2, storeVolume_m3)
    return {
      first: [...plant, ...measurePrices(s, measures)],
      yearly: [
        { what: 'electricity', price: (s.prices.energy_perkWh * electric_J) / J_PER_KWH },
        { what: 'upkeep', price: s.prices.upkeep_frac * sumOf(plant) },
      ],
    }
  })
}
