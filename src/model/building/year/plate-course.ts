import { Face, tangentAt, waterAfter_kgm2 } from '#model/panels/plate'
import type { Books } from './books.ts'
import type { Plant, YearInputs } from './inputs.ts'
import { LoopFlow } from './loop-flow.ts'
import { MixedSupply } from './mixed-supply.ts'
import type { Nodes } from './nodes.ts'
import { copyPoint, newPoint } from './plate-point.ts'
import { dryingParts, PlateStep } from './plate-step.ts'

/** The plate, its water and the loop through a step: running between store and sky, or resting alone under the sky. */
export class PlateCourse {
  /** Plate temperature at the end of the last step, °C. */
  temp_C = 0
  /** Water or frost on the panel, kg/m². */
  water_kgm2 = 0
  /** Mean of the charged node over the step, °C, and its change in the last step, K/s. */
  sinkMean_C = 0
  sinkDrift_Ks = 0
  /** Share of the step that the loop runs, 0…1. */
  share = 0
  /** Heat of the running loop into a mixed tank, slab or room air: charging_W − charging_WK · T_sink, times the share. */
  charging_W = 0
  charging_WK = 0
  readonly flow: LoopFlow
  readonly relaxation: PlateStep
  /** Return water is blended in, so that pipes in slab or ceiling are not supplied colder than they may be. */
  mixing = false
  private lowest_C = -Infinity
  private readonly mixed: MixedSupply
  private readonly face = new Face()
  private readonly point = newPoint()
  /** At the step's beginning: the same for every share that is tried. */
  private readonly begun = newPoint()
  private hasBegun = false
  private readonly inputs: YearInputs
  private readonly plant: Plant
  private readonly nodes: Nodes
  step_s: number
  /** Hour in which the plate last rested, so that its tangent is this hour's. */
  private restHour = -1

  constructor(inputs: YearInputs, plant: Plant, nodes: Nodes, step_s: number) {
    this.inputs = inputs
    this.plant = plant
    this.nodes = nodes
    this.step_s = step_s
    this.flow = new LoopFlow(plant.loop, nodes.sinkShare)
    this.mixed = new MixedSupply(this.flow)
    this.relaxation = new PlateStep(nodes.plateCapacity_JK, plant.loop.area_m2 * plant.fieldFactor_frac)
  }

  /**
   * The running plate: the loop's relations, and the tangent about its mean temperature and water in this step.
   * @param temp_C  temperatures at the step's beginning
   * @param share   of the step that the pump runs, > 0
   * @param before  the same of the step before
   */
  prepareRun(hour: number, temp_C: Float64Array, share: number, before: number): void {
    const { flow, nodes, relaxation } = this
    const sink_C = temp_C[nodes.sink]!
    this.restHour = -1
    this.share = share
    relaxation.step_s = this.step_s
    this.beginAtPlate(hour)
    this.setFlow(hour)
    relaxation.setLoop(flow, share)
    relaxation.prepare()
    const plate_C = relaxation.mean_C(sink_C)
    this.mixing = this.supply_C(sink_C, plate_C) < this.lowest_C
    if (this.mixing) return this.prepareMixed(sink_C, this.lowest_C)
    const begun_Ks = nodes.tank && share !== before ? this.chargingDrift_Ks(sink_C, plate_C) : 0
    relaxation.drift_Ks = this.sinkDrift_Ks + (share - before) * begun_Ks
    this.refine(sink_C + 0.5 * this.step_s * relaxation.drift_Ks)
    if (!this.mustMix(sink_C)) this.setCharging()
  }

  private setFlow(hour: number): void {
    this.flow.set(this.point.slope_Wm2K * this.plant.fieldFactor_frac, this.inputs.room.outdoor_C[hour]!)
    this.lowest_C = this.nodes.tank
      ? -Infinity
      : this.inputs.room.indoorDewPoint_C[hour]! + this.plant.store.dewMargin_K
  }

  /**
   * Blends return water in where the mass, at the mean it has in the step, would have too cold a supply.
   * @returns true when the loop is another one now
   */
  mustMix(sinkMean_C: number): boolean {
    const supply_C = this.supply_C(sinkMean_C, this.relaxation.mean_C(sinkMean_C))
    if (this.mixing || supply_C >= this.lowest_C) return false
    this.mixing = true
    this.prepareMixed(sinkMean_C, this.lowest_C)
    return true
  }

  /** Return water is blended in: the pipes are supplied at the lowest they may, and the panel takes what that leaves. */
  private prepareMixed(sink_C: number, lowest_C: number): void {
    const { mixed, relaxation, share } = this
    mixed.supply_C = lowest_C
    relaxation.setHeat(share * mixed.toPanel_WK, share * mixed.toPanel_W)
    relaxation.drift_Ks = this.sinkDrift_Ks
    relaxation.prepare()
    this.refine(sink_C)
    this.charging_W = share * mixed.charging_W
    this.charging_WK = share * mixed.charging_WK
  }

  /** ṁc (T_back − T_top), with the plate's mean put in. */
  private setCharging(): void {
    const { flow, relaxation, share } = this
    const fromTop = share * flow.rate_WK * (flow.backTop - 1)
    const fromPlate = fromTop * flow.topPlate + share * flow.rate_WK * flow.backPlate
    const constant_W = fromTop * flow.topConst_C + share * flow.rate_WK * flow.backConst_C
    this.charging_W = constant_W + fromPlate * relaxation.meanOffset_C
    this.charging_WK = -(fromTop * flow.topSink + fromPlate * relaxation.meanSlope)
  }

  /** Fluid into less out of the panel while the pump runs, K, for a mean of the charged node. */
  drop_K(sinkMean_C: number): number {
    const into_C = this.into_C(sinkMean_C)
    return into_C - this.flow.return_C(into_C, this.relaxation.mean_C(sinkMean_C))
  }

  /** The same against the mass where that is cooled: by this its pump is stopped, however fast the fluid goes round. */
  gain_K(sinkMean_C: number): number {
    const over_K = this.nodes.tank ? 0 : Math.max(0, sinkMean_C - this.into_C(sinkMean_C))
    return this.drop_K(sinkMean_C) + over_K
  }

  private into_C(sinkMean_C: number): number {
    const { flow, mixed } = this
    if (this.mixing) return flow.into_C(mixed.top_C(sinkMean_C))
    return flow.into_C(flow.top_C(sinkMean_C, this.relaxation.mean_C(sinkMean_C)))
  }

  /** What a mass gives to fluid that comes at the coldest it may, K; no end to it for a tank. */
  mixed_K(sinkMean_C: number): number {
    return this.flow.sinkShare * (sinkMean_C - this.lowest_C)
  }

  /** Loop, running plate and water at the step's end, for the mean temperature the charged node has had. */
  finishRun(books: Books | null): void {
    const { relaxation, flow, mixed, step_s, sinkMean_C } = this
    const plate_C = relaxation.mean_C(sinkMean_C)
    const run_s = step_s * this.share
    if (books !== null) {
      const top_C = this.mixing ? mixed.top_C(sinkMean_C) : flow.top_C(sinkMean_C, plate_C)
      const into_C = flow.into_C(top_C)
      const return_C = this.mixing ? mixed.supply_C : flow.return_C(into_C, plate_C)
      const taken_W = this.mixing
        ? mixed.toPanel_WK * sinkMean_C + mixed.toPanel_W
        : flow.exchange_WK * (into_C - plate_C)
      books.shed_J += step_s * (relaxation.shed_WK * plate_C - relaxation.rest_W)
      books.taken_J += run_s * taken_W
      books.pipes_J += run_s * flow.pipes_W(top_C, return_C)
      books.pump_J += run_s * flow.pump_W
      books.return_Cs += run_s * return_C
      books.run_s += run_s
    }
    this.water_kgm2 = this.waterAfter(step_s)
    this.temp_C = relaxation.end_C(sinkMean_C)
    this.hasBegun = false
  }

  /**
   * The plate at rest through the whole step. A dry plate that rested in the same hour goes on with the tangent it has.
   * @param asked  what the loop would meet if the pump ran will be asked
   */
  prepareRest(hour: number, asked: boolean): void {
    const { relaxation } = this
    this.mixing = false
    this.share = 0
    relaxation.step_s = this.step_s
    relaxation.setLoop(null, 0)
    if (hour === this.restHour && this.water_kgm2 === 0) relaxation.start_C = this.temp_C
    else this.beginAtPlate(hour)
    relaxation.prepare()
    this.refine(0)
    this.restHour = hour
    if (asked) this.setFlow(hour)
  }

  /** The prepared rest is taken: alone with sky and air, while it dries off in finer steps, since that takes minutes. */
  finishRest(hour: number, books: Books | null): void {
    const { relaxation } = this
    const parts = dryingParts(this.water_kgm2, this.begun.water_kgm2s, this.step_s)
    const part_s = this.step_s / parts
    relaxation.step_s = part_s
    for (let k = 0; k < parts; k++) {
      if (parts > 1) {
        this.hasBegun = false
        this.beginAtPlate(hour)
        relaxation.prepare()
        this.refine(0)
      }
      if (books !== null)
        books.shed_J += part_s * (relaxation.shed_WK * relaxation.mean_C(0) - relaxation.rest_W)
      this.water_kgm2 = this.waterAfter(part_s)
      this.temp_C = relaxation.end_C(0)
    }
    this.hasBegun = false
  }

  private beginAtPlate(hour: number): void {
    const { point, begun, relaxation } = this
    relaxation.start_C = this.temp_C
    relaxation.drift_Ks = this.sinkDrift_Ks
    if (!this.hasBegun) {
      begun.plate_C = this.temp_C
      begun.water_kgm2 = this.water_kgm2
      if (this.face.hour !== hour) this.face.set(this.plant.panel, hour)
      tangentAt(this.face, begun)
      this.hasBegun = true
    }
    copyPoint(begun, point)
    relaxation.setTangent(point)
  }

  /** Takes the tangent again about the mean that was just found; twice where dew or drying change fast. */
  private refine(sink_C: number): void {
    const { point, relaxation } = this
    const passes = this.water_kgm2 > 0 || point.water_kgm2s > 0 ? 2 : 1
    for (let pass = 0; pass < passes; pass++) {
      point.plate_C = relaxation.mean_C(sink_C)
      point.water_kgm2 = this.waterAfter(0.5 * relaxation.step_s)
      tangentAt(this.face, point)
      relaxation.setTangent(point)
      relaxation.prepare()
    }
  }

  /** How fast the loop alone changes a tank's top at the start of a run, K/s; by the middle of a step it is no further than the fluid that comes back. */
  private chargingDrift_Ks(sink_C: number, plate_C: number): number {
    const { flow, nodes, step_s } = this
    const renewed_1s = Math.min(flow.rate_WK / nodes.capacity_JK[nodes.sink]!, 2 / step_s)
    return renewed_1s * (flow.back_C(sink_C, plate_C) - sink_C)
  }

  /** What pipes in slab or ceiling would carry, °C. */
  private supply_C(sink_C: number, plate_C: number): number {
    return this.flow.back_C(this.flow.top_C(sink_C, plate_C), plate_C)
  }

  /** Water after some seconds at the tangent's rate, kg/m². */
  private waterAfter(seconds_s: number): number {
    const limit_kgm2 = this.plant.panel.waterLimit_kgm2
    return waterAfter_kgm2(this.water_kgm2, this.point.water_kgm2s, seconds_s, this.temp_C, limit_kgm2)
  }
}
