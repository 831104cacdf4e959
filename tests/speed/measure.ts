/** CPU seconds this process has used: what other work on the machine takes does not count. */
export function cpu_s(): number {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1e6
}

/** CPU seconds of each of so many runs, after some to warm up. */
export function timed_s(run: () => void, runs: number, warmUps = 3): number[] {
  for (let i = 0; i < warmUps; i++) run()
  return Array.from({ length: runs }, () => {
    const start = cpu_s()
    run()
    return cpu_s() - start
  })
}

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)]!
}

/** Exponent b of time ~ size^b by least squares of the logarithms, and its standard error. */
export function exponent(sizes: readonly number[], times_s: readonly number[]): { b: number; error: number } {
  const x = sizes.map(Math.log)
  const y = times_s.map(Math.log)
  const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length
  const [mx, my] = [mean(x), mean(y)]
  const sxx = x.reduce((sum, v) => sum + (v - mx) ** 2, 0)
  const b = x.reduce((sum, v, i) => sum + (v - mx) * (y[i]! - my), 0) / sxx
  const rest = x.reduce((sum, v, i) => sum + (y[i]! - my - b * (v - mx)) ** 2, 0)
  return { b, error: Math.sqrt(rest / (x.length - 2) / sxx) }
}
