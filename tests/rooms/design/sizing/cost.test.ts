import { describe, expect, it } from 'vitest'
import { cheapestOn, type DesignMap } from '#model/design/sizing'
import { edgeDesigns } from '#inside/model/design/sizing/cheapest.ts'
import { deliveryBought, designCost, hasPrices, STARTING_PRICES } from '#model/design/cost'

const FREE = {
  panel_perm2: 0,
  store_perm3: 0,
  pipe_perm: 0,
  pump_each: 0,
  fanCoil_each: 0,
  deliveryPump_each: 0,
  mixingValve_each: 0,
  energy_perkWh: 0,
  years_y: 10,
}
const START = { ...STARTING_PRICES, years_y: 10 }
const delivery = deliveryBought({ kind: 'layered', deliveryKind: 'surface' })
const NOTHING = { pipeLength_m: 0, delivery }
const PRICES = {
  panel_perm2: 80,
  store_perm3: 300,
  pipe_perm: 5,
  pump_each: 150,
  fanCoil_each: 200,
  deliveryPump_each: 70,
  mixingValve_each: 30,
  energy_perkWh: 0.25,
  years_y: 8,
}

describe('price of a design', () => {
  it('adds its parts and the electricity of the years counted (exact: by hand)', () => {
    // 12 m² × 80 + 1.5 m³ × 300 + 16 m × 5 + 150 + (200 + 70 + 30) + 20 kWh × 0.25 × 8 years = 960 + 450 + 80 + 150 + 300 + 40
    const whole = { area_m2: 12, storeVolume_m3: 1.5, pipeLength_m: 16, electric_J: 72e6, delivery }
    expect(designCost(PRICES, whole)).toEqual({
      panel: 960,
      store: 450,
      pipe: 80,
      pump: 150,
      delivery: 300,
      energy: 40,
      total: 1980,
    })
  })
  it('counts what brings the cold into the room by how it is brought', () => {
    const bought = (kind: 'layered' | 'slab', deliveryKind: string) => deliveryBought({ kind, deliveryKind })
    expect(bought('layered', 'drained')).toEqual({ fanCoils: 1, pumps: 1, mixingValves: 0 })
    expect(bought('layered', 'ceiling')).toEqual({ fanCoils: 0, pumps: 1, mixingValves: 1 })
    expect(bought('slab', 'surface')).toEqual({ fanCoils: 0, pumps: 0, mixingValves: 0 })
  })
  it('is nothing without panels: then there is no pump to buy either', () => {
    const cost = designCost(PRICES, {
      area_m2: 0,
      storeVolume_m3: 1,
      pipeLength_m: 16,
      electric_J: 0,
      delivery,
    })
    expect(cost.total).toBe(0)
  })
  it('is asked for only once a price of one’s own sets designs apart: pump and pipe alone do not; 0 is a price', () => {
    expect(hasPrices(START)).toBe(false)
    expect(hasPrices({ ...START, pump_each: 100, pipe_perm: 3 })).toBe(false)
    expect(hasPrices({ ...START, store_perm3: 1 })).toBe(true)
    expect(hasPrices({ ...START, panel_perm2: 0 })).toBe(true)
  })
  it('refuses negative and missing quantities', () => {
    const whole = { area_m2: 1, storeVolume_m3: 1, pipeLength_m: 1, electric_J: 1, delivery }
    expect(() => designCost(PRICES, { ...whole, area_m2: -1 })).toThrow(RangeError)
    expect(() => designCost(PRICES, { ...whole, electric_J: NaN })).toThrow(RangeError)
  })
})

/** A made map: with a store of v m³ the target is met from 20 / v m² on, on a straight measure. */
function madeMap(measureAt: (area_m2: number, store_m3: number) => number): DesignMap {
  const axes = { kind: 'store' as const, area_m2: [2, 4, 6, 8, 10, 12], other: [1, 2, 4] }
  const each = (at: (area_m2: number, store_m3: number) => number) =>
    Float64Array.from({ length: 18 }, (_, i) => at(axes.area_m2[i % 6]!, axes.other[Math.floor(i / 6)]!))
  return {
    axes,
    stride: 1,
    known: new Uint8Array(18).fill(1),
    miss: null,
    electricMiss_J: null,
    simulated: 18,
    measure: each(measureAt),
    peak_C: each(() => 25),
    hours_h: each(() => 0),
    electric_J: each((area_m2) => area_m2 * 3.6e6),
  }
}
const map = madeMap((area_m2, store_m3) => 20 / store_m3 - area_m2)
const tank = ({ row }: { row: number }) => map.axes.other[row]!

describe('cheapest design that meets the target', () => {
  it('is looked for along the edge of the target, read between marks (exact: the made measure is straight)', () => {
    // With 1 m³ 20 m² would be needed, off the map; then 10 m² and 5 m².
    expect(edgeDesigns(map)).toEqual([
      { row: 1, area_m2: 10, electric_J: 36e6 },
      { row: 2, area_m2: 5, electric_J: 18e6 },
    ])
  })
  it('moves from small panel to small tank as the tank gets dear (exact: by hand)', () => {
    const cheapTank = cheapestOn(map, { ...FREE, panel_perm2: 100, store_perm3: 100 }, NOTHING, tank)
    expect(cheapTank).toMatchObject({ row: 2, cost: { total: 900 } })
    const dearTank = cheapestOn(map, { ...FREE, panel_perm2: 100, store_perm3: 300 }, NOTHING, tank)
    expect(dearTank).toMatchObject({ row: 1, cost: { total: 1600 } })
  })
  it('is none without prices, and none where nothing on the map meets the target', () => {
    expect(cheapestOn(map, START, NOTHING, tank)).toBeNull()
    expect(
      cheapestOn(
        madeMap(() => 1),
        PRICES,
        NOTHING,
        tank,
      ),
    ).toBeNull()
  })
})
