import { describe, expect, test } from 'vitest'
import { YearKernel } from '#inside/model/building/year/kernel.ts'
import { shareUsed } from '#inside/model/building/year/pump-duty.ts'
import type { PlanSpec } from '#model/building/year'
import { bareLoop, bareTank, handMadeRoom, linearPanel, plantOf, startAt } from './hand-made.ts'

/* Label: exact. The share of a step that a pump runs: no jump, none of it over a limit of the controller. */

describe('the share at which a falling slack is used up', () => {
  test('all where some is left, none where there is none, and what was asked last is the answer', () => {
    for (const before of [0, 1]) {
      let asked = NaN
      const of = (slack: (share: number) => number): number =>
        shareUsed((share) => {
          asked = share
          return slack(share)
        }, before)
      expect(of((share) => 2 - share)).toBe(1)
      expect(of((share) => -share - 0.1)).toBe(0)
      expect(of((share) => 0.3 - share)).toBeCloseTo(0.3, 3)
      expect(of((share) => 1 - Math.exp(4 * share) / 3)).toBeCloseTo(Math.log(3) / 4, 3)
      // A kink, as where another limit takes over.
      expect(of((share) => Math.min(0.5 - 0.1 * share, 3 - 10 * share))).toBeCloseTo(0.3, 3)
      expect(asked).toBeCloseTo(0.3, 3)
    }
  })
})

/** The band of the start difference: the steepest that the share follows a temperature. */
const STARTING_K = 0.5
const PLAN: Partial<PlanSpec> = { startDifference_K: 3, stopDifference_K: 0.5, lowestStore_C: 8 }

function kernelFor(tank_JK: number, equilibrium_C: number, step_s: number): YearKernel {
  const room = handMadeRoom({ hours: 4, air_JK: 1e9, slab_JK: 1e9 })
  const panel = linearPanel(4, 10, equilibrium_C, 8000)
  const plant = plantOf(panel, bareLoop(6, 250, 200), bareTank([tank_JK], [0]), PLAN)
  const kernel = new YearKernel({ room, plant, nightVentStop_C: 0 }, step_s)
  startAt(kernel, room, 20)
  kernel.plate_C = 20
  return kernel
}

/** Seconds the pump runs in the second and third hour, and the tank after them. */
function hours(kernel: YearKernel): { run_s: number; tank_C: number } {
  kernel.hour(0)
  let run_s = 0
  for (const hour of [1, 2]) {
    kernel.hour(hour)
    run_s += kernel.books.run_s
  }
  return { run_s, tank_C: kernel.temp_C[0]! }
}

describe('the pump of a panel', () => {
  test('that would cool a tank past its lowest within a step runs just so long that it does not', () => {
    const kernel = kernelFor(4e5, -10, 900)
    for (let k = 0; k < 12; k++) {
      kernel.step(0)
      expect(kernel.temp_C[0]!).toBeGreaterThan(8 - 1e-3)
    }
    expect(kernel.temp_C[0]!).toBeCloseTo(8, 2)
  })

  test.each([
    ['rested', 0],
    ['run', 8],
  ])('that has %s runs longer without a jump the colder its panel could be', (_name, steps) => {
    let before = -1
    for (let equilibrium_C = 20.5; equilibrium_C > 5; equilibrium_C -= 0.01) {
      const kernel = kernelFor(4e7, equilibrium_C - 5, 900)
      for (let k = 0; k < steps; k++) kernel.step(0)
      kernel.temp_C[0] = 15
      kernel.plate_C = 15
      kernel.step(0)
      const { pumpShare } = kernel.controls
      expect(pumpShare).toBeGreaterThanOrEqual(before - 1e-3)
      if (before >= 0) expect(pumpShare - before).toBeLessThan(0.01 / STARTING_K + 1e-3)
      before = pumpShare
    }
    expect(before).toBeGreaterThan(0.2)
  })

  test.each([17.5, 16.5, 14, 10])(
    'cools as much in quarter hours as in half minutes: plate %f °C',
    (at_C) => {
      const coarse = hours(kernelFor(4e6, at_C, 900))
      const fine = hours(kernelFor(4e6, at_C, 30))
      const tanks = [coarse, fine].map(({ tank_C }) => tank_C.toFixed(3)).join(' and ')
      console.log(
        `plate ${at_C} °C: ${coarse.run_s.toFixed(0)} and ${fine.run_s.toFixed(0)} s, tank ${tanks} °C`,
      )
      expect(Math.abs(coarse.tank_C - fine.tank_C)).toBeLessThan(0.05)
    },
  )
})
