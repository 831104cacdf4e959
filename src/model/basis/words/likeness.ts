/** Letters to change, add or leave out to make one word of another; Infinity beyond the limit. The usual edit distance. */
function letters(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return Infinity
  let row = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let j = 1; j <= b.length; j++)
      next.push(Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)))
    row = next
  }
  return row[b.length]!
}

/** Places in a list of the words most like a mistyped one, the likest first: at most a third of its letters differ. */
export function likePlaces(
  word: string,
  known: readonly string[],
): { readonly at: number; readonly off: number }[] {
  const limit = Math.max(1, Math.floor(word.length / 3))
  return known
    .map((candidate, at) => ({ at, off: letters(candidate, word, limit) }))
    .filter(({ off }) => off <= limit)
    .toSorted((a, b) => a.off - b.off)
}

/** The known word most like a mistyped one, capitals aside; null when none is. */
export function likest(word: string, known: readonly string[]): string | null {
  const [first] = likePlaces(
    word.toLowerCase(),
    known.map((one) => one.toLowerCase()),
  )
  return first === undefined ? null : known[first.at]!
}
