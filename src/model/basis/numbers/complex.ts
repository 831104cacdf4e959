/** A complex number, for periodic heat flow. */
export interface Complex {
  readonly re: number
  readonly im: number
}

export const ONE: Complex = { re: 1, im: 0 }

export function plus(a: Complex, b: Complex): Complex {
  return { re: a.re + b.re, im: a.im + b.im }
}

export function minus(a: Complex, b: Complex): Complex {
  return { re: a.re - b.re, im: a.im - b.im }
}

export function times(a: Complex, b: Complex): Complex {
  return { re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re }
}

export function over(a: Complex, b: Complex): Complex {
  const square = b.re * b.re + b.im * b.im
  return { re: (a.re * b.re + a.im * b.im) / square, im: (a.im * b.re - a.re * b.im) / square }
}

export function scaled(a: Complex, factor: number): Complex {
  return { re: a.re * factor, im: a.im * factor }
}

export function size(a: Complex): number {
  return Math.hypot(a.re, a.im)
}
