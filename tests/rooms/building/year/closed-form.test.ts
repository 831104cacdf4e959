import { describe, expect, test } from 'vitest'
import { YearKernel } from '#inside/model/building/year/kernel.ts'
import { fluidToPlateFor, regularizedGamma } from './closed-forms.ts'
import {
  bareLoop,
  bareTank,
  greyPanel,
  handMadeRoom,
  linearPanel,
  plantOf,
  startAt,
  steadyNight,
  withoutConvection,
} from './hand-made.ts'

/*
 * Label: exact. Source: closed forms of lumped systems worked out independently of this project (numpy/scipy,
 * references-building.md §2.1, 2.2, 2.6–2.9). What is left between them and us is the integrator alone, so each
 * tolerance is the second-order step error of the case, named beside it.
 */
const QUARTER_H = 900

/** Air alone, 2.2 MJ/K and 60 W/K, when the outdoor air drops from 30 to 20 °C. */
function stepDown(step_s: number, hours: number): number {
  const room = handMadeRoom({
    hours,
    air_JK: 2.2e6,
    airOut_WK: 60,
    outdoor_C: new Float64Array(hours).fill(20),
  })
  const kernel = new YearKernel({ room, plant: null, nightVentStop_C: 0 }, step_s)
  startAt(kernel, room, 30)
  for (let h = 0; h < hours; h++) kernel.hour(h)
  return kernel.room.air_C
}

describe('§2.1 one node, C 2.2 MJ/K, H 60 W/K, from 30 to 20 °C', () => {
  test.each([
    [1, 29.0648407],
    [6, 25.5483145],
    [12, 23.0783794],
    [24, 20.9476419],
  ])('after %i h: %f °C, exact at any step (printed digits)', (hour, want_C) => {
    for (const step_s of [3600, 900, 300]) expect(stepDown(step_s, hour)).toBeCloseTo(want_C, 6)
  })

  test('cooled by 600 W at the air: hourly mean of the sixth hour is the exact mean, within 1e-6 K', () => {
    const tau_h = 2.2e6 / 60 / 3600
    const room = handMadeRoom({
      hours: 30,
      air_JK: 2.2e6,
      airOut_WK: 60,
      power_W: -600,
      outdoor_C: new Float64Array(30).fill(20),
    })
    const kernel = new YearKernel({ room, plant: null, nightVentStop_C: 0 }, QUARTER_H)
    startAt(kernel, room, 20)
    for (let h = 0; h < 6; h++) kernel.hour(h)
    const mean_C = 10 + 10 * tau_h * (Math.exp(-5 / tau_h) - Math.exp(-6 / tau_h))
    expect(Math.abs(kernel.books.air_Cs / 3600 - mean_C)).toBeLessThan(1e-6)
  })
})

describe('§2.2 two nodes: air 0.2 MJ/K, mass 4 MJ/K, 40 W/K air to outdoors, 150 between, 10 mass to outdoors', () => {
  const made = { hours: 30, air_JK: 2e5, fabric_JK: 4e6, airOut_WK: 40, airFabric_WK: 150, fabricOut_WK: 10 }
  const rows = [
    [1, 7.812728, 9.716769],
    [6, 6.468686, 8.106753],
    [24, 3.366799, 4.219374],
  ] as const

  test.each(rows)(
    'both at 10 K, free: after %i h air %f, mass %f K; within 0.02 K at quarter hours',
    (h, a, m) => {
      // The fast mode (τ 0.28 h) holds a ninth of the 10 K and is stepped at Δt/τ = 0.9.
      const got = afterHours(made, h, QUARTER_H)
      expect(Math.abs(got.air_C - a)).toBeLessThan(0.02)
      expect(Math.abs(got.mass_C - m)).toBeLessThan(0.02)
    },
  )

  test.each(rows)('the same after %i h, within 0.1 mK at half minutes', (h, a, m) => {
    const got = afterHours(made, h, 30)
    expect(Math.abs(got.air_C - a)).toBeLessThan(1e-4)
    expect(Math.abs(got.mass_C - m)).toBeLessThan(1e-4)
  })

  test('−1000 W at the air: steady −20.253165 and −18.987342 K, within 1e-6 K of the exact end', () => {
    const got = afterHours({ ...made, hours: 2000, power_W: -1000 }, 2000, QUARTER_H)
    expect(got.air_C).toBeCloseTo(-20.253165, 6)
    expect(got.mass_C).toBeCloseTo(-18.987342, 6)
  })
})

function afterHours(
  made: Parameters<typeof handMadeRoom>[0],
  hours: number,
  step_s: number,
): { air_C: number; mass_C: number } {
  const room = handMadeRoom(made)
  const kernel = new YearKernel({ room, plant: null, nightVentStop_C: 0 }, step_s)
  startAt(kernel, room, 10)
  for (let h = 0; h < hours; h++) kernel.hour(h)
  return { air_C: kernel.room.air_C, mass_C: kernel.room.masses[0]! * room.groups[0]!.modes.inner[0]! }
}

const TANK_JK = 2_088_234.4

describe('§2.7 half a cubic metre on 6 m² of linear panel: U 9, F′ 0.95, 0.06 kg/s, balance at 8 °C', () => {
  const hours = 10
  const panel = linearPanel(hours, 9, 8, 100)
  const loop = bareLoop(6, 0.06 * 4184, fluidToPlateFor(0.95, 9))
  const room = handMadeRoom({ hours, air_JK: 1e9, outdoor_C: new Float64Array(hours).fill(22) })
  const kernel = new YearKernel(
    { room, plant: plantOf(panel, loop, bareTank([TANK_JK], [2])), nightVentStop_C: 0 },
    QUARTER_H,
  )
  startAt(kernel, room, 22)
  kernel.plate_C = 8
  const tank_C = Array.from({ length: hours }, (_, h) => {
    kernel.hour(h)
    return kernel.temp_C[0]!
  })

  test.each([
    [1, 20.9256],
    [4, 18.1915],
    [8, 15.4637],
    [10, 14.4055],
  ])(
    'tank after %i h: %f °C, within 3 mK (values printed to 0.1 mK; 600 J/K of plate cooled along)',
    (h, want_C) => {
      expect(Math.abs(tank_C[h - 1]! - want_C)).toBeLessThan(3e-3)
    },
  )
})

describe('§2.8 the same tank radiating by T⁴ alone: emittance 0.93, 6 m², sky at 268.15 K', () => {
  test('after 1 h 20.7169 °C, after 8 h 13.4424 °C; within 0.01 K (bands of the blackbody are fitted polynomials)', () => {
    const hours = 8
    const weather = steadyNight(hours, 22)
    const sky_Wm2 = 5.670374419e-8 * 268.15 ** 4
    const fill = (flux: number): Float64Array => new Float64Array(hours).fill(flux)
    const sky = {
      hours,
      total_Wm2: fill(sky_Wm2),
      window_Wm2: fill(0.3 * sky_Wm2),
      offWindow_Wm2: fill(0.7 * sky_Wm2),
      measured: new Uint8Array(hours),
    }
    const panel = withoutConvection(greyPanel(weather, sky, { heatCapacity_Jm2K: 10 }))
    const room = handMadeRoom({ hours, air_JK: 1e9, outdoor_C: fill(22) })
    const plant = plantOf(panel, bareLoop(6, 1e5, 1e5), bareTank([TANK_JK], [0]), { startDifference_K: -1 })
    const kernel = new YearKernel({ room, plant, nightVentStop_C: 0 }, QUARTER_H)
    startAt(kernel, room, 22)
    kernel.plate_C = 22
    kernel.hour(0)
    expect(Math.abs(kernel.temp_C[0]! - 20.71694045)).toBeLessThan(0.01)
    for (let h = 1; h < hours; h++) kernel.hour(h)
    expect(Math.abs(kernel.temp_C[0]! - 13.44237642)).toBeLessThan(0.01)
  })
})

describe('§2.6 a mass cooled through pipes of effectiveness 0.6 by fluid that comes back at 12 °C', () => {
  test.each([
    [1, 19.7844],
    [2, 17.0498],
    [4, 14.125],
    [8, 12.3763],
  ])('slab after %i h: %f °C, within 5 mK (Δt/τ = 0.11)', (time_h, want_C) => {
    const hours = 8
    const rate_WK = 0.1 * 4184
    const panel = linearPanel(hours, 100, 12, 10)
    const loop = bareLoop(1000, rate_WK, 1e6)
    const store = bareTank([], [], { kind: 'slab', delivery_WK: -rate_WK * Math.log(0.4) })
    const room = handMadeRoom({ hours, air_JK: 1e9, slab_JK: TANK_JK })
    const kernel = new YearKernel({ room, plant: plantOf(panel, loop, store), nightVentStop_C: 0 }, QUARTER_H)
    startAt(kernel, room, 24)
    kernel.room.air_C = kernel.temp_C[kernel.nodes.air] = 40
    kernel.plate_C = 12
    for (let h = 0; h < time_h; h++) kernel.hour(h)
    expect(Math.abs(kernel.temp_C[kernel.nodes.port]! - want_C)).toBeLessThan(5e-3)
  })
})

describe('§2.9 a layered tank of N equal mixed layers, cold water pushed in at the bottom', () => {
  /** Response of the top layer after θ turnovers of the tank. */
  function response(layers: number, turnovers: number): number {
    const hours = 60
    const rate_WK = 1000
    const layer_JK = (rate_WK * 50 * 3600) / layers
    const panel = linearPanel(hours, 1000, 10, 1)
    const loop = bareLoop(1000, rate_WK, 1e6)
    const room = handMadeRoom({ hours, air_JK: 1e9 })
    const tank = bareTank(new Array<number>(layers).fill(layer_JK), new Array<number>(layers).fill(0))
    const kernel = new YearKernel({ room, plant: plantOf(panel, loop, tank), nightVentStop_C: 0 }, QUARTER_H)
    startAt(kernel, room, 20)
    kernel.plate_C = 10
    for (let h = 0; h < turnovers * 50; h++) kernel.hour(h)
    return (20 - kernel.temp_C[0]!) / 10
  }

  test.each([
    [1, 0.5, 0.39347],
    [1, 1.2, 0.69881],
    [5, 0.5, 0.10882],
    [5, 0.8, 0.37116],
    [5, 1, 0.55951],
    [5, 1.2, 0.71494],
    [10, 0.8, 0.28338],
    [10, 1, 0.54207],
    [20, 1, 0.52974],
    [20, 1.2, 0.81974],
  ])(
    'N = %i, θ = %f: %f of the step, within 0.001 (a layer is renewed in 10 steps at N = 20)',
    (n, theta, want) => {
      expect(want).toBeCloseTo(regularizedGamma(n, n * theta), 4)
      expect(Math.abs(response(n, theta) - want)).toBeLessThan(1e-3)
    },
  )
})
