/** Two-sided 95 % point of the normal distribution. */
const Z = 1.959964

/**
 * Half-width of a two-sided 95 % interval in standard errors for ν degrees of freedom (Student's t, 0.975).
 *   t ≈ z + g₁/ν + g₂/ν² + g₃/ν³ + g₄/ν⁴
 * Good to 0.002 from ν = 5 on; `freedom` may be fractional.
 * @throws RangeError below 5
 * Source: Abramowitz & Stegun 1964, Handbook of Mathematical Functions, eq. 26.7.5.
 */
export function studentHalfWidth(freedom: number): number {
  if (!(freedom >= 5)) throw new RangeError(`degrees of freedom must be 5 or more, got ${freedom}`)
  const z2 = Z * Z
  const g1 = (Z * (z2 + 1)) / 4
  const g2 = (Z * ((5 * z2 + 16) * z2 + 3)) / 96
  const g3 = (Z * (((3 * z2 + 19) * z2 + 17) * z2 - 15)) / 384
  const g4 = (Z * ((((79 * z2 + 776) * z2 + 1482) * z2 - 1920) * z2 - 945)) / 92160
  return Z + g1 / freedom + g2 / freedom ** 2 + g3 / freedom ** 3 + g4 / freedom ** 4
}
