/**
 * Eigenvalues and orthonormal eigenvectors of a small symmetric matrix by Jacobi's rotations.
 * @param matrix row-major, n × n; left as it was
 * @returns      values, and vectors as columns (row-major n × n)
 * Source: Golub & Van Loan, Matrix Computations, ch. 8 (cyclic Jacobi); when to stop: Demmel & Veselić 1992, SIAM J. Matrix
 * Anal. Appl. 13 (from memory).
 */
export function eigenSymmetric(matrix: Float64Array): { values: Float64Array; vectors: Float64Array } {
  const n = Math.round(Math.sqrt(matrix.length))
  const a = Float64Array.from(matrix)
  const v = new Float64Array(n * n)
  for (let i = 0; i < n; i++) v[i * n + i] = 1
  for (let sweep = 0; sweep < 60; sweep++) {
    if (isDiagonal(a, n)) break
    for (let p = 0; p < n; p++) for (let q = p + 1; q < n; q++) rotate(a, v, n, p, q)
  }
  return { values: Float64Array.from({ length: n }, (_, i) => a[i * n + i]!), vectors: v }
}

/** Every entry beside the diagonal is nothing beside the two it is between: small values are then as exact as large ones. */
function isDiagonal(a: Float64Array, n: number): boolean {
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++)
      if (a[i * n + j]! ** 2 > 1e-30 * Math.abs(a[i * n + i]! * a[j * n + j]!)) return false
  return true
}

function rotate(a: Float64Array, v: Float64Array, n: number, p: number, q: number): void {
  const apq = a[p * n + q]!
  if (apq === 0) return
  const theta = (a[q * n + q]! - a[p * n + p]!) / (2 * apq)
  const t = Math.sign(theta || 1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1))
  const c = 1 / Math.sqrt(t * t + 1)
  const s = t * c
  for (let k = 0; k < n; k++) {
    const kp = a[k * n + p]!
    const kq = a[k * n + q]!
    a[k * n + p] = c * kp - s * kq
    a[k * n + q] = s * kp + c * kq
  }
  for (let k = 0; k < n; k++) {
    const pk = a[p * n + k]!
    const qk = a[q * n + k]!
    a[p * n + k] = c * pk - s * qk
    a[q * n + k] = s * pk + c * qk
    const vp = v[k * n + p]!
    const vq = v[k * n + q]!
    v[k * n + p] = c * vp - s * vq
    v[k * n + q] = s * vp + c * vq
  }
}
