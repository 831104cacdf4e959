/** Coefficients of a polynomial of degree 5, constant first. */
export type Polynomial5 = Float64Array

/** Six coefficients, constant first, as a polynomial. */
export function polynomial(coefficients: readonly number[]): Polynomial5 {
  return Float64Array.from(coefficients)
}

/** Value at x. */
export function valueAt(p: Polynomial5, x: number): number {
  return p[0]! + x * (p[1]! + x * (p[2]! + x * (p[3]! + x * (p[4]! + x * p[5]!))))
}

/** Derivative at x. */
export function slopeAt(p: Polynomial5, x: number): number {
  return p[1]! + x * (2 * p[2]! + x * (3 * p[3]! + x * (4 * p[4]! + x * 5 * p[5]!)))
}

/** a·p + b·q. */
export function weightedSum(a: number, p: Polynomial5, b: number, q: Polynomial5): Polynomial5 {
  return p.map((coefficient, i) => a * coefficient + b * q[i]!)
}

/** The polynomial of degree 5 through a function's values at the six Chebyshev points of an interval. */
export function interpolatingPolynomial(f: (x: number) => number, from: number, to: number): Polynomial5 {
  const middle = 0.5 * (from + to)
  const half = 0.5 * (to - from)
  const nodes = Array.from({ length: 6 }, (_, i) => middle + half * Math.cos(((2 * i + 1) * Math.PI) / 12))
  const newton = nodes.map(f)
  for (let order = 1; order < 6; order++) {
    for (let i = 5; i >= order; i--) {
      newton[i] = (newton[i]! - newton[i - 1]!) / (nodes[i]! - nodes[i - order]!)
    }
  }
  // Newton form to powers of x, from the innermost factor outwards.
  let powers = [newton[5]!]
  for (let i = 4; i >= 0; i--) {
    const shifted = [0, ...powers]
    powers = shifted.map((p, k) => p - nodes[i]! * (powers[k] ?? 0))
    powers[0]! += newton[i]!
  }
  return polynomial(powers)
}
