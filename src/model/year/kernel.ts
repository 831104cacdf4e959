import { Books } from '#model/year/books.ts'
import { Controls } from '#model/year/controls.ts'
import { Delivery } from '#model/year/delivery.ts'
import { HubSystem } from '#model/year/hub-system.ts'
import type { YearInputs } from '#model/year/inputs.ts'
import { nodesOf, type Nodes } from '#model/year/nodes.ts'
import { PlateCourse } from '#model/year/plate-course.ts'
import { addLayers, turnOver } from '#model/year/tank-layers.ts'

/**
 * γ of the two-stage, stiffly accurate, L-stable implicit Runge–Kutta method of order 2.
 * Source: Alexander 1977, SIAM J. Numer. Anal. 14, 1006–1021 (γ = 1 − 1/√2).
 */
export const GAMMA = 1 - Math.SQRT1_2
/** The second stage begins this much farther along than the first ended. */
const ONWARD = (1 - GAMMA) / GAMMA
/** Laws of the delivery tried in one stage before the last is kept; the books balance whichever it is. */
const LAW_TRIES = 4
const HOUR_S = 3600

/**
 * One building with its plant, stepped through the hours. Room and store take two implicit stages of one linear
 * system (capacities, conductances, the loop's affine relations, the law of the delivery), factored once for both;
 * the plate, much faster, relaxes exactly over the step (`PlateCourse`). What flows in a step is exactly what the
 * books enter, so energy is conserved to rounding.
 */
export class YearKernel {
  readonly nodes: Nodes
  /** Temperatures of store layers, slab, fabric and air at the end of the last step, °C. */
  readonly temp_C: Float64Array
  readonly controls = new Controls()
  readonly plate: PlateCourse | null
  books = new Books()
  readonly delivery: Delivery | null

  private readonly inputs: YearInputs
  private readonly keepsBooks: boolean
  private readonly system: HubSystem
  private readonly base_C: Float64Array
  private readonly right: Float64Array
  private readonly drive_W: Float64Array
  private readonly inertia_WK: Float64Array
  private readonly loss_WK: Float64Array
  private step_s: number
  private readonly tankOutside: boolean

  /** @param keepsBooks  false: only the room's temperatures are summed (for the search) */
  constructor(inputs: YearInputs, step_s: number, keepsBooks = true) {
    const { plant, room } = inputs
    this.inputs = inputs
    this.step_s = step_s
    this.keepsBooks = keepsBooks
    this.nodes = nodesOf(inputs)
    const { count, tank } = this.nodes
    this.temp_C = new Float64Array(count)
    this.base_C = new Float64Array(count)
    this.right = new Float64Array(count)
    this.drive_W = new Float64Array(count)
    this.inertia_WK = new Float64Array(count)
    this.loss_WK = Float64Array.from(plant?.store.layerLoss_WK ?? [])
    this.system = new HubSystem(this.nodes, room.airFabric_WK, room.airSlab_WK)
    this.plate = plant === null ? null : new PlateCourse(inputs, plant, this.nodes, step_s)
    this.delivery = plant !== null && tank ? new Delivery(plant.store, plant.plan) : null
    this.tankOutside = plant?.store.lossTo === 'outside'
    this.setStep(step_s)
  }

  /** Mean plate temperature at the end of the last step, °C. */
  get plate_C(): number {
    return this.plate === null ? this.restingPlate_C : this.plate.temp_C
  }
  set plate_C(temp_C: number) {
    if (this.plate === null) this.restingPlate_C = temp_C
    else this.plate.temp_C = temp_C
  }
  private restingPlate_C = 0

  /** Water or frost on the panel, kg/m². */
  get water_kgm2(): number {
    return this.plate === null ? 0 : this.plate.water_kgm2
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
    books.clearHour()
    for (let k = Math.round(HOUR_S / this.step_s); k > 0; k--) this.step(hour)
    if (this.keepsBooks) books.closeHour(this.inputs.room, hour, HOUR_S, this.tankOutside)
  }

  /**
   * One step inside hour `hour`, with the controls held through it. When windows have just been opened or shut the
   * room's air leaps, and the step is taken in halves.
   */
  step(hour: number): void {
    const { controls } = this
    const rested = !controls.pumping
    const vented = controls.venting
    controls.decide(this.inputs, this.nodes, this.temp_C, this.plate, hour)
    if (controls.venting === vented) return this.advance(hour, rested)
    const whole_s = this.step_s
    this.setStep(whole_s / 2)
    this.advance(hour, rested)
    this.advance(hour, false)
    this.setStep(whole_s)
  }

  private setStep(step_s: number): void {
    this.step_s = step_s
    if (this.plate !== null) this.plate.step_s = step_s
    for (let i = 0; i < this.nodes.count; i++) {
      this.inertia_WK[i] = this.nodes.capacity_JK[i]! / (GAMMA * step_s)
    }
  }

  /** Room, store and plate over `step_s`. */
  private advance(hour: number, rested: boolean): void {
    const { controls, nodes, temp_C, base_C, plate, delivery, system } = this
    if (plate !== null) {
      if (controls.pumping) controls.pumping = plate.prepareRun(hour, temp_C, rested)
      delivery?.beginStep(this.inputs.room.indoorDewPoint_C[hour]!, controls.delivering)
      plate.sinkMean_C = 0
    }
    this.assemble(hour)
    for (let i = 0; i < nodes.count; i++) base_C[i] = temp_C[i]!
    this.stage(hour, 1 - GAMMA)
    for (let i = 0; i < nodes.count; i++) {
      base_C[i] = temp_C[i]! + ONWARD * (system.solution[i]! - temp_C[i]!)
    }
    this.stage(hour, GAMMA)
    if (plate !== null) {
      plate.sinkDrift_Ks = (system.solution[nodes.sink]! - temp_C[nodes.sink]!) / this.step_s
      if (controls.pumping) plate.finishRun(this.keepsBooks ? this.books : null)
      else plate.rest(hour, this.keepsBooks ? this.books : null)
    }
    for (let i = 0; i < nodes.count; i++) temp_C[i] = system.solution[i]!
    if (nodes.layers > 1) turnOver(nodes, temp_C)
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
    this.enterStage(hour, weight)
  }

  /** Fills and factors the system (capacity over stage + conductances), and the constant drives. */
  private assemble(hour: number): void {
    this.setRoom(hour)
    if (this.delivery !== null) this.setTank(hour, this.delivery)
    else if (this.controls.pumping) this.chargeMass(this.plate!)
    this.system.factor()
  }

  private setRoom(hour: number): void {
    const { system, drive_W, inertia_WK } = this
    const { room } = this.inputs
    const { slab, fabric, air } = this.nodes
    const vent_WK = this.controls.venting ? room.nightVent_WK : 0
    system.air_WK = inertia_WK[air]! + room.airFabric_WK + room.airSlab_WK + room.airLoss_WK[hour]! + vent_WK
    system.fabric_WK = inertia_WK[fabric]! + room.airFabric_WK + room.fabricLoss_WK[hour]!
    system.slab_WK = inertia_WK[slab]! + room.airSlab_WK + room.slabLoss_WK
    drive_W[air] = room.airDrive_W[hour]! + vent_WK * room.outdoor_C[hour]!
    drive_W[fabric] = room.fabricDrive_W[hour]!
    drive_W[slab] = room.slabDrive_W[hour]!
  }

  /** Loss, charging and delivery of the tank. */
  private setTank(hour: number, delivery: Delivery): void {
    const { nodes, drive_W, system, inertia_WK, loss_WK, plate } = this
    const { layers, sink } = nodes
    const m = system.tank!.matrix
    if (layers > 1) m.fill(0)
    const outdoor_C = this.inputs.room.outdoor_C[hour]!
    for (let i = 0; i < layers; i++) {
      m[i * layers + i] = inertia_WK[i]! + loss_WK[i]!
      drive_W[i] = this.tankOutside ? loss_WK[i]! * outdoor_C : 0
      system.airTank_WK[i] = system.tankAir_WK[i] = this.tankOutside ? 0 : -loss_WK[i]!
      if (!this.tankOutside) system.air_WK += loss_WK[i]!
    }
    const running = this.controls.pumping ? plate : null
    if (layers > 1) {
      addLayers(m, drive_W, nodes, this.inputs.plant!.store, running, delivery.flow_WK())
    } else if (running !== null) {
      m[sink]! += running.charging_WK
      drive_W[sink]! += running.charging_W
    }
    delivery.add(system, drive_W, nodes)
  }

  /** The loop through pipes in the slab or the room's ceiling. */
  private chargeMass(plate: PlateCourse): void {
    const { system, nodes, drive_W } = this
    if (nodes.sink === nodes.air) system.air_WK += plate.charging_WK
    else system.slab_WK += plate.charging_WK
    drive_W[nodes.sink]! += plate.charging_W
  }

  /** Enters what room, tank and delivery did in one stage of this weight. */
  private enterStage(hour: number, weight: number): void {
    const { books, nodes, delivery, plate } = this
    const x = this.system.solution
    const weight_s = weight * this.step_s
    const air_C = x[nodes.air]!
    books.air_Cs += weight_s * air_C
    books.fabric_Cs += weight_s * x[nodes.fabric]!
    books.slab_Cs += weight_s * x[nodes.slab]!
    if (plate !== null) plate.sinkMean_C += weight * x[nodes.sink]!
    const delivered_W = delivery === null ? 0 : delivery.enter(air_C, x[nodes.bottom]!)
    if (this.keepsBooks) this.enterFlows(hour, weight_s, air_C, delivered_W)
  }

  private enterFlows(hour: number, weight_s: number, air_C: number, delivered_W: number): void {
    const { books, nodes, delivery, loss_WK } = this
    const x = this.system.solution
    if (this.controls.venting) {
      books.vented_s += weight_s
      books.ventedAir_Cs += weight_s * air_C
    }
    if (delivery === null) return
    const around_C = this.tankOutside ? this.inputs.room.outdoor_C[hour]! : air_C
    for (let i = nodes.top; i <= nodes.bottom; i++)
      books.gain_J += weight_s * loss_WK[i]! * (around_C - x[i]!)
    books.fan_J += weight_s * delivery.fan_W()
    books.delivered_J += weight_s * delivered_W
  }
}
