import { LinearSystem } from './linear-system.ts'

/** A straight fit, and what it misses each point by when that point is left out of it. */
export interface LinearFit {
  readonly at: (point: readonly number[]) => number
  readonly missed: readonly number[]
}

/**
 * Least squares of a constant and one slope an input.
 * @returns null where the points do not settle it (too few, or two inputs that move together)
 * Source of the left-out misses, from the leverages: Allen 1974, Technometrics 16, 125–127 (from memory).
 */
export function linearFit(
  points: readonly (readonly number[])[],
  values: readonly number[],
): LinearFit | null {
  const rows = points.map((point) => [1, ...point])
  const size = rows[0]?.length ?? 0
  if (rows.length <= size) return null
  const system = new LinearSystem(size)
  for (const row of rows)
    for (let i = 0; i < size; i++)
      for (let j = 0; j < size; j++) system.matrix[i * size + j]! += row[i]! * row[j]!
  system.factor()
  const solved = (right: Float64Array): Float64Array => {
    const x = new Float64Array(size)
    system.solve(right, x)
    return x
  }
  const right = new Float64Array(size)
  rows.forEach((row, n) => row.forEach((part, i) => (right[i]! += part * values[n]!)))
  const slopes = solved(right)
  const product = (a: ArrayLike<number>, b: ArrayLike<number>): number => {
    let sum = 0
    for (let i = 0; i < size; i++) sum += a[i]! * b[i]!
    return sum
  }
  const missed = rows.map((row, n) => {
    const leverage = product(row, solved(Float64Array.from(row)))
    return (values[n]! - product(row, slopes)) / (1 - leverage)
  })
  if (!missed.every(Number.isFinite)) return null
  return { at: (point) => product([1, ...point], slopes), missed }
}
