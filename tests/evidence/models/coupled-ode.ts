/**
 * The coupled system (air, fabric, slab, tank, plate) as ordinary differential equations for a general solver: the
 * heat of the plate, the room's coefficients and the plan's hours are the project's, stepping and algebra are not.
 */
import type { PanelTangent } from '#model/panel/hours.ts'
import { panelTangent } from '#model/panel/tangent.ts'
import { panelExchange_WK } from '#model/year/panel-exchange.ts'
import type { Plant, YearInputs } from '#model/year/inputs.ts'
import type { YearResult } from '#model/year/result.ts'
import { Solver } from '../../odex.ts'

/** The thermostat of the delivery: on when the room is this much warmer than its coldest surface, off under the second, K. */
const DELIVERY_START_K = 1
const DELIVERY_STOP_K = 0.5

export interface Course {
  readonly fabric_C: Float64Array
  readonly slab_C: Float64Array
  readonly store_C: Float64Array
  readonly plate_C: Float64Array
}
const NAMES = ['fabric_C', 'slab_C', 'store_C', 'plate_C'] as const

const QUARTER_s = 900

/**
 * Hour-end temperatures from `first` + 1 on, starting from what `start` holds at the end of hour `first`. Water on
 * the plate is a state like the others; only the thermostats (delivery, and the pump that must
 * find the panel colder than the tank) are asked once a quarter hour.
 */
export function coupledCourse(
  inputs: YearInputs,
  plant: Plant,
  start: YearResult,
  first: number,
  until: number,
): Course {
  const course = Object.fromEntries(
    NAMES.map((name) => [name, new Float64Array(until).fill(NaN)]),
  ) as unknown as Course
  let state = [start.air_C[first]!, ...NAMES.map((name) => start[name][first]!), start.water_kgm2[first]!]
  let delivering = true
  let pumping = false
  for (let hour = first + 1; hour < until; hour++) {
    for (let quarter = 0; quarter < 4; quarter++) {
      delivering =
        roomOverSurface_K(inputs, plant, hour, state) > (delivering ? DELIVERY_STOP_K : DELIVERY_START_K)
      pumping = plant.allowed[hour] === 1 && plateUnderTank_K(plant, hour, state, pumping) >= 0
      state = advance(inputs, plant, hour, state, { delivering, pumping })
    }
    NAMES.forEach((name, k) => (course[name][hour] = state[k + 1]!))
  }
  return course
}

/** What is decided for a quarter hour. */
interface Switches {
  readonly delivering: boolean
  readonly pumping: boolean
}

/** Fall of the fluid's temperature over a running panel, or how much colder a resting one is than the tank, K. */
function plateUnderTank_K(plant: Plant, hour: number, state: number[], running: boolean): number {
  const below = state[3]! - state[4]!
  if (!running) return below
  panelTangent(plant.panel, hour, state[4]!, state[5]!, tangent)
  return (
    (panelExchange_WK(plant.loop, plant.fieldFactor_frac * tangent.slope_Wm2K) * below) /
    plant.loop.capacityRate_WK
  )
}

/** Room air over the coldest surface the delivery may have, K: what its thermostat sees. */
function roomOverSurface_K({ room }: YearInputs, { store }: Plant, hour: number, state: number[]): number {
  return state[0]! - Math.max(state[3]!, room.indoorDewPoint_C[hour]! + store.dewMargin_K)
}

function advance(inputs: YearInputs, plant: Plant, hour: number, state: number[], on: Switches): number[] {
  const solver = new Solver(6)
  solver.absoluteTolerance = 1e-7
  solver.relativeTolerance = 1e-9
  solver.maxSteps = 100_000
  return solver.solve((_t, y) => derivative(inputs, plant, hour, y, on), 0, state, QUARTER_s).y
}

const tangent: PanelTangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }

function derivative({ room }: YearInputs, plant: Plant, hour: number, y: number[], on: Switches): number[] {
  const [air, fabric, slab, tank, plate, water] = y as [number, number, number, number, number, number]
  const { loop, store, panel, plan } = plant
  const outdoor = room.outdoor_C[hour]!
  panelTangent(panel, hour, plate, water, tangent)
  const runsOff = water >= panel.waterLimit_kgm2 && plate >= 0 && tangent.water_kgm2s > 0
  const gained_kgm2s = runsOff ? 0 : tangent.water_kgm2s
  const field = plant.fieldFactor_frac
  const shed_W = field * loop.area_m2 * tangent.q_Wm2
  let fromTank_W = 0
  let intoPlate_W = 0
  if (on.pumping) {
    const rate = loop.capacityRate_WK
    const exchange = panelExchange_WK(loop, field * tangent.slope_Wm2K)
    const pipe = 1 - Math.exp((-0.5 * loop.pipeGain_WK) / rate)
    const into = tank + pipe * (outdoor - tank)
    intoPlate_W = exchange * (into - plate)
    const leaving = into - intoPlate_W / rate
    const back = leaving + pipe * (outdoor - leaving) + loop.pumpPower_W / rate
    fromTank_W = rate * (tank - back)
  }
  const surface = Math.max(tank, room.indoorDewPoint_C[hour]! + store.dewMargin_K)
  const wanted = ((store.delivery_WK * 10) / plan.band_K) * (air - plan.setpoint_C)
  const delivered = !on.delivering ? 0 : Math.max(0, Math.min(store.delivery_WK * (air - surface), wanted))
  const loss = store.layerLoss_WK[0]! * (tank - (store.lossTo === 'room' ? air : outdoor))
  const toAir =
    room.airFabric_WK * (fabric - air) +
    room.airSlab_WK * (slab - air) -
    room.airLoss_WK[hour]! * air +
    room.airDrive_W[hour]! -
    delivered +
    (store.lossTo === 'room' ? loss : 0)
  return [
    toAir / room.airCapacity_JK,
    (room.airFabric_WK * (air - fabric) - room.fabricLoss_WK[hour]! * fabric + room.fabricDrive_W[hour]!) /
      room.fabricCapacity_JK,
    (room.airSlab_WK * (air - slab) - room.slabLoss_WK * slab + room.slabDrive_W[hour]!) /
      room.slabCapacity_JK,
    (delivered - loss - fromTank_W) / store.layerCapacity_JK[0]!,
    (intoPlate_W - shed_W) / (panel.heatCapacity_Jm2K * loop.area_m2),
    gained_kgm2s,
  ]
}
