import { CholeskyDecomposition, type Matrix } from 'ml-matrix'

/** Rows that share errors and the lower factor L of their covariance, Σ = L Lᵀ. */
export interface ErrorFactor {
  readonly rows: readonly number[]
  readonly factor: Matrix
}

/**
 * Lower triangular factor of a covariance.
 * @throws RangeError when it is not positive definite (an error of zero was stated)
 */
export function choleskyFactor(covariance: Matrix): Matrix {
  const decomposition = new CholeskyDecomposition(covariance)
  if (!decomposition.isPositiveDefinite())
    throw new RangeError('reading errors: covariance must be positive definite')
  return decomposition.lowerTriangularMatrix
}

/** L⁻¹ r block by block: residuals with unit, independent errors. */
export function whitenedBy(factors: readonly ErrorFactor[], residuals: Float64Array): Float64Array {
  const out = new Float64Array(residuals.length)
  for (const { rows, factor } of factors) {
    for (let i = 0; i < rows.length; i++) {
      let left = residuals[rows[i]!]!
      for (let j = 0; j < i; j++) left -= factor.get(i, j) * out[rows[j]!]!
      out[rows[i]!] = left / factor.get(i, i)
    }
  }
  return out
}
