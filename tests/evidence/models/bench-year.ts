/** Hand-made rooms, panels and plants for closed-form cases: every coefficient constant, nothing else in the way. */
import { polynomial } from '#model/basis/numbers'
import type { LoopDuty } from '#model/panels/loop'
import { type PanelHours, reducePanelHours } from '#model/panels/plate'
import type { RoomNetwork } from '#model/building/room'
import { FIELDS } from '#model/design/scenario'
import type { StoreModel } from '#model/building/store'
import type { Plant } from '#inside/model/building/year/inputs.ts'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { PlanSpec } from '#model/building/year'
import type { RoomStates } from '#inside/model/building/year/result.ts'
import { handMadeRoom } from '../../rooms/building/year/hand-made.ts'
import { board, coating } from './plate-case.ts'

const filled = (hours: number, value: number) => new Float64Array(hours).fill(value)

export interface PlainRoom {
  readonly hours: number
  /** Starting temperature of air and masses, °C. */
  readonly start_C: number
  readonly outdoor_C: (hour: number) => number
  readonly air_JK?: number
  readonly mass_JK?: number
  readonly airOut_WK?: number
  readonly airMass_WK?: number
  readonly massOut_WK?: number
}

/** Air and a lump of mass behind its faces. */
export function plainRoom(room: PlainRoom): RoomNetwork {
  return handMadeRoom({
    hours: room.hours,
    air_JK: room.air_JK ?? 1e5,
    ...(room.mass_JK === undefined ? {} : { fabric_JK: room.mass_JK }),
    airOut_WK: room.airOut_WK ?? 0,
    airFabric_WK: room.airMass_WK ?? 0,
    fabricOut_WK: room.massOut_WK ?? 0,
    outdoor_C: Float64Array.from({ length: room.hours }, (_, h) => room.outdoor_C(h)),
    dewPoint_C: -40,
  })
}

/** States that start any run of a room with everything at one temperature. */
export function allAt(room: RoomNetwork, temp_C: number): RoomStates {
  const masses = room.groups.flatMap(({ modes }) => Array.from(modes.held, (e) => e * temp_C))
  return {
    air_C: filled(room.hours, temp_C),
    masses: Float64Array.from({ length: room.hours * masses.length }, (_, i) => masses[i % masses.length]!),
    count: masses.length,
  }
}

/** Calm, dark, dry weather: the frame that a hand-made panel is reduced in. */
function plainWeather(hours: number, air_C: number): WeatherRecord {
  const none = () => filled(hours, 0)
  return {
    site: { name: 'bench', latitude_deg: 45, longitude_deg: 0, altitude_m: 0, utcOffset_h: 0 },
    start_utcMs: 0,
    hours,
    radiationMiddle_h: 0.5,
    airTemp_C: filled(hours, air_C),
    dewPoint_C: filled(hours, -60),
    pressure_Pa: filled(hours, 101325),
    wind_ms: none(),
    globalHorizontal_Wm2: none(),
    directNormal_Wm2: none(),
    diffuseHorizontal_Wm2: none(),
    cloud_frac: none(),
    origins: {},
    basis: 'hand-made',
  }
}

/** A panel whose heat is a polynomial of plate temperature in °C less a constant: no wind, no water. */
export function plainPanel(
  hours: number,
  emission: readonly number[],
  gain_Wm2: number,
  air_C: number,
): PanelHours {
  const none = () => filled(hours, 0)
  const sun = { beam_Wm2: none(), diffuse_Wm2: none(), total_Wm2: none(), cosIncidence: none() }
  const sky = {
    hours,
    total_Wm2: none(),
    window_Wm2: none(),
    offWindow_Wm2: none(),
    measured: new Uint8Array(hours),
  }
  const panel = reducePanelHours(plainWeather(hours, air_C), sun, sky, board(coating(1, 0), null, 0).spec)
  for (const curve of [panel.cold, panel.hot])
    for (const column of Object.values(curve)) if (column instanceof Float64Array) column.fill(0)
  panel.massTransfer.fill(0)
  const exchange = { ...panel.dryExchange, plateEmission: polynomial(emission) }
  const gain = { ...panel.dryGain, plate_Wm2: filled(hours, gain_Wm2) }
  const at = (plate_C: number) => emission.reduceRight((sum, factor) => sum * plate_C + factor, 0) - gain_Wm2
  const balance_C = rootOf(at)
  return {
    ...panel,
    equilibrium_C: filled(hours, balance_C),
    surface_C: filled(hours, balance_C),
    conductance_Wm2K: filled(hours, at(balance_C + 0.5) - at(balance_C - 0.5)),
    dryExchange: exchange,
    wetExchange: exchange,
    dryGain: gain,
    wetGain: gain,
    heatCapacity_Jm2K: 10,
  }
}

/** Where a rising function of plate temperature is nothing, °C, between −273 and 100. */
function rootOf(rising: (plate_C: number) => number): number {
  let [low, high] = [-273, 100]
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2
    if (rising(middle) < 0) low = middle
    else high = middle
  }
  return high
}

export interface PlainTank {
  readonly capacity_JK: number
  readonly layers?: number
  readonly loss_WK?: number
}

export function plainTank({ capacity_JK, layers = 1, loss_WK = 0 }: PlainTank): StoreModel {
  const each = (value: number) => Array.from({ length: layers }, () => value / layers)
  return {
    kind: layers === 1 ? 'mixed' : 'layered',
    port: 'air',
    layerCapacity_JK: each(capacity_JK),
    layerLoss_WK: each(loss_WK),
    lossTo: 'outside',
    betweenLayers_WK: 0,
    delivery_WK: 0,
    deliveryPower_W: 0,
    dewMargin_K: 0,
    drained: false,
    waterMass_kg: capacity_JK / 4186,
  }
}

export function plainLoop(area_m2: number, rate_WK: number, fluidToPlate_Wm2K: number): LoopDuty {
  return {
    area_m2,
    modules: 1,
    flow_kgs: rate_WK / 4184,
    capacityRate_WK: rate_WK,
    fluidToPlate_Wm2K,
    pipeGain_WK: 0,
    pressureDrop_Pa: 0,
    pumpPower_W: 0,
    pipeInnerDiameter_m: 0.02,
    pipeVelocity_ms: 0,
    headerInnerDiameter_m: 0.02,
    riserVelocity_ms: 0,
    riserReynolds: 1000,
    headerLoss_Pa: 0,
    flowSpread_frac: 0,
    riserLoss_Pa: 0,
    pipeLoss_Pa: 0,
    liftLoss_Pa: 0,
    remarks: [],
  }
}

/** Always on as soon as the plate is colder than the tank. */
export const ALWAYS: PlanSpec = {
  kind: 'allDay',
  startHour_h: 0,
  endHour_h: 0,
  startDifference_K: -100,
  stopDifference_K: -100,
  lowestStore_C: -100,
  seasonGate_C: -100,
  setpoint_C: FIELDS.plan.setpoint_C.default,
  band_K: 1,
  freeze: 'glycol',
  freezeLimit_C: -100,
}

export function plainPlant(panel: PanelHours, loop: LoopDuty, store: StoreModel, running = true): Plant {
  const allowed = new Uint8Array(panel.hours).fill(running ? 1 : 0)
  return { panel, loop, store, plan: ALWAYS, allowed, fieldFactor_frac: 1 }
}
