/**
 * The layers of a tank as a linear system M x = r: each meets its neighbours, the top meets the bottom by what the delivery
 * draws there, and one layer meets the top by what the loop draws there and brings back to it. Factored once and solved several
 * times, without pivoting (its diagonal is dominant), in as many operations as there are layers: below the diagonal and right of
 * it only neighbours, that layer's row and the last column fill.
 */
export class LayerSystem {
  readonly size: number
  /** The diagonal, top layer first; `factor` overwrites it with the reciprocals of its pivots. */
  readonly own_WK: Float64Array
  /** What passes to each layer from the one below it, and from it to that one. */
  readonly fromBelow_WK: Float64Array
  readonly fromAbove_WK: Float64Array
  /** The layer that the loop comes back to. */
  entry: number
  /** Entry of the bottom in the top's row, and of the top in the row of `entry` (`close`). */
  atTop_WK = 0
  atEntry_WK = 0
  /** Last column; that row and what is under the diagonal, both over the pivot of their column. */
  private readonly column: Float64Array
  private readonly row: Float64Array
  private readonly under: Float64Array

  constructor(size: number) {
    this.size = size
    this.entry = size - 1
    this.own_WK = new Float64Array(size)
    this.fromBelow_WK = new Float64Array(size)
    this.fromAbove_WK = new Float64Array(size)
    this.column = new Float64Array(size)
    this.row = new Float64Array(size)
    this.under = new Float64Array(size)
  }

  /** Takes what a layer meets itself by, the only one or a top that the loop comes back to, into the diagonal: all that it gives off. */
  close(): void {
    if (this.size === 1) {
      this.own_WK[0]! += this.atTop_WK
      this.atTop_WK = 0
    }
    if (this.entry > 0) return
    this.own_WK[0]! += this.atEntry_WK
    this.atEntry_WK = 0
  }

  factor(): void {
    const { own_WK, fromBelow_WK, fromAbove_WK, column, row, under, entry } = this
    const last = this.size - 1
    let own = own_WK[0]!
    let right = this.atTop_WK
    let left = this.atEntry_WK
    let toEntry_WK = 0
    let end = own_WK[last]!
    for (let k = 0; k < last; k++) {
      const pivot = 1 / own
      // The one before the last has the last for its neighbour.
      if (k === last - 1) right -= fromBelow_WK[k]!
      const isAbove = k === entry - 1
      const less = ((isAbove ? left : 0) - fromAbove_WK[k]!) * pivot
      const share = isAbove ? 0 : left * pivot
      own_WK[k] = pivot
      column[k] = right
      under[k] = less
      row[k] = share
      toEntry_WK -= share * right
      right *= -less
      if (isAbove) right += toEntry_WK
      if (k === last - 1) end += right
      else own = own_WK[k + 1]! + less * fromBelow_WK[k]!
      left = share * fromBelow_WK[k]!
    }
    own_WK[last] = 1 / end
  }

  /** Writes the answer for a right-hand side over it. */
  solve(x: Float64Array): void {
    const { own_WK, fromBelow_WK, column, row, under, entry } = this
    const last = this.size - 1
    let toEntry = 0
    for (let k = 0; k < last; k++) {
      const at = x[k]!
      toEntry -= row[k]! * at
      const down = -under[k]! * at
      x[k + 1]! += k === entry - 1 ? down + toEntry : down
    }
    const ended = x[last]! * own_WK[last]!
    x[last] = ended
    let after = 0
    for (let k = last - 1; k >= 0; k--)
      x[k] = after = (x[k]! - column[k]! * ended + fromBelow_WK[k]! * after) * own_WK[k]!
  }
}
