/** Conductance from fluid to plate that gives the efficiency factor F′ at the loss U: F′ = 1/(1 + U/G). */
export function fluidToPlateFor(panelFactor: number, loss_Wm2K: number): number {
  return (loss_Wm2K * panelFactor) / (1 - panelFactor)
}

/** Regularized lower incomplete gamma function of a whole n: 1 − e^(−x) Σ_{k<n} x^k/k! (Poisson's sum). */
export function regularizedGamma(n: number, x: number): number {
  let term = 1
  let sum = 1
  for (let k = 1; k < n; k++) sum += term *= x / k
  return 1 - Math.exp(-x) * sum
}
