import type { Problem } from '#model/basis/words'
import {
  type Quantity,
  type Unit,
  readMapping,
  writeMapping,
  type TableMapping,
  type OpenedWeather,
  type OpenOptions,
  type TimeChoices,
  type ClockCorrection,
  type QuestionChoice,
  withChoice,
} from '#model/outdoors/intake'
import type { Site } from '#model/outdoors/weather'
import { forgetMapping, rememberedMapping, rememberMapping } from '#live/kept-mappings.ts'
import { problemsOf } from '#live/problems-of.ts'
import { openInWorker, type OpenedFile, type Opening } from '#live/weather-opening.ts'

/** What the user said over what the file says. */
type Said = Omit<OpenOptions, 'file'>

const NOTHING: Said = { site: {}, time: {} }

/**
 * The weather file on the table: opened in a worker, corrected by the user, opened anew after every correction.
 * A file that cannot be read leaves the one before where it is.
 */
export class WeatherDesk {
  file = $state.raw<File | null>(null)
  opened = $state.raw<OpenedWeather | null>(null)
  head = $state.raw('')
  said = $state.raw<Said>(NOTHING)
  /** What was wrong with a file or a mapping file that was asked for; what was open stays. */
  refused = $state.raw<readonly Problem[]>([])
  /** Name of the file being read; null when none is. */
  reading = $state<string | null>(null)
  /** 0…1 while reading. */
  share = $state(0)
  /** True when the mapping came from an earlier correction of the same layout. */
  remembered = $state(false)

  #past = $state.raw<readonly Said[]>([])
  #opening: Opening | null = null
  /** What the reading under way was asked with: a second change while a file is read adds to the first. */
  #asked: Said | null = null

  get canGoBack(): boolean {
    return this.#past.length > 0
  }

  /** Opens a file, with the mapping corrected earlier when its layout is a known one. */
  async open(file: File): Promise<void> {
    const first = await this.#read(file, NOTHING)
    if (first === null) return
    if (first.opened.mapping === null) {
      this.refused = first.opened.problems
      return
    }
    const mapping = rememberedMapping(first.opened.mapping)
    const again = mapping === null ? null : await this.#read(file, { ...NOTHING, mapping })
    if (mapping !== null && again === null) return
    this.#show(file, again ?? first, again === null || mapping === null ? NOTHING : { ...NOTHING, mapping })
    this.remembered = again !== null
    this.#past = []
  }

  /** Takes a column for something else. Another column taken for the same is set aside: a quantity has one column. */
  correct(index: number, quantity: Quantity, unit: Unit): Promise<void> {
    const { mapping } = this.opened ?? {}
    if (!mapping) return Promise.resolve()
    const columns = mapping.columns.map((column) => {
      if (column.index === index) return { ...column, quantity, unit, confidence: 1, basis: 'user' as const }
      const taken = quantity !== 'ignore' && column.quantity === quantity
      return taken
        ? { ...column, quantity: 'ignore' as const, unit: '' as const, basis: 'user' as const }
        : column
    })
    const corrected = { ...mapping, columns }
    rememberMapping(corrected)
    return this.#again({ ...this.#newest, mapping: corrected })
  }

  setSite(site: Partial<Site>): Promise<void> {
    const said = this.#newest
    return this.#again({ ...said, site: { ...said.site, ...site } })
  }

  setTime(time: TimeChoices): Promise<void> {
    const said = this.#newest
    return this.#again({ ...said, time: { ...said.time, ...time } })
  }

  applyCorrection({ sentence, change }: ClockCorrection): Promise<void> {
    return this.answer({ words: sentence, change })
  }

  /** Answers a question about the file. */
  answer(choice: QuestionChoice): Promise<void> {
    return this.#again(withChoice(this.#newest, choice))
  }

  acceptLongGaps(acceptLongGaps: boolean): Promise<void> {
    return this.#again({ ...this.#newest, acceptLongGaps })
  }

  /** Takes the last correction back. */
  async goBack(): Promise<void> {
    const said = this.#past.at(-1)
    if (!said) return
    const past = this.#past.slice(0, -1)
    if (said.mapping) rememberMapping(said.mapping)
    else if (this.opened?.mapping) forgetMapping(this.opened.mapping)
    await this.#again(said)
    this.#past = past
  }

  /** Back to what the file itself says; the remembered mapping of its layout is forgotten. */
  async startOver(): Promise<void> {
    if (this.opened?.mapping) forgetMapping(this.opened.mapping)
    this.remembered = false
    await this.#again(NOTHING)
  }

  /** The mapping with everything that was said about place and time, as the text of a small file. */
  mappingText(): string | null {
    const mapping = this.opened?.mapping
    return mapping ? writeMapping(withSaid(mapping, this.said)) : null
  }

  async useMapping(file: File): Promise<void> {
    const { mapping, problems } = readMapping(await file.text().catch(() => ''), file.name)
    this.refused = problems
    if (mapping === null) return
    rememberMapping(mapping)
    await this.#again({ ...this.#newest, mapping })
  }

  /** Stops reading; what was open before stays. */
  cancel(): void {
    this.#opening?.stop()
    this.#opening = null
    this.reading = null
  }

  get #newest(): Said {
    return this.#asked ?? this.said
  }

  async #again(said: Said): Promise<void> {
    const { file } = this
    if (!file) return
    this.#asked = said
    const result = await this.#read(file, said)
    if (this.#asked === said) this.#asked = null
    if (!result) return
    this.#past = [...this.#past, this.said]
    this.#show(file, result, said)
  }

  #show(file: File, { opened, head }: OpenedFile, said: Said): void {
    this.file = file
    this.said = said
    this.opened = opened
    this.head = head
    this.refused = []
  }

  /** Null when it failed (said in `refused`); an opening that is overtaken or cancelled never comes back. */
  async #read(file: File, said: Said): Promise<OpenedFile | null> {
    this.cancel()
    this.reading = file.name
    this.share = 0
    const opening = openInWorker({ file, options: { ...said, file: file.name } }, (share) => {
      this.share = share
    })
    this.#opening = opening
    try {
      return await opening.result
    } catch (reason) {
      this.refused = problemsOf(reason)
      return null
    } finally {
      if (this.#opening === opening) this.reading = null
    }
  }
}

function withSaid(mapping: TableMapping, { site = {}, time = {} }: Said): TableMapping {
  return {
    ...mapping,
    site: { ...mapping.site, ...site },
    time: {
      clockOffset_h: time.clockOffset_h ?? mapping.time.clockOffset_h,
      stamp: time.stamp ?? mapping.time.stamp,
      radiationOffset_h: time.radiationOffset_h ?? mapping.time.radiationOffset_h,
      shift_h: time.shift_h ?? mapping.time.shift_h,
    },
  }
}

/** One table for the whole visit: leaving the page and coming back finds the file as it was. */
export const weatherDesk = new WeatherDesk()
