/** Colebrook's friction factor by fixed point: 1/√f = −2 log₁₀(r/3.7 + 2.51/(Re √f)). */
export function colebrook(reynolds: number, roughness: number): number {
  let x = 8
  for (let i = 0; i < 100; i++) x = -2 * Math.log10(roughness / 3.7 + (2.51 * x) / reynolds)
  return 1 / (x * x)
}
