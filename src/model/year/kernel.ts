import { Books } from '#model/year/books.ts'
import { Controls } from '#model/year/controls.ts'
import { Delivery } from '#model/year/delivery.ts'
import { GAMMA, HubSystem } from '#model/year/hub-system.ts'
import type { YearInputs } from '#model/year/inputs.ts'
import { nodesOf, type Nodes } from '#model/year/nodes.ts'
import { PlateCourse } from '#model/year/plate-course.ts'
import { addLayers, turnOver } from '#model/year/tank-layers.ts'

/** Shares of the step that its two stages count for. */
const FIRST_WEIGHT = 1 - GAMMA
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
    this.system.setStep(step_s)
  }

  /** Room, store and plate over `step_s`. */
  private advance(hour: number, rested: boolean): void {
    const { controls, nodes, temp_C, plate, delivery, system } = this
    if (plate !== null) {
      if (controls.pumping) controls.pumping = plate.prepareRun(hour, temp_C, rested)
      delivery?.beginStep(this.inputs.room.indoorDewPoint_C[hour]!, controls.delivering, temp_C[nodes.top]!)
      plate.sinkMean_C = 0
    }
    this.assemble(hour)
    system.begin(temp_C)
    this.stage(hour, FIRST_WEIGHT)
    system.carryOn(temp_C)
    this.stage(hour, GAMMA)
    if (plate !== null) {
      plate.sinkDrift_Ks = (system.sink_C - temp_C[nodes.sink]!) / this.step_s
      if (controls.pumping) plate.finishRun(this.keepsBooks ? this.books : null)
      else plate.rest(hour, this.keepsBooks ? this.books : null)
    }
    system.end(temp_C)
    if (nodes.layers > 1) turnOver(nodes, temp_C)
  }

  /** Solves one implicit stage, looking for the law of delivery that holds at its solution. */
  private stage(hour: number, weight: number): void {
    const { system, delivery } = this
    for (let attempt = 0; ; attempt++) {
      system.solve()
      if (delivery === null || attempt === LAW_TRIES || !delivery.changeLaw(system)) break
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
    const { system } = this
    const { room } = this.inputs
    const vent_WK = this.controls.venting ? room.nightVent_WK : 0
    system.air_WK =
      system.airInertia_WK + room.airFabric_WK + room.airSlab_WK + room.airLoss_WK[hour]! + vent_WK
    system.fabric_WK = system.fabricInertia_WK + room.airFabric_WK + room.fabricLoss_WK[hour]!
    system.slab_WK = system.slabInertia_WK + room.airSlab_WK + room.slabLoss_WK
    system.airDrive_W = room.airDrive_W[hour]! + vent_WK * room.outdoor_C[hour]!
    system.fabricDrive_W = room.fabricDrive_W[hour]!
    system.slabDrive_W = room.slabDrive_W[hour]!
  }

  /** Loss, charging and delivery of the tank. */
  private setTank(hour: number, delivery: Delivery): void {
    const { nodes, system, loss_WK, plate } = this
    const { layers, sink } = nodes
    const { tankInertia_WK, tankDrive_W } = system
    const m = system.tank!.matrix
    if (layers > 1) m.fill(0)
    const outdoor_C = this.inputs.room.outdoor_C[hour]!
    for (let i = 0; i < layers; i++) {
      m[i * layers + i] = tankInertia_WK[i]! + loss_WK[i]!
      tankDrive_W[i] = this.tankOutside ? loss_WK[i]! * outdoor_C : 0
      system.airTank_WK[i] = system.tankAir_WK[i] = this.tankOutside ? 0 : -loss_WK[i]!
      if (!this.tankOutside) system.air_WK += loss_WK[i]!
    }
    const running = this.controls.pumping ? plate : null
    if (layers > 1) {
      addLayers(m, tankDrive_W, nodes, this.inputs.plant!.store, running, delivery.flow_WK())
    } else if (running !== null) {
      m[sink]! += running.charging_WK
      tankDrive_W[sink]! += running.charging_W
    }
    delivery.add(system)
  }

  /** The loop through pipes in the slab or the room's ceiling. */
  private chargeMass(plate: PlateCourse): void {
    const { system, nodes } = this
    if (nodes.sink === nodes.air) {
      system.air_WK += plate.charging_WK
      system.airDrive_W += plate.charging_W
    } else {
      system.slab_WK += plate.charging_WK
      system.slabDrive_W += plate.charging_W
    }
  }

  /** Enters what room, tank and delivery did in one stage of this weight. */
  private enterStage(hour: number, weight: number): void {
    const { books, delivery, plate, system } = this
    const weight_s = weight * this.step_s
    books.air_Cs += weight_s * system.air_C
    books.fabric_Cs += weight_s * system.fabric_C
    books.slab_Cs += weight_s * system.slab_C
    if (plate !== null) plate.sinkMean_C += weight * system.sink_C
    if (delivery !== null) delivery.enter(system)
    if (this.keepsBooks) this.enterFlows(hour, weight_s)
  }

  private enterFlows(hour: number, weight_s: number): void {
    const { books, nodes, delivery, loss_WK, system } = this
    if (this.controls.venting) {
      books.vented_s += weight_s
      books.ventedAir_Cs += weight_s * system.air_C
    }
    if (delivery === null) return
    const around_C = this.tankOutside ? this.inputs.room.outdoor_C[hour]! : system.air_C
    for (let i = 0; i < nodes.layers; i++) {
      books.gain_J += weight_s * loss_WK[i]! * (around_C - system.tank_C[i]!)
    }
    books.fan_J += weight_s * delivery.fan_W()
    books.delivered_J += weight_s * delivery.delivered_W
  }
}
