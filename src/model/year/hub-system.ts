import { LinearSystem } from '#model/year/linear-system.ts'
import type { Nodes } from '#model/year/nodes.ts'

/**
 * Room and store as one linear system M x = r, one row a node. Fabric, slab and tank touch each other only through
 * the air, so M is a star: each mass is eliminated toward the air and found back from it,
 *
 *   x_air = (r_air − Σ c_i r_i / d_i) / (d_air − Σ c_i c_i' / d_i),   x_i = (r_i − c_i' x_air) / d_i
 *
 * with d on the diagonal, c in the air's row and c' in its column. The tank is a block D in place of d, dense in its
 * layers: D⁻¹ c' once for a matrix, D⁻¹ r for each right-hand side.
 */
export class HubSystem {
  /** Diagonals of air, fabric and slab, W/K. */
  air_WK = 0
  fabric_WK = 0
  slab_WK = 0
  readonly tank: LinearSystem | null
  /** The tank in the air's row, and the air in the tank's rows, W/K. */
  readonly airTank_WK: Float64Array
  readonly tankAir_WK: Float64Array
  readonly solution: Float64Array
  private readonly nodes: Nodes
  /** Shares of fabric's, slab's and (with minus sign) tank's temperature that follow the air's. */
  private fabricShare = 0
  private slabShare = 0
  private readonly tankShare: Float64Array
  private perAir_K_W = 0
  private readonly airFabric_WK: number
  private readonly airSlab_WK: number

  constructor(nodes: Nodes, airFabric_WK: number, airSlab_WK: number) {
    this.nodes = nodes
    this.airFabric_WK = airFabric_WK
    this.airSlab_WK = airSlab_WK
    this.tank = nodes.tank ? new LinearSystem(nodes.layers) : null
    this.airTank_WK = new Float64Array(nodes.layers)
    this.tankAir_WK = new Float64Array(nodes.layers)
    this.tankShare = new Float64Array(nodes.layers)
    this.solution = new Float64Array(nodes.count)
  }

  /** Eliminates all masses toward the air. */
  factor(): void {
    const { tank, airTank_WK, tankShare } = this
    this.fabricShare = this.airFabric_WK / this.fabric_WK
    this.slabShare = this.airSlab_WK / this.slab_WK
    let air_WK = this.air_WK - this.airFabric_WK * this.fabricShare - this.airSlab_WK * this.slabShare
    if (tank !== null) {
      if (tank.size === 1) tankShare[0] = this.tankAir_WK[0]! / tank.matrix[0]!
      else this.followAir(tank)
      for (let i = 0; i < tankShare.length; i++) air_WK -= airTank_WK[i]! * tankShare[i]!
    }
    this.perAir_K_W = 1 / air_WK
  }

  private followAir(tank: LinearSystem): void {
    tank.factor()
    tank.solve(this.tankAir_WK, this.tankShare)
  }

  /** Solves for the right-hand side in `right`, which is left as it is; the answer is in `solution`. */
  solve(right: Float64Array): void {
    const { solution: x, tank, airTank_WK, tankShare } = this
    const { air, fabric, slab } = this.nodes
    let toAir_W = right[air]! + this.fabricShare * right[fabric]! + this.slabShare * right[slab]!
    if (tank !== null) {
      if (tank.size === 1) x[0] = right[0]! / tank.matrix[0]!
      else tank.solve(right, x)
      for (let i = 0; i < tankShare.length; i++) toAir_W -= airTank_WK[i]! * x[i]!
    }
    const air_C = toAir_W * this.perAir_K_W
    x[air] = air_C
    x[fabric] = right[fabric]! / this.fabric_WK + this.fabricShare * air_C
    x[slab] = right[slab]! / this.slab_WK + this.slabShare * air_C
    for (let i = 0; i < tankShare.length; i++) x[i]! -= tankShare[i]! * air_C
  }
}
