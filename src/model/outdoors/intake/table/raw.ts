/** A table as read: every column a run of numbers, the text gone. */
export interface RawColumn {
  readonly index: number
  readonly header: string
  /** Unit from a unit line, or ''. */
  readonly unitText: string
  /** `clock` columns hold stamps, `text` columns hold words and no numbers. */
  readonly kind: 'number' | 'clock' | 'text'
  /** Numbers as printed; NaN for "no value" and for text. Of a clock column: the packed date. */
  readonly values: Float64Array
  /** Clock columns only: milliseconds after midnight. */
  readonly ofDay_ms?: Float64Array
  /** Clock columns only: the month surely is before the day; stamps carry their own zone. */
  readonly monthFirst?: boolean
  readonly zoned?: boolean
  /** Cells that held words where numbers were due, and the first of them. */
  readonly textCells: number
  readonly firstText: { readonly line: number; readonly text: string } | null
}

/** A line that is no row of the table. */
export interface OddLine {
  readonly line: number
  readonly fields: number
  readonly text: string
}

export interface RawTable {
  readonly columns: readonly RawColumn[]
  readonly rows: number
  /** 1-based line of each row in the file. */
  readonly lines: Int32Array
  /** Lines inside the table with the wrong number of fields: the first few, and how many. */
  readonly odd: readonly OddLine[]
  readonly oddCount: number
  /** Lines where the header comes again: two files glued together. */
  readonly headerAgain: readonly number[]
}
