/** Complex numbers [re, im], enough for the periodic matrix of ISO 13786. */
export type Complex = readonly [number, number]
export type Matrix = readonly [Complex, Complex, Complex, Complex]

export const times = (a: Complex, b: Complex): Complex => [
  a[0] * b[0] - a[1] * b[1],
  a[0] * b[1] + a[1] * b[0],
]
export const plus = (a: Complex, b: Complex): Complex => [a[0] + b[0], a[1] + b[1]]
export const over = (a: Complex, b: Complex): Complex => {
  const size = b[0] * b[0] + b[1] * b[1]
  return [(a[0] * b[0] + a[1] * b[1]) / size, (a[1] * b[0] - a[0] * b[1]) / size]
}
export const abs = (a: Complex): number => Math.hypot(a[0], a[1])
export const arg = (a: Complex): number => Math.atan2(a[1], a[0])

export function product(m: Matrix, n: Matrix): Matrix {
  return [
    plus(times(m[0], n[0]), times(m[1], n[2])),
    plus(times(m[0], n[1]), times(m[1], n[3])),
    plus(times(m[2], n[0]), times(m[3], n[2])),
    plus(times(m[2], n[1]), times(m[3], n[3])),
  ]
}
