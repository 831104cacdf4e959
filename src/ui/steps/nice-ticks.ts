/** Round values from 0 to `top`, at most seven, in steps of 1, 2 or 5 times a power of ten. */
export function niceTicks(top: number): number[] {
  const rough = top / 6
  const power = 10 ** Math.floor(Math.log10(rough))
  const step = ([1, 2, 5, 10].find((times) => times * power >= rough) ?? 10) * power
  return Array.from({ length: Math.floor(top / step) + 1 }, (_, i) => i * step)
}
