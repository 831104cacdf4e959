/** Median step between successive moments, h (0 when there are fewer than two); 1–60 min steps are whole minutes. */
export function medianStep_h(ms: Float64Array): number {
  const steps: number[] = []
  const stride = Math.max(1, Math.floor(ms.length / 20_000))
  for (let i = 1; i < ms.length; i += stride) {
    const step = ms[i]! - ms[i - 1]!
    if (step > 0) steps.push(step)
  }
  if (steps.length === 0) return 0
  steps.sort((a, b) => a - b)
  return Math.round(steps[Math.floor(steps.length / 2)]! / 60_000) / 60
}
