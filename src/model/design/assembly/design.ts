import { builtDuty, loopDuty, type LoopDuty } from '#model/panels/loop'
import type { Prepared } from './prepared.ts'
import type { Scenario } from '#model/design/scenario'
import { tankPlaceOf } from './tank-place.ts'
import { loopSpecOf, planSpecOf, storeSpecOf } from './to-specs.ts'
import { type Candidate, flowRows, type SizingTask, seasonAtRisk } from '#model/design/sizing'
import { storeModel, type StoreModel, isTank } from '#model/building/store'
import { USUAL_YEAR, type YearInputs, simulateYear } from '#model/building/year'

/** A chosen design, ready to be simulated. */
export interface Design {
  readonly candidate: Candidate
  readonly loop: LoopDuty
  readonly store: StoreModel
  readonly inputs: YearInputs
}

/** A first guess of the area: this much per m² of floor (common practice, no source). */
const FIRST_AREA_PER_FLOOR = 0.5

/** `smooth`: every figure is continuous in area, for the search; `built`: whole modules and bores that are sold. */
export type LoopMaking = 'smooth' | 'built'

/** Loop, store and year inputs of a candidate. With no area there is no plant: the room left alone. */
export function designOf(prepared: Prepared, candidate: Candidate, making: LoopMaking = 'smooth'): Design {
  const { scenario, panel, room, allowed, nightVentStop_C } = prepared
  const duty = making === 'built' ? builtDuty : loopDuty
  const loop = duty({ ...loopSpecOf(scenario), flow_kgsm2: candidate.flow_kgsm2 }, candidate.area_m2)
  const store = storeModel(storeSpecOf(scenario, candidate.storeVolume_m3))
  const plan = planSpecOf(scenario)
  const fieldFactor_frac = scenario.panel.fieldFactor_frac
  const plant = candidate.area_m2 > 0 ? { panel, loop, store, plan, allowed, fieldFactor_frac } : null
  return { candidate, loop, store, inputs: { room, plant, nightVentStop_C } }
}

/** The task that sizing works on, its years simulated in so many steps an hour (≥ 4). */
export function taskOf(
  prepared: Prepared,
  stepsPerHour: number = USUAL_YEAR.stepsPerHour,
  making: LoopMaking = 'smooth',
): SizingTask {
  const { scenario, yardstick, doNothing, room } = prepared
  const { store, target } = scenario
  const hasTank = isTank(store.kind)
  const search = { lean: true, books: false, stepsPerHour }
  return {
    yardstick,
    room_C: (candidate) => simulateYear(designOf(prepared, candidate, making).inputs, search).room_C,
    season: seasonAtRisk(doNothing.room_C, yardstick),
    seasonRoom_C: (candidate, season) => {
      const { inputs } = designOf(prepared, candidate, making)
      const room_C = doNothing.room_C.slice()
      for (const span of season.spells) {
        const part = simulateYear(inputs, { ...search, span, settled: doNothing.states })
        for (let hour = span[0]; hour < span[1]; hour++) {
          const h = hour % room_C.length
          room_C[h] = part.room_C[h]!
        }
      }
      return room_C
    },
    doNothing_C: doNothing.room_C,
    maxArea_m2: target.maxArea_m2,
    guess_m2: FIRST_AREA_PER_FLOOR * room.floor_m2,
    storeVolume_m3: hasTank && store.autoVolume ? null : store.volume_m3,
    // where no tank fits, one is sized all the same, and said not to fit
    mostStore_m3: tankPlaceOf(scenario)?.most_m3 || Infinity,
    hasTank,
    flow_kgsm2: prepared.flow_kgsm2,
    flowRows: (area_m2) => flowRows(loopSpecOf(scenario), area_m2),
    moduleArea_m2: moduleArea_m2(scenario),
  }
}

export function moduleArea_m2({ panel }: Scenario): number {
  return panel.moduleLength_m * panel.moduleWidth_m
}
