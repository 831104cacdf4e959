import type { Books } from './books.ts'
import type { Plant, YearInputs } from './inputs.ts'
import { LoopFlow } from './loop-flow.ts'
import { MixedSupply } from './mixed-supply.ts'
import type { Nodes } from './nodes.ts'
import { PlateAlone } from './plate-alone.ts'
import { restingCourse, type RestingCourse } from './resting-course.ts'

/** The plate, its water and the loop through a step: running between store and sky, or resting alone under the sky. */
export class PlateCourse extends PlateAlone {
  /** Mean of the charged node over the step, °C. */
  sinkMean_C = 0
  /** Share of the step that the loop runs, 0…1. */
  share = 0
  /** Heat of the running loop into a mixed tank, slab or room air: charging_W − charging_WK · T_sink, times the share. */
  charging_W = 0
  charging_WK = 0
  readonly flow: LoopFlow
  /** Return water is blended in, so that pipes in slab or ceiling are not supplied colder than they may be. */
  mixing = false
  private lowest_C = -Infinity
  private readonly mixed: MixedSupply
  private readonly inputs: YearInputs
  private readonly plant: Plant
  private readonly nodes: Nodes
  /** The plate that never runs, its step now, and whether this one is on it. */
  private rest: RestingCourse | null = null
  private restStep = 0
  private isOnRest = false

  constructor(inputs: YearInputs, plant: Plant, nodes: Nodes, step_s: number) {
    const { panel, loop, fieldFactor_frac } = plant
    super(panel, nodes.plateCapacity_JK, loop.area_m2 * fieldFactor_frac, step_s)
    this.inputs = inputs
    this.plant = plant
    this.nodes = nodes
    this.flow = new LoopFlow(loop, nodes.sinkShare)
    this.mixed = new MixedSupply(this.flow)
  }

  /**
   * Goes on from `start_C` at the beginning of hour `start`, dry. From here on the hours must follow one another: while the plate
   * is where one that never runs would be, its rest is read from that one’s course, which all designs share.
   */
  begin(start_C: number, start: number): void {
    this.temp_C = start_C
    this.water_kgm2 = 0
    this.rest = restingCourse(this.panel, this.plant.fieldFactor_frac, this.step_s, start, start_C)
    this.restStep = 0
    this.isOnRest = true
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

  /**
   * What the panel takes from the fluid while the pump runs, as a fall of temperature, K, for a mean of the charged node; of a mass,
   * however fast the fluid goes round, against that. By this the pump is stopped.
   */
  drop_K(sinkMean_C: number): number {
    const { flow, mixing, mixed, relaxation, nodes } = this
    const plate_C = relaxation.mean_C(sinkMean_C)
    const into_C = flow.into_C(mixing ? mixed.top_C(sinkMean_C) : flow.top_C(sinkMean_C, plate_C))
    const over_K = nodes.tank ? 0 : Math.max(0, sinkMean_C - into_C)
    return into_C - flow.return_C(into_C, plate_C) + over_K
  }

  /** How much colder the fluid comes back than the charged node, heat of pump and pipes in it, K; never colder than pipes in a mass may be supplied. */
  gain_K(sinkMean_C: number): number {
    const back_C = this.mixing ? this.mixed.supply_C : this.back_C(sinkMean_C)
    return sinkMean_C - Math.max(back_C, this.lowest_C)
  }

  /** What comes back, heat of pump and pipes in it, no return water being blended in, °C. */
  back_C(sinkMean_C: number): number {
    return this.supply_C(sinkMean_C, this.relaxation.mean_C(sinkMean_C))
  }

  /** Where a dry plate is in balance with no fluid in it, °C. */
  balance_C(hour: number): number {
    return this.panel.equilibrium_C[hour]!
  }

  /** The charged node at which, with the plate in balance, the panel takes just so much from the fluid, and no less than pump and pipes bring, °C. */
  paysFrom_C(hour: number, drop_K: number): number {
    const { plant, inputs, panel, flow } = this
    const slope_Wm2K = plant.fieldFactor_frac * panel.conductance_Wm2K[hour]!
    return flow.paysFrom_C(slope_Wm2K, this.balance_C(hour), inputs.room.outdoor_C[hour]!, drop_K)
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
    this.restStep++
    this.isOnRest = false
  }

  /** The plate at rest through the whole step. */
  prepareRest(hour: number): void {
    const { relaxation, rest } = this
    this.mixing = false
    this.share = 0
    if (rest !== null && this.isOnRest) {
      rest.reach(this.restStep)
      relaxation.setMean(rest.mean_C(this.restStep))
      this.point.slope_Wm2K = rest.slope_Wm2K(this.restStep)
    } else this.prepareAlone(hour)
  }

  /** What the loop would meet if it ran, for a rest that is prepared. */
  askLoop(hour: number): void {
    this.setFlow(hour)
  }

  /** The prepared rest is taken. */
  finishRest(hour: number, books: Books | null): void {
    const { rest } = this
    if (rest !== null && this.isOnRest) {
      if (books !== null) books.shed_J += this.plant.loop.area_m2 * rest.shed_Jm2(this.restStep)
      this.restStep++
      this.temp_C = rest.temp_C(this.restStep)
      this.water_kgm2 = rest.water_kgm2(this.restStep)
      this.hasBegun = false
      return
    }
    this.finishAlone(hour)
    if (books !== null) books.shed_J += this.shed_J
    this.restStep++
    if (rest !== null) this.rejoin(rest, books)
  }

  /** Takes the course of the plate that never ran where this one has come to it. */
  private rejoin(rest: RestingCourse, books: Books | null): void {
    this.isOnRest = rest.isAt(this.restStep, this.temp_C, this.water_kgm2)
    if (!this.isOnRest) return
    const resting_C = rest.temp_C(this.restStep)
    if (books !== null) books.shed_J += this.nodes.plateCapacity_JK * (this.temp_C - resting_C)
    this.temp_C = resting_C
    this.water_kgm2 = rest.water_kgm2(this.restStep)
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
}
