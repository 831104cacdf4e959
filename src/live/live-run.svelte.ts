import type { Problem } from '#model/problem.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import type { WeatherRecord } from '#model/weather/record.ts'
import { LatestWins } from '#live/latest-wins.ts'
import { problemsOf } from '#live/problems-of.ts'
import type { LiveAnswer } from '#live/tasks.ts'

/**
 * The answer that follows the description. Sizing takes some years of simulation; so that the charts move with
 * a slider, a second worker meanwhile judges the design already found under the changed description.
 */
export class LiveRun {
  /** The sized answer: stays on screen, marked `updating`, until the next one is there. */
  answer = $state.raw<LiveAnswer | null>(null)
  /** The year of the last design under the newest description, while its sizing is under way. */
  #preview = $state.raw<LiveAnswer | null>(null)
  problems = $state.raw<readonly Problem[]>([])
  /** True while `answer` is not yet the answer to what is described. */
  updating = $state(false)

  #asked: Scenario | null = null
  /** The weather the judging worker has its stages ready for. */
  #warmIn: WeatherRecord | null = null

  readonly #sizing = new LatestWins('answer', {
    take: (answer, question, newest) => {
      this.answer = answer
      this.problems = []
      this.#warmUp(question.input, question.weather)
      if (newest && question.input === this.#asked) this.#preview = null
    },
    fail: (reason, newest) => {
      if (newest) this.problems = problemsOf(reason)
    },
    rest: () => {
      this.updating = false
      this.#preview = null
    },
  })

  readonly #judging = new LatestWins('answer', {
    take: (answer) => {
      if (this.updating) this.#preview = answer
    },
    // What is wrong is said by the sizing, which is asked the same.
    fail: () => {},
    rest: () => {},
  })

  /** What the charts of the year show: always the newest description there is a year for. */
  get shown(): LiveAnswer | null {
    return this.#preview ?? this.answer
  }

  ask(scenario: Scenario, weather: WeatherRecord): void {
    this.#asked = scenario
    this.updating = true
    this.#sizing.ask({ input: scenario, weather })
    this.#judge(scenario, weather)
  }

  /** Lets the judging worker do its slow first run before the first slider is touched. */
  #warmUp(scenario: Scenario, weather: WeatherRecord): void {
    if (this.#warmIn !== weather) this.#judge(scenario, weather)
  }

  #judge(scenario: Scenario, weather: WeatherRecord): void {
    const held = this.answer && withDesignHeld(scenario, this.answer)
    if (!held) return
    this.#warmIn = weather
    this.#judging.ask({ input: held, weather })
  }
}

/** The description with the area and tank of an answer in place of those to be chosen; null when none are. */
function withDesignHeld(scenario: Scenario, { area_m2, storeVolume_m3 }: LiveAnswer): Scenario | null {
  if (!scenario.target.autoArea) return null
  const store =
    scenario.store.autoVolume && storeVolume_m3 > 0
      ? { ...scenario.store, autoVolume: false, volume_m3: storeVolume_m3 }
      : scenario.store
  return { ...scenario, store, target: { ...scenario.target, autoArea: false, area_m2 } }
}
