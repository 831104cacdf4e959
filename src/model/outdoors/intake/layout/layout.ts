import { isUnitOf, type Quantity, type Unit } from '../column/quantity.ts'
import type { TimeMapping } from '../mapping.ts'
import type { Site } from '#model/outdoors/weather'
import type { FoundTable } from '../table/shape.ts'
import { splitLine } from '../table/split.ts'

/** A column of a known layout. */
export interface KnownColumn {
  readonly quantity: Quantity
  readonly unit: Unit
}

/** All a known layout says about one file. */
export interface LayoutMatch {
  readonly table: FoundTable
  /** By position in the file; columns not named here are not used. */
  readonly columns: ReadonlyMap<number, KnownColumn>
  readonly missing: readonly number[]
  readonly time: TimeMapping
  readonly site: Partial<Site>
  /** One sentence: data set and years. */
  readonly basis: string
  /** Calendar year where the file has none. */
  readonly year?: number
  /** Sentences the user should see. */
  readonly remarks?: readonly string[]
}

/** A data set's table layout that is recognised outright. */
export interface Layout {
  readonly id: string
  readonly label: string
  /** @param lines the first lines of the file, line ends taken off */
  readonly recognise: (lines: readonly string[]) => LayoutMatch | null
}

/** A table whose header is at a known line (0-based). */
export function tableAt(lines: readonly string[], header: number, separator: ',' | 'blanks'): FoundTable {
  const headers = splitLine(lines[header] ?? '', separator)
  return {
    shape: { separator, decimal: '.', headerLine: header + 1, firstDataLine: header + 2 },
    headers,
    units: headers.map(() => ''),
    fields: headers.length,
  }
}

/** The known columns among the headers; each entry is `header: 'quantity unit'`. */
export function columnsByHeader(
  headers: readonly string[],
  known: Readonly<Record<string, string>>,
): ReadonlyMap<number, KnownColumn> {
  const columns = new Map<number, KnownColumn>()
  headers.forEach((header, index) => {
    if (Object.hasOwn(known, header)) columns.set(index, knownColumn(known[header]!))
  })
  return columns
}

/** Reads `'quantity unit'`. @throws RangeError when the layout names something unknown (a programmer's slip) */
export function knownColumn(text: string): KnownColumn {
  const [quantity, unit] = text.split(' ') as [Quantity, string]
  if (!isUnitOf(quantity, unit)) throw new RangeError(`layout column "${text}": no such quantity and unit`)
  return { quantity, unit }
}

/** Number in a text, NaN when there is none. */
export function numberIn(text: string | undefined): number {
  const found = /-?\d+(\.\d+)?/.exec(text ?? '')
  return found === null ? NaN : Number(found[0])
}
