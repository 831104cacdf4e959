import type { UnitSystem } from '#model/basis/units'
import { wordingText } from '#model/basis/words'
import { limitWords, type TargetSpec } from '#model/design/target'

/** "26.0 °C", with what it comes to in moving air, in the reader's units; the same on every page. */
export const limitText = (target: TargetSpec, system: UnitSystem): string =>
  wordingText(limitWords(target, 'the comfort band'), system)
