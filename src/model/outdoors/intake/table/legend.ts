/** What the lines above a table say of one of its columns. */
export interface LegendEntry {
  readonly words: string
  /** Without its factor; empty when none is named. */
  readonly unitText: string
  /** The file prints whole numbers of so much of the unit: 0.1 in "0.1 m/s". */
  readonly scale: number
}

const ENTRY = /^\s*(?:#+|!|%|\/\/)?\s*([\p{L}][\p{L}\p{N}_.]{0,14})\s*(?:=|:)\s*(.{3,200})$/u
const UNIT = /[([]\s*(?:in\s+|unit[s]?:?\s*)?([\d.]+)?\s*([^)\]]{1,30})[)\]]/i

/**
 * Names explained above a table: "T = temperature (in 0.1 degrees Celsius) at 1.50 m". Only names that head a column are
 * kept: other lines of that form speak of place and clock.
 */
export function legendOf(
  preamble: readonly string[],
  headers: readonly string[],
): ReadonlyMap<string, LegendEntry> {
  const found = new Map<string, LegendEntry>()
  for (const line of preamble) {
    const entry = ENTRY.exec(line)
    if (entry === null || !headers.includes(entry[1]!)) continue
    const unit = UNIT.exec(entry[2]!)
    const factor = unit?.[1] === undefined ? 1 : Number(unit[1])
    found.set(entry[1]!, {
      words: entry[2]!.replace(/[([].*$/, '').trim(),
      unitText: unit?.[2]?.trim() ?? '',
      scale: factor > 0 && Number.isFinite(factor) ? factor : 1,
    })
  }
  return found
}

const MISSING =
  /(?:missing|no[ -]?data|no value|fill|invalid|fehl|manquant|sin dato|absent)[^:=]{0,40}[:=]\s*(.+)$/i

/** Numbers that the lines above a table name as "no value". */
export function namedMissing(preamble: readonly string[]): number[] {
  return preamble.flatMap((line) => {
    const named = MISSING.exec(line)?.[1]
    return named === undefined
      ? []
      : named
          .split(/[,;\s]+/)
          .filter((word) => /^[+-]?\d+(\.\d+)?$/.test(word))
          .map(Number)
  })
}
