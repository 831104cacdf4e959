import { endOverMean } from '#model/building/room'
import { LayerSystem } from './layer-system.ts'
import type { Nodes } from './nodes.ts'

/**
 * Room air and tank as one linear system for their means over a step, one row a node: the tank, a dense block D in its
 * layers, is eliminated toward the air,
 *
 *   x_air = (r_air − c D⁻¹ r) / (d_air − c D⁻¹ c'),   x = D⁻¹ (r − c' x_air)
 *
 * with d on the diagonal, c in the air's row and c' in its column. A layer of capacity C that gives off B T has
 * E(B h/C) C/h of inertia (`endOverMean`), and ends the step E times as far from its beginning as its mean is.
 */
export class HubSystem {
  /** Air's diagonal, W/K, and constant drive, W. */
  air_WK = 0
  airDrive_W = 0
  readonly tank: LayerSystem | null
  /** The tank in the air's row, and the air in the tank's rows, W/K. */
  readonly airTank_WK: Float64Array
  readonly tankAir_WK: Float64Array
  readonly tankDrive_W: Float64Array
  /** Means over the step, °C. */
  air_C = 0
  readonly tank_C: Float64Array
  private readonly nodes: Nodes
  private readonly carried_W: Float64Array
  private readonly end: Float64Array
  private readonly pace: Float64Array
  private readonly tankShare: Float64Array
  private perAir_K_W = 0

  constructor(nodes: Nodes) {
    const ofLayers = (): Float64Array => new Float64Array(nodes.layers)
    this.nodes = nodes
    this.tank = nodes.tank ? new LayerSystem(nodes.layers) : null
    this.airTank_WK = ofLayers()
    this.tankAir_WK = ofLayers()
    this.tankShare = ofLayers()
    this.tankDrive_W = ofLayers()
    this.carried_W = ofLayers()
    this.end = ofLayers()
    this.pace = ofLayers().fill(NaN)
    this.tank_C = ofLayers()
  }

  /** Adds the inertia of a step to what each layer gives off, and eliminates the tank toward the air. */
  factor(step_s: number, start_C: Float64Array): void {
    const { tank, airTank_WK, tankAir_WK, tankShare, nodes, carried_W, end } = this
    let air_WK = this.air_WK
    if (tank !== null) {
      const { size, own_WK } = tank
      tank.close()
      for (let i = 0; i < size; i++) {
        const capacity_JK = nodes.capacity_JK[i]!
        const pace = (own_WK[i]! * step_s) / capacity_JK
        // A tank at rest gives off as in the step before: an exponential saved.
        if (pace !== this.pace[i]) {
          this.pace[i] = pace
          end[i] = endOverMean(pace)
        }
        const inertia_WK = (end[i]! * capacity_JK) / step_s
        own_WK[i]! += inertia_WK
        carried_W[i] = inertia_WK * start_C[i]!
        tankShare[i] = tankAir_WK[i]!
      }
      tank.factor()
      tank.solve(tankShare)
      for (let i = 0; i < size; i++) air_WK -= airTank_WK[i]! * tankShare[i]!
    }
    this.perAir_K_W = 1 / air_WK
  }

  /** Solves for the means. */
  solve(): void {
    const { tank, tank_C, airTank_WK, tankShare, carried_W, tankDrive_W } = this
    let toAir_W = this.airDrive_W
    if (tank !== null) {
      for (let i = 0; i < tank_C.length; i++) tank_C[i] = carried_W[i]! + tankDrive_W[i]!
      tank.solve(tank_C)
    }
    for (let i = 0; i < tank_C.length; i++) toAir_W -= airTank_WK[i]! * tank_C[i]!
    this.air_C = toAir_W * this.perAir_K_W
    for (let i = 0; i < tank_C.length; i++) tank_C[i]! -= tankShare[i]! * this.air_C
  }

  /** Mean of the tank over the step solved, its layers being alike, °C. */
  tankMean_C(): number {
    const { tank_C } = this
    let sum = 0
    for (let i = 0; i < tank_C.length; i++) sum += tank_C[i]!
    return sum / tank_C.length
  }

  /** A layer's temperature at the end of the step solved, °C, from those at its beginning. */
  endOf_C(layer: number, begun_C: Float64Array): number {
    return begun_C[layer]! + this.end[layer]! * (this.tank_C[layer]! - begun_C[layer]!)
  }

  /** Writes the tank's temperatures at the step's end over those at its beginning. */
  finish(temp_C: Float64Array): void {
    for (let i = 0; i < this.tank_C.length; i++) temp_C[i]! += this.end[i]! * (this.tank_C[i]! - temp_C[i]!)
  }
}
