/**
 * A small dense linear system M x = r, factored once and solved several times, without pivoting: the matrices of
 * the year are diagonally dominant with a positive diagonal.
 */
export class LinearSystem {
  readonly size: number
  /** Row-major coefficients; `factor` overwrites them with L and U. */
  readonly matrix: Float64Array

  constructor(size: number) {
    this.size = size
    this.matrix = new Float64Array(size * size)
  }

  /** LU factors in place (Doolittle), the reciprocal of each pivot on the diagonal. */
  factor(): void {
    const n = this.size
    const m = this.matrix
    for (let k = 0; k < n; k++) {
      const row = k * n
      const pivot = 1 / m[row + k]!
      m[row + k] = pivot
      for (let below = row + n; below < n * n; below += n) {
        const under = m[below + k]!
        if (under === 0) continue
        const factor = under * pivot
        m[below + k] = factor
        for (let j = k + 1; j < n; j++) m[below + j]! -= factor * m[row + j]!
      }
    }
  }

  /** Writes the answer for the right-hand side in `right` into `x`; further entries of both are left alone. */
  solve(right: Float64Array, x: Float64Array): void {
    const n = this.size
    const m = this.matrix
    for (let i = 0; i < n; i++) {
      const row = i * n
      let sum = right[i]!
      for (let j = 0; j < i; j++) sum -= m[row + j]! * x[j]!
      x[i] = sum
    }
    for (let i = n - 1; i >= 0; i--) {
      const row = i * n
      let sum = x[i]!
      for (let j = i + 1; j < n; j++) sum -= m[row + j]! * x[j]!
      x[i] = sum * m[row + i]!
    }
  }
}
