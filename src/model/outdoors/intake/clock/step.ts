/** Median step between moments in the order of time, h (0 when there are fewer than two); whole minutes. */
export function medianStep_h(ms: Float64Array): number {
  const known = ms.filter((moment) => moment === moment)
  if (!isAscending(known)) known.sort()
  const steps: number[] = []
  const stride = Math.max(1, Math.floor(known.length / 20_000))
  for (let i = 1; i < known.length; i += stride) {
    const step = known[i]! - known[i - 1]!
    if (step > 0) steps.push(step)
  }
  if (steps.length === 0) return 0
  steps.sort((a, b) => a - b)
  return Math.round(steps[Math.floor(steps.length / 2)]! / 60_000) / 60
}

function isAscending(values: Float64Array): boolean {
  for (let i = 1; i < values.length; i += 1) if (values[i]! < values[i - 1]!) return false
  return true
}
