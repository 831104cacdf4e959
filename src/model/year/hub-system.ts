import { LinearSystem } from '#model/year/linear-system.ts'
import type { Nodes } from '#model/year/nodes.ts'

/**
 * γ of the two-stage, stiffly accurate, L-stable implicit Runge–Kutta method of order 2.
 * Source: Alexander 1977, SIAM J. Numer. Anal. 14, 1006–1021 (γ = 1 − 1/√2).
 */
export const GAMMA = 1 - Math.SQRT1_2
/** The second stage begins this much farther along than the first ended. */
const ONWARD = (1 - GAMMA) / GAMMA

/**
 * Room and store as one linear system M x = r, one row a node. Fabric, slab and tank touch each other only through
 * the air, so M is a star: each mass is eliminated toward the air and found back from it,
 *
 *   x_air = (r_air − Σ c_i r_i / d_i) / (d_air − Σ c_i c_i' / d_i),   x_i = (r_i − c_i' x_air) / d_i
 *
 * with d on the diagonal, c in the air's row and c' in its column; r is drive + inertia × the temperature the stage
 * starts from. The tank is a block D in place of d, dense in its layers: D⁻¹ c' once for a matrix, D⁻¹ r for each
 * right-hand side.
 */
export class HubSystem {
  /** Diagonals of air, fabric and slab, W/K: their inertia and all that leaves them. */
  air_WK = 0
  fabric_WK = 0
  slab_WK = 0
  readonly tank: LinearSystem | null
  /** The tank in the air's row, and the air in the tank's rows, W/K. */
  readonly airTank_WK: Float64Array
  readonly tankAir_WK: Float64Array
  /** Constant drives, W. */
  airDrive_W = 0
  fabricDrive_W = 0
  slabDrive_W = 0
  readonly tankDrive_W: Float64Array
  /** Capacity over the time of one stage, W/K. */
  airInertia_WK = 0
  fabricInertia_WK = 0
  slabInertia_WK = 0
  readonly tankInertia_WK: Float64Array
  /** The answer, °C. */
  air_C = 0
  fabric_C = 0
  slab_C = 0
  readonly tank_C: Float64Array
  /** The same of the node that the loop charges. */
  sink_C = 0
  private readonly nodes: Nodes
  /** Inertia × the temperature the stage starts from, W. */
  private airCarried_W = 0
  private fabricCarried_W = 0
  private slabCarried_W = 0
  private readonly tankCarried_W: Float64Array
  /** Shares of fabric's, slab's and (with minus sign) tank's temperature that follow the air's. */
  private fabricShare = 0
  private slabShare = 0
  private readonly tankShare: Float64Array
  private perAir_K_W = 0
  private perFabric_K_W = 0
  private perSlab_K_W = 0
  /** Of a tank of one layer. */
  private perTank_K_W = 0
  private readonly sinkIsSlab: boolean
  private readonly airFabric_WK: number
  private readonly airSlab_WK: number

  constructor(nodes: Nodes, airFabric_WK: number, airSlab_WK: number) {
    const ofLayers = (): Float64Array => new Float64Array(nodes.layers)
    this.nodes = nodes
    this.airFabric_WK = airFabric_WK
    this.airSlab_WK = airSlab_WK
    this.sinkIsSlab = nodes.sink === nodes.slab
    this.tank = nodes.tank ? new LinearSystem(nodes.layers) : null
    this.airTank_WK = ofLayers()
    this.tankAir_WK = ofLayers()
    this.tankShare = ofLayers()
    this.tankDrive_W = ofLayers()
    this.tankInertia_WK = ofLayers()
    this.tankCarried_W = ofLayers()
    this.tank_C = ofLayers()
  }

  setStep(step_s: number): void {
    const { air, fabric, slab, capacity_JK, layers } = this.nodes
    const perStage_1s = 1 / (GAMMA * step_s)
    this.airInertia_WK = capacity_JK[air]! * perStage_1s
    this.fabricInertia_WK = capacity_JK[fabric]! * perStage_1s
    this.slabInertia_WK = capacity_JK[slab]! * perStage_1s
    for (let i = 0; i < layers; i++) this.tankInertia_WK[i] = capacity_JK[i]! * perStage_1s
  }

  /** The first stage starts from where the step does. */
  begin(start_C: Float64Array): void {
    const { air, fabric, slab, layers } = this.nodes
    this.airCarried_W = this.airInertia_WK * start_C[air]!
    this.fabricCarried_W = this.fabricInertia_WK * start_C[fabric]!
    this.slabCarried_W = this.slabInertia_WK * start_C[slab]!
    for (let i = 0; i < layers; i++) this.tankCarried_W[i] = this.tankInertia_WK[i]! * start_C[i]!
  }

  /** The second starts where the first has led, and farther. */
  carryOn(start_C: Float64Array): void {
    const { air, fabric, slab, layers } = this.nodes
    this.airCarried_W += this.airInertia_WK * ONWARD * (this.air_C - start_C[air]!)
    this.fabricCarried_W += this.fabricInertia_WK * ONWARD * (this.fabric_C - start_C[fabric]!)
    this.slabCarried_W += this.slabInertia_WK * ONWARD * (this.slab_C - start_C[slab]!)
    for (let i = 0; i < layers; i++) {
      this.tankCarried_W[i]! += this.tankInertia_WK[i]! * ONWARD * (this.tank_C[i]! - start_C[i]!)
    }
  }

  /** Eliminates all masses toward the air. */
  factor(): void {
    const { tank, airTank_WK, tankShare } = this
    this.perFabric_K_W = 1 / this.fabric_WK
    this.perSlab_K_W = 1 / this.slab_WK
    this.fabricShare = this.airFabric_WK * this.perFabric_K_W
    this.slabShare = this.airSlab_WK * this.perSlab_K_W
    let air_WK = this.air_WK - this.airFabric_WK * this.fabricShare - this.airSlab_WK * this.slabShare
    if (tank !== null) {
      this.followAir(tank)
      for (let i = 0; i < tankShare.length; i++) air_WK -= airTank_WK[i]! * tankShare[i]!
    }
    this.perAir_K_W = 1 / air_WK
  }

  private followAir(tank: LinearSystem): void {
    if (tank.size === 1) {
      this.perTank_K_W = 1 / tank.matrix[0]!
      this.tankShare[0] = this.tankAir_WK[0]! * this.perTank_K_W
      return
    }
    tank.factor()
    tank.solve(this.tankAir_WK, this.tankShare)
  }

  /** Solves for drives and inertia. */
  solve(): void {
    const { tank_C, airTank_WK, tankShare } = this
    const toFabric_W = this.fabricCarried_W + this.fabricDrive_W
    const toSlab_W = this.slabCarried_W + this.slabDrive_W
    let toAir_W = this.airCarried_W + this.airDrive_W
    toAir_W += this.fabricShare * toFabric_W + this.slabShare * toSlab_W
    if (this.tank !== null) this.solveTank(this.tank)
    for (let i = 0; i < tank_C.length; i++) toAir_W -= airTank_WK[i]! * tank_C[i]!
    const air_C = toAir_W * this.perAir_K_W
    this.air_C = air_C
    this.fabric_C = toFabric_W * this.perFabric_K_W + this.fabricShare * air_C
    this.slab_C = toSlab_W * this.perSlab_K_W + this.slabShare * air_C
    for (let i = 0; i < tank_C.length; i++) tank_C[i]! -= tankShare[i]! * air_C
    this.sink_C = this.tank !== null ? tank_C[0]! : this.sinkIsSlab ? this.slab_C : air_C
  }

  /** The tank's own answer, before the air's. */
  private solveTank(tank: LinearSystem): void {
    const { tank_C, tankCarried_W, tankDrive_W } = this
    if (tank.size === 1) {
      tank_C[0] = (tankCarried_W[0]! + tankDrive_W[0]!) * this.perTank_K_W
      return
    }
    for (let i = 0; i < tank.size; i++) tank_C[i] = tankCarried_W[i]! + tankDrive_W[i]!
    tank.solve(tank_C, tank_C)
  }

  /** Writes the answer as the temperatures at the step's end. */
  end(temp_C: Float64Array): void {
    const { air, fabric, slab, layers } = this.nodes
    temp_C[air] = this.air_C
    temp_C[fabric] = this.fabric_C
    temp_C[slab] = this.slab_C
    for (let i = 0; i < layers; i++) temp_C[i] = this.tank_C[i]!
  }
}
