interface Complex {
  readonly re: number
  readonly im: number
}

/**
 * Solves a symmetric tridiagonal system with real off-diagonals (Thomas 1949) whose diagonal may be complex.
 * @param real       real part of the diagonal
 * @param imaginary  imaginary part of the diagonal; all 0 for a real system
 * @param beside     off-diagonal between entry j and j + 1
 * @param right      right-hand side, real
 */
export function solveTridiagonal(
  real: Float64Array,
  imaginary: Float64Array,
  beside: Float64Array,
  right: Float64Array,
): { re: Float64Array; im: Float64Array } {
  const n = real.length
  const upper: Complex[] = []
  const re = new Float64Array(n)
  const im = new Float64Array(n)
  for (let j = 0; j < n; j++) {
    const under = j === 0 ? 0 : beside[j - 1]!
    const before = upper[j - 1] ?? { re: 0, im: 0 }
    const pivotRe = real[j]! - under * before.re
    const pivotIm = imaginary[j]! - under * before.im
    const size = pivotRe * pivotRe + pivotIm * pivotIm
    const over = j < n - 1 ? beside[j]! : 0
    upper.push({ re: (over * pivotRe) / size, im: (-over * pivotIm) / size })
    const topRe = right[j]! - under * (j === 0 ? 0 : re[j - 1]!)
    const topIm = -under * (j === 0 ? 0 : im[j - 1]!)
    re[j] = (topRe * pivotRe + topIm * pivotIm) / size
    im[j] = (topIm * pivotRe - topRe * pivotIm) / size
  }
  for (let j = n - 2; j >= 0; j--) {
    const { re: a, im: b } = upper[j]!
    re[j]! -= a * re[j + 1]! - b * im[j + 1]!
    im[j]! -= a * im[j + 1]! + b * re[j + 1]!
  }
  return { re, im }
}
