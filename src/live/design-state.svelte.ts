import type { GroupName, Scenario } from '#model/scenario/fields.ts'

/** Edits of the same field closer together than this are one step back for undo. */
const SAME_GESTURE_MS = 900
const MOST_STEPS = 200

/** The description being worked on, with its way back and forth. Scenarios are replaced, never changed. */
export class DesignState {
  scenario: Scenario = $state.raw() as Scenario
  #past = $state.raw<readonly Scenario[]>([])
  #future = $state.raw<readonly Scenario[]>([])
  #lastEdit = { key: '', at_ms: -Infinity }

  constructor(initial: Scenario) {
    this.scenario = initial
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
    this.scenario = { ...this.scenario, [group]: { ...groupNow, [field]: value } }
  }

  /** Puts a whole other scenario in place (a preset, a file, an adopted point); one step back. */
  replace(scenario: Scenario): void {
    this.#remember()
    this.#future = []
    this.#lastEdit = { key: '', at_ms: -Infinity }
    this.scenario = scenario
  }

  undo(): void {
    const before = this.#past.at(-1)
    if (!before) return
    this.#past = this.#past.slice(0, -1)
    this.#future = [this.scenario, ...this.#future]
    this.#lastEdit = { key: '', at_ms: -Infinity }
    this.scenario = before
  }

  redo(): void {
    const after = this.#future[0]
    if (!after) return
    this.#future = this.#future.slice(1)
    this.#past = [...this.#past, this.scenario]
    this.#lastEdit = { key: '', at_ms: -Infinity }
    this.scenario = after
  }

  #remember(): void {
    this.#past = [...this.#past, this.scenario].slice(-MOST_STEPS)
  }
}
