import type { Problem } from '#model/basis/words'
import { type Scenario, hold, sizesPanels } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { AboutArea, NearDesign } from '#model/design/sizing'
import { Engine } from '#live/engine.ts'
import { LatestWins, type Question } from '#live/latest-wins.ts'
import { problemsOf } from '#live/problems-of.ts'
import type { LiveAnswer } from '#live/messages.ts'

/** About the area of a description, under a hand that still moves a slider. */
export interface FollowingArea extends AboutArea {
  /** False once the description has moved on. */
  readonly newest: boolean
  /** True where modules and tank are chosen: the area that is built. */
  readonly built: boolean
}

/** A hand that has not moved a slider for so long is taken to rest. */
const RESTED_MS = 60

/**
 * The answer that follows the description. Sizing takes some years of simulation; so that the figure moves with a slider,
 * a second worker finds about the area of each description. Once the hand rests it judges that design, for the charts,
 * while the first one sizes.
 */
export class LiveRun {
  /** The sized answer: stays on screen, marked `updating`, until the next one is there. */
  answer = $state.raw<LiveAnswer | null>(null)
  /** About the area, while the sizing is under way. */
  following = $state.raw<FollowingArea | null>(null)
  /** The year of a design under the newest description, while its sizing is under way. */
  #preview = $state.raw<LiveAnswer | null>(null)
  problems = $state.raw<readonly Problem[]>([])
  /** True while `answer` is not yet the answer to what is described. */
  updating = $state(false)

  #asked: Question<'size'> | null = null
  /** The weather `answer` was found in. */
  #answeredIn: WeatherRecord | null = null
  /** The weather the second worker has its stages ready for. */
  #warmIn: WeatherRecord | null = null

  readonly #sizing = new LatestWins('size', {
    take: (answer, question, newest) => {
      if (this.#asked === null) return
      this.answer = answer
      this.problems = []
      this.#answeredIn = question.weather
      this.#warmUp(question)
      if (newest && question.input.scenario === this.#asked?.input.scenario) this.#stopFollowing()
    },
    fail: (reason, newest) => {
      if (newest) this.problems = problemsOf(reason)
    },
    rest: () => {
      if (this.#about.busy || this.#resting !== undefined) return
      this.updating = false
      this.#stopFollowing()
    },
  })

  readonly #second = new Engine()
  #resting: ReturnType<typeof setTimeout> | undefined

  readonly #about: LatestWins<'follow'> = new LatestWins(
    'follow',
    {
      take: (area, { input }) => {
        this.following = { ...area, newest: input.scenario === this.#asked?.input.scenario, built: false }
      },
      // What is wrong is said by the sizing, which is asked the same.
      fail: () => {},
      rest: () => {
        this.#resting = setTimeout(() => this.#settle(), RESTED_MS)
      },
    },
    this.#second,
  )

  /** Modules and tank from the answer before, in a third of the time of a whole search; then the year of that design. */
  readonly #building: LatestWins<'sizeNear'> = new LatestWins(
    'sizeNear',
    {
      take: (found, { input: { scenario }, weather }, newest) => {
        if (!newest || !this.updating || scenario !== this.#asked?.input.scenario || !this.answer) return
        if (found === null) return this.#judgeFollowed(scenario, weather)
        const { area_m2, storeVolume_m3 } = found
        this.following = { kind: 'met', area_m2, newest: true, built: true }
        this.#judge(hold(scenario, { area_m2, storeVolume_m3 }), weather)
      },
      fail: () => {},
      rest: () => {},
    },
    this.#second,
  )

  readonly #judging = new LatestWins(
    'size',
    {
      take: (answer) => {
        if (this.updating) this.#preview = answer
      },
      fail: () => {},
      rest: () => {},
    },
    this.#second,
  )

  /** What the charts of the year show: always the newest description there is a year for. */
  get shown(): LiveAnswer | null {
    return this.#preview ?? this.answer
  }

  ask(scenario: Scenario, weather: WeatherRecord): void {
    clearTimeout(this.#resting)
    this.#resting = undefined
    this.#asked = { input: { scenario }, weather }
    this.updating = true
    if (this.following) this.following = { ...this.following, newest: false }
    const before = this.answer?.sizing
    if (sizesPanels(scenario) && before && before.kind !== 'own' && weather === this.#answeredIn) {
      this.#about.ask({ input: { scenario, near: nearest(before, this.following) }, weather })
    } else this.#sizing.ask(this.#asked)
  }

  /** There is no weather to answer in: nothing is shown for another. */
  leave(): void {
    clearTimeout(this.#resting)
    this.#resting = undefined
    this.#asked = null
    this.answer = null
    this.#stopFollowing()
    this.updating = false
  }

  /** The whole answer to the description the hand came to rest at, and meanwhile its year with about the area. */
  #settle(): void {
    this.#resting = undefined
    if (!this.#asked) return
    const { input, weather } = this.#asked
    this.#sizing.ask(this.#asked)
    const near = this.answer?.sizing.anchor
    if (near) this.#building.ask({ input: { scenario: input.scenario, near }, weather })
    else this.#judgeFollowed(input.scenario, weather)
  }

  #judgeFollowed(scenario: Scenario, weather: WeatherRecord): void {
    if (this.answer && this.following?.newest)
      this.#judge(withDesignHeld(scenario, this.following, this.answer), weather)
  }

  #stopFollowing(): void {
    this.following = null
    this.#preview = null
  }

  /** Lets the second worker do its slow first runs, what follows and what judges, before the first slider is touched. */
  #warmUp({ input, weather }: Question<'size'>): void {
    if (this.#warmIn === weather || !this.answer) return
    this.#warmIn = weather
    this.#judge(withDesignHeld(input.scenario, this.answer.sizing, this.answer), weather)
    if (sizesPanels(input.scenario)) void this.#tryFollowing({ input, weather }, this.answer.sizing)
  }

  /** Follows a few descriptions near by, for nobody, as long as nobody asks. */
  async #tryFollowing({ input, weather }: Question<'size'>, near: NearDesign): Promise<void> {
    for (const scenario of nearby(input.scenario)) {
      if (this.#asked?.input !== input) return
      // A fault will be shown when somebody asks.
      await this.#second.run('follow', { scenario, near }, weather).catch(() => {})
    }
    const { scenario } = input
    const { anchor } = this.answer?.sizing ?? {}
    if (anchor && this.#asked?.input === input)
      await this.#second.run('sizeNear', { scenario, near: anchor }, weather).catch(() => {})
  }

  #judge(held: Scenario, weather: WeatherRecord): void {
    this.#judging.ask({ input: { scenario: held }, weather })
  }
}

/** How many descriptions a hair apart the second worker tries, until the browser has compiled what follows a slider. */
const WARMING_RUNS = 4

function nearby(scenario: Scenario): readonly Scenario[] {
  const roofU_Wm2K = scenario.room.roofU_Wm2K
  return Array.from({ length: WARMING_RUNS }, (_, i) => ({
    ...scenario,
    room: { ...scenario.room, roofU_Wm2K: roofU_Wm2K * (1 - (i + 1) / 1000) },
  }))
}

/** Where the search for about the next area begins: at the last one that followed, its tank in proportion to the answer's. */
function nearest(answer: NearDesign, following: AboutArea | null): NearDesign {
  if (following?.kind !== 'met' || !(answer.area_m2 > 0)) return answer
  const { area_m2 } = following
  return { area_m2, storeVolume_m3: tankFor(area_m2, answer), slope: answer.slope }
}

/** The tank of an answer in proportion to another area, m³. */
function tankFor(area_m2: number, answer: NearDesign): number {
  const { storeVolume_m3 } = answer
  return answer.area_m2 > 0 ? (storeVolume_m3 / answer.area_m2) * area_m2 : storeVolume_m3
}

/** The description with an area, and the tank in proportion to an answer's, in place of those to be chosen. */
function withDesignHeld(scenario: Scenario, { area_m2 }: { area_m2: number }, near: LiveAnswer): Scenario {
  const volume_m3 = tankFor(area_m2, near.sizing)
  const sized = scenario.store.autoVolume && volume_m3 > 0
  return hold(scenario, sized ? { area_m2, storeVolume_m3: volume_m3 } : { area_m2 })
}
