import type { Quantity, Unit } from './column/quantity.ts'
import type { Site } from '#model/outdoors/weather'

/** What is between two fields: one character, or any run of blanks. */
export type Separator = ',' | ';' | '\t' | '|' | 'blanks'

/** The period a row's values cover, as seen from its stamp. */
export const STAMPS = ['ending', 'beginning', 'centred', 'instant'] as const
export type Stamp = (typeof STAMPS)[number]

/** How sure a guess is and what it rests on. */
export type Basis = 'layout' | 'header' | 'physics' | 'user' | 'none'

export interface ColumnGuess {
  readonly quantity: Quantity
  readonly unit: Unit
  /** 0…1; 1 is certain. */
  readonly confidence: number
}

/** What one column of the file is taken for, and what else it might be. */
export interface ColumnMapping extends ColumnGuess {
  /** 0-based position in the file. */
  readonly index: number
  /** The header as it is in the file, or `column N`. */
  readonly header: string
  readonly basis: Basis
  readonly alternatives: readonly ColumnGuess[]
  /** Printed numbers are multiples of so much of the unit: 0.1 where tenths are printed. Left out: 1. */
  readonly scale?: number
  /** Added to the printed number after its scale, in its unit: a sensor's known offset. Left out: 0. */
  readonly offset?: number
  /** Read at the stamp itself, not a mean over the row's period: the hour takes the mean of both its ends. */
  readonly instant?: boolean
}

/** How the text is cut into rows and fields. Line numbers are 1-based. */
export interface TableShape {
  readonly separator: Separator
  readonly decimal: '.' | ','
  /** Line that names the columns; null when there is none. */
  readonly headerLine: number | null
  readonly firstDataLine: number
}

/** What the stamps mean. */
export interface TimeMapping {
  /** The file's clock minus UTC, h: 0 is UTC; null when neither the file nor the user says. */
  readonly clockOffset_h: number | null
  readonly stamp: Stamp
  /** From the stamp to the middle of the period the irradiance covers, where the data set says so; h. */
  readonly radiationOffset_h: number | null
  /** Added to every stamp, h: a correction for a clock that is wrong. */
  readonly shift_h: number
}

/** Everything needed to read a file of one layout again: plain JSON, the same for page and command line. */
export interface TableMapping {
  readonly version: 1
  /** Name of the known layout, or null. */
  readonly layout: string | null
  readonly table: TableShape
  readonly columns: readonly ColumnMapping[]
  /** Numbers that mean "missing". */
  readonly missing: readonly number[]
  readonly time: TimeMapping
  readonly site: Partial<Site>
}

/** Same text for files of the same layout: by it a mapping is remembered. */
export function layoutSignature(mapping: TableMapping): string {
  return [mapping.table.separator, mapping.table.decimal, ...mapping.columns.map((c) => c.header)].join(
    '\u001f',
  )
}
