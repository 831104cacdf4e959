import { decay } from '#model/basis/numbers'

/** Below this exponent the series is used: the quotient of small differences loses digits. */
const SMALL = 1e-3

/**
 * How far a capacity has come at the end of a step over how far its mean has: T_end − T_0 = E (T_mean − T_0), for a
 * capacity C tied by H to what holds over the step, x = H h/C. E C/h is then the conductance between the mean and the
 * temperature the step began with: 2 for a slow capacity, 1 for one that follows at once.
 *   E = x (1 − e^−x)/(x − 1 + e^−x)
 */
export function endOverMean(x: number): number {
  if (x < SMALL) return (1 - x / 2 + (x * x) / 6) / (0.5 - x / 6 + (x * x) / 24)
  const left = decay(x)
  return (x * (1 - left)) / (x - 1 + left)
}
