import { assemble, type FileNotes } from './assemble.ts'
import { guessMapping } from './column/guess.ts'
import { recogniseLayout } from './layout/known.ts'
import { fitMapping } from './fit-mapping.ts'
import { mappingOfLayout } from './layout/to-mapping.ts'
import type { TableMapping } from './mapping.ts'
import type { OpenedWeather, OpenOptions } from './options.ts'
import { ProblemList } from './problems.ts'
import { EMPTY_REPORT } from './quality/report.ts'
import { refusal } from './table/refuse.ts'
import { TableReader } from './table/reader.ts'
import { findTable, type FoundTable } from './table/shape.ts'
import { plainLines } from './table/split.ts'
import { CLOCK_UNKNOWN } from './clock/clock-report.ts'

/** How much of the file is looked at to see its layout: lines and characters. */
const HEAD_LINES = 400
const HEAD_CHARACTERS = 400_000

/**
 * A weather file being read piece by piece, for a worker that shows progress. Push the pieces in order, then ask
 * for the result. Only numbers are kept. Nothing the file holds makes it throw.
 */
export class WeatherReading {
  readonly #options: OpenOptions
  readonly #problems: ProblemList
  #head = ''
  #length = 0
  #reader: TableReader | null = null
  #guess: (raw: ReturnType<TableReader['finish']>) => TableMapping = () => {
    throw new RangeError('WeatherReading: no table yet')
  }
  #notes: FileNotes = { basis: '' }

  constructor(options: OpenOptions) {
    this.#options = options
    this.#problems = new ProblemList(options.file)
  }

  /** True once the file was refused, so that no more of it need be read. */
  get refused(): boolean {
    return this.#problems.stopped
  }

  /** Characters taken so far. */
  get taken(): number {
    return this.#length
  }

  push(piece: string): void {
    this.#length += piece.length
    if (this.#problems.stopped) return
    if (this.#reader !== null) {
      if (this.#tooLong()) this.#reader = null
      else this.#reader.push(piece)
      return
    }
    this.#head += piece
    if (this.#head.length >= HEAD_CHARACTERS) this.#begin()
  }

  finish(): OpenedWeather {
    if (this.#reader === null && !this.#problems.stopped) this.#begin()
    const reader = this.#reader
    if (reader === null || this.#problems.stopped) return this.#nothing(this.#options.mapping ?? null)
    const raw = reader.finish()
    this.#reader = null
    if (raw.rows === 0) {
      this.#problems.error('weather-no-rows', 'The table has no rows.', 'Check the mapping and the file.')
      return this.#nothing(this.#options.mapping ?? null)
    }
    const own = this.#guess(raw)
    const mapping = fitMapping(this.#options.mapping ?? own, own, this.#problems)
    return assemble(raw, mapping, this.#notes, this.#options, this.#problems)
  }

  #tooLong(): boolean {
    const problem = refusal('more', this.#length, this.#options.file)
    if (problem !== null) this.#problems.list.push(problem)
    return problem !== null
  }

  #begin(): void {
    const head = this.#head
    this.#head = ''
    const problem = refusal(head.slice(0, HEAD_CHARACTERS), this.#length, this.#options.file)
    if (problem !== null) {
      this.#problems.list.push(problem)
      return
    }
    const lines = plainLines(head.slice(0, HEAD_CHARACTERS)).split('\n', HEAD_LINES)
    const found = this.#look(lines)
    if (found === null) return
    this.#reader = new TableReader(found, lines)
    this.#reader.push(head)
  }

  /** Finds the table, by the user's mapping, a known layout or the look of the lines. */
  #look(lines: readonly string[]): FoundTable | null {
    const match = recogniseLayout(lines)
    if (match !== null) {
      this.#notes = { basis: match.basis, ...(match.year === undefined ? {} : { year: match.year }) }
      for (const remark of match.remarks ?? []) {
        this.#problems.warn('weather-layout-remark', remark, 'Correct it in the mapping if that is wrong.')
      }
      this.#guess = () => mappingOfLayout(match)
      return match.table
    }
    const found = findTable(lines)
    if (found === null) {
      this.#problems.error(
        'weather-no-table',
        'No table of numbers was found in the first lines.',
        'Choose a text file with one row an hour (or finer) and a fixed number of columns.',
        { line: 1 },
      )
      return null
    }
    this.#guess = (raw) => guessMapping(raw, found, lines, this.#options, this.#problems)
    return found
  }

  #nothing(mapping: TableMapping | null): OpenedWeather {
    return {
      record: null,
      mapping,
      clock: CLOCK_UNKNOWN,
      quality: EMPTY_REPORT,
      problems: this.#problems.list,
      questions: this.#problems.questions,
    }
  }
}
