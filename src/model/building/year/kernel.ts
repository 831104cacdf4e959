import { HOUR_S } from '#model/basis/hours'
import { Books } from './books.ts'
import { Controls } from './controls.ts'
import { Delivery } from './delivery.ts'
import { HubSystem } from './hub-system.ts'
import type { YearInputs } from './inputs.ts'
import { NightWindows } from './night-windows.ts'
import { nodesOf, type Nodes } from './nodes.ts'
import { PlateCourse } from './plate-course.ts'
import { enterRoom, enterTank } from './room-flows.ts'
import { PumpDuty, shareUsed } from './pump-duty.ts'
import { RoomStep } from './room-step.ts'
import { addLayers, setTank, turnOver } from './tank-layers.ts'

/** Laws of the delivery tried in one step before the last is kept; the energy balance closes whichever it is. */
const LAW_TRIES = 4

/**
 * One building with its plant, stepped through the hours. Room and tank are solved for their means over the step, exactly
 * for what holds over it; the plate, much faster, relaxes over the step (`PlateCourse`). What flows in a step is exactly
 * what the ledger enters, so energy is conserved to rounding.
 */
export class YearKernel {
  readonly nodes: Nodes
  /** Temperatures of store layers, pipes or ceiling, and air at the end of the last step, °C. */
  readonly temp_C: Float64Array
  readonly controls = new Controls()
  readonly plate: PlateCourse | null
  books = new Books()
  readonly delivery: Delivery | null

  private readonly inputs: YearInputs
  readonly keepsBooks: boolean
  readonly room: RoomStep
  readonly windows: NightWindows
  private readonly system: HubSystem
  private readonly duty: PumpDuty
  private readonly seen = { sinkEnd_C: 0, drop_K: 0, gain_K: 0 }
  private hourNow = 0
  private fromLoop_W = 0
  private readonly loss_WK: Float64Array
  readonly step_s: number
  private readonly tankOutside: boolean

  /** @param keepsBooks  false: only the room's temperatures are summed (for the search) */
  constructor(inputs: YearInputs, step_s: number, keepsBooks = true) {
    const { plant } = inputs
    this.inputs = inputs
    this.step_s = step_s
    this.keepsBooks = keepsBooks
    this.nodes = nodesOf(inputs)
    this.temp_C = new Float64Array(this.nodes.count)
    this.loss_WK = Float64Array.from(plant?.store.layerLoss_WK ?? [])
    this.system = new HubSystem(this.nodes)
    this.room = new RoomStep(inputs.room, step_s, plant?.store.port)
    this.windows = new NightWindows(inputs.room, inputs.nightVentStop_C, this.room)
    this.plate = plant === null ? null : new PlateCourse(inputs, plant, this.nodes, step_s)
    this.delivery =
      plant !== null && this.nodes.tank ? new Delivery(plant.store, plant.plan, this.room.port) : null
    this.duty = new PumpDuty(plant?.plan ?? null, this.nodes.layers)
    this.tankOutside = plant?.store.lossTo === 'outside'
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

  /** The layer of the tank that the loop came back to in the last step, from the top. */
  get entered(): number {
    return this.system.tank?.entry ?? 0
  }

  /** Water or frost on the panel, kg/m². */
  get water_kgm2(): number {
    return this.plate === null ? 0 : this.plate.water_kgm2
  }

  stored_J(): number {
    const { nodes, temp_C } = this
    let sum = nodes.plateCapacity_JK * this.plate_C + this.room.stored_J()
    for (let i = 0; i < nodes.layers; i++) sum += nodes.capacity_JK[i]! * temp_C[i]!
    return sum
  }

  /** Puts air and masses of the room, °C and as `RoomStep` has them, and the tank at the air's temperature. */
  setRoom(air_C: number, masses: ArrayLike<number>): void {
    this.room.begin(air_C, masses)
    this.temp_C.fill(air_C)
    this.noteRoom()
  }

  /** All steps of one hour, entered in the ledger. */
  hour(hour: number): void {
    this.books.clearHour()
    for (let k = Math.round(HOUR_S / this.step_s); k > 0; k--) this.step(hour)
    if (this.keepsBooks) this.books.closeHour(this.tankOutside)
  }

  /** One step inside hour `hour`, with the controls held through it. */
  step(hour: number): void {
    const { controls, nodes, temp_C, plate, duty } = this
    controls.decide(this.inputs, nodes, temp_C, plate, hour)
    this.hourNow = hour
    this.books.vented_s += this.step_s * this.windows.prepare(hour)
    if (plate === null) this.solveStep(hour, null)
    else if (controls.mayPump) {
      duty.begin(plate, hour)
      duty.share = shareUsed(this.slackAt, duty.before)
    } else {
      duty.share = 0
      plate.prepareRest(hour)
      this.solveStep(hour, null)
    }
    controls.pumpShare = duty.share
    duty.before = duty.share
    this.finish(hour, controls.pumping ? plate : null)
  }

  /** Solves the step for a share of the pump: what is left over the controller's limits, K. */
  private readonly slackAt = (share: number): number => {
    const { nodes, temp_C, duty, system, seen, hourNow } = this
    const plate = this.plate!
    if (share > 0) plate.prepareRun(hourNow, temp_C, share, duty.before)
    else plate.prepareRest(hourNow)
    this.solveStep(hourNow, share > 0 ? plate : null)
    const sink_C = this.sinkMean_C()
    seen.sinkEnd_C = nodes.tank ? system.endOf_C(nodes.sink, temp_C) : sink_C
    if (share === 0) {
      const start_K = duty.startSlack_K(seen.sinkEnd_C, 0)
      if (start_K < 0) return start_K
      plate.askLoop(hourNow)
    }
    seen.drop_K = plate.drop_K(sink_C)
    seen.gain_K = plate.gain_K(sink_C)
    return duty.slack_K(seen, system.air_C, share)
  }

  /** Mean of what the loop charges over the step solved last, °C. */
  private sinkMean_C(): number {
    const { nodes, system, room } = this
    return nodes.tank ? system.tank_C[nodes.sink]! : room.port.at_C(system.air_C, this.fromLoop_W)
  }

  /** Room, delivery and tank of one step, solved for their means. */
  private solveStep(hour: number, running: PlateCourse | null): void {
    const { nodes, delivery, system, temp_C, inputs } = this
    if (delivery !== null) {
      const dew_C = inputs.room.indoorDewPoint_C[hour]!
      delivery.beginStep(dew_C, this.controls.delivering, temp_C[nodes.top]!)
      if (delivery.coil !== null && this.controls.delivering) this.beginCoil(hour, delivery)
    }
    for (let attempt = 0; ; attempt++) {
      this.solveOnce(hour, running)
      if (delivery === null || !delivery.changeLaw(system)) break
      if (attempt < LAW_TRIES && !delivery.mustSettle) continue
      return delivery.settle(system, () => this.solveOnce(hour, running))
    }
    this.fromLoop_W = this.charged_W(running)
    // Air and layers follow their pipes within the step: they are looked at again at its mean.
    if (running !== null && !nodes.tank && running.mustMix(this.sinkMean_C())) {
      this.solveOnce(hour, running)
      this.fromLoop_W = this.charged_W(running)
    }
  }

  private beginCoil(hour: number, delivery: Delivery): void {
    const { temp_C, nodes } = this
    const { room } = this.inputs
    const air_C = temp_C[nodes.air]!
    // Air holds no more than it is saturated with; the rest is on the walls before it is on the coil.
    const dew_C = Math.min(room.indoorDewPoint_C[hour]!, air_C)
    delivery.beginCoil(air_C, temp_C[nodes.bottom]!, dew_C, room.ventilation_WK[hour]!, room.pressure_Pa)
  }

  private charged_W(running: PlateCourse | null): number {
    return running === null || this.nodes.tank ? 0 : this.room.port.heat_W(running, this.system.air_C)
  }

  /** Solves with the layer that the loop comes back to being the one it belongs to, from the bottom up. */
  private solveOnce(hour: number, running: PlateCourse | null): void {
    const { tank, tank_C } = this.system
    if (tank !== null) tank.entry = this.nodes.bottom
    for (;;) {
      this.solveMeans(hour, running)
      if (running === null || tank === null || tank.entry === 0) return
      if (running.back_C(tank_C[0]!) <= tank_C[tank.entry]!) return
      tank.entry--
    }
  }

  private solveMeans(hour: number, running: PlateCourse | null): void {
    const { system, room, delivery, nodes, inputs } = this
    system.air_WK = room.air_WK
    system.airDrive_W = room.airDrive_W
    if (delivery !== null) {
      setTank(system, nodes, inputs, hour, running)
      delivery.add(system)
      if (nodes.layers > 1) addLayers(system, nodes, inputs.plant!.store, running, delivery.flow_WK())
    } else if (running !== null) {
      const { port } = room
      const seen = port.share / (1 + port.own_KW * running.charging_WK)
      system.air_WK += seen * running.charging_WK * port.share
      system.airDrive_W += seen * (running.charging_W - running.charging_WK * port.base_C)
    }
    system.factor(this.step_s, this.temp_C)
    system.solve()
  }

  private finish(hour: number, running: PlateCourse | null): void {
    const { nodes, temp_C, plate, delivery, system, room, books, keepsBooks, step_s } = this
    const begun_C = temp_C[nodes.sink]!
    const sink_C = this.sinkMean_C()
    if (delivery !== null) delivery.enter(system)
    room.finish(system.air_C, this.fromLoop_W - (delivery?.delivered_W ?? 0))
    system.finish(temp_C)
    this.noteRoom()
    books.air_Cs += step_s * system.air_C
    books.radiant_Cs += step_s * room.radiantMean_C
    if (keepsBooks) this.enterFlows(hour)
    if (plate !== null) {
      plate.sinkMean_C = sink_C
      plate.sinkDrift_Ks = (temp_C[nodes.sink]! - begun_C) / step_s
      if (running !== null) plate.finishRun(keepsBooks ? books : null)
      else plate.finishRest(hour, keepsBooks ? books : null)
    }
    if (nodes.layers > 1) turnOver(nodes, temp_C)
  }

  private noteRoom(): void {
    this.temp_C[this.nodes.air] = this.room.air_C
    this.temp_C[this.nodes.port] = this.room.portNow_C()
  }

  private enterFlows(hour: number): void {
    const { books, delivery, loss_WK, system, step_s } = this
    enterRoom(books, this.inputs.room, this.room, hour, system.air_C, this.windows.vent_WK, step_s)
    if (delivery === null) return
    const around_C = this.tankOutside ? this.inputs.room.outdoor_C[hour]! : system.air_C
    enterTank(books, delivery, loss_WK, system.tank_C, around_C, step_s)
  }
}
