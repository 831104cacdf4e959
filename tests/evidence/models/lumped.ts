/** Closed forms of lumped rooms and tanks. Times in hours, conductances in W/K, capacities in J/K. */

/** C dT/dt = H (T_e − T) + Q from T_0. */
export function decay_C(c_JK: number, h_WK: number, start_C: number, end_C: number, time_h: number): number {
  return end_C + (start_C - end_C) * Math.exp((-time_h * 3600 * h_WK) / c_JK)
}

/** Amplitude ratio and lag of one node under a daily sinus. */
export function dailyResponse(c_JK: number, h_WK: number): { ratio: number; lag_h: number } {
  const wTau = ((2 * Math.PI) / 86400) * (c_JK / h_WK)
  return { ratio: 1 / Math.hypot(1, wTau), lag_h: (Math.atan(wTau) / (2 * Math.PI)) * 24 }
}

/**
 * Two nodes a and m: C_a dT_a = H_oa (T_e − T_a) + H_am (T_m − T_a) + Q, C_m dT_m = H_om (T_e − T_m) + H_am (T_a − T_m).
 * Exact by the eigenvalues of the 2 × 2 matrix; T_e constant.
 */
export interface TwoNode {
  readonly air_JK: number
  readonly mass_JK: number
  readonly airOut_WK: number
  readonly airMass_WK: number
  readonly massOut_WK: number
}
export function twoNode(
  room: TwoNode,
  start: readonly [number, number],
  outdoor_C: number,
  power_W: number,
  time_h: number,
): readonly [number, number] {
  const { air_JK: ca, mass_JK: cm, airOut_WK: ho, airMass_WK: ham, massOut_WK: hom } = room
  const [a, b, c, d] = [-(ho + ham) / ca, ham / ca, ham / cm, -(hom + ham) / cm]
  const det = a * d - b * c
  const [fa, fm] = [(ho * outdoor_C + power_W) / ca, (hom * outdoor_C) / cm]
  const end = [(b * fm - d * fa) / det, (c * fa - a * fm) / det] as const
  const root = Math.sqrt((a - d) * (a - d) + 4 * b * c) / 2
  const mid = (a + d) / 2
  const t = time_h * 3600
  const [e1, e2] = [Math.exp((mid + root) * t), Math.exp((mid - root) * t)]
  const cosh = (e1 + e2) / 2
  const sinh = (e1 - e2) / (2 * root)
  const [x, y] = [start[0] - end[0], start[1] - end[1]]
  return [
    end[0] + cosh * x + sinh * ((a - mid) * x + b * y),
    end[1] + cosh * y + sinh * (c * x + (d - mid) * y),
  ]
}
