import type { PanelTangent } from '#model/panel/hours.ts'
import { panelTangent } from '#model/panel/tangent.ts'
import { waterAfter_kgm2 } from '#model/panel/water.ts'
import { Books } from '#model/year/books.ts'
import { Controls } from '#model/year/controls.ts'
import { Delivery } from '#model/year/delivery.ts'
import type { YearInputs } from '#model/year/inputs.ts'
import { LinearSystem } from '#model/year/linear-system.ts'
import { LoopFlow } from '#model/year/loop-flow.ts'
import { nodesOf, type Nodes } from '#model/year/nodes.ts'
import { PlateStep } from '#model/year/plate-step.ts'
import { addLayers, turnOver } from '#model/year/tank-layers.ts'

/**
 * γ of the two-stage, stiffly accurate, L-stable implicit Runge–Kutta method of order 2.
 * Source: Alexander 1977, SIAM J. Numer. Anal. 14, 1006–1021 (γ = 1 − 1/√2).
 */
export const GAMMA = 1 - Math.SQRT1_2
/** Laws of the delivery tried in one stage before the last is kept; the books balance whichever it is. */
const LAW_TRIES = 4
/** Parts of a step that a wet resting plate is stepped in. */
const WET_PARTS = 4

/**
 * One building with its plant, stepped through the hours. Room and store take two implicit stages of one linear
 * system (capacities, conductances, the loop's affine relations, the law of the delivery); the plate, much faster,
 * relaxes exactly over the step (`PlateStep`). What flows in a step is exactly what the books enter, so energy is
 * conserved to rounding.
 */
export class YearKernel {
  readonly nodes: Nodes
  /** Temperatures of store layers, slab, fabric and air at the end of the last step, °C. */
  readonly temp_C: Float64Array
  /** Mean plate temperature at the end of the last step, °C. */
  plate_C = 0
  /** Water or frost on the panel, kg/m². */
  water_kgm2 = 0
  readonly controls = new Controls()
  books = new Books()
  readonly delivery: Delivery | null

  private readonly inputs: YearInputs
  private readonly system: LinearSystem
  private readonly flow: LoopFlow | null
  private readonly plateStep = new PlateStep()
  private readonly tangent: PanelTangent = { q_Wm2: 0.5, slope_Wm2K: 0.5, water_kgm2s: 0.5 }
  private readonly base_C: Float64Array
  private readonly right: Float64Array
  private readonly drive_W: Float64Array
  private readonly inertia_WK: Float64Array
  private readonly shed_m2: number
  private readonly step_s: number
  private readonly tankOutside: boolean
  /** Mean of the charged node over the step, °C. */
  private sinkMean_C = 0
  /** Its change in the last step, K/s. */
  private sinkDrift_Ks = 0

  constructor(inputs: YearInputs, step_s: number) {
    this.inputs = inputs
    this.step_s = step_s
    this.nodes = nodesOf(inputs)
    const { count, capacity_JK, sinkShare, tank } = this.nodes
    this.temp_C = new Float64Array(count)
    this.base_C = new Float64Array(count)
    this.right = new Float64Array(count)
    this.drive_W = new Float64Array(count)
    this.inertia_WK = capacity_JK.map((capacity) => capacity / (GAMMA * step_s))
    this.system = new LinearSystem(count)
    const plant = inputs.plant
    this.flow = plant === null ? null : new LoopFlow(plant.loop, sinkShare)
    this.delivery = plant !== null && tank ? new Delivery(plant.store, plant.plan) : null
    this.shed_m2 = plant === null ? 0 : plant.loop.area_m2 * plant.fieldFactor_frac
    this.tankOutside = plant?.store.lossTo === 'outside'
  }

  /** Energy in all nodes above 0 °C, J. */
  stored_J(): number {
    let sum = this.nodes.plateCapacity_JK * this.plate_C
    for (let i = 0; i < this.nodes.count; i++) sum += this.nodes.capacity_JK[i]! * this.temp_C[i]!
    return sum
  }

  /** All steps of one hour, entered in the books. */
  hour(hour: number): void {
    const { books } = this
    const hour_s = 3600
    books.clearHour()
    for (let k = Math.round(hour_s / this.step_s); k > 0; k--) this.step(hour)
    books.closeHour(this.inputs.room, hour, hour_s, this.tankOutside)
  }

  /** One step inside hour `hour`. */
  step(hour: number): void {
    const { controls, nodes, temp_C, base_C, system } = this
    const rested = !controls.pumping
    controls.decide(this.inputs, nodes, temp_C, this.plate_C, hour)
    if (this.flow !== null && controls.pumping) this.preparePlate(hour, this.flow, rested)
    this.delivery?.beginStep(this.inputs.room.indoorDewPoint_C[hour]!, controls.delivering)
    this.sinkMean_C = 0
    this.assemble(hour)
    base_C.set(temp_C)
    this.stage(hour, 1 - GAMMA)
    const onward = (1 - GAMMA) / GAMMA
    for (let i = 0; i < nodes.count; i++) {
      base_C[i] = temp_C[i]! + onward * (system.solution[i]! - temp_C[i]!)
    }
    this.stage(hour, GAMMA)
    this.sinkDrift_Ks = (system.solution[nodes.sink]! - temp_C[nodes.sink]!) / this.step_s
    temp_C.set(system.solution)
    if (this.flow !== null) {
      if (controls.pumping) this.closeLoop(this.flow)
      else this.restPlate(hour)
    }
    if (nodes.layers > 1) turnOver(nodes, temp_C)
  }

  /** The running plate: the loop's relations, and the tangent about its mean temperature and water in this step. */
  private preparePlate(hour: number, flow: LoopFlow, started: boolean): void {
    const { plateStep, controls, nodes, step_s } = this
    const sink_C = this.temp_C[nodes.sink]!
    this.takeTangent(hour, this.plate_C, this.water_kgm2)
    const slope_Wm2K = this.tangent.slope_Wm2K * this.inputs.plant!.fieldFactor_frac
    flow.set(slope_Wm2K, this.inputs.room.outdoor_C[hour]!)
    plateStep.setLoop(flow)
    this.preparePlateStep(step_s)
    if (!nodes.tank && !this.supplyAboveDewPoint(hour, flow)) {
      controls.pumping = false
      return
    }
    if (started) this.sinkDrift_Ks += this.chargingDrift_Ks(flow, sink_C)
    this.refineTangent(hour, sink_C + 0.5 * step_s * this.sinkDrift_Ks, step_s)
  }

  /** Takes the tangent again about the mean that was just found; twice where dew or drying change fast. */
  private refineTangent(hour: number, sink_C: number, step_s: number): void {
    const passes = this.water_kgm2 > 0 || this.tangent.water_kgm2s > 0 ? 2 : 1
    for (let pass = 0; pass < passes; pass++) {
      this.takeTangent(hour, this.plateStep.mean_C(sink_C), this.waterAfter(0.5 * step_s))
      this.preparePlateStep(step_s)
    }
  }

  /**
   * The resting plate is alone with sky and air, so it is stepped by itself; while it is wet in finer steps, since
   * it dries off within minutes.
   */
  private restPlate(hour: number): void {
    const { plateStep, books } = this
    const parts = this.water_kgm2 > 0 ? WET_PARTS : 1
    const part_s = this.step_s / parts
    plateStep.setLoop(null)
    for (let k = 0; k < parts; k++) {
      this.takeTangent(hour, this.plate_C, this.water_kgm2)
      this.preparePlateStep(part_s)
      this.refineTangent(hour, 0, part_s)
      books.shed_J += part_s * (plateStep.shed_WK * plateStep.mean_C(0) - plateStep.rest_W)
      this.water_kgm2 = this.waterAfter(part_s)
      this.plate_C = plateStep.end_C(0)
    }
  }

  /** How fast the loop alone changes a tank's top at the start of a run, K/s. */
  private chargingDrift_Ks(flow: LoopFlow, sink_C: number): number {
    if (!this.nodes.tank) return 0
    const back_C = flow.back_C(sink_C, this.plateStep.mean_C(sink_C))
    return (flow.rate_WK * (back_C - sink_C)) / this.nodes.capacity_JK[this.nodes.sink]!
  }

  private preparePlateStep(step_s: number): void {
    this.plateStep.prepare(this.plate_C, this.nodes.plateCapacity_JK, step_s, this.sinkDrift_Ks)
  }

  private takeTangent(hour: number, at_C: number, water_kgm2: number): void {
    const { tangent, shed_m2 } = this
    panelTangent(this.inputs.plant!.panel, hour, at_C, water_kgm2, tangent)
    this.plateStep.setTangent(shed_m2 * tangent.q_Wm2, shed_m2 * tangent.slope_Wm2K, at_C)
  }

  /** Pipes in slab or ceiling carry nothing colder than the indoor dew point + margin. */
  private supplyAboveDewPoint(hour: number, flow: LoopFlow): boolean {
    const sink_C = this.temp_C[this.nodes.sink]!
    const plate_C = this.plateStep.mean_C(sink_C)
    const lowest_C = this.inputs.room.indoorDewPoint_C[hour]! + this.inputs.plant!.store.dewMargin_K
    return flow.back_C(flow.top_C(sink_C, plate_C), plate_C) >= lowest_C
  }

  /** Solves one implicit stage from `base_C`, looking for the law of delivery that holds at its solution. */
  private stage(hour: number, weight: number): void {
    const { system, nodes, right, base_C, drive_W, inertia_WK, delivery } = this
    for (let attempt = 0; ; attempt++) {
      for (let i = 0; i < nodes.count; i++) right[i] = inertia_WK[i]! * base_C[i]! + drive_W[i]!
      system.solve(right)
      if (delivery === null || attempt === LAW_TRIES) break
      if (!delivery.changeLaw(system.solution[nodes.air]!, system.solution[nodes.bottom]!)) break
      this.assemble(hour)
    }
    this.enterStage(hour, weight * this.step_s)
  }

  /** Fills and factors the matrix (capacity over stage + conductances), and the constant drives. */
  private assemble(hour: number): void {
    const { nodes, drive_W, inertia_WK, system, delivery } = this
    const n = nodes.count
    system.matrix.fill(0)
    drive_W.fill(0)
    for (let i = 0; i < n; i++) system.matrix[i * n + i] = inertia_WK[i]!
    this.addRoom(hour)
    if (this.flow !== null && this.controls.pumping && nodes.layers <= 1) this.addCharging(this.flow)
    if (delivery !== null) {
      this.addTankLoss(hour)
      if (nodes.layers > 1) {
        const flow = this.controls.pumping ? this.flow : null
        addLayers(
          system.matrix,
          drive_W,
          nodes,
          this.inputs.plant!.store,
          flow,
          this.plateStep,
          delivery.flow_WK(),
        )
      }
      delivery.add(system.matrix, drive_W, nodes)
    }
    system.factor()
  }

  private addRoom(hour: number): void {
    const { room } = this.inputs
    const { slab, fabric, air, count: n } = this.nodes
    const m = this.system.matrix
    const vent_WK = this.controls.venting ? room.nightVent_WK : 0
    m[air * n + air]! += room.airFabric_WK + room.airSlab_WK + room.airLoss_WK[hour]! + vent_WK
    m[air * n + fabric] = m[fabric * n + air] = -room.airFabric_WK
    m[air * n + slab] = m[slab * n + air] = -room.airSlab_WK
    m[fabric * n + fabric]! += room.airFabric_WK + room.fabricLoss_WK[hour]!
    m[slab * n + slab]! += room.airSlab_WK + room.slabLoss_WK
    this.drive_W[air] = room.airDrive_W[hour]! + vent_WK * room.outdoor_C[hour]!
    this.drive_W[fabric] = room.fabricDrive_W[hour]!
    this.drive_W[slab] = room.slabDrive_W[hour]!
  }

  /** The running loop into a mixed tank, slab or room air: ṁc (T_back − T_top), with the plate's mean put in. */
  private addCharging(flow: LoopFlow): void {
    const { sink, count: n } = this.nodes
    const fromTop = flow.rate_WK * (flow.backTop - 1)
    const fromPlate = fromTop * flow.topPlate + flow.rate_WK * flow.backPlate
    const constant_W = fromTop * flow.topConst_C + flow.rate_WK * flow.backConst_C
    this.system.matrix[sink * n + sink]! -= fromTop * flow.topSink + fromPlate * this.plateStep.meanSlope
    this.drive_W[sink]! += constant_W + fromPlate * this.plateStep.meanOffset_C
  }

  private addTankLoss(hour: number): void {
    const { nodes, drive_W } = this
    const { top, bottom, air, count: n } = nodes
    const m = this.system.matrix
    const loss = this.inputs.plant!.store.layerLoss_WK
    for (let i = top; i <= bottom; i++) {
      const loss_WK = loss[i]!
      m[i * n + i]! += loss_WK
      if (this.tankOutside) drive_W[i]! += loss_WK * this.inputs.room.outdoor_C[hour]!
      else {
        m[i * n + air]! -= loss_WK
        m[air * n + i]! -= loss_WK
        m[air * n + air]! += loss_WK
      }
    }
  }

  /** Enters what room, tank and delivery did in one stage of weight `weight_s`. */
  private enterStage(hour: number, weight_s: number): void {
    const { books, nodes, delivery } = this
    const x = this.system.solution
    const air_C = x[nodes.air]!
    books.air_Cs += weight_s * air_C
    books.fabric_Cs += weight_s * x[nodes.fabric]!
    books.slab_Cs += weight_s * x[nodes.slab]!
    if (this.controls.venting) {
      books.vented_s += weight_s
      books.ventedAir_Cs += weight_s * air_C
    }
    this.sinkMean_C += (weight_s / this.step_s) * x[nodes.sink]!
    if (delivery === null) return
    const around_C = this.tankOutside ? this.inputs.room.outdoor_C[hour]! : air_C
    const loss = this.inputs.plant!.store.layerLoss_WK
    for (let i = nodes.top; i <= nodes.bottom; i++) books.gain_J += weight_s * loss[i]! * (around_C - x[i]!)
    books.fan_J += weight_s * delivery.fan_W()
    books.delivered_J += weight_s * delivery.enter(air_C, x[nodes.bottom]!)
  }

  /** Loop, running plate and water at the step's end, for the mean temperature the charged node has had. */
  private closeLoop(flow: LoopFlow): void {
    const { books, plateStep, step_s, sinkMean_C } = this
    const plate_C = plateStep.mean_C(sinkMean_C)
    const top_C = flow.top_C(sinkMean_C, plate_C)
    const into_C = flow.into_C(top_C)
    const return_C = flow.return_C(into_C, plate_C)
    books.shed_J += step_s * (plateStep.shed_WK * plate_C - plateStep.rest_W)
    books.taken_J += step_s * flow.exchange_WK * (into_C - plate_C)
    books.pipes_J += step_s * flow.pipes_W(top_C, return_C)
    books.pump_J += step_s * flow.pump_W
    books.return_Cs += step_s * return_C
    books.run_s += step_s
    this.controls.lastDrop_K = into_C - return_C
    this.water_kgm2 = this.waterAfter(step_s)
    this.plate_C = plateStep.end_C(sinkMean_C)
  }

  /** Water after some seconds at the tangent's rate, kg/m². */
  private waterAfter(seconds_s: number): number {
    const limit_kgm2 = this.inputs.plant!.panel.waterLimit_kgm2
    return waterAfter_kgm2(this.water_kgm2, this.tangent.water_kgm2s, seconds_s, this.plate_C, limit_kgm2)
  }
}
