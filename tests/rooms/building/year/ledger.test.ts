import fc from 'fast-check'
import { expect, test } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { designOf, type Prepared } from '#model/design/assembly'
import type { RoomNetwork } from '#model/building/room'
import { type YearInputs, type YearResult, simulateYear } from '#model/building/year'
import { sampleNames, sampleWeather } from '../../../../src/shell/samples.ts'
import { between, randomScenario } from '../../design/scenario/random-scenario.ts'

/*
 * Label: conservation. Source: the first law, asked for by the project's design (closure ≤ 1e-9 of throughput over
 * random scenarios). A year of 35,040 steps adds about 1e6 rounded terms; 1e-9 is seven digits above rounding and
 * far below any flow that could have been forgotten.
 */
const CLOSURE = 1e-9
const SCENARIOS = 30
const SEED = 20_261
/** Overshoot of a two-stage step and of a tangent about a plate that passes its dew point, K. */
const OVERSHOOT_K = 2
/** A wet plate evaporates and a wet film is opaque, so it may leave the dry plate's span by this much, K. */
const WET_K = 20

const climates = sampleNames().map((name) => ({ name, weather: sampleWeather(name) }))

const design = fc.record({
  scenario: randomScenario,
  climate: fc.nat(climates.length - 1),
  area_m2: between(0.3, 60),
  storeVolume_m3: between(0.01, 10),
  flow_kgsm2: between(0.001, 0.05),
})

test(`${SCENARIOS} random scenarios × sample climates: the year's ledger closes to 1e-9 of its throughput, nothing is NaN, every temperature lies between the coldest and the hottest of what drives it`, () => {
  let worst = 0
  const kinds = new Set<string>()
  fc.assert(
    fc.property(design, ({ scenario, climate, ...candidate }) => {
      const prepared = new Stages().prepare(scenario, climates[climate]!.weather)
      const { inputs } = designOf(prepared, candidate)
      const year = simulateYear(inputs)
      const closure = Math.abs(year.ledger.residual_J) / year.ledger.throughput_J
      worst = Math.max(worst, closure)
      kinds.add(`${scenario.store.kind} ${scenario.loop.fluid}`)
      expect(closure).toBeLessThanOrEqual(CLOSURE)
      assertNumbers(year)
      assertBetween(year, inputs, prepared)
    }),
    { numRuns: SCENARIOS, seed: SEED, endOnFailure: true },
  )
  console.log(`ledger: worst residual ${worst.toExponential(1)} of throughput; ${[...kinds].join(', ')}`)
  expect(kinds.size).toBeGreaterThanOrEqual(6)
})

function assertNumbers(year: YearResult): void {
  for (const [name, value] of Object.entries(year)) {
    if (!(value instanceof Float64Array)) continue
    const rests = name === 'panelReturn_C'
    const bad = value.findIndex((x, h) => !Number.isFinite(x) && !(rests && year.pumpRun_frac[h] === 0))
    expect(bad, `${name} at hour ${bad}`).toBe(-1)
  }
  for (const flow of Object.values(year.ledger)) expect(Number.isFinite(flow)).toBe(true)
  expect(Math.min(...year.pumpRun_frac)).toBeGreaterThanOrEqual(0)
  expect(Math.max(...year.pumpRun_frac)).toBeLessThanOrEqual(1)
  expect(Math.min(...year.water_kgm2)).toBeGreaterThanOrEqual(0)
}

/**
 * Heat runs from hot to cold: no node can become hotter than the hottest of the temperatures it is tied to
 * (drive over conductance of each node, outdoor air, the panel at rest), but for what fan and pump add; nor colder.
 * A pump far too strong for its tubes does heat its tank: its heat has only the panel to leave by.
 */
function assertBetween(year: YearResult, { room, plant }: YearInputs, { weather, panel }: Prepared): void {
  // What sunlight and gains would warm the room by if only air change and faces of 2.5 W/m²K carried it away.
  const inside_K = Math.max(
    ...room.sun_W.map((sun_W, h) => (sun_W + room.gains_W[h]!) / leastLoss_WK(room, h)),
  )
  const tied = [
    weather.airTemp_C,
    ...room.groups.flatMap(({ outside }) => (outside === null ? [] : [outside.temp_C])),
    ...(room.windows === null ? [] : [room.windows.outside.temp_C]),
  ]
  const rest_C = panel.equilibrium_C
  const lowest = Math.min(...tied.map((column) => Math.min(...column)), Math.min(...rest_C) - WET_K)
  const highest = Math.max(...tied.map((column) => Math.max(...column)), Math.max(...rest_C) + WET_K)
  const { store, loop } = plant!
  const fan_K = store.deliveryPower_W / Math.min(...room.ventilation_WK.map((_, h) => leastLoss_WK(room, h)))
  const shed_WK = plant!.fieldFactor_frac * loop.area_m2 * Math.min(...panel.conductance_Wm2K)
  const pump_K = loop.pumpPower_W * (1 / shed_WK + 1 / (loop.area_m2 * loop.fluidToPlate_Wm2K))
  const columns = ['room_C', 'air_C', 'radiant_C', 'slab_C', 'store_C', 'storeTop_C', 'plate_C'] as const
  for (const name of columns) {
    expect(Math.min(...year[name]), `coldest ${name}`).toBeGreaterThanOrEqual(lowest - OVERSHOOT_K)
    expect(Math.max(...year[name]), `hottest ${name}`).toBeLessThanOrEqual(
      highest + inside_K + fan_K + pump_K + OVERSHOOT_K,
    )
  }
}

/** Air change, and steady heat through glass, walls and roof, W/K: what any gain must at least leave by. */
function leastLoss_WK(room: RoomNetwork, h: number): number {
  const walls = room.groups.reduce((sum, { modes, area_m2, outside }) => {
    if (outside === null) return sum
    const steady = modes.decay_1s.reduce(
      (all, decay, k) => all + (modes.inner[k]! * modes.outer[k]!) / decay,
      0,
    )
    const far = modes.decay_1s.reduce((all, decay, k) => all + modes.outer[k]! ** 2 / decay, 0)
    const outer = 1 / (1 / outside.film_Wm2K[h]! + modes.outerResistance_m2KW)
    return sum + (area_m2 * modes.innerConductance_Wm2K * steady * outer) / (1 + outer * far)
  }, 0)
  return room.ventilation_WK[h]! + walls
}
