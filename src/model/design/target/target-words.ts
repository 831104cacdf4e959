import { count, figure, words, type Text, type Wording } from '#model/basis/words'
import type { TargetSpec } from './target.ts'

/** `at most 40 h a year above 26 °C`: the target within a sentence. `adaptive`: the name of a limit that moves. */
export function targetWords(target: TargetSpec, adaptive: Text = 'the adaptive limit'): Wording {
  const limit = figure(target.limit_C, 'C')
  switch (target.kind) {
    case 'peak':
      return words`never above ${limit}`
    case 'hours':
      return words`at most ${count(target.allowedHours_h)} h a year above ${limit}`
    case 'degreeHours':
      return words`at most ${figure(target.allowedDegreeHours_Kh, 'Kh')} a year above ${limit}`
    case 'adaptive':
      return words`at most ${count(target.allowedHours_h)} h a year above ${adaptive}`
  }
}
