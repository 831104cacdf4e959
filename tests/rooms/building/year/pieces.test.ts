import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { LinearSystem } from '#model/basis/numbers'
import { LoopFlow } from '#inside/model/building/year/loop-flow.ts'
import { panelExchange_WK } from '#model/building/year'
import { PlateStep } from '#inside/model/building/year/plate-step.ts'
import type { HubSystem } from '#inside/model/building/year/hub-system.ts'
import { LayerSystem } from '#inside/model/building/year/layer-system.ts'
import { addLayers, turnOver } from '#inside/model/building/year/tank-layers.ts'
import { nodesOf, type Nodes } from '#inside/model/building/year/nodes.ts'
import type { PlateCourse } from '#inside/model/building/year/plate-course.ts'
import { bareLoop, bareTank, linearPanel, plantOf } from './hand-made.ts'

/* Label: exact. The year's parts one by one against their own equations, written out here another way. */

describe('a small linear system', () => {
  /** Diagonally dominant, no symmetry, a zero below the diagonal. */
  const ROWS = [
    [7, -1, -2, 0.5],
    [-3, 9, -1, -2],
    [0, -4, 8, -1],
    [-1, 0, -2.5, 6],
  ]
  const system = new LinearSystem(4)
  const times = (x: readonly number[]) => ROWS.map((row) => row.reduce((sum, m, j) => sum + m * x[j]!, 0))

  test.each([[[1, 2, 3, 4]], [[-5, 0.1, 20, 7]]])('gives back %j from its product, to 1e-12', (x) => {
    system.matrix.set(ROWS.flat())
    system.factor()
    const got = new Float64Array(6).fill(99)
    system.solve(Float64Array.from(times(x)), got)
    for (let i = 0; i < 4; i++) expect(got[i]).toBeCloseTo(x[i]!, 12)
    expect([got[4], got[5]]).toEqual([99, 99])
  })
  test('is factored once for several right-hand sides, also in place', () => {
    system.matrix.set(ROWS.flat())
    system.factor()
    for (const x of [
      [3, -1, 2, 0],
      [1, 1, 1, 1],
    ]) {
      const inPlace = Float64Array.from(times(x))
      system.solve(inPlace, inPlace)
      for (let i = 0; i < 4; i++) expect(inPlace[i]).toBeCloseTo(x[i]!, 12)
    }
  })
})

describe('the loop', () => {
  const duty = { ...bareLoop(6, 250, 120), pipeGain_WK: 20, pumpPower_W: 40 }
  const [sink_C, plate_C, outdoor_C] = [18, 9, 26]

  test.each([1, 0.6])('share %d of the sink: its relations are those of the text, one by one', (share) => {
    const flow = new LoopFlow(duty, share)
    flow.set(8, outdoor_C)
    const a = 1 - Math.exp(-20 / 2 / 250)
    const g = panelExchange_WK(duty, 8) / 250
    expect(flow.pipeShare).toBeCloseTo(a, 12)
    const top = flow.top_C(sink_C, plate_C)
    const into = flow.into_C(top)
    const back = flow.return_C(into, plate_C)
    const home = flow.back_C(top, plate_C)
    expect(into).toBeCloseTo((1 - a) * top + a * outdoor_C, 12)
    expect(back).toBeCloseTo((1 - g) * into + g * plate_C, 12)
    expect(home).toBeCloseTo((1 - a) * back + a * outdoor_C + 40 / 250, 12)
    expect(top).toBeCloseTo(share * sink_C + (1 - share) * home, 10)
  })
  test.each([1, 0.6])(
    'share %d: what the store gives is what plate, pipes and pump take (first law)',
    (share) => {
      const flow = new LoopFlow(duty, share)
      flow.set(8, outdoor_C)
      const top = flow.top_C(sink_C, plate_C)
      const into = flow.into_C(top)
      const back = flow.return_C(into, plate_C)
      const gained_W = 250 * (flow.back_C(top, plate_C) - top)
      const plate_W = flow.exchange_WK * (into - plate_C)
      expect(gained_W).toBeCloseTo(flow.pipes_W(top, back) + 40 - plate_W, 9)
      expect(flow.pipes_W(top, back)).toBeGreaterThan(0)
    },
  )
  test('without flow, pipes let nothing in', () => {
    expect(new LoopFlow({ ...duty, capacityRate_WK: 0 }, 1).pipeShare).toBe(0)
  })
})

describe('between fluid and plate', () => {
  const duty = bareLoop(6, 250, 120)
  // Duffie & Beckman, ch. 6: Q = ṁc (1 − exp(−F′UA/ṁc)) (T_in − T_eq), F′ = 1/(1 + U/G); exact.
  test.each([1, 8, 40])('U %d: a plate in balance gives the heat of Hottel, Whillier and Bliss', (slope) => {
    const exchange = panelExchange_WK(duty, slope)
    const shed_WK = 6 * slope
    const [into, rest] = [20, 5]
    const plate = (exchange * into + shed_WK * rest) / (exchange + shed_WK)
    const factor = 1 / (1 + slope / 120)
    const want_W = 250 * (1 - Math.exp((-factor * shed_WK) / 250)) * (into - rest)
    expect(exchange * (into - plate)).toBeCloseTo(want_W, 8)
  })
  test('at hardly any slope the series goes on where the formula leaves off (1e-5)', () => {
    const ratio = panelExchange_WK(duty, 0.999e-3) / panelExchange_WK(duty, 1.001e-3)
    expect(Math.abs(ratio - 1)).toBeLessThan(1e-5)
    // Half the flow's own resistance and the film's in series: A/(1/G + A/2ṁc).
    expect(panelExchange_WK(duty, 0)).toBeCloseTo(6 / (1 / 120 + 6 / 500), 9)
  })
  test('no flow, or no panel: nothing', () => {
    expect(panelExchange_WK({ ...duty, capacityRate_WK: 0 }, 8)).toBe(0)
    expect(panelExchange_WK({ ...duty, area_m2: 0 }, 8)).toBe(0)
  })
})

describe('the plate over one step', () => {
  /** The plate's own equation in 20,000 small steps (Heun): mean and end. */
  function integrated(step: PlateStep, capacity_JK: number, sink_C: number) {
    const parts = 20_000
    const dt = step.step_s / parts
    const rate = (T: number, t: number) => {
      const sink = sink_C + step.drift_Ks * (t - step.step_s / 2)
      const fluid_W = step.fromSink_WK * sink + step.fromConst_W - step.fromPlate_WK * T
      return (fluid_W - (step.shed_WK * T - step.rest_W)) / capacity_JK
    }
    let T = step.start_C
    let sum = 0
    for (let i = 0; i < parts; i++) {
      const now = rate(T, i * dt)
      const next = T + (dt / 2) * (now + rate(T + dt * now, (i + 1) * dt))
      sum += ((T + next) / 2) * dt
      T = next
    }
    return { mean_C: sum / step.step_s, end_C: T }
  }

  // 2e-6 K: the error of the fine steps and, for a plate that hardly moves, of the series' next term.
  test.each([
    ['light', 5e3, 900, 0],
    ['light, under a drifting sink', 5e3, 900, 1e-3],
    ['usual', 5e4, 900, -2e-3],
    ['heavy', 5e6, 900, 1e-3],
    ['very heavy, in the series', 5e9, 900, 2e-3],
    ['stepped finely', 5e4, 10, 5e-2],
  ])('%s: mean and end are those of its equation', (_name, capacity_JK, step_s, drift_Ks) => {
    const flow = new LoopFlow({ ...bareLoop(6, 250, 120), pipeGain_WK: 20, pumpPower_W: 40 }, 0.6)
    flow.set(8, 26)
    const step = new PlateStep(capacity_JK, 5)
    step.start_C = 12
    step.step_s = step_s
    step.drift_Ks = drift_Ks
    step.setLoop(flow)
    step.setTangent({ plate_C: 12, water_kgm2: 0, q_Wm2: 70, slope_Wm2K: 8, water_kgm2s: 0 })
    step.prepare()
    const want = integrated(step, capacity_JK, 18)
    expect(Math.abs(step.mean_C(18) - want.mean_C)).toBeLessThan(2e-6)
    expect(Math.abs(step.end_C(18) - want.end_C)).toBeLessThan(2e-6)
  })
  test('its part of the loop is what the fluid gives: K (T_in − T_plate)', () => {
    const flow = new LoopFlow({ ...bareLoop(6, 250, 120), pipeGain_WK: 20, pumpPower_W: 40 }, 0.6)
    flow.set(8, 26)
    const step = new PlateStep(5e4, 5)
    step.setLoop(flow)
    const given_W = step.fromSink_WK * 18 + step.fromConst_W - step.fromPlate_WK * 9
    expect(given_W).toBeCloseTo(flow.exchange_WK * (flow.into_C(flow.top_C(18, 9)) - 9), 9)
    step.setLoop(null)
    expect([step.fromSink_WK, step.fromConst_W, step.fromPlate_WK]).toEqual([0, 0, 0])
  })
  test('the tangent passes through its point: 5 m² shed 70 W/m² at 12 °C and 8 W/m²K more above', () => {
    const step = new PlateStep(5e4, 5)
    step.setTangent({ plate_C: 12, water_kgm2: 0, q_Wm2: 70, slope_Wm2K: 8, water_kgm2s: 0 })
    expect(step.shed_WK * 12 - step.rest_W).toBeCloseTo(350, 9)
    expect(step.shed_WK * 13 - step.rest_W).toBeCloseTo(390, 9)
  })
})

/** Its matrix, row by row. */
function written(tank: LayerSystem): number[] {
  const { size: n, own_WK, fromBelow_WK, fromAbove_WK, atTop_WK, atEntry_WK, entry } = tank
  const m = Array.from({ length: n * n }, () => 0)
  for (let i = 0; i < n; i++) {
    m[i * n + i]! += own_WK[i]!
    if (i > 0) m[i * n + i - 1]! -= fromAbove_WK[i - 1]!
    if (i < n - 1) m[i * n + i + 1]! -= fromBelow_WK[i]!
  }
  m[n - 1]! += atTop_WK
  m[entry * n]! += atEntry_WK
  return m
}

describe.each([1, 2, 3, 4, 8])('a tank of %i layers as a system', (n) => {
  test.each(Array.from({ length: n }, (_, entry) => entry))(
    'entered at layer %i gives back what its matrix was multiplied with',
    (entry) => {
      const tank = new LayerSystem(n)
      tank.own_WK.forEach((_, i) => (tank.own_WK[i] = 9 + i))
      tank.fromBelow_WK.forEach((_, i) => (tank.fromBelow_WK[i] = i < entry ? 2.5 : 0.25))
      tank.fromAbove_WK.forEach((_, i) => (tank.fromAbove_WK[i] = i < entry ? 0.5 : 1.5))
      Object.assign(tank, { atTop_WK: -3, atEntry_WK: -1.25, entry })
      const m = written(tank)
      tank.close()
      tank.factor()
      for (const x of [
        Array.from({ length: n }, (_, i) => i - 2),
        Array.from({ length: n }, (_, i) => 7 / (i + 1)),
      ]) {
        const right = Float64Array.from(x, (_, i) =>
          x.reduce((sum, value, j) => sum + m[i * n + j]! * value, 0),
        )
        tank.solve(right)
        x.forEach((value, i) => expect(right[i]).toBeCloseTo(value, 12))
      }
    },
  )
})

describe('layers of a tank', () => {
  const store = bareTank([4e5, 4e5, 4e5], [0, 0, 0], { betweenLayers_WK: 0.5 })
  const nodes = nodesOf({
    plant: plantOf(linearPanel(1, 8, 5, 1000), bareLoop(6, 3, 120), store),
  })
  const running = {
    share: 1,
    flow: { rate_WK: 3, backTop: 0.4, backPlate: 0.5, backConst_C: 1.5 },
    relaxation: { meanSlope: 0.2, meanOffset_C: 7 },
  } as unknown as PlateCourse
  const filled = (loop: PlateCourse | null, down_WK: number, entry = 2) => {
    const tank = new LayerSystem(3)
    tank.entry = entry
    const drive_W = new Float64Array(3)
    addLayers({ tank, tankDrive_W: drive_W } as unknown as HubSystem, nodes, store, loop, down_WK)
    return { m: written(tank), drive_W }
  }

  test('delivery alone flows down: in at the top from the bottom, out at the bottom', () => {
    const { m, drive_W } = filled(null, 2)
    const want = [2.5, -0.5, -2, -2.5, 3, -0.5, 0, -2.5, 2.5]
    want.forEach((value, i) => expect(m[i], `entry ${i}`).toBeCloseTo(value, 12))
    expect([...drive_W]).toEqual([0, 0, 0])
  })
  test('a tank at one temperature exchanges nothing inside', () => {
    const { m } = filled(null, 2)
    for (let i = 0; i < 3; i++) expect(m[3 * i]! + m[3 * i + 1]! + m[3 * i + 2]!).toBeCloseTo(0, 12)
  })
  test('loop stronger than delivery: the net flows up, drawn at the top, back at the bottom', () => {
    const { m, drive_W } = filled(running, 2)
    // Net 1 W/K up; conduction 0.5 both ways; the loop brings back 0.4 T_top + 0.5 (0.2 T_top + 7) + 1.5.
    const want = [0.5 + 3, -1.5, -2, -0.5, 1.5 + 0.5, -1.5, -3 * (0.4 + 0.5 * 0.2), -0.5, 1.5 + 2]
    want.forEach((value, i) => expect(m[i], `entry ${i}`).toBeCloseTo(value, 12))
    expect(drive_W[2]).toBeCloseTo(3 * (0.5 * 7 + 1.5), 12)
    expect([drive_W[0], drive_W[1]]).toEqual([0, 0])
  })
  test('a return as warm as the middle enters there: under it the delivery alone flows', () => {
    const { m, drive_W } = filled(running, 2, 1)
    const want = [0.5 + 3, -1.5, -2, -0.5 - 3 * (0.4 + 0.5 * 0.2), 1.5 + 2.5, -0.5, 0, -2.5, 2.5]
    want.forEach((value, i) => expect(m[i], `entry ${i}`).toBeCloseTo(value, 12))
    expect([...drive_W]).toEqual([0, 3 * (0.5 * 7 + 1.5), 0])
  })

  const overturned = (temps: readonly number[], capacities = temps.map(() => 1)) => {
    const temp_C = Float64Array.from(temps)
    const bottom = temps.length - 1
    turnOver({ top: 0, bottom, capacity_JK: Float64Array.from(capacities) } as unknown as Nodes, temp_C)
    return [...temp_C]
  }
  test('warm over cold stays; cold over warm mixes, by heat capacity', () => {
    expect(overturned([20, 15, 15])).toEqual([20, 15, 15])
    expect(overturned([10, 20, 5])).toEqual([15, 15, 5])
    expect(overturned([10, 20, 5], [3, 1, 1])).toEqual([12.5, 12.5, 5])
  })
  test('the coldest on top: the whole tank mixes, for no part of it would stay', () => {
    overturned([10, 12, 17]).forEach((one) => expect(one).toBeCloseTo(13, 12))
    overturned([10, 12, 17], [1, 2, 1]).forEach((one) => expect(one).toBeCloseTo(12.75, 12))
  })
  test('any tank: no layer colder than the one below, heat kept, and it mixes no more than it must', () => {
    const layer = fc.tuple(
      fc.double({ min: 0, max: 40, noNaN: true }),
      fc.double({ min: 0.1, max: 9, noNaN: true }),
    )
    fc.assert(
      fc.property(fc.array(layer, { minLength: 1, maxLength: 20 }), (layers) => {
        const temps = layers.map(([temp]) => temp)
        const capacities = layers.map(([, capacity]) => capacity)
        const got = overturned(temps, capacities)
        for (let i = 1; i < got.length; i++) expect(got[i - 1]).toBeGreaterThanOrEqual(got[i]!)
        const heat = (of: readonly number[]) => of.reduce((sum, one, i) => sum + one * capacities[i]!, 0)
        expect(heat(got)).toBeCloseTo(heat(temps), 9)
        // Each run of equal layers ends at its own mean: heat crosses no edge between two runs.
        for (let i = 1, above = 0, was = 0; i < got.length; i++) {
          above += got[i - 1]! * capacities[i - 1]!
          was += temps[i - 1]! * capacities[i - 1]!
          if (got[i - 1]! > got[i]! + 1e-9) expect(above).toBeCloseTo(was, 8)
        }
      }),
    )
  })
})
