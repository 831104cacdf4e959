import { describe, expect, it } from 'vitest'
import { sizingOf, Stages } from '#studies/stages.ts'
import { builtOf } from '#model/design/assembly'
import { type Scenario, defaultScenario } from '#model/design/scenario'
import { exceedance } from '#model/design/target'
import { simulateYear } from '#model/building/year'
import { sampleWeather } from '../../../../src/shell/samples.ts'

const weather = sampleWeather('mediterranean-coast')

/** Invented: far too much panel straight into a small room of thin sheets, with a pump that waits for a large difference. */
function oversized(): Scenario {
  const scenario = defaultScenario()
  return {
    ...scenario,
    store: { ...scenario.store, kind: 'building', delivery_WK: 5000 },
    room: {
      ...scenario.room,
      length_m: 2,
      width_m: 3,
      gains_W: scenario.room.gains_W.map(() => 300),
      roofMass_kgm2: 6,
      wallMass_kgm2: 6,
      contents_Jm2K: 2000,
    },
    plan: { ...scenario.plan, kind: 'allDay', setpoint_C: 12, startDifference_K: 10, stopDifference_K: 5 },
    loop: { ...scenario.loop, autoFlow: false, flow_kgsm2: 0.04 },
    target: {
      ...scenario.target,
      kind: 'peak',
      occupiedFrom_h: 0,
      occupiedUntil_h: 4,
      autoArea: false,
      area_m2: 100,
    },
  }
}

/** Peak with the design of a scenario's own area, °C, the year stepped so many times an hour. */
function peak_C(scenario: Scenario, stepsPerHour: number): number {
  const prepared = new Stages().prepare(scenario, weather)
  const { inputs } = builtOf(prepared, sizingOf(prepared)).design
  return exceedance(simulateYear(inputs, { stepsPerHour }).room_C, prepared.yardstick).peak_C
}

/*
 * Label: independent calculation (the same equations in an eighth of the step). The pump's share is solved within the step, so
 * that quarter hours are fine enough whatever it cools; 0.05 K is a tenth of what a good room thermometer shows.
 * Before, a pump that was on or off for a whole quarter hour made the first two 0.5 K off.
 */
describe('the peak in quarter hours and in less than two minutes', () => {
  const { roofMass_kgm2, wallMass_kgm2, contents_Jm2K } = defaultScenario().room
  const far = oversized()
  const heavier: Scenario = {
    ...far,
    room: { ...far.room, roofMass_kgm2, wallMass_kgm2, contents_Jm2K },
    plan: { ...far.plan, setpoint_C: 20, startDifference_K: 5, stopDifference_K: 3 },
  }
  const usual = defaultScenario()
  const with15 = (kind: Scenario['store']['kind']): Scenario => ({
    ...usual,
    store: { ...usual.store, kind },
    target: { ...usual.target, autoArea: false, area_m2: 15 },
  })
  it.each([
    ['far too much panel in a room of thin sheets', far],
    ['the same in a heavier room, the pump running for longer', heavier],
    ['a mixed tank', with15('mixed')],
    ['a layered tank', with15('layered')],
    ['a slab', with15('slab')],
    ['a building', with15('building')],
  ])('%s', (_name, scenario) => {
    const [coarse_C, fine_C] = [peak_C(scenario, 4), peak_C(scenario, 32)]
    console.log(`peak ${coarse_C.toFixed(3)} and ${fine_C.toFixed(3)} °C`)
    expect(Math.abs(coarse_C - fine_C)).toBeLessThan(0.05)
  })
})
