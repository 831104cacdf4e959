import { withChosen, type GroupName, type Scenario } from '#model/design/scenario'
import type { PlacedDesign } from '#live/design-link.ts'
import { ownNamed } from '#live/worked-example.ts'

/** Edits of the same field closer together than this are one step back for undo. */
const SAME_GESTURE_MS = 900
const MOST_STEPS = 200

/** The description being worked on, with its way back and forth. Scenarios are replaced, never changed. */
export class DesignState {
  #now: PlacedDesign = $state.raw() as PlacedDesign
  #past = $state.raw<readonly PlacedDesign[]>([])
  #future = $state.raw<readonly PlacedDesign[]>([])
  #lastEdit = { key: '', at_ms: -Infinity }

  constructor(initial: PlacedDesign) {
    this.#now = initial
  }

  get scenario(): Scenario {
    return this.#now.scenario
  }
  /** Id of the climate the design uses, as in `ClimateChoice`. */
  get climate(): string {
    return this.#now.climate
  }
  /** Both together: what a link, a file and the autosave carry. */
  get placed(): PlacedDesign {
    return this.#now
  }

  get canUndo(): boolean {
    return this.#past.length > 0
  }
  get canRedo(): boolean {
    return this.#future.length > 0
  }

  /** Sets the field named `group.field`; the value is one its input accepted. */
  setAt(key: `${GroupName}.${string}`, value: unknown): void {
    const [group, field] = key.split('.') as [GroupName, string]
    const groupNow = this.scenario[group] as Record<string, unknown>
    if (Object.is(groupNow[field], value)) return
    const now = performance.now()
    const sameGesture = this.#lastEdit.key === key && now - this.#lastEdit.at_ms < SAME_GESTURE_MS
    this.#lastEdit = { key, at_ms: now }
    if (!sameGesture) this.#remember()
    this.#future = []
    this.#now = ownNamed({ ...this.#now, scenario: withChosen(this.scenario, key, value) })
  }

  /** Puts a whole other scenario in place (a preset, a file, an adopted point); one step back. */
  replace(scenario: Scenario): void {
    this.place({ scenario, climate: this.climate })
  }

  /** Moves the design to another climate; one step back. */
  setClimate(climate: string): void {
    if (climate !== this.climate) this.place({ scenario: this.scenario, climate })
  }

  /** Opens a design in its climate; one step back. */
  place(placed: PlacedDesign): void {
    this.#remember()
    this.#future = []
    this.#lastEdit = { key: '', at_ms: -Infinity }
    this.#now = ownNamed(placed)
  }

  undo(): void {
    const before = this.#past.at(-1)
    if (!before) return
    this.#past = this.#past.slice(0, -1)
    this.#future = [this.#now, ...this.#future]
    this.#lastEdit = { key: '', at_ms: -Infinity }
    this.#now = before
  }

  redo(): void {
    const after = this.#future[0]
    if (!after) return
    this.#future = this.#future.slice(1)
    this.#past = [...this.#past, this.#now]
    this.#lastEdit = { key: '', at_ms: -Infinity }
    this.#now = after
  }

  #remember(): void {
    this.#past = [...this.#past, this.#now].slice(-MOST_STEPS)
  }
}
