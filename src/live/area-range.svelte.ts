import type { WeatherRecord } from '#model/outdoors/weather'
import { RangeRun } from '#live/range-run.svelte.ts'
import type { LiveAnswer } from '#live/messages.ts'

/** The 10 and 90 % areas; `high_m2` is null where some draws have no area that is enough. */
export interface AreaRange {
  readonly low_m2: number
  readonly middle_m2: number | null
  readonly high_m2: number | null
}

/** Quiet time after an answer before its range is begun. */
const QUIET_MS = 700

/** The range around the area. It begins by itself once the answer rests, and ends as soon as that changes. */
export class AreaRangeRun {
  readonly run = new RangeRun()

  /** Starts after a pause; what it returns calls that off. */
  followSoon(answer: LiveAnswer | null, weather: WeatherRecord): () => void {
    if (!answer || !this.applies(answer) || this.isFor(answer)) return () => {}
    const timer = setTimeout(() => this.start(answer, weather), QUIET_MS)
    return () => clearTimeout(timer)
  }

  start(answer: LiveAnswer, weather: WeatherRecord): void {
    void this.run.start({ scenario: answer.simulated, sizing: answer.sizing }, weather)
  }

  /** The answer is on the move: a range around the old one is of no use. */
  leave(): void {
    if (this.run.running) this.run.stop()
  }

  /** Only a sized area has a range. */
  applies(answer: LiveAnswer): boolean {
    return answer.sizing.kind === 'met' || answer.sizing.kind === 'floor'
  }

  /** The range of exactly this answer, or null while there is none. */
  of(answer: LiveAnswer): AreaRange | null {
    const result = this.run.result
    if (!result || !this.isFor(answer) || result.low_m2 === null) return null
    return { low_m2: result.low_m2, middle_m2: result.middle_m2, high_m2: result.high_m2 }
  }

  isFor(answer: LiveAnswer): boolean {
    return this.run.resultFor?.sizing === answer.sizing
  }
}
