import { describe, expect, it } from 'vitest'
import { billOf, measurePrices, panelPrices, sumOf } from '#model/design/assembly'
import { BUILDING_MEASURES } from '#model/design/measures'
import { defaultScenario, isStartPrice, withField } from '#model/design/scenario'
import { wordingText } from '#model/basis/words'
import { moneyLines } from '#inside/model/handover/sheet/money.ts'
import { panelPrice } from '#studies/decide-machines.ts'

const shade = BUILDING_MEASURES.filter(({ id }) => id === 'shade')
const bill = (scenario = defaultScenario()) =>
  billOf(scenario, (s) => ({
    first: [...panelPrices(s, 10, 0.5), ...measurePrices(s, shade)],
    yearly: [{ what: 'electricity', price: s.prices.energy_perkWh * 40 }],
  }))
const said = (scenario = defaultScenario()) =>
  moneyLines(bill(scenario)).map(({ label, value }) => `${label}: ${wordingText(value, 'si')}`)

describe('what it costs, and by whose prices', () => {
  it('adds up as the search of ways does (by hand: 1200 + 400 + 12 a metre + 300 + 350 + 120 + 150)', () => {
    const scenario = defaultScenario()
    const all = sumOf(panelPrices(scenario, 10, 0.5))
    expect(all).toBeCloseTo(1200 + 400 + 12 * scenario.loop.pipeLength_m + 300 + 620, 9)
    expect(panelPrice(scenario, 10, 0.5)).toBe(all)
    expect(panelPrice(scenario, 0, 0)).toBe(0)
  })

  it('says whose prices: invented, some, or all one’s own; a price that nothing hangs on is not counted', () => {
    expect(said()[2]).toMatch(/^Prices: Invented start values, in your currency/)
    const one = withField(defaultScenario(), 'prices.panel_perm2', '90')
    expect(said(one)[2]).toBe(
      'Prices: In your currency: 1 of 9 are your prices, the others invented start values.',
    )
    const unused = withField(defaultScenario(), 'prices.airConditioner_each', '1')
    expect(said(unused)[2]).toMatch(/^Prices: Invented/)
  })

  it('takes a typed 0 for a price of 0', () => {
    const free = withField(defaultScenario(), 'prices.panel_perm2', '0')
    expect(sumOf(bill().first) - sumOf(bill(free).first)).toBeCloseTo(1200, 9)
    expect(isStartPrice('prices.panel_perm2', free.prices.panel_perm2)).toBe(false)
    expect(isStartPrice('prices.panel_perm2', defaultScenario().prices.panel_perm2)).toBe(true)
  })
})
