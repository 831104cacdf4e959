/** A measurement or published result from outside; a second, independent implementation; an own value, balance or rule that is kept. */
export type EvidenceKind = 'outside' | 'second' | 'regression'

export const KIND_WORDS: Readonly<Record<EvidenceKind, string>> = {
  outside: 'Outside measurement or published worked result',
  second: 'Second, independent implementation',
  regression: 'Regression: own value, balance or rule of the trade, kept',
}

/** The table of outside checks that `npm run -s evidence` writes and the trust page shows. */
export interface EvidenceRow {
  readonly theme: string
  readonly quantity: string
  readonly unit: string
  readonly kind: string
  readonly evidence: string
  readonly ours: number | null
  /** The outside value, or the band it must fall in. */
  readonly theirs: number | readonly number[]
  readonly within: number
  readonly because: string
  /** Key into the table's sources. */
  readonly source: string
  /** Table, example or equation inside the source. */
  readonly where: string
  readonly fromMemory: boolean
  readonly status: string
  /** Why it misses, as far as we know. */
  readonly cause: string
  /** Open-data file it was measured against, and the day that was last done. */
  readonly data: string
  readonly measuredOn: string | null
  /** A choice that was made on this data; empty: none. */
  readonly choice: string
}

export interface EvidenceTable {
  readonly sources: Readonly<Record<string, string>>
  readonly rows: readonly EvidenceRow[]
}

/** A band whose upper end is this has none: the source says “more than”. */
export const NO_END = 1e9

/** Not counted among the sources. */
export const COMMON_PRACTICE = 'commonPractice'

export interface EvidenceTotals {
  readonly checks: number
  readonly sources: number
  readonly misses: number
}

export function totals(rows: readonly EvidenceRow[]): EvidenceTotals {
  const sources = rows.map((row) => row.source).filter((source) => source !== COMMON_PRACTICE)
  return { checks: rows.length, sources: new Set(sources).size, misses: missing(rows).length }
}

/** How many rows there are of each kind, and how many of them miss. */
export function kindCounts(
  rows: readonly EvidenceRow[],
): readonly { readonly kind: EvidenceKind; readonly rows: number; readonly misses: number }[] {
  return (Object.keys(KIND_WORDS) as EvidenceKind[]).map((kind) => {
    const own = rows.filter((row) => row.evidence === kind)
    return { kind, rows: own.length, misses: missing(own).length }
  })
}

/** Errors of the outside measurements of one part, in one unit. */
export interface AreaError {
  readonly theme: string
  readonly unit: string
  readonly bias: number
  readonly rmse: number
  readonly n: number
}

/** Bias of the measurements by part and unit: ours less theirs, 0 inside a band; rows that are themselves an RMSE left out. */
export function areaErrors(rows: readonly EvidenceRow[]): AreaError[] {
  const own = rows.filter(
    (row) => row.kind === 'measured' && row.ours !== null && !row.quantity.includes('RMSE'),
  )
  const areas = [...new Set(own.map((row) => `${row.theme}|${row.unit}`))]
  return areas.map((area) => {
    const [theme, unit] = area.split('|') as [string, string]
    const errors = own.filter((row) => row.theme === theme && row.unit === unit).map(errorOf)
    const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length
    const rmse = Math.sqrt(mean(errors.map((error) => error ** 2)))
    return { theme, unit, bias: mean(errors), rmse, n: errors.length }
  })
}

function errorOf({ ours, theirs, quantity }: EvidenceRow): number {
  // A band around nothing is a difference already.
  if (typeof theirs !== 'number' && quantity.includes('model less measured')) return ours!
  const [low, high] = typeof theirs === 'number' ? [theirs, theirs] : [theirs[0]!, theirs[1]!]
  return ours! < low ? ours! - low : ours! > high ? ours! - high : 0
}

export function missing(rows: readonly EvidenceRow[]): EvidenceRow[] {
  return rows.filter((row) => row.status !== 'agrees')
}

/** Themes in the order of the table. */
export function themes(rows: readonly EvidenceRow[]): string[] {
  return [...new Set(rows.map((row) => row.theme))]
}

/** So many significant digits at most, without an exponent where one can read it. */
export function figure(value: number, digits = 6): string {
  const tiny = value !== 0 && Math.abs(value) < 1e-5
  return tiny ? value.toExponential(1) : String(Number(value.toPrecision(digits))).replace('-', '−')
}

/** Misses that share a cause, together. */
export function missesByCause(rows: readonly EvidenceRow[]): { cause: string; rows: EvidenceRow[] }[] {
  const causes = [...new Set(missing(rows).map((row) => row.cause))]
  return causes.map((cause) => ({ cause, rows: missing(rows).filter((row) => row.cause === cause) }))
}

/** The outside value with its tolerance, e.g. `0.937 ± 0.0005` or `40 … 60`. */
export function expected({ theirs, within }: Pick<EvidenceRow, 'theirs' | 'within'>): string {
  if (typeof theirs === 'number') return `${figure(theirs)} ± ${figure(within)}`
  const low = figure(theirs[0]! - within)
  return theirs[1]! >= NO_END ? `at least ${low}` : `${low} … ${figure(theirs[1]! + within)}`
}

export function citation(row: EvidenceRow, sources: EvidenceTable['sources']): string {
  const parts = [sources[row.source] ?? row.source, row.where, row.fromMemory ? 'from memory' : '']
  return parts.filter((part) => part !== '').join('; ')
}
