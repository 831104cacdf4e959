import type { PanelTangent } from '#model/panel/hours.ts'
import { panelTangent } from '#model/panel/tangent.ts'
import { waterAfter_kgm2 } from '#model/panel/water.ts'
import { Books } from '#model/year/books.ts'
import { Controls } from '#model/year/controls.ts'
import {
  CLOSED,
  deliveryLaw,
  OPEN_AT_DEW_LIMIT,
  OPEN_TO_STORE,
  RATED_DIFFERENCE_K,
  THROTTLED,
} from '#model/year/delivery.ts'
import type { YearInputs, YearOptions } from '#model/year/inputs.ts'
import { LinearSystem } from '#model/year/linear-system.ts'
import { LoopFlow } from '#model/year/loop-flow.ts'
import { nodesOf, type Nodes } from '#model/year/nodes.ts'
import { panelExchange_WK } from '#model/year/panel-exchange.ts'

/**
 * γ of the two-stage, stiffly accurate, L-stable implicit Runge–Kutta method of order 2.
 * Source: Alexander 1977, SIAM J. Numer. Anal. 14, 1006–1021 (γ = 1 − 1/√2).
 */
export const GAMMA = 1 - Math.SQRT1_2
/** Laws of the delivery tried in one stage before the last is kept; the books balance whichever it is. */
const LAW_TRIES = 4

/**
 * One building with its plant, stepped through the hours. Each step is two implicit stages of the same linear
 * system: capacities, conductances of the room, the panel's tangent, the loop's affine relations and the law of
 * the delivery. What flows in a stage is exactly what the books enter, so energy is conserved to rounding.
 */
export class YearKernel {
  readonly nodes: Nodes
  /** Temperatures of all nodes at the end of the last step, °C. */
  readonly temp_C: Float64Array
  readonly controls = new Controls()
  readonly books: Books
  /** Water or frost on the panel, kg/m². */
  water_kgm2 = 0
  /** Share of the delivery's full output in the last stage, 0…1: what its fan or pump runs at. */
  deliveryShare = 0

  private readonly inputs: YearInputs
  private readonly system: LinearSystem
  private readonly flow = new LoopFlow()
  private readonly tangent: PanelTangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  private readonly base_C: Float64Array
  private readonly right: Float64Array
  private readonly drive_W: Float64Array
  private tangentPlate_C = 0
  private law = CLOSED
  private readonly shed_m2: number

  constructor(inputs: YearInputs, options: YearOptions) {
    this.inputs = inputs
    this.nodes = nodesOf(inputs)
    const n = this.nodes.count
    this.temp_C = new Float64Array(n)
    this.base_C = new Float64Array(n)
    this.right = new Float64Array(n)
    this.drive_W = new Float64Array(n)
    this.system = new LinearSystem(n)
    this.books = new Books(options.lean)
    const plant = inputs.plant
    this.shed_m2 = plant === null ? 0 : plant.loop.area_m2 * plant.fieldFactor_frac
  }

  /** Energy in all nodes above 0 °C, J. */
  stored_J(): number {
    let sum = 0
    for (let i = 0; i < this.nodes.count; i++) sum += this.nodes.capacity_JK[i]! * this.temp_C[i]!
    return sum
  }

  /** True while the indoor dew point holds the delivery back. */
  get dewLimited(): boolean {
    return this.law === OPEN_AT_DEW_LIMIT
  }

  /** One step of `step_s` seconds inside hour `hour`. */
  step(hour: number, step_s: number): void {
    const { controls, nodes, temp_C, base_C } = this
    const solution = this.system.solution
    controls.decide(this.inputs, nodes, temp_C, hour)
    this.linearisePanel(hour)
    base_C.set(temp_C)
    this.stage(hour, GAMMA * step_s)
    this.enter(hour, (1 - GAMMA) * step_s)
    const onward = (1 - GAMMA) / GAMMA
    for (let i = 0; i < nodes.count; i++) base_C[i] = temp_C[i]! + onward * (solution[i]! - temp_C[i]!)
    this.stage(hour, GAMMA * step_s)
    this.enter(hour, GAMMA * step_s)
    temp_C.set(solution)
    this.afterStep(step_s)
  }

  /** The panel's tangent at the beginning of the step, and the loop's relations if the pump runs. */
  private linearisePanel(hour: number): void {
    const plant = this.inputs.plant
    if (plant === null) return
    const { nodes, tangent, controls, temp_C } = this
    const outdoor_C = this.inputs.room.outdoor_C[hour]!
    this.tangentPlate_C = temp_C[nodes.plate]!
    panelTangent(plant.panel, hour, this.tangentPlate_C, this.water_kgm2, tangent)
    if (!controls.pumping) return
    const slope_Wm2K = tangent.slope_Wm2K * plant.fieldFactor_frac
    const exchange_WK = panelExchange_WK(plant.loop, slope_Wm2K)
    this.flow.set(plant.loop, nodes, exchange_WK, outdoor_C)
    // A running plate settles far from where it rests: the tangent is taken there, so that its bend is not missed.
    const settled_C = this.settledPlate_C()
    panelTangent(plant.panel, hour, settled_C, this.water_kgm2, tangent)
    this.tangentPlate_C = settled_C
    if (!nodes.tank) controls.pumping = this.supplyAboveDewPoint(hour)
  }

  /** Where the plate settles with the loop running, by one Newton step from where it is, °C. */
  private settledPlate_C(): number {
    const { flow, tangent, temp_C, nodes } = this
    const into_C = flow.into_C(flow.top_C(temp_C[nodes.sink]!, temp_C[nodes.plate]!))
    const surface_WK = this.shed_m2 * tangent.slope_Wm2K
    const resting_W = surface_WK * this.tangentPlate_C - this.shed_m2 * tangent.q_Wm2
    return (resting_W + flow.exchange_WK * into_C) / (surface_WK + flow.exchange_WK)
  }

  /** Pipes in slab or ceiling carry nothing colder than the indoor dew point + margin. */
  private supplyAboveDewPoint(hour: number): boolean {
    const { flow, nodes, temp_C } = this
    const top_C = flow.top_C(temp_C[nodes.sink]!, this.tangentPlate_C)
    const lowest_C = this.inputs.room.indoorDewPoint_C[hour]! + this.inputs.plant!.store.dewMargin_K
    return flow.back_C(top_C, this.tangentPlate_C) >= lowest_C
  }

  /** Solves one implicit stage for the temperatures `system.solution`, given `base_C`. */
  private stage(hour: number, stage_s: number): void {
    const plant = this.inputs.plant
    for (let attempt = 0; attempt < LAW_TRIES; attempt++) {
      this.assemble(hour, stage_s)
      this.system.factor()
      this.system.solve(this.right)
      if (plant === null || !this.nodes.tank) return
      const next = this.controls.delivering ? this.lawAtSolution(hour) : CLOSED
      if (next === this.law) return
      this.law = next
    }
    this.assemble(hour, stage_s)
    this.system.factor()
    this.system.solve(this.right)
  }

  private lawAtSolution(hour: number): number {
    const { nodes } = this
    const { room, plant } = this.inputs
    const x = this.system.solution
    const lowest_C = room.indoorDewPoint_C[hour]! + plant!.store.dewMargin_K
    const open_WK = plant!.store.delivery_WK
    const demand_WK = (open_WK * RATED_DIFFERENCE_K) / plant!.plan.band_K
    return deliveryLaw(x[nodes.air]!, x[nodes.bottom]!, lowest_C, plant!.plan.setpoint_C, open_WK, demand_WK)
  }

  /** Fills the matrix (capacity over stage + conductances) and the right-hand side. */
  private assemble(hour: number, stage_s: number): void {
    const { nodes, right, drive_W, base_C } = this
    const n = nodes.count
    const matrix = this.system.matrix
    matrix.fill(0)
    drive_W.fill(0)
    this.assembleRoom(hour)
    if (this.inputs.plant !== null) {
      this.assemblePanel()
      if (nodes.tank) this.assembleTank(hour)
    }
    for (let i = 0; i < n; i++) {
      const inertia_WK = nodes.capacity_JK[i]! / stage_s
      matrix[i * n + i]! += inertia_WK
      right[i] = inertia_WK * base_C[i]! + drive_W[i]!
    }
  }

  private assembleRoom(hour: number): void {
    const { room } = this.inputs
    const { slab, fabric, air, count: n } = this.nodes
    const m = this.system.matrix
    const vent_WK = this.controls.venting ? room.nightVent_WK : 0
    m[air * n + air] = room.airFabric_WK + room.airSlab_WK + room.airLoss_WK[hour]! + vent_WK
    m[air * n + fabric] = m[fabric * n + air] = -room.airFabric_WK
    m[air * n + slab] = m[slab * n + air] = -room.airSlab_WK
    m[fabric * n + fabric] = room.airFabric_WK + room.fabricLoss_WK[hour]!
    m[slab * n + slab] = room.airSlab_WK + room.slabLoss_WK
    this.drive_W[air] = room.airDrive_W[hour]! + vent_WK * room.outdoor_C[hour]!
    this.drive_W[fabric] = room.fabricDrive_W[hour]!
    this.drive_W[slab] = room.slabDrive_W[hour]!
  }

  /** Plate, and the loop to the charged node when the pump runs. */
  private assemblePanel(): void {
    const { nodes, tangent, flow, shed_m2, drive_W } = this
    const { plate, sink, count: n } = nodes
    const m = this.system.matrix
    m[plate * n + plate]! += shed_m2 * tangent.slope_Wm2K
    drive_W[plate]! += shed_m2 * (tangent.slope_Wm2K * this.tangentPlate_C - tangent.q_Wm2)
    if (!this.controls.pumping) return
    const toPlate_WK = flow.exchange_WK * (1 - flow.pipeShare)
    const into_C = flow.into_C(flow.topConst_C)
    m[plate * n + plate]! += flow.exchange_WK - toPlate_WK * flow.topPlate
    m[plate * n + sink]! -= toPlate_WK * flow.topSink
    drive_W[plate]! += flow.exchange_WK * into_C
    if (nodes.layers > 1) return
    const gain = flow.rate_WK * (flow.backTop - 1)
    m[sink * n + sink]! -= gain * flow.topSink
    m[sink * n + plate]! -= gain * flow.topPlate + flow.rate_WK * flow.backPlate
    drive_W[sink]! += gain * flow.topConst_C + flow.rate_WK * flow.backConst_C
  }

  /** Tank losses, layers, and the delivery under its present law. */
  private assembleTank(hour: number): void {
    const { nodes, drive_W } = this
    const { top, bottom, air, count: n } = nodes
    const m = this.system.matrix
    const { room, plant } = this.inputs
    const store = plant!.store
    for (let i = top; i <= bottom; i++) {
      const loss_WK = store.layerLoss_WK[i - top]!
      m[i * n + i]! += loss_WK
      if (store.lossTo === 'room') {
        m[i * n + air]! -= loss_WK
        m[air * n + i]! -= loss_WK
        m[air * n + air]! += loss_WK
      } else drive_W[i]! += loss_WK * room.outdoor_C[hour]!
    }
    if (nodes.layers > 1) this.assembleLayers()
    drive_W[air]! += this.deliveryShare * store.deliveryPower_W
    this.assembleDelivery(hour)
  }

  private assembleDelivery(hour: number): void {
    const { nodes, drive_W, law } = this
    const { top, bottom, air, count: n } = nodes
    const m = this.system.matrix
    const { room, plant } = this.inputs
    const open_WK = plant!.store.delivery_WK
    if (law === CLOSED) return
    if (law === OPEN_TO_STORE) {
      m[air * n + air]! += open_WK
      m[air * n + bottom]! -= open_WK
      m[top * n + air]! -= open_WK
      m[top * n + bottom]! += open_WK
      return
    }
    const conductance_WK = law === THROTTLED ? (open_WK * RATED_DIFFERENCE_K) / plant!.plan.band_K : open_WK
    const from_C =
      law === OPEN_AT_DEW_LIMIT
        ? room.indoorDewPoint_C[hour]! + plant!.store.dewMargin_K
        : plant!.plan.setpoint_C
    m[air * n + air]! += conductance_WK
    drive_W[air]! += conductance_WK * from_C
    m[top * n + air]! -= conductance_WK
    drive_W[top]! -= conductance_WK * from_C
  }

  /** Flow through the layers: up with the panel's loop, down with the delivery's; conduction between neighbours. */
  private assembleLayers(): void {
    const { nodes, flow, drive_W } = this
    const { top, bottom, plate, count: n } = nodes
    const m = this.system.matrix
    const store = this.inputs.plant!.store
    const up_WK = this.controls.pumping ? flow.rate_WK : 0
    const down_WK = this.deliveryFlow_WK()
    const net_WK = up_WK - down_WK
    for (let i = top; i < bottom; i++) {
      const j = i + 1
      const mix_WK = store.betweenLayers_WK
      const fromBelow_WK = Math.max(net_WK, 0) + mix_WK
      const fromAbove_WK = Math.max(-net_WK, 0) + mix_WK
      m[i * n + j]! -= fromBelow_WK
      m[j * n + j]! += fromBelow_WK
      m[j * n + i]! -= fromAbove_WK
      m[i * n + i]! += fromAbove_WK
    }
    m[top * n + top]! += up_WK
    m[top * n + bottom]! -= down_WK
    m[bottom * n + bottom]! += down_WK
    if (up_WK === 0) return
    m[bottom * n + top]! -= up_WK * flow.backTop
    m[bottom * n + plate]! -= up_WK * flow.backPlate
    drive_W[bottom]! += up_WK * flow.backConst_C
  }

  /** Flow of the delivery through a layered tank: one transfer unit when open (ṁc = UA), in proportion when throttled. */
  private deliveryFlow_WK(): number {
    if (this.law === CLOSED) return 0
    const share = this.law === THROTTLED ? Math.max(this.deliveryShare, 0.05) : 1
    return share * this.inputs.plant!.store.delivery_WK
  }

  /** Enters one stage's flows, held for `weight_s` seconds, in the books. */
  private enter(hour: number, weight_s: number): void {
    const { nodes, books, controls } = this
    const { room, plant } = this.inputs
    const x = this.system.solution
    books.room(room, hour, x[nodes.air]!, x[nodes.fabric]!, x[nodes.slab]!, controls.venting, weight_s)
    if (plant === null) return
    const plate_C = x[nodes.plate]!
    const shed_W =
      this.shed_m2 * (this.tangent.q_Wm2 + this.tangent.slope_Wm2K * (plate_C - this.tangentPlate_C))
    let taken_W = 0
    let pipes_W = 0
    let return_C = NaN
    if (controls.pumping) {
      const top_C = this.flow.top_C(x[nodes.sink]!, plate_C)
      const into_C = this.flow.into_C(top_C)
      return_C = this.flow.return_C(into_C, plate_C)
      taken_W = this.flow.exchange_WK * (into_C - plate_C)
      pipes_W = this.flow.pipes_W(top_C, return_C)
      controls.lastDrop_K = into_C - return_C
    }
    const pump_W = controls.pumping ? plant.loop.pumpPower_W : 0
    books.loop(shed_W, taken_W, pipes_W, pump_W, return_C, weight_s)
    if (nodes.tank) this.enterTank(hour, weight_s)
  }

  private enterTank(hour: number, weight_s: number): void {
    const { nodes } = this
    const { room, plant } = this.inputs
    const store = plant!.store
    const x = this.system.solution
    const around_C = store.lossTo === 'room' ? x[nodes.air]! : room.outdoor_C[hour]!
    let gain_W = 0
    for (let i = nodes.top; i <= nodes.bottom; i++) {
      gain_W += store.layerLoss_WK[i - nodes.top]! * (around_C - x[i]!)
    }
    const delivered_W = this.delivered_W(hour)
    const fan_W = this.deliveryShare * store.deliveryPower_W
    this.books.tank(gain_W, store.lossTo === 'outside', delivered_W, fan_W, weight_s)
    const full_W = store.delivery_WK * Math.max(DIFFERENCE_FLOOR_K, x[nodes.air]! - x[nodes.bottom]!)
    this.deliveryShare = full_W > 0 ? Math.min(1, Math.max(0, delivered_W / full_W)) : 0
  }

  /** Heat from room to tank under the stage's law, W. */
  private delivered_W(hour: number): number {
    const { nodes, law } = this
    const { room, plant } = this.inputs
    const x = this.system.solution
    const open_WK = plant!.store.delivery_WK
    if (law === CLOSED) return 0
    if (law === OPEN_TO_STORE) return open_WK * (x[nodes.air]! - x[nodes.bottom]!)
    if (law === THROTTLED)
      return ((open_WK * RATED_DIFFERENCE_K) / plant!.plan.band_K) * (x[nodes.air]! - plant!.plan.setpoint_C)
    return open_WK * (x[nodes.air]! - room.indoorDewPoint_C[hour]! - plant!.store.dewMargin_K)
  }

  /** Water on the panel, and the turning-over of a tank whose upper layers have become colder than the lower. */
  private afterStep(step_s: number): void {
    const plant = this.inputs.plant
    if (plant === null) return
    this.water_kgm2 = waterAfter_kgm2(
      this.water_kgm2,
      this.tangent.water_kgm2s,
      step_s,
      this.temp_C[this.nodes.plate]!,
      plant.panel.waterLimit_kgm2,
    )
    if (this.nodes.layers > 1) this.turnOver()
  }

  private turnOver(): void {
    const { temp_C, nodes } = this
    const capacity = nodes.capacity_JK
    for (let pass = nodes.top; pass < nodes.bottom; pass++) {
      for (let i = nodes.top; i < nodes.bottom; i++) {
        if (temp_C[i]! >= temp_C[i + 1]!) continue
        const both_JK = capacity[i]! + capacity[i + 1]!
        const mean_C = (capacity[i]! * temp_C[i]! + capacity[i + 1]! * temp_C[i + 1]!) / both_JK
        temp_C[i] = mean_C
        temp_C[i + 1] = mean_C
      }
    }
  }
}

/** Keeps the delivery's share finite when store and room are at one temperature, K. */
const DIFFERENCE_FLOOR_K = 0.1
