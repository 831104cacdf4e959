import { count, figure, words, type Text, type Wording } from '#model/basis/words'
import { limitInMovingAir_C } from './moving-air.ts'
import { airOffset_K } from './yardstick-of.ts'
import type { TargetSpec } from './target.ts'

/**
 * The limit within a sentence: as it is given, and where moving air is credited the temperature that hours are judged by.
 * @param adaptive  name of a limit that moves
 */
export function limitWords(target: TargetSpec, adaptive: Text = 'the adaptive limit'): Wording {
  const offset_K = airOffset_K(target)
  const air = figure(target.airSpeed_ms, 'ms', 2)
  if (target.kind === 'adaptive')
    return offset_K === 0 ? words`${adaptive}` : words`${adaptive} raised for air that moves at ${air}`
  const limit = figure(target.limit_C, 'C')
  const felt_C = limitInMovingAir_C(target.limit_C, offset_K)
  return felt_C === target.limit_C
    ? words`${limit}`
    : words`${limit} (${figure(felt_C, 'C')} in air that moves at ${air})`
}

/** `at most 40 h a year above 26 °C`: the target within a sentence. `adaptive`: the name of a limit that moves. */
export function targetWords(target: TargetSpec, adaptive: Text = 'the adaptive limit'): Wording {
  const limit = limitWords(target, adaptive)
  switch (target.kind) {
    case 'peak':
      return words`never above ${limit}`
    case 'hours':
      return words`at most ${count(target.allowedHours_h)} h a year above ${limit}`
    case 'degreeHours':
      return words`at most ${figure(target.allowedDegreeHours_Kh, 'Kh')} a year above ${limit}`
    case 'adaptive':
      return words`at most ${count(target.allowedHours_h)} h a year above ${limit}`
  }
}
