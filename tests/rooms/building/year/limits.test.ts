import { describe, expect, test } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { designOf } from '#model/design/assembly'
import { type Scenario, withField, defaultScenario } from '#model/design/scenario'
import { YearKernel } from '#inside/model/building/year/kernel.ts'
import { type YearResult, simulateYear } from '#model/building/year'
import { sampleWeather } from '../../../../src/shell/samples.ts'
import {
  bareLoop,
  bareTank,
  greyPanel,
  handMadeRoom,
  plantOf,
  steadyNight,
  withoutConvection,
} from './hand-made.ts'

/* Label: exact (limits and identities of the equations), asked for by the project's design. No outside source. */

const weather = sampleWeather('semi-arid-south')
const stages = new Stages()
const USUAL = { area_m2: 10, storeVolume_m3: 0.8, flow_kgsm2: 0.01 }

function scenarioWith(settings: readonly (readonly [string, string])[]): Scenario {
  return settings.reduce((s, [field, text]) => withField(s, field, text), defaultScenario())
}

function run(settings: readonly (readonly [string, string])[], change: Partial<typeof USUAL> = {}) {
  const prepared = stages.prepare(scenarioWith(settings), weather)
  const year = simulateYear(designOf(prepared, { ...USUAL, ...change }).inputs)
  for (const name of ['room_C', 'store_C', 'plate_C', 'delivered_W', 'panelHeat_W'] as const)
    expect(year[name].every(Number.isFinite), `${name} is a number in every hour`).toBe(true)
  return { year, prepared }
}

function furthest(a: Float64Array, b: Float64Array): number {
  return a.reduce((worst, value, h) => Math.max(worst, Math.abs(value - b[h]!)), 0)
}
const ranHours = (year: YearResult): number => year.pumpRun_frac.reduce((sum, share) => sum + share, 0)

describe('no panel', () => {
  test('area 0 is the room left alone, exactly, in every hour', () => {
    const { year, prepared } = run([], { area_m2: 0, storeVolume_m3: 0 })
    expect(furthest(year.room_C, prepared.doNothing.room_C)).toBe(0)
  })

  test('a user’s own area of 0 answers with the room left alone itself', () => {
    const answer = stages.answer(
      scenarioWith([
        ['target.autoArea', 'false'],
        ['target.area_m2', '0'],
      ]),
      weather,
    )
    expect(answer.year).toBe(answer.doNothing)
    expect(answer.sizing.withPanels).toEqual(answer.sizing.doNothing)
  })

  test('a square centimetre of panel on a litre of store changes the room by less than 0.1 K', () => {
    // The litre itself holds 1 % of what the room's air and furniture hold.
    const { year, prepared } = run([], { area_m2: 1e-4, storeVolume_m3: 1e-3 })
    expect(furthest(year.room_C, prepared.doNothing.room_C)).toBeLessThan(0.1)
  })
})

describe('a delivery of 0', () => {
  test('into a tank outdoors: the room is the room left alone (1e-9 K, rounding)', () => {
    const { year, prepared } = run([
      ['store.delivery_WK', '0'],
      ['store.deliveryPower_W', '0'],
      ['store.place', 'outside'],
    ])
    expect(furthest(year.room_C, prepared.doNothing.room_C)).toBeLessThan(1e-9)
    expect(Math.max(...year.delivered_W)).toBe(0)
    expect(ranHours(year)).toBeGreaterThan(0)
  })

  test.each(['slab', 'building'])('pipes in the %s: nothing reaches the room (1e-6 K)', (kind) => {
    const settings = [
      ['store.delivery_WK', '0'],
      ['store.kind', kind],
      ['loop.pipeLength_m', '0'],
    ] as const
    const { year, prepared } = run(settings)
    expect(furthest(year.room_C, prepared.doNothing.room_C)).toBeLessThan(1e-6)
  })
})

describe.each(['mixed', 'layered'])('a %s store', (kind) => {
  test('of no size keeps nothing: the panels cool the room through it as they do without one, within 0.2 K of peak', () => {
    // Two models of the same thing: the pump runs as long as a tank of nothing, or the room's own air, has a use for it.
    // A fan would warm the room of the one alone: it draws next to nothing here.
    const settings = [
      ['store.kind', kind],
      ['store.deliveryPower_W', '0.1'],
    ] as const
    const { year, prepared } = run(settings, { storeVolume_m3: 0 })
    const { year: straight } = run([['store.kind', 'building']])
    const off_K = Math.max(...year.room_C) - Math.max(...straight.room_C)
    console.log(
      `${kind} of no size: ${off_K.toFixed(3)} K over air straight through; room left alone ${Math.max(...prepared.doNothing.room_C).toFixed(2)} °C`,
    )
    expect(Math.abs(off_K)).toBeLessThan(0.2)
    expect(Math.abs(year.ledger.residual_J) / year.ledger.throughput_J).toBeLessThan(1e-9)
    expect(Math.max(...year.store_C)).toBeLessThan(60)
  })

  test('of 100 000 m³ stays where it began, within 0.2 K in the year', () => {
    const { year } = run([['store.kind', kind]], { storeVolume_m3: 1e5 })
    expect(Math.max(...year.store_C) - Math.min(...year.store_C)).toBeLessThan(0.2)
    // Its content (1e13 J) is rounded to 1e-3 J in each of 35 040 steps, so the balance closes against that.
    const content_J = 1e5 * 4.18e6 * 30
    expect(Math.abs(year.ledger.residual_J) / content_J).toBeLessThan(1e-9)
  })
})

test('a huge panel helps, but never takes the room below what the coldest store may give', () => {
  const { year, prepared } = run([], { area_m2: 1000 })
  expect(Math.max(...year.room_C)).toBeLessThan(Math.max(...prepared.doNothing.room_C))
  expect(Math.min(...year.room_C)).toBeGreaterThanOrEqual(Math.min(...prepared.doNothing.room_C) - 0.5)
  expect(Math.min(...year.plate_C)).toBeGreaterThanOrEqual(Math.min(...prepared.panel.equilibrium_C) - 5)
})

describe('a perfect mirror', () => {
  const hours = 24
  const night = steadyNight(hours, 20, 2)
  const flux = (value: number): Float64Array => new Float64Array(hours).fill(value)
  const sky = {
    hours,
    total_Wm2: flux(300),
    window_Wm2: flux(60),
    offWindow_Wm2: flux(240),
    measured: new Uint8Array(hours),
  }

  test('at night rests at air temperature, whatever the sky sends (1e-3 K, the search’s last step squared)', () => {
    const panel = greyPanel(night, sky, { emittance_frac: 0 })
    for (const value of panel.equilibrium_C) expect(Math.abs(value - 20)).toBeLessThan(1e-3)
  })

  test('cools a tank at air temperature by nothing (1e-6 K in a day), where a white plate cools it by kelvins', () => {
    expect(cooledBy_K(greyPanel(night, sky, { emittance_frac: 0 }))).toBeLessThan(1e-6)
    expect(cooledBy_K(greyPanel(night, sky))).toBeGreaterThan(1)
  })

  function cooledBy_K(panel: ReturnType<typeof greyPanel>): number {
    const room = handMadeRoom({ hours, air_JK: 1e9, outdoor_C: flux(20) })
    const plant = plantOf(panel, bareLoop(6, 250, 200), bareTank([2e6], [0]), { startDifference_K: -1 })
    const kernel = new YearKernel({ room, plant, nightVentStop_C: 0 }, 900)
    kernel.temp_C.fill(20)
    kernel.plate_C = 20
    for (let h = 0; h < hours; h++) kernel.hour(h)
    return 20 - kernel.temp_C[0]!
  }

  test('a plate in a vacuum settles at the sky’s own temperature (5 mK, fitted blackbody bands)', () => {
    const total = 5.670374419e-8 * 268.15 ** 4
    const grey = {
      ...sky,
      total_Wm2: flux(total),
      window_Wm2: flux(0.3 * total),
      offWindow_Wm2: flux(0.7 * total),
    }
    const panel = withoutConvection(greyPanel(night, grey))
    const room = handMadeRoom({ hours, air_JK: 1e9, outdoor_C: flux(20) })
    const plant = plantOf(panel, bareLoop(6, 0, 200), bareTank([2e6], [0]))
    const kernel = new YearKernel({ room, plant, nightVentStop_C: 0 }, 900)
    kernel.temp_C.fill(20)
    kernel.plate_C = 20
    for (let h = 0; h < hours; h++) kernel.hour(h)
    expect(Math.abs(kernel.plate_C + 5)).toBeLessThan(5e-3)
  })
})

test('no wind and no loss through the back: the resting plate gets colder than with both, and stays a number', () => {
  const still = run([
    ['site.windFactor_frac', '0'],
    ['panel.backLoss_Wm2K', '0'],
  ])
  const windy = run([])
  const coldest = ({ prepared }: typeof still): number => Math.min(...prepared.panel.equilibrium_C)
  expect(coldest(still)).toBeLessThan(coldest(windy) - 1)
  expect(Math.min(...still.prepared.panel.conductance_Wm2K)).toBeGreaterThan(0)
})
