import type { ColumnMapping } from '../mapping.ts'
import type { OpenOptions } from '../options.ts'
import type { ProblemList } from '../problems.ts'
import { AS_READ, asRead } from '../question.ts'
import type { HeaderReading } from './header-guess.ts'
import type { Profile } from './profile.ts'
import { isUnitOf, QUANTITIES, tellsTime } from './quantity.ts'
import { isFixedName, questionSentence, type UnitQuestion, unitQuestion } from './unit-questions.ts'

/** Asks, column by column, where no unit is named and more than one fits. */
export function askUnits(
  columns: readonly ColumnMapping[],
  headers: readonly HeaderReading[],
  profiles: readonly (Profile | null)[],
  latitude_deg: number | undefined,
  answers: Readonly<Record<string, string>>,
  problems: ProblemList,
): void {
  for (const { index, header, quantity, unit } of columns) {
    const named = headers[index]!.unit
    const profile = profiles[index] ?? null
    if (profile === null || isUnitOf(quantity, answers[quantity])) continue
    if (named !== null && isUnitOf(quantity, named)) continue
    const question = unitQuestion(quantity, header, unit, profile, latitude_deg)
    if (question === null || isFixedName(header)) continue
    problems.ask({
      about: quantity,
      sentence: questionSentence(question),
      choices: likeliestFirst(question.fitting, columns).map((fit) => ({
        words: `It is ${fit.unit}.`,
        change: { answers: { [quantity]: fit.unit } },
      })),
    })
  }
}

/** Miles an hour first where the table has degrees Fahrenheit or inches of mercury: common practice, no source. */
function likeliestFirst(
  fitting: UnitQuestion['fitting'],
  columns: readonly ColumnMapping[],
): UnitQuestion['fitting'] {
  const imperial = columns.some(({ unit }) => unit === 'F' || unit === 'inHg')
  return imperial ? fitting.toSorted((a, b) => Number(b.unit === 'mph') - Number(a.unit === 'mph')) : fitting
}

/** Recognised by values with less certainty than this, a column is asked about. */
const SURE = 0.9

/** Asks about columns that only their values tell, where those leave a doubt. */
export function askColumns(
  columns: readonly ColumnMapping[],
  answers: OpenOptions['answers'],
  problems: ProblemList,
): void {
  const guessed = columns.filter(({ basis, quantity }) => basis === 'physics' && quantity !== 'ignore')
  if (answers?.['columns'] === AS_READ || !guessed.some(({ confidence }) => confidence < SURE)) return
  const list = guessed.map(
    ({ header, quantity, unit, confidence }) =>
      `${header} is ${QUANTITIES[quantity].label.toLowerCase()} (${tellsTime(quantity) ? '' : `${unit}, `}${Math.round(confidence * 100)} %)`,
  )
  problems.ask({
    about: 'columns',
    sentence: `${guessed.length} columns were recognised by their values: ${list.join(', ')}. A column that is wrong is set right in the mapping.`,
    choices: [asRead('columns')],
  })
}
