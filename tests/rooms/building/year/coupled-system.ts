import { type PanelTangent, panelTangent, waterAfter_kgm2 } from '#model/panels/plate'
import type { YearKernel } from '#inside/model/building/year/kernel.ts'
import { RATED_DIFFERENCE_K } from '#inside/model/building/year/delivery-law.ts'
import { type YearInputs, panelExchange_WK } from '#model/building/year'
import { fadedAt_K } from '#inside/model/building/year/open-valve.ts'
import { nodesOf, type Nodes } from '#inside/model/building/year/nodes.ts'
import { turnOver } from '#inside/model/building/year/tank-layers.ts'
import { Solver } from '../../../odex.ts'
import { coilAt } from './coupled-coil.ts'
import { facesAt, type Faces } from './face-slopes.ts'

/** ISO 52016-1: heat flowing up, 5 W/m²K of convection beside 5.13 of longwave. */
const CEILING_TO_AIR = 5 / (5 + 5.13)
/** A valve that throttles, or blends at the dew limit, lets at least this share of its flow through the tank. */
const LEAST_FLOW = 0.05

/** What a tank gives up or takes at an instant. */
interface Delivered {
  readonly sensible_W: number
  readonly latent_W: number
  /** Share of full output, and of the flow through the tank's layers. */
  readonly share: number
  readonly flow: number
}
const NOTHING: Delivered = { sensible_W: 0, latent_W: 0, share: 0, flow: 0 }

/** Where the plant meets the room at an instant: its temperature before heat, and what each W adds to it. */
interface Port {
  readonly free_C: number
  readonly own_KW: number
}

/** What the kernel decides for a step. */
type Decided = Pick<YearKernel, 'controls' | 'windows' | 'entered'>

/**
 * The equations of room, store and plate as a right-hand side for an adaptive general-purpose solver (odex,
 * Bulirsch–Stoer after Hairer & Wanner): nothing linearised, the panel's heat at its own temperature, the delivery
 * as its min/max law. What the controller holds for a quarter hour (share of the pump, windows, a drained coil on or off) is taken over
 * from the kernel, since a decision that hangs on a thousandth of a kelvin would part the two for reasons that are
 * not the integrator's; the exchange of the running panel is held for the step likewise, and so is the layer of a tank that the loop
 * comes back to: by its mean in the step (were it followed within the step, two layers would be up to 0.064 K apart in the quarter hour in
 * which a pump starts, of ten pairs in one). Layers that have come to lie wrongly turn over at a step's end in both.
 */
export class CoupledSystem {
  /** Layers of the tank, air, plate, then the masses of the room’s groups. */
  readonly state: number[]
  water_kgm2 = 0
  /** Mean of the air over the step taken last, °C: what is reported. */
  airMean_C = 0
  readonly air: number
  readonly plate: number
  private readonly inputs: YearInputs
  private readonly nodes: Nodes
  private decided!: Decided
  private readonly tangent: PanelTangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  private exchange_WK = 0

  constructor(
    inputs: YearInputs,
    start: { tank_C: ArrayLike<number>; air_C: number; plate_C: number; masses: ArrayLike<number> },
  ) {
    this.inputs = inputs
    this.nodes = nodesOf(inputs)
    this.air = this.nodes.layers
    this.plate = this.air + 1
    this.state = [
      ...Array.from(start.tank_C).slice(0, this.nodes.layers),
      start.air_C,
      start.plate_C,
      ...Array.from(start.masses),
    ]
  }

  step(hour: number, step_s: number, decided: Decided): void {
    const { inputs, state, tangent, nodes } = this
    this.decided = decided
    const { controls } = decided
    const plant = inputs.plant!
    panelTangent(plant.panel, hour, state[this.plate]!, this.water_kgm2, tangent)
    if (controls.pumping)
      this.exchange_WK = panelExchange_WK(plant.loop, tangent.slope_Wm2K * plant.fieldFactor_frac)
    const solver = new Solver(state.length + 2)
    solver.absoluteTolerance = 1e-5
    solver.relativeTolerance = 1e-6
    solver.maxSteps = 100_000
    const { y } = solver.solve((_t, x) => this.slopes(hour, x), 0, [...state, this.water_kgm2, 0], step_s)
    for (let i = 0; i < state.length; i++) state[i] = y[i]!
    this.airMean_C = y.at(-1)! / step_s
    const limit_kgm2 = plant.panel.waterLimit_kgm2
    this.water_kgm2 = waterAfter_kgm2(y.at(-2)!, 0, step_s, state[this.plate]!, limit_kgm2)
    if (nodes.layers < 2) return
    const layers_C = Float64Array.from(state.slice(0, nodes.layers))
    turnOver(nodes, layers_C)
    layers_C.forEach((value, i) => (state[i] = value))
  }

  private port(faces: Faces, air_C: number): Port {
    const { port } = this.inputs.plant!.store
    if (port === 'air') return { free_C: air_C, own_KW: 0 }
    if (port === 'pipes') return { free_C: faces.pipe_C, own_KW: 0 }
    const seen_C = (radiant_W: number) =>
      CEILING_TO_AIR * air_C + (1 - CEILING_TO_AIR) * faces.radiantWith_C(radiant_W)
    return { free_C: seen_C(0), own_KW: seen_C(1 - CEILING_TO_AIR) - seen_C(0) }
  }

  /** The loop from where it draws, at some temperature, with the pump running: water that leaves, and that comes back. */
  private loop(hour: number, plate_C: number, sink_C: number) {
    const { loop } = this.inputs.plant!
    const out_C = this.inputs.room.outdoor_C[hour]!
    const rate_WK = loop.capacityRate_WK
    const halfPipe = 1 - Math.exp((-0.5 * loop.pipeGain_WK) / rate_WK)
    const round = (top_C: number) => {
      const in_C = top_C + halfPipe * (out_C - top_C)
      const toPlate_W = this.exchange_WK * (in_C - plate_C)
      const return_C = in_C - toPlate_W / rate_WK
      return { toPlate_W, back_C: return_C + halfPipe * (out_C - return_C) + loop.pumpPower_W / rate_WK }
    }
    // What comes back is straight in what leaves, and that is a mixture of the mass and of what comes back.
    const s = this.nodes.sinkShare
    const none = round(0).back_C
    const each = round(1).back_C - none
    const top_C = (s * sink_C + (1 - s) * none) / (1 - (1 - s) * each)
    return { ...round(top_C), top_C, halfPipe, out_C }
  }

  /** Heat of the running loop into pipes, ceiling or air, and to the plate; return water mixed in at the dew limit. */
  private charge(hour: number, plate_C: number, port: Port): { toPlate_W: number; toPort_W: number } {
    const { loop, store } = this.inputs.plant!
    const rate_WK = loop.capacityRate_WK
    const share = this.decided.controls.pumpShare
    const into = (sink_C: number) => {
      const { back_C, top_C } = this.loop(hour, plate_C, sink_C)
      return share * rate_WK * (back_C - top_C)
    }
    const none = into(0)
    const each = into(1) - none
    const toPort_W = (none + each * port.free_C) / (1 - each * port.own_KW)
    const found = this.loop(hour, plate_C, port.free_C + port.own_KW * toPort_W)
    const lowest_C = this.inputs.room.indoorDewPoint_C[hour]! + store.dewMargin_K
    if (found.back_C >= lowest_C) return { toPlate_W: share * found.toPlate_W, toPort_W }
    const s = this.nodes.sinkShare
    const mixed_WK = share * rate_WK * s
    const mixed_W = (mixed_WK * (lowest_C - port.free_C)) / (1 + mixed_WK * port.own_KW)
    const sink_C = port.free_C + port.own_KW * mixed_W
    const top_C = s * sink_C + (1 - s) * lowest_C
    const pipes_W = rate_WK * found.halfPipe * (2 * found.out_C - top_C - lowest_C)
    return { toPlate_W: -mixed_W + share * (loop.pumpPower_W + pipes_W), toPort_W: mixed_W }
  }

  private demand_W(air_C: number): number {
    const { store, plan } = this.inputs.plant!
    return ((store.delivery_WK * RATED_DIFFERENCE_K) / plan.band_K) * (air_C - plan.setpoint_C)
  }

  /** The coil with a tray, open or throttled to the demand by its air flow. */
  private coil(hour: number, air_C: number, water_C: number): Delivered {
    const { delivery_WK } = this.inputs.plant!.store
    const at = { air_C, water_C }
    const open = coilAt(this.inputs, hour, at, 1, (s_C) => (delivery_WK / 0.7) * (air_C - s_C))
    const demand_W = this.demand_W(air_C)
    const fading_W = 2 * delivery_WK * (air_C - water_C - fadedAt_K(this.inputs.plant!.store))
    if (demand_W <= 0 || open.sensible_W <= 0 || fading_W <= 0) return NOTHING
    if (Math.min(fading_W, demand_W) >= open.sensible_W) return { ...open, share: 1, flow: 1 }
    const asked_W = Math.min(fading_W, demand_W)
    const flow = Math.max(LEAST_FLOW, asked_W / open.sensible_W)
    const found = coilAt(this.inputs, hour, at, flow, () => asked_W)
    const full_W =
      found.latent_W > 0
        ? Math.max(0.1 * delivery_WK, open.sensible_W)
        : delivery_WK * Math.max(0.1, air_C - water_C)
    return { ...found, share: Math.min(1, asked_W / full_W), flow }
  }

  /** From the room to the tank, W. */
  private delivered(hour: number, air_C: number, water_C: number, port: Port): Delivered {
    if (!this.decided.controls.delivering) return NOTHING
    const { store } = this.inputs.plant!
    if (store.drained) return this.coil(hour, air_C, water_C)
    const surface_C = Math.max(water_C, this.inputs.room.indoorDewPoint_C[hour]! + store.dewMargin_K)
    const through_W = (UA_WK: number, from_K: number): number =>
      (UA_WK / (1 + UA_WK * port.own_KW)) * (port.free_C - surface_C - from_K)
    const reach_W = Math.min(
      through_W(store.delivery_WK, 0),
      through_W(2 * store.delivery_WK, fadedAt_K(store)),
    )
    const sensible_W = Math.max(0, Math.min(reach_W, this.demand_W(air_C)))
    if (sensible_W === 0) return NOTHING
    const apart_K = port.free_C - port.own_KW * sensible_W - water_C
    const share = Math.min(1, sensible_W / (store.delivery_WK * Math.max(0.1, apart_K)))
    return { sensible_W, latent_W: 0, share, flow: Math.max(LEAST_FLOW, share) }
  }

  private slopes(hour: number, x: number[]): number[] {
    const { room, plant } = this.inputs
    const { tangent, nodes } = this
    const { controls, windows } = this.decided
    const { store, loop, fieldFactor_frac } = plant!
    const water_kgm2 = Math.max(0, x.at(-2)!)
    const plate_C = x[this.plate]!
    panelTangent(plant!.panel, hour, plate_C, water_kgm2, tangent)
    const dry = water_kgm2 === 0 && tangent.water_kgm2s < 0
    const air_C = x[this.air]!
    const faces = facesAt(room, hour, air_C, x, this.plate + 1)
    const port = this.port(faces, air_C)
    const running = controls.pumping && nodes.tank ? this.loop(hour, plate_C, x[0]!) : null
    const charge = controls.pumping && !nodes.tank ? this.charge(hour, plate_C, port) : null
    const given = nodes.tank ? this.delivered(hour, air_C, x[nodes.bottom]!, port) : NOTHING
    const toPort_W = (charge?.toPort_W ?? 0) - given.sensible_W
    const ceiling = store.port === 'ceiling' ? 1 - CEILING_TO_AIR : 0
    const flows = faces.flows(ceiling * toPort_W, store.port === 'pipes' ? toPort_W : 0)
    const around_C = store.lossTo === 'room' ? air_C : room.outdoor_C[hour]!
    const leaks_W = store.layerLoss_WK.map((loss_WK, i) => loss_WK * (around_C - x[i]!))
    const leak_W = store.lossTo === 'room' ? leaks_W.reduce((sum, each) => sum + each, 0) : 0
    const vent_W = windows.vent_WK * (room.outdoor_C[hour]! - air_C)
    const air_W =
      flows.toAir_W +
      room.ventilation_WK[hour]! * (room.outdoor_C[hour]! - air_C) +
      0.4 * room.gains_W[hour]! +
      vent_W +
      (store.port === 'air' ? store.deliveryPower_W * given.share : 0) +
      (store.port === 'pipes' ? 0 : (1 - ceiling) * toPort_W) -
      leak_W
    const toPlate_W = running === null ? (charge?.toPlate_W ?? 0) : controls.pumpShare * running.toPlate_W
    return [
      ...this.layers_W(x, running, given).map((heat_W, i) => (heat_W + leaks_W[i]!) / nodes.capacity_JK[i]!),
      air_W / room.airCapacity_JK,
      (toPlate_W - fieldFactor_frac * loop.area_m2 * tangent.q_Wm2) / nodes.plateCapacity_JK,
      ...flows.slopes,
      dry ? 0 : tangent.water_kgm2s,
      air_C,
    ]
  }

  /**
   * Heat into each layer: the panel's loop up from the one that it comes back to in the step, the
   * delivery's down, only their net between layers, and conduction.
   */
  private layers_W(x: readonly number[], running: { back_C: number } | null, given: Delivered): number[] {
    const { store, loop } = this.inputs.plant!
    const { layers: n, bottom } = this.nodes
    if (n === 0) return []
    const heat_W = Array.from({ length: n }, () => 0)
    const up_WK = running === null ? 0 : this.decided.controls.pumpShare * loop.capacityRate_WK
    const back_C = running?.back_C ?? 0
    const { entered } = this.decided
    const down_WK = n === 1 ? 0 : store.delivery_WK * given.flow
    for (let i = 0; i < bottom; i++) {
      const net_WK = (i < entered ? up_WK : 0) - down_WK
      const upward_W = net_WK > 0 ? net_WK * x[i + 1]! : net_WK * x[i]!
      const conducted_W = store.betweenLayers_WK * (x[i + 1]! - x[i]!)
      heat_W[i]! += upward_W + conducted_W
      heat_W[i + 1]! -= upward_W + conducted_W
    }
    heat_W[0]! += down_WK * x[bottom]! - up_WK * x[0]! + given.sensible_W + given.latent_W
    if (store.port !== 'air') heat_W[0]! += store.deliveryPower_W * given.share
    heat_W[entered]! += up_WK * back_C
    heat_W[bottom]! -= down_WK * x[bottom]!
    return heat_W
  }
}
