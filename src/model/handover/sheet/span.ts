import { quantile } from '#model/basis/numbers'

/** Hours, and where eight in ten of them lie. */
export interface Span {
  readonly hours: number
  readonly low: number
  readonly middle: number
  readonly high: number
}

export function spanOf(values: readonly number[]): Span {
  const sorted = values.toSorted((a, b) => a - b)
  return {
    hours: values.length,
    low: quantile(sorted, 0.1),
    middle: quantile(sorted, 0.5),
    high: quantile(sorted, 0.9),
  }
}
