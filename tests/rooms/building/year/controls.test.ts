import { describe, expect, test } from 'vitest'
import { planHours, type PlanSpec } from '#model/building/year'
import { fadedAt_K } from '#inside/model/building/year/open-valve.ts'
import { YearKernel } from '#inside/model/building/year/kernel.ts'
import { sunHours } from '#model/outdoors/sun'
import type { LoopDuty } from '#model/panels/loop'
import {
  ALWAYS,
  bareLoop,
  bareTank,
  handMadeRoom,
  linearPanel,
  plantOf,
  startAt,
  steadyNight,
} from './hand-made.ts'

/* Label: exact. What the controller of the sheet must decide, one step at a time; thresholds are the plan's own. */
const STEP_S = 900
const PLAN: Partial<PlanSpec> = {
  startDifference_K: 3,
  stopDifference_K: 0.3,
  lowestStore_C: 8,
  freeze: 'drainBack',
  freezeLimit_C: 1,
}

interface Setting {
  readonly plan?: Partial<PlanSpec>
  readonly kind?: 'mixed' | 'slab' | 'building'
  readonly allowed?: number
  readonly equilibrium_C?: number
  readonly dewPoint_C?: number
  readonly loop?: Partial<LoopDuty>
  readonly delivery_WK?: number
  readonly outdoor_C?: number
}

/** A kernel whose room stays at 30 °C beside a tank; the plate's equilibrium is what the case says. */
function kernelFor(setting: Setting = {}): YearKernel {
  const { kind = 'mixed', allowed = 1, equilibrium_C = 5, dewPoint_C = -30, delivery_WK = 0 } = setting
  const panel = linearPanel(4, 10, equilibrium_C, 8000)
  const loop = { ...bareLoop(6, 250, 200), ...setting.loop }
  const tank =
    kind === 'mixed' ? bareTank([4e6], [0], { delivery_WK }) : bareTank([], [], { kind, delivery_WK: 500 })
  const outdoor_C = new Float64Array(4).fill(setting.outdoor_C ?? 0)
  const room = handMadeRoom({ hours: 4, air_JK: 1e9, slab_JK: 1e9, dewPoint_C, outdoor_C })
  const plant = { ...plantOf(panel, loop, tank, { ...PLAN, ...setting.plan }) }
  plant.allowed.fill(allowed)
  const kernel = new YearKernel({ room, plant, nightVentStop_C: 0 }, STEP_S)
  startAt(kernel, room, 30)
  return kernel
}

/** Whether the pump runs in a step that begins with these temperatures. */
function pumps(kernel: YearKernel, sink_C: number, plate_C: number): boolean {
  kernel.temp_C[kernel.nodes.sink] = sink_C
  kernel.plate_C = plate_C
  kernel.step(0)
  return kernel.controls.pumping
}

/* By hand, 250 W/K through 6 m²: F′ = 1/(1 + 10/200), E = 1 − exp(−F′ × 10 × 6/250) = 0.2043. */
describe('start and stop', () => {
  test.each([
    // 0.3 K of drop take a plate 1.468 K colder: there the band of switching begins; it ends at the start difference.
    [1.45, 0],
    [1.85, 0.25],
    [2.234, 0.5],
    [2.98, 0.987],
    [3.01, 1],
    [8, 1],
    [-4, 0],
  ])('store 20 °C, panel in balance %f K colder: the pump runs %f of the step', (colder_K, want) => {
    for (const rested of [true, false]) {
      const kernel = kernelFor({ equilibrium_C: 20 - colder_K })
      kernel.nodes.capacity_JK.fill(1e12)
      kernel.controls.pumpShare = rested ? 0 : 1
      pumps(kernel, 20, 20 - colder_K)
      expect(kernel.controls.pumpShare).toBeCloseTo(want, 2)
      // Nothing hangs on what it did before.
      pumps(kernel, 20, 20 - colder_K)
      expect(kernel.controls.pumpShare).toBeCloseTo(want, 2)
    }
  })

  test('the warmer of two stores stays the warmer, whatever lies between start and stop difference', () => {
    const after = (tank_C: number): number => {
      const kernel = kernelFor({ equilibrium_C: 14 })
      pumps(kernel, tank_C, 14)
      for (let k = 0; k < 16; k++) kernel.step(0)
      return kernel.temp_C[0]!
    }
    let before_C = after(14)
    for (let tank_C = 14.05; tank_C < 20; tank_C += 0.05) {
      const now_C = after(tank_C)
      expect(now_C).toBeGreaterThan(before_C - 1e-3)
      before_C = now_C
    }
  })

  test('a pump that would warm the fluid by more than the panel cools it is not started', () => {
    // 2 K: by E they take a plate 9.79 K colder.
    const hungry = { pumpPower_W: 500 }
    expect(pumps(kernelFor({ loop: hungry, equilibrium_C: 10.3 }), 20, 10.3)).toBe(false)
    expect(pumps(kernelFor({ loop: hungry, equilibrium_C: 10.1 }), 20, 10.1)).toBe(true)
  })

  test('what the pipes let in counts: a loop that comes back no colder than it left is not run', () => {
    // Half the run lets in 0.2 of the difference to 25 °C: to the panel at 21, back at 0.8 × (21 − E (21 − T_eq)) + 5.
    // That is 20 °C with a plate of 9.99 °C.
    const leaky = { pipeGain_WK: -2 * 250 * Math.log(0.8) }
    const at = (equilibrium_C: number): boolean =>
      pumps(kernelFor({ loop: leaky, equilibrium_C, outdoor_C: 25 }), 20, equilibrium_C)
    expect(at(10.1)).toBe(false)
    expect(at(9.9)).toBe(true)
  })

  test('a tank in layers is not stirred up: its loop stops where the fluid would come back warmer than the bottom', () => {
    const kernel = (bottom_C: number): YearKernel => {
      const room = handMadeRoom({ hours: 4, air_JK: 1e9, slab_JK: 1e9 })
      const tank = bareTank([4e6, 4e6], [0, 0])
      const plant = plantOf(linearPanel(4, 10, 10, 8000), bareLoop(6, 250, 200), tank, PLAN)
      const made = new YearKernel({ room, plant, nightVentStop_C: 0 }, STEP_S)
      startAt(made, room, 20)
      made.temp_C[made.nodes.bottom] = bottom_C
      made.plate_C = 15
      return made
    }
    // Steadily it would come back at 20 − E · 10 = 17.96 °C.
    for (const bottom_C of [19, 18.5, 17, 16, 12]) {
      const one = kernel(bottom_C)
      for (let k = 0; k < 4; k++) {
        const before_C = one.temp_C[one.nodes.bottom]!
        one.step(0)
        expect(one.temp_C[one.nodes.bottom]!, `bottom ${bottom_C} °C`).toBeLessThan(before_C + 2e-3)
      }
      if (bottom_C > 17.96) expect(one.controls.pumpShare, `bottom ${bottom_C} °C`).toBe(1)
    }
  })

  test('no flow, no pumping', () => {
    expect(pumps(kernelFor({ loop: { capacityRate_WK: 0 } }), 20, 5)).toBe(false)
  })
})

describe('what keeps the loop from running', () => {
  test.each([
    [8, false],
    [8.01, true],
  ])('lowest store 8 °C: at %f °C it pumps %s', (sink_C, want) => {
    expect(pumps(kernelFor({ equilibrium_C: 2 }), sink_C, 2)).toBe(want)
  })

  test('outside its hours and its season', () => {
    expect(pumps(kernelFor({ allowed: 0 }), 20, 5)).toBe(false)
  })

  test.each(['slab', 'building'] as const)(
    'pipes in the %s: only while the room is above its setpoint',
    (kind) => {
      const cool = kernelFor({ kind, plan: { setpoint_C: 31 } })
      const warm = kernelFor({ kind, plan: { setpoint_C: 22 } })
      expect(pumps(cool, 30, 15)).toBe(false)
      expect(pumps(warm, 30, 15)).toBe(true)
    },
  )

  test.each(['slab', 'building'] as const)(
    'pipes in the %s: return water is blended in where the supply would be under dew point + 2 K; a mass as cold as that is left alone',
    (kind) => {
      // The fluid would come back some 4 K colder than 30 °C.
      const setting = { kind, equilibrium_C: 10 } as const
      expect(pumps(kernelFor({ ...setting, dewPoint_C: 5 }), 30, 10)).toBe(true)
      const damp = kernelFor({ ...setting, dewPoint_C: 25 })
      expect(pumps(damp, 30, 10)).toBe(true)
      expect(damp.plate!.mixing).toBe(true)
      expect(pumps(kernelFor({ ...setting, dewPoint_C: 28.5 }), 30, 10)).toBe(false)
    },
  )
})

describe('freeze protection', () => {
  test.each([
    ['drainBack', 1, 0.5, false, true],
    ['drainBack', 1, 1.5, true, false],
    ['stop', -5, -0.5, false, true],
    ['stop', -5, 0.5, true, false],
    ['glycol', -10, -5, true, false],
    ['glycol', -10, -11, true, true],
  ] as const)(
    '%s, limit %f °C, plate %f °C: pumps %s, at risk %s',
    (freeze, limit_C, plate_C, want, risk) => {
      const kernel = kernelFor({ equilibrium_C: plate_C, plan: { freeze, freezeLimit_C: limit_C } })
      expect(pumps(kernel, 12, plate_C)).toBe(want)
      expect(kernel.controls.freezing).toBe(risk)
    },
  )

  test('out of season a drained panel is not at risk, a glycol one is', () => {
    const drained = kernelFor({ allowed: 0, equilibrium_C: -20 })
    pumps(drained, 12, -20)
    expect(drained.controls.freezing).toBe(false)
    const filled = kernelFor({
      allowed: 0,
      equilibrium_C: -20,
      plan: { freeze: 'glycol', freezeLimit_C: -10 },
    })
    pumps(filled, 12, -20)
    expect(filled.controls.freezing).toBe(true)
  })
})

describe('delivery', () => {
  test.each([
    [29.6, -30, 0],
    [29.25, -30, 50],
    [29, -30, 100],
    [28, -30, 200],
    [15, 27.6, 0],
    [15, 27.25, 50],
    [15, 26, 200],
  ])(
    'store %f °C, indoor dew point %f °C, room 30 °C: %f W of 100 W/K (none within 0.5 K, all from 1 K; dew margin 2 K)',
    (store_C, dew_C, want_W) => {
      const kernel = kernelFor({ delivery_WK: 100, dewPoint_C: dew_C, equilibrium_C: 40 })
      kernel.nodes.capacity_JK.fill(1e12)
      pumps(kernel, store_C, 40)
      expect(kernel.delivery!.delivered_W).toBeCloseTo(want_W, 1)
    },
  )

  test('a fan is let in nothing up to the difference that carries its own heat', () => {
    expect(fadedAt_K({ delivery_WK: 200, deliveryPower_W: 12 })).toBe(0.5)
    // Regression (soak, seed 31, scenario 122): 410 W at 358 W/K heated more than it cooled.
    expect(fadedAt_K({ delivery_WK: 358, deliveryPower_W: 410 })).toBeCloseTo(410 / 358, 9)
  })
})

describe('windows at night', () => {
  function opens(outdoor_C: number, air_C: number, stop_C: number, night: number): number {
    const made = { hours: 1, air_JK: 1e9, nightVent_WK: 50, outdoor_C: Float64Array.of(outdoor_C) }
    const room = handMadeRoom(made)
    room.ventAllowed.fill(night)
    const kernel = new YearKernel({ room, plant: null, nightVentStop_C: stop_C }, STEP_S)
    kernel.room.begin(air_C, kernel.room.masses)
    kernel.step(0)
    return kernel.windows.share
  }
  test.each([
    [22, 24, 18, 1, 1],
    [23, 24, 18, 1, 0.5],
    [23.5, 24, 18, 1, 0],
    [22, 24, 23.9, 1, 0.2],
    [22, 24, 24, 1, 0],
    [22, 24, 18, 0, 0],
  ])(
    'outdoors %f, room %f, shut below %f °C, night %i: open to %f',
    (outdoor_C, air_C, stop_C, night, want) => {
      expect(opens(outdoor_C, air_C, stop_C, night)).toBeCloseTo(want, 3)
    },
  )
})

describe('hours of the plan', () => {
  const weather = steadyNight(48, 20)
  const { latitude_deg, longitude_deg } = weather.site
  const sun = sunHours(weather.start_utcMs, weather.hours, 0.5, latitude_deg, longitude_deg)
  const hoursOf = (plan: Partial<PlanSpec>): number[] =>
    [...planHours(weather, sun, { ...ALWAYS, ...plan })].flatMap((may, h) => (may === 1 ? [h] : []))

  test('own hours from 20 to 7 pass midnight; the hour’s middle counts', () => {
    const want = [0, 1, 2, 3, 4, 5, 6, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 44, 45, 46, 47]
    expect(hoursOf({ kind: 'ownHours', startHour_h: 20, endHour_h: 7 })).toEqual(want)
  })

  test('own hours from 8.6 to 10.4 hold the one hour whose middle they hold', () => {
    expect(hoursOf({ kind: 'ownHours', startHour_h: 8.6, endHour_h: 10.4 })).toEqual([9, 33])
  })

  test('the clock is the site’s own: east of Greenwich the same hours come earlier in the record', () => {
    const east = { ...weather, site: { ...weather.site, utcOffset_h: 3 } }
    const may = planHours(east, sun, { ...ALWAYS, kind: 'ownHours', startHour_h: 6, endHour_h: 7 })
    expect([...may].flatMap((one, h) => (one === 1 ? [h] : []))).toEqual([3, 27])
  })

  test('night only: never with the sun up; in June at 40° N between 8 and 10 of 24 hours', () => {
    const night = hoursOf({ kind: 'nightOnly' })
    for (const h of night) expect(sun.altitude_deg[h]!).toBeLessThan(-0.833)
    expect(night.length / 2).toBeGreaterThanOrEqual(8)
    expect(night.length / 2).toBeLessThanOrEqual(10)
  })

  test('all day: every hour; under its season gate: none', () => {
    expect(hoursOf({ kind: 'allDay' })).toHaveLength(48)
    expect(hoursOf({ kind: 'allDay', seasonGate_C: 20.1 })).toHaveLength(0)
    expect(hoursOf({ kind: 'allDay', seasonGate_C: 19.9 })).toHaveLength(48)
  })
})
