import type { ColumnMapping } from '../mapping.ts'
import type { OpenOptions } from '../options.ts'
import type { ProblemList } from '../problems.ts'
import { AS_READ, asRead } from '../question.ts'
import type { HeaderReading } from './header-guess.ts'
import type { Profile } from './profile.ts'
import { isUnitOf, QUANTITIES, givesTime } from './quantity.ts'
import { isFixedName, questionSentence, type UnitQuestion, unitQuestion } from './unit-questions.ts'

/** Asks once about every column where no unit is named and more than one fits. */
export function askUnits(
  columns: readonly ColumnMapping[],
  headers: readonly HeaderReading[],
  profiles: readonly (Profile | null)[],
  latitude_deg: number | undefined,
  answers: Readonly<Record<string, string>>,
  problems: ProblemList,
): void {
  const open = columns.flatMap(({ index, header, quantity, unit }) => {
    const named = headers[index]!.unit
    const profile = profiles[index] ?? null
    if (profile === null || isUnitOf(quantity, answers[quantity]) || isFixedName(header)) return []
    if (named !== null && isUnitOf(quantity, named)) return []
    return unitQuestion(quantity, header, unit, profile, latitude_deg) ?? []
  })
  if (open.length === 0) return
  const imperial = columns.some(({ unit }) => unit === 'F' || unit === 'inHg')
  problems.ask({
    about: open.length === 1 ? open[0]!.quantity : 'units',
    sentence: open.map(questionSentence).join(' '),
    choices: together(open)
      .toSorted((a, b) => strangeness(a, imperial) - strangeness(b, imperial))
      .map((answer) => ({
        words: `It is ${answer.map(unitWords).join(', ')}.`,
        change: { answers: Object.fromEntries(answer.map(({ quantity, unit }) => [quantity, unit])) },
      })),
  })
}

interface UnitAnswer {
  readonly quantity: UnitQuestion['quantity']
  readonly unit: ColumnMapping['unit']
  readonly of: string
}

const unitWords = ({ unit, of }: UnitAnswer): string => (of === '' ? unit : `${of} in ${unit}`)

/** Every way of answering all open questions at once. */
function together(open: readonly UnitQuestion[]): UnitAnswer[][] {
  return open.reduce<UnitAnswer[][]>(
    (ways, { quantity, fitting }) =>
      ways.flatMap((way) =>
        fitting.map(({ unit }) => [
          ...way,
          { quantity, unit, of: open.length === 1 ? '' : QUANTITIES[quantity].label.toLowerCase() },
        ]),
      ),
    [[]],
  )
}

/** Degrees Fahrenheit go with miles an hour, and both with inches of mercury: common practice, no source. */
function strangeness(answer: readonly UnitAnswer[], imperial: boolean): number {
  const fahrenheit = answer.find(({ quantity }) => quantity === 'airTemp')?.unit
  const miles = answer.find(({ quantity }) => quantity === 'windSpeed')?.unit === 'mph'
  const expected = fahrenheit === undefined ? imperial : fahrenheit === 'F'
  return Number(miles !== expected) + Number(fahrenheit !== undefined && (fahrenheit === 'F') !== imperial)
}

/** Recognised by values with less certainty than this, a column is asked about. */
const SURE = 0.9

/** Asks about columns that only their values show, where those leave a doubt. */
export function askColumns(
  columns: readonly ColumnMapping[],
  answers: OpenOptions['answers'],
  problems: ProblemList,
): void {
  const guessed = columns.filter(({ basis, quantity }) => basis === 'physics' && quantity !== 'ignore')
  if (answers?.['columns'] === AS_READ || !guessed.some(({ confidence }) => confidence < SURE)) return
  const list = guessed.map(
    ({ header, quantity, unit, confidence }) =>
      `${header} is ${QUANTITIES[quantity].label.toLowerCase()} (${givesTime(quantity) ? '' : `${unit}, `}${Math.round(confidence * 100)} %)`,
  )
  problems.ask({
    about: 'columns',
    sentence: `${guessed.length} columns were recognised by their values: ${list.join(', ')}. A column that is wrong is set right in the mapping.`,
    choices: [asRead('columns')],
  })
}
