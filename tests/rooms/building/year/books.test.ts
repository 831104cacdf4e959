import { describe, expect, test } from 'vitest'
import type { StoreModel } from '#model/building/store'
import { type RoomNetwork, withRows } from '#model/building/room'
import { type PlanSpec, type YearResult, simulateYear } from '#model/building/year'
import { bareLoop, bareTank, handMadeRoom, linearPanel, plantOf } from './hand-made.ts'

/*
 * Label: conservation and exact. The energy balance of a few hand-made days with every kind of store: it closes, and each line
 * is the sum that a reader could make from the hourly columns.
 */
const HOURS = 72
const HOUR_S = 3600
const column = (of: (h: number) => number) => Float64Array.from({ length: HOURS }, (_, h) => of(h))
const sum = (values: Float64Array) => values.reduce((a, b) => a + b, 0)

/** Days between 16 and 32 °C, 150 W of people, half a night with windows open, a slab on ground of 15 °C. */
function room(nightVent_WK = 60): RoomNetwork {
  const made = handMadeRoom({
    hours: HOURS,
    air_JK: 4e5,
    fabric_JK: 3e6,
    slab_JK: 6e6,
    airOut_WK: 35,
    fabricOut_WK: 25,
    airFabric_WK: 180,
    airSlab_WK: 90,
    slabOut_WK: 12,
    ground_C: 15,
    outdoor_C: column((h) => 24 - 8 * Math.cos((2 * Math.PI * (h - 4)) / 24)),
    gains_W: 150,
    dewPoint_C: 12,
    nightVent_WK,
  })
  return withRows({ ...made, ventAllowed: Uint8Array.from(column((h) => (h % 24 < 6 ? 1 : 0))) })
}

const KINDS: readonly (readonly [string, StoreModel])[] = [
  ['a tank in the room', bareTank([3e6], [4], { lossTo: 'room', delivery_WK: 120, deliveryPower_W: 30 })],
  ['a tank outside', bareTank([3e6], [4], { delivery_WK: 120, deliveryPower_W: 30 })],
  [
    'layers in the room',
    bareTank([1e6, 1e6, 1e6], [2, 1, 2], {
      lossTo: 'room',
      delivery_WK: 120,
      deliveryPower_W: 30,
      betweenLayers_WK: 3,
    }),
  ],
  [
    'layers outside',
    bareTank([1e6, 1e6, 1e6], [2, 1, 2], { delivery_WK: 120, deliveryPower_W: 30, betweenLayers_WK: 3 }),
  ],
  ['pipes in the slab', bareTank([], [], { kind: 'slab', delivery_WK: 300 })],
  ['pipes in the ceiling', bareTank([], [], { kind: 'building', delivery_WK: 300 })],
]
const LOOP = { ...bareLoop(8, 250, 150), pipeGain_WK: 6, pumpPower_W: 35 }

function days(store: StoreModel, plan: Partial<PlanSpec> = {}, of = room()): YearResult {
  const panel = linearPanel(HOURS, 9, 6, 12_000)
  const plant = plantOf(panel, LOOP, store, { setpoint_C: 21, band_K: 1, startDifference_K: 2, ...plan })
  plant.allowed.set(column((h) => (h % 24 < 7 || h % 24 > 20 ? 1 : 0)))
  return simulateYear({ room: of, plant: { ...plant, fieldFactor_frac: 0.85 }, nightVentStop_C: 18 })
}

describe.each(KINDS)('the energy balance with %s', (_name, store) => {
  test('close to 1e-11 of what passed through them, and everything took part', () => {
    const { ledger } = days(store)
    expect(Math.abs(ledger.residual_J) / ledger.throughput_J).toBeLessThan(1e-11)
    for (const line of ['envelope_J', 'gains_J', 'ground_J', 'panelOut_J', 'pipes_J', 'pumpHeat_J'] as const)
      expect(Math.abs(ledger[line]), line).toBeGreaterThan(1e3)
  })

  test('each line is the sum of its hours', () => {
    const year = days(store)
    const { ledger } = year
    expect(ledger.gains_J).toBeCloseTo(150 * HOUR_S * HOURS, 3)
    expect(ledger.pumpHeat_J / (sum(year.electric_W) * HOUR_S)).toBeCloseTo(1, 9)
    expect(ledger.delivered_J).toBeCloseTo(sum(year.delivered_W) * HOUR_S, 3)
    // What the plates shed, they took from the fluid, but for what they hold themselves: 12 kJ/m²K × 8 m².
    const held_J = 12_000 * 8 * 40
    expect(Math.abs(ledger.panelOut_J - sum(year.panelHeat_W) * HOUR_S)).toBeLessThan(held_J)
    const terms = [
      ledger.envelope_J,
      ledger.gains_J,
      ledger.ground_J,
      ledger.nightVent_J,
      ledger.pipes_J,
      ledger.pumpHeat_J,
      ledger.storeGainFromOutside_J,
    ]
    expect(ledger.throughput_J).toBeCloseTo(
      terms.reduce((all, term) => all + Math.abs(term), Math.abs(ledger.panelOut_J)),
      3,
    )
    const in_J = terms.reduce((all, term) => all + term, 0)
    expect(ledger.residual_J).toBeCloseTo(in_J - ledger.panelOut_J - ledger.stored_J, 3)
  })

  test('the envelope’s line is what its conductances carry: air change exactly, the wall between faces and outdoors', () => {
    const year = days(store)
    const { outdoor_C } = room()
    let air_J = 0
    for (let h = 0; h < HOURS; h++) air_J += HOUR_S * 35 * (outdoor_C[h]! - year.air_C[h]!)
    // The wall's 25 W/K see a mass that stays between the day's extremes of air and outdoors, 16 and 32 °C.
    const wall_J = year.ledger.envelope_J - air_J
    expect(Math.abs(wall_J)).toBeLessThan(25 * HOUR_S * HOURS * 8)
    expect(Math.abs(wall_J)).toBeGreaterThan(1e4)
  })

  test('the operative temperature is half air and half radiant (ISO 7726)', () => {
    const year = days(store)
    for (let h = 0; h < HOURS; h++)
      expect(year.room_C[h]!).toBeCloseTo(0.5 * (year.air_C[h]! + year.radiant_C[h]!), 9)
  })
})

describe('lines that only some stores have', () => {
  const [inRoom, outside, layered] = KINDS.map(([, store]) => days(store)) as [
    YearResult,
    YearResult,
    YearResult,
  ]
  test('a tank outside gains from outdoors, one in the room does not', () => {
    expect(inRoom.ledger.storeGainFromOutside_J).toBe(0)
    expect(inRoom.ledger.storeGain_J).toBeGreaterThan(1e5)
    expect(outside.ledger.storeGainFromOutside_J).toBe(outside.ledger.storeGain_J)
    expect(outside.ledger.storeGain_J).toBeGreaterThan(1e5)
  })
  test('what a tank in the room gains: 4 W/K × (room − tank), summed', () => {
    let gained_J = 0
    for (let h = 1; h < HOURS; h++) {
      const tank = (inRoom.store_C[h]! + inRoom.store_C[h - 1]!) / 2
      gained_J += 4 * HOUR_S * (inRoom.air_C[h]! - tank)
    }
    expect(Math.abs(inRoom.ledger.storeGain_J / gained_J - 1)).toBeLessThan(0.05)
  })
  test('windows at night carry heat out, 60 W/K while the room is warmer; without them the line is empty', () => {
    expect(inRoom.ledger.nightVent_J).toBeLessThan(-1e5)
    const shut = days(KINDS[0]![1], {}, room(0))
    expect(shut.ledger.nightVent_J).toBe(0)
    expect(shut.room_C[5]!).toBeGreaterThan(inRoom.room_C[5]!)
  })
  test('layers are reported apart: the top is the warmest, the bottom the coldest, the mean between', () => {
    let apart = 0
    for (let h = 0; h < HOURS; h++) {
      expect(layered.storeTop_C[h]!).toBeGreaterThanOrEqual(layered.store_C[h]! - 1e-9)
      expect(layered.storeBottom_C[h]!).toBeLessThanOrEqual(layered.store_C[h]! + 1e-9)
      apart = Math.max(apart, layered.storeTop_C[h]! - layered.storeBottom_C[h]!)
    }
    expect(apart).toBeGreaterThan(0.5)
  })
  test('pipes in the slab report the slab as the store, in the ceiling the air', () => {
    const slab = days(KINDS[4]![1])
    expect(slab.store_C).toEqual(slab.slab_C)
    expect(slab.storeTop_C).toEqual(slab.slab_C)
    expect(slab.storeBottom_C).toEqual(slab.slab_C)
    expect(sum(slab.delivered_W)).toBe(0)
  })
})

describe('hours of pump and panel', () => {
  const year = days(KINDS[0]![1])
  test('the return is known while the pump runs and only then; its share of the hour counts', () => {
    for (let h = 0; h < HOURS; h++) {
      expect(Number.isNaN(year.panelReturn_C[h]!)).toBe(year.pumpRun_frac[h] === 0)
      if (h % 24 >= 7 && h % 24 <= 20) expect(year.pumpRun_frac[h]).toBe(0)
    }
    expect(sum(year.pumpRun_frac)).toBeGreaterThan(5)
    expect(Math.max(...year.pumpRun_frac)).toBe(1)
  })
  test('heat taken is ṁc × (into − out of the panel): store’s top, pipes and return say the same (3 %)', () => {
    const h = year.pumpRun_frac.findIndex((share, i) => i > 24 && share === 1)
    const top = (year.storeTop_C[h]! + year.storeTop_C[h - 1]!) / 2
    const outdoor = room().outdoor_C[h]!
    const a = 1 - Math.exp(-3 / 250)
    const into = (1 - a) * top + a * outdoor
    expect(Math.abs(year.panelHeat_W[h]! / (250 * (into - year.panelReturn_C[h]!)) - 1)).toBeLessThan(0.03)
  })
  test('electricity: 35 W of pump while it runs, 30 W of fan at full output, no more', () => {
    for (let h = 0; h < HOURS; h++) {
      expect(year.electric_W[h]!).toBeLessThanOrEqual(35 * year.pumpRun_frac[h]! + 30 + 1e-9)
      if (year.delivered_W[h] === 0 && h % 24 > 8 && h % 24 < 20) expect(year.electric_W[h]).toBeLessThan(1)
    }
    expect(sum(year.electric_W)).toBeGreaterThan(35 * sum(year.pumpRun_frac))
  })
  test('a dry textbook plate stays dry, and the dew point held nothing back', () => {
    expect(Math.max(...year.water_kgm2)).toBe(0)
    expect(year.dewHeld_h).toBe(0)
  })
})
