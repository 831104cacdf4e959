import type { Scenario } from '#model/design/scenario'
import { deliveryBought, designCost } from '#model/design/cost'
import { placeAt, type DesignMap } from '#model/design/sizing'
import type { UnitSystem } from '#model/basis/units'
import type { Input } from '#live/messages.ts'
import { shownQuantity } from '#ui/words/quantity.ts'

/** What the map can be shaded by. */
export const SHADES = ['hours', 'peak', 'cost'] as const
export type Shade = (typeof SHADES)[number]

/** One value over the whole map, with its words. */
export interface ShadeOf {
  readonly values: Float64Array
  readonly title: string
  readonly text: (value: number) => string
}

/** The column of the map a shade shows. */
export function shadeOf(
  shade: Shade,
  map: DesignMap,
  question: Input<'map'>,
  scenario: Scenario,
  system: UnitSystem,
): ShadeOf {
  const t = shownQuantity('C', system)
  switch (shade) {
    case 'hours':
      return { values: map.hours_h, title: 'Hours above the limit', text: (h) => `${h.toFixed(0)} h` }
    case 'peak':
      return { values: map.peak_C, title: 'Hottest hour', text: (c) => t.text(c) }
    case 'cost':
      return { values: costs(map, question, scenario), title: 'Price', text: (price) => moneyText(price) }
  }
}

function costs(map: DesignMap, { around }: Input<'map'>, { prices, loop, store }: Scenario): Float64Array {
  const bought = { pipeLength_m: loop.pipeLength_m, delivery: deliveryBought(store) }
  const { area_m2, other } = map.axes
  return map.measure.map((measure, i) => {
    if (Number.isNaN(measure)) return NaN
    const at = placeAt(around, map.axes, area_m2[i % area_m2.length]!, other[Math.floor(i / area_m2.length)]!)
    const electric_J = map.electric_J[i]!
    return designCost(prices, { ...at, electric_J, ...bought }).total
  })
}

/** A price in the user's own currency: whole units, thousands apart. */
export function moneyText(price: number): string {
  return Math.round(price)
    .toString()
    .replace(/\B(?=(\d{3})+$)/g, '\u202f')
}

/** Levels at which lines are drawn: at most six, at pleasant numbers inside the span of the values. */
export function levelsOf(values: Float64Array): readonly number[] {
  const known = values.filter((value) => !Number.isNaN(value))
  const [low, high] = [Math.min(...known), Math.max(...known)]
  const span = high - low
  if (!(span > 0)) return []
  const decade = 10 ** Math.floor(Math.log10(span / 6))
  const step = decade * [1, 2, 5, 10].find((nice) => span / (nice * decade) <= 6)!
  const first = Math.floor(low / step) + 1
  return Array.from({ length: 7 }, (_, i) => Number(((first + i) * step).toPrecision(6))).filter(
    (x) => x < high,
  )
}

/** Step 0…1 of a value between the least and the most. */
export function shareOf(values: Float64Array): (value: number) => number {
  const known = values.filter((value) => !Number.isNaN(value))
  const [low, high] = [Math.min(...known), Math.max(...known)]
  return (value) => (high > low ? (value - low) / (high - low) : 0)
}
