/** Share of blackbody radiation between two wavelengths by numerical integration of Planck's law (Simpson, µm). */
export function planckShare(from_um: number, to_um: number, temp_K: number): number {
  const c2 = 14387.768775
  const spectral = (l: number) => l ** -5 / Math.expm1(c2 / (l * temp_K))
  const total = (Math.PI ** 4 / 15) * (temp_K / c2) ** 4
  const n = 4000
  const h = (to_um - from_um) / n
  let sum = spectral(from_um) + spectral(to_um)
  for (let i = 1; i < n; i++) sum += spectral(from_um + i * h) * (i % 2 === 1 ? 4 : 2)
  return (sum * h) / 3 / total
}
