import type { Problem } from '#model/basis/words'
import type { Scenario } from '#model/design/scenario'
import { withChoice, type OpenOptions, type QuestionChoice } from '#model/outdoors/intake'
import { isWholeYear, type WeatherRecord } from '#model/outdoors/weather'
import { LongRun } from '#live/long-run.svelte.ts'
import type { Output } from '#live/messages.ts'
import { problemsOf } from '#live/problems-of.ts'
import { openInWorker, type Opening } from '#live/weather-opening.ts'

/** What a file comes to when a question about it is answered one way. */
export interface ChoiceReading {
  readonly record: WeatherRecord | null
  /** The answer of the design in that weather; null while it is worked out, and where it can't be. */
  readonly answer: Output<'size'> | null
  readonly problems: readonly Problem[]
}

/** The same file read with each answer to one question, and the design sized in each reading. */
export class ChoiceReadings {
  /** One a choice, in order, as they are done. */
  readings = $state.raw<readonly ChoiceReading[]>([])
  readonly #sizing = new LongRun('size')
  #opening: Opening | null = null
  #turn = 0

  async start(
    file: File,
    said: Omit<OpenOptions, 'file'>,
    choices: readonly QuestionChoice[],
    scenario: Scenario,
  ): Promise<void> {
    this.stop()
    const turn = this.#turn
    this.readings = []
    for (const choice of choices) {
      const reading = await this.#read(file, { ...withChoice(said, choice), file: file.name }, scenario)
      if (turn !== this.#turn) return
      this.readings = [...this.readings, reading]
    }
  }

  stop(): void {
    this.#turn++
    this.#opening?.stop()
    this.#sizing.stop()
  }

  async #read(file: File, options: OpenOptions, scenario: Scenario): Promise<ChoiceReading> {
    try {
      this.#opening = openInWorker({ file, options }, () => {})
      const { record, problems } = (await this.#opening.result).opened
      const whole = record !== null && isWholeYear(record)
      const done = whole && (await this.#sizing.start({ scenario }, record))
      return {
        record,
        answer: done ? this.#sizing.result : null,
        problems: [...problems, ...this.#sizing.problems],
      }
    } catch (reason) {
      return { record: null, answer: null, problems: problemsOf(reason) }
    }
  }
}
