/**
 * Where a rising function reaches a value, within a bracket that is halved `rounds` times or until it is no wider than
 * `close`. Outside the bracket the nearer end is approached.
 */
export function bisected(
  rising: (x: number) => number,
  wanted: number,
  [from, until]: readonly [number, number],
  rounds: number,
  close = 0,
): number {
  let low = from
  let high = until
  for (let i = 0; i < rounds && high - low > close; i++) {
    const middle = 0.5 * (low + high)
    if (rising(middle) < wanted) low = middle
    else high = middle
  }
  return 0.5 * (low + high)
}
