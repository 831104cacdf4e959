import {
  AIR_SPECIFIC_HEAT_JKGK,
  evaporationHeat_Jkg,
  humidityRatio_frac,
  vapourPressure_Pa,
} from '#model/outdoors/air'
import { type PanelTangent, panelTangent, waterAfter_kgm2 } from '#model/panels/plate'
import { Controls } from '#inside/model/building/year/controls.ts'
import { RATED_DIFFERENCE_K } from '#inside/model/building/year/delivery.ts'
import { type YearInputs, panelExchange_WK } from '#model/building/year'
import { nodesOf } from '#inside/model/building/year/nodes.ts'
import { Solver } from '../../../odex.ts'
import { faceSlopes } from './face-slopes.ts'

/** Places in the state. */
const TANK = 0
const AIR = 1
const PLATE = 2
const MASSES = 3

/**
 * The equations of room, mixed tank and plate as a right-hand side for an adaptive general-purpose solver (odex,
 * Bulirsch–Stoer after Hairer & Wanner): nothing linearised, the panel's heat at its own temperature, the delivery
 * as its min/max law. What the controller holds for a quarter hour (share of the pump, windows, delivery on or off) is taken over
 * from the kernel, since a decision that hangs on a thousandth of a kelvin would part the two for reasons that are
 * not the integrator's; the exchange of the running panel is held for the step likewise.
 */
export class CoupledSystem {
  /** Tank, air, plate, then the masses of the room’s groups. */
  readonly state: number[]
  water_kgm2 = 0
  /** Mean of the air over the step taken last, °C: what is reported. */
  airMean_C = 0
  private readonly inputs: YearInputs
  private readonly capacity_JK: readonly number[]
  private controls = new Controls()
  private readonly tangent: PanelTangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  private exchange_WK = 0

  constructor(
    inputs: YearInputs,
    start: { tank_C: number; air_C: number; plate_C: number; masses: ArrayLike<number> },
  ) {
    this.inputs = inputs
    const nodes = nodesOf(inputs)
    this.state = [start.tank_C, start.air_C, start.plate_C, ...Array.from(start.masses)]
    this.capacity_JK = [nodes.capacity_JK[0]!, inputs.room.airCapacity_JK, nodes.plateCapacity_JK]
  }

  step(hour: number, step_s: number, controls: Controls): void {
    const { inputs, state, tangent } = this
    this.controls = controls
    const plant = inputs.plant!
    panelTangent(plant.panel, hour, state[PLATE]!, this.water_kgm2, tangent)
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
    this.water_kgm2 = waterAfter_kgm2(y.at(-2)!, 0, step_s, state[PLATE]!, limit_kgm2)
  }

  /** Heat from fluid to plate and into the store, with the pump running its share of the step. */
  private loop(hour: number, x: ArrayLike<number>): { toPlate_W: number; toStore_W: number } {
    const { loop } = this.inputs.plant!
    const share = this.controls.pumpShare
    const out_C = this.inputs.room.outdoor_C[hour]!
    const halfPipe = 1 - Math.exp((-0.5 * loop.pipeGain_WK) / loop.capacityRate_WK)
    const top_C = x[TANK]!
    const in_C = top_C + halfPipe * (out_C - top_C)
    const toPlate_W = this.exchange_WK * (in_C - x[PLATE]!)
    const return_C = in_C - toPlate_W / loop.capacityRate_WK
    const back_C = return_C + halfPipe * (out_C - return_C) + loop.pumpPower_W / loop.capacityRate_WK
    return { toPlate_W: share * toPlate_W, toStore_W: share * loop.capacityRate_WK * (back_C - top_C) }
  }

  /**
   * The coil with a tray: its surface is where sensible and latent heat pass on to the water, found by bisection on the
   * saturation curve itself. `sensible_W` of the surface's temperature, at a share of the air flow.
   */
  private coilAt(
    hour: number,
    { air_C, water_C }: { air_C: number; water_C: number },
    share: number,
    sensible_W: (surface_C: number) => number,
  ): { sensible_W: number; latent_W: number } {
    const { room, plant } = this.inputs
    const UA = plant!.store.delivery_WK
    const change_WK = room.ventilation_WK[hour]!
    const dew_C = Math.min(room.indoorDewPoint_C[hour]!, air_C)
    const ratio = (t_C: number): number => humidityRatio_frac(vapourPressure_Pa(t_C), room.pressure_Pa)
    const carried_kgs = 1 / (1 / change_WK + 0.7 / (share * UA)) / AIR_SPECIFIC_HEAT_JKGK
    const latent_W = (s_C: number): number =>
      Math.max(0, carried_kgs * evaporationHeat_Jkg(dew_C) * (ratio(dew_C) - ratio(s_C)))
    let [low, high] = [water_C - 60, water_C + 60]
    for (let k = 0; k < 45; k++) {
      const s_C = (low + high) / 2
      if (sensible_W(s_C) + latent_W(s_C) > (UA / 0.3) * (s_C - water_C)) low = s_C
      else high = s_C
    }
    return { sensible_W: sensible_W(low), latent_W: latent_W(low) }
  }

  /** Sensible and latent heat of a coil with a tray, open or throttled to the demand by its air flow. */
  private coil(hour: number, x: ArrayLike<number>): { sensible_W: number; latent_W: number; full_W: number } {
    const { store, plan } = this.inputs.plant!
    const at = { air_C: x[AIR]!, water_C: x[TANK]! }
    const { air_C } = at
    const open = this.coilAt(hour, at, 1, (s_C) => (store.delivery_WK / 0.7) * (air_C - s_C))
    const full_W = open.sensible_W
    const demand_W = ((store.delivery_WK * RATED_DIFFERENCE_K) / plan.band_K) * (air_C - plan.setpoint_C)
    if (!this.controls.delivering || demand_W <= 0 || full_W <= 0)
      return { sensible_W: 0, latent_W: 0, full_W }
    if (demand_W >= full_W) return { ...open, full_W }
    const share = Math.max(0.05, demand_W / full_W)
    return { ...this.coilAt(hour, at, share, () => demand_W), full_W }
  }

  private delivered_W(hour: number, x: ArrayLike<number>): number {
    if (!this.controls.delivering) return 0
    const { store, plan } = this.inputs.plant!
    const air_C = x[AIR]!
    const surface_C = Math.max(x[TANK]!, this.inputs.room.indoorDewPoint_C[hour]! + store.dewMargin_K)
    const reach_W = store.delivery_WK * (air_C - surface_C)
    const demand_W = ((store.delivery_WK * RATED_DIFFERENCE_K) / plan.band_K) * (air_C - plan.setpoint_C)
    return Math.max(0, Math.min(reach_W, demand_W))
  }

  private slopes(hour: number, x: number[]): number[] {
    const { room, plant } = this.inputs
    const { controls, tangent } = this
    const { store, loop, fieldFactor_frac } = plant!
    const water_kgm2 = Math.max(0, x.at(-2)!)
    panelTangent(plant!.panel, hour, x[PLATE]!, water_kgm2, tangent)
    const dry = water_kgm2 === 0 && tangent.water_kgm2s < 0
    const flows = controls.pumping ? this.loop(hour, x) : { toPlate_W: 0, toStore_W: 0 }
    const air_C = x[AIR]!
    const store_C = x[TANK]!
    const coil = store.drained ? this.coil(hour, x) : null
    const delivered_W = coil?.sensible_W ?? this.delivered_W(hour, x)
    const full_W =
      coil !== null && coil.latent_W > 0
        ? Math.max(0.1 * store.delivery_WK, coil.full_W)
        : store.delivery_WK * Math.max(0.1, air_C - store_C)
    const fan_W = store.deliveryPower_W * Math.min(1, Math.max(0, delivered_W / full_W))
    const leak_W =
      store.layerLoss_WK[0]! * ((store.lossTo === 'room' ? air_C : room.outdoor_C[hour]!) - store_C)
    const vent_W = controls.venting ? room.nightVent_WK * (room.outdoor_C[hour]! - air_C) : 0
    const faces = faceSlopes(room, hour, air_C, x, MASSES)
    const heat_W = [
      flows.toStore_W + delivered_W + (coil?.latent_W ?? 0) + leak_W,
      faces.toAir_W +
        room.ventilation_WK[hour]! * (room.outdoor_C[hour]! - air_C) +
        0.4 * room.gains_W[hour]! +
        vent_W +
        fan_W -
        delivered_W -
        (store.lossTo === 'room' ? leak_W : 0),
      flows.toPlate_W - fieldFactor_frac * loop.area_m2 * tangent.q_Wm2,
    ]
    return [
      ...heat_W.map((heat, i) => heat / this.capacity_JK[i]!),
      ...faces.slopes,
      dry ? 0 : tangent.water_kgm2s,
      air_C,
    ]
  }
}
