/** Even numbers 0…1 from a seed (xorshift, Marsaglia 2003), for tests. */
export function xorshift(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    return (state >>> 0) / 2 ** 32
  }
}
