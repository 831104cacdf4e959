/** Below this Rayleigh number an upright gap only conducts: the correlation is within 1e-4 of 1. */
export const STILL_RAYLEIGH = 1000
export const LN_6310 = Math.log(6310)

/** Nusselt number of an upright air gap and Ra · dNu/dRa, both –. Overwritten by `uprightGap`. */
export interface UprightGap {
  nusselt: number
  growth: number
}

/**
 * Nusselt number of a tall upright air gap, –, with its change by the logarithm of Ra: the larger of
 *   Nu = [1 + (0.104 Ra^0.293 / (1 + (6310/Ra)^1.36))³]^⅓  and  0.0605 Ra^⅓
 * Source: ElSherbiny, Raithby & Hollands 1982, J. Heat Transfer 104, 96 (from memory); its third law, for gaps less
 * than about forty times as high as wide, is left out.
 */
export function uprightGap(rayleigh: number, out: UprightGap): void {
  out.nusselt = 1
  out.growth = 0
  if (rayleigh < STILL_RAYLEIGH) return
  // Both powers by one logarithm: this is in the film's innermost loop.
  const log = Math.log(rayleigh)
  const onset = Math.exp(1.36 * (LN_6310 - log))
  const cell = (0.104 * Math.exp(0.293 * log)) / (1 + onset)
  const cubed = cell * cell * cell
  const turbulent = 0.0605 * Math.cbrt(rayleigh)
  const laminar = Math.cbrt(1 + cubed)
  if (turbulent > laminar) {
    out.nusselt = turbulent
    out.growth = turbulent / 3
    return
  }
  out.nusselt = laminar
  out.growth = (cubed / (laminar * laminar)) * (0.293 + (1.36 * onset) / (1 + onset))
}

const upright: UprightGap = { nusselt: 1, growth: 0 }

/**
 * Nusselt number of a tilted air gap that is colder below, –: level it only conducts, and upright it is an upright gap,
 * Nu = 1 + (Nu_upright − 1) sin β.
 * Source: Arnold, Catton & Edwards 1976, J. Heat Transfer 98, 67 (from memory).
 * @param sine  sin β of the tilt
 */
export function coldBelowNusselt(rayleigh: number, sine: number): number {
  if (sine <= 0) return 1
  uprightGap(rayleigh, upright)
  return 1 + (upright.nusselt - 1) * sine
}
