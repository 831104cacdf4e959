/** Effectiveness of heat exchangers and the exact course of tanks. Kays & London, Compact Heat Exchangers. */
export function counterFlow(ntu: number, ratio: number): number {
  if (ratio === 1) return ntu / (1 + ntu)
  const e = Math.exp(-ntu * (1 - ratio))
  return (1 - e) / (1 - ratio * e)
}

/** Panel of conductance U_L (to its equilibrium temperature) with fluid: heat per kelvin between inlet and equilibrium, W/K. */
export function panelConductance_WK(area_m2: number, u_Wm2K: number, fPrime: number, mcp_WK: number): number {
  return mcp_WK * (1 - Math.exp((-area_m2 * u_Wm2K * fPrime) / mcp_WK))
}

/** Tank that radiates by T⁴ alone to a sky at `sky_K`: temperature after `time_h`, K, by the implicit closed form. */
export function radiatingTank_K(
  start_K: number,
  sky_K: number,
  emissivity: number,
  area_m2: number,
  c_JK: number,
  time_h: number,
): number {
  const form = (t: number) =>
    (Math.log((t + sky_K) / (t - sky_K)) + 2 * Math.atan(t / sky_K)) / (4 * sky_K ** 3)
  const target = form(start_K) + ((emissivity * 5.670374419e-8 * area_m2) / c_JK) * time_h * 3600
  let [low, high] = [sky_K + 1e-9, start_K]
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2
    if (form(middle) > target) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** Step response of n equal mixed layers to plug inflow at the last of them: regularised gamma P(n, n θ). */
export function layersStep(n: number, theta: number): number {
  let term = 1
  let sum = 1
  for (let k = 1; k < n; k++) sum += term *= (n * theta) / k
  return 1 - Math.exp(-n * theta) * sum
}
