/**
 * The layers of a tank as a linear system M x = r: each meets its neighbours, and top and bottom meet by what is drawn at one
 * end and comes back at the other. Factored once and solved several times, without pivoting (its diagonal is dominant), in as
 * many operations as there are layers: below the diagonal and right of it only neighbours and the last row and column fill.
 */
export class LayerSystem {
  readonly size: number
  /** The diagonal, top layer first; `factor` overwrites it with the reciprocals of its pivots. */
  readonly own_WK: Float64Array
  /** What passes from each layer to the one above it, and to the one below it. */
  fromBelow_WK = 0
  fromAbove_WK = 0
  /** Entry of the bottom in the top's row, and of the top in the bottom's (`close`). */
  atTop_WK = 0
  atBottom_WK = 0
  /** Last column; last row and what is under the diagonal, both over the pivot of their column. */
  private readonly column: Float64Array
  private readonly row: Float64Array
  private readonly under: Float64Array

  constructor(size: number) {
    this.size = size
    this.own_WK = new Float64Array(size)
    this.column = new Float64Array(size)
    this.row = new Float64Array(size)
    this.under = new Float64Array(size)
  }

  /** Takes what both ends of a single layer meet at, which is that layer, into the diagonal: all that it gives off. */
  close(): void {
    if (this.size > 1) return
    this.own_WK[0]! += this.atTop_WK + this.atBottom_WK
    this.atTop_WK = this.atBottom_WK = 0
  }

  factor(): void {
    const { own_WK, fromBelow_WK, fromAbove_WK, column, row, under } = this
    const last = this.size - 1
    let own = own_WK[0]!
    let right = this.atTop_WK
    let left = this.atBottom_WK
    let end = own_WK[last]!
    for (let k = 0; k < last; k++) {
      // The one before the last has the last for its neighbour.
      if (k === last - 1) {
        right -= fromBelow_WK
        left -= fromAbove_WK
      }
      const pivot = 1 / own
      const share = left * pivot
      const less = fromAbove_WK * pivot
      own_WK[k] = pivot
      column[k] = right
      row[k] = share
      under[k] = less
      end -= share * right
      own = own_WK[k + 1]! - less * fromBelow_WK
      right *= less
      left = share * fromBelow_WK
    }
    own_WK[last] = 1 / end
  }

  /** Writes the answer for a right-hand side over it. */
  solve(x: Float64Array): void {
    const { own_WK, fromBelow_WK, column, row, under } = this
    const last = this.size - 1
    let end = x[last]!
    for (let k = 0; k < last; k++) {
      const at = x[k]!
      end -= row[k]! * at
      if (k < last - 1) x[k + 1]! += under[k]! * at
    }
    const ended = end * own_WK[last]!
    x[last] = ended
    let after = 0
    for (let k = last - 1; k >= 0; k--)
      x[k] = after = (x[k]! - column[k]! * ended + fromBelow_WK * after) * own_WK[k]!
  }
}
