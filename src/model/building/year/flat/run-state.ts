import { HEAD_NUMBERS, NUMBERS } from './hours-wasm.ts'

/** All that changes in a run, in one array: places for the head of `hours-wasm.ts`, the numbers, and rows one after the other. */
export interface RunState<Rows> {
  readonly state: Float64Array
  readonly numbers: Float64Array
  readonly rows: Rows
  readonly ends: Int32Array
}

/** Puts rows and the groups' ends behind the numbers, which are 0; the rows returned are those places. */
export function runState<K extends string>(
  rows: Readonly<Record<K, Float64Array>>,
  ends: Int32Array,
): RunState<Record<K, Float64Array>> {
  const lengths = Object.values<Float64Array>(rows).map(({ length }) => length)
  const first = HEAD_NUMBERS + NUMBERS
  const end = lengths.reduce((sum, length) => sum + length, first)
  const state = new Float64Array(end + Math.ceil(ends.length / 2))
  let at = first
  const put = (own: Float64Array): Float64Array => {
    state.set(own, at)
    at += own.length
    return state.subarray(at - own.length, at)
  }
  const placed = Object.entries<Float64Array>(rows).map(([name, own]) => [name, put(own)] as const)
  const endsHere = new Int32Array(state.buffer, end * Float64Array.BYTES_PER_ELEMENT, ends.length)
  endsHere.set(ends)
  return {
    state,
    numbers: state.subarray(HEAD_NUMBERS, first),
    rows: Object.fromEntries(placed) as Record<K, Float64Array>,
    ends: endsHere,
  }
}
