import { GrowingColumn } from './growing.ts'
import { columnKind, columnReader, type ColumnReader } from './column-reader.ts'
import type { OddLine, RawTable } from './raw.ts'
import type { FoundTable } from './shape.ts'
import { isComment, plainLines, splitLine, splitLines } from './split.ts'

const ODD_KEPT = 20
/** Text cut into rows at a time, characters: small enough that the strings are soon dropped. */
const PIECE = 1_000_000

/**
 * Reads a table piece by piece: columns go straight into arrays of numbers and no text is kept, so a 60 MB
 * file needs little more memory than its numbers.
 */
export class TableReader {
  readonly #found: FoundTable
  readonly #readers: readonly ColumnReader[]
  readonly #lines = new GrowingColumn()
  readonly #hasHeader: boolean
  #rest = ''
  #line = 1
  #odd: OddLine[] = []
  #oddCount = 0
  #tail: OddLine[] = []
  #headerAgain: number[] = []

  /** @param sample the first lines of the file, to see which columns hold stamps or words */
  constructor(found: FoundTable, sample: readonly string[]) {
    this.#found = found
    const { separator, decimal, firstDataLine } = found.shape
    const rows = sample
      .slice(firstDataLine - 1)
      .filter((line) => !isComment(line))
      .map((line) => splitLine(line, separator))
      .filter((cells) => cells.length === found.fields)
    this.#hasHeader = found.headers.some((header) => header !== '')
    this.#readers = found.headers.map((header, index) =>
      columnReader({
        index,
        header,
        unitText: found.units[index] ?? '',
        kind: columnKind(rows.map((cells) => cells[index]!), decimal), // prettier-ignore
        decimal,
      }),
    )
  }

  /** Takes the next piece of the file, from its very beginning on. */
  push(piece: string): void {
    for (let at = 0; at < piece.length; at += PIECE) {
      const text = this.#rest + piece.slice(at, at + PIECE)
      const cut = Math.max(text.lastIndexOf('\n'), text.lastIndexOf('\r', text.length - 2)) + 1
      this.#rest = text.slice(cut)
      if (cut > 0) this.#take(plainLines(text.slice(0, cut)).slice(0, -1))
    }
  }

  finish(): RawTable {
    const rest = plainLines(this.#rest)
    this.#rest = ''
    if (rest !== '') this.#take(rest.endsWith('\n') ? rest.slice(0, -1) : rest)
    if (this.#tail.some((line) => /^[\s"]*[-+.\d]/.test(line.text))) this.#keepTail()
    return {
      columns: this.#readers.map((reader) => reader.done()),
      rows: this.#lines.length,
      lines: Int32Array.from(this.#lines.values()),
      odd: this.#odd,
      oddCount: this.#oddCount,
      headerAgain: this.#headerAgain,
    }
  }

  #take(text: string): void {
    const { separator, firstDataLine } = this.#found.shape
    for (const cells of splitLines(text, separator)) {
      const line = this.#line
      this.#line += 1
      if (line >= firstDataLine && !(cells.length === 1 && cells[0] === '')) this.#row(cells, line)
    }
  }

  #row(cells: string[], line: number): void {
    const { fields } = this.#found
    if (isComment(cells[0]!)) return
    while (cells.length > fields && cells.at(-1) === '') cells.pop()
    if (cells.length !== fields) {
      this.#tail.push({ line, fields: cells.length, text: cells.join(' ').slice(0, 60) })
      if (this.#tail.length > ODD_KEPT * 5) this.#keepTail()
      return
    }
    if (
      this.#hasHeader &&
      cells[0] === this.#found.headers[0] &&
      cells.every((c, i) => c === this.#found.headers[i])
    ) {
      this.#headerAgain.push(line)
      return
    }
    if (this.#tail.length > 0) this.#keepTail()
    for (let i = 0; i < fields; i += 1) this.#readers[i]!.take(cells[i]!, line)
    this.#lines.push(line)
  }

  /** Lines that did not fit are inside the table after all: they are odd, not a legend at its foot. */
  #keepTail(): void {
    this.#oddCount += this.#tail.length
    for (const line of this.#tail) if (this.#odd.length < ODD_KEPT) this.#odd.push(line)
    this.#tail = []
  }
}
