import type { AgeingRange } from '#model/panels/coating'

/** How far each named input may be off, and why; `between`: whatever the scenario says. Ageing gives its own. */
export interface Spread extends AgeingRange {
  readonly between?: readonly [number, number]
}
