import { readKept, writeKept } from '#live/kept-text.ts'
import type { UnitSystem } from '#model/basis/units'

/** SI or US units: one switch for everything that is shown; inside, all is SI. */
export class UnitChoice {
  system = $state<UnitSystem>('si')

  /** Reads the last choice; call once in the browser. */
  recall(): void {
    if (readKept('units') === 'us') this.system = 'us'
  }

  choose(system: UnitSystem): void {
    this.system = system
    writeKept('units', system)
  }
}
