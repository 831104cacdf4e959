import { writeFileSync } from 'node:fs'
import { stop, type Problem } from '#model/basis/words'
import {
  AS_READ,
  ASKED_BESIDE,
  isQuantity,
  isUnitOf,
  ledgerOf,
  writeMapping,
  type OpenedWeather,
  type QuestionChoice,
} from '#model/outdoors/intake'
import type { Options } from './options.ts'

/** Lines of the ledger less sure than this are said with every answer. */
const SAID_BELOW = 0.8

/** The answers of --yes-to by name. @throws ProblemError for one that answers no question */
export function answersOf({ values }: Options): Record<string, string> {
  const given = (values['yes-to'] ?? []) as string[]
  return Object.fromEntries(
    given.map((answer) => {
      const at = answer.indexOf('=')
      const [name, value] = [answer.slice(0, at), answer.slice(at + 1)]
      const beside = (ASKED_BESIDE as readonly string[]).includes(name)
      if (beside ? value === AS_READ : isQuantity(name) && isUnitOf(name, value)) return [name, value]
      throw stop(
        'bad-answer',
        `--yes-to ${answer} answers no question.`,
        `Write --yes-to QUANTITY=UNIT, e.g. windSpeed=km/h, or ${ASKED_BESIDE.join(', ')} with =${AS_READ}.`,
      )
    }),
  )
}

/** What must be answered before the record counts, each with the options that answer it. */
export function openQuestions({ questions }: OpenedWeather, file: string): Problem[] {
  return questions.map(({ about, sentence, choices }) => ({
    code: 'weather-question',
    severity: 'error',
    message: sentence,
    remedy: `Say which it is: ${choices.map(choiceWords).join('; or ')}.`,
    place: { file, field: about },
  }))
}

function choiceWords({ words, change: { answers = {}, time = {}, site = {} } }: QuestionChoice): string {
  const options = [
    ...Object.entries(answers).map(([name, value]) => `--yes-to ${name}=${value}`),
    ...[
      ['clock-offset', time.clockOffset_h],
      ['stamp', time.stamp],
      ['clock-shift', time.shift_h === undefined ? undefined : Number(time.shift_h.toFixed(3))],
      ['latitude', site.latitude_deg],
      ['longitude', site.longitude_deg],
      ['utc-offset', site.utcOffset_h],
    ].flatMap(([name, value]) => (value === undefined ? [] : [`--${name} ${value}`])),
  ]
  return `${options.join(' ')} (${words.replace(/\.$/, '')})`
}

/** The ledger's lines that are not certain, for standard error. */
export function assumptionsOf(opened: OpenedWeather): string[] {
  return ledgerOf(opened)
    .filter(({ certainty, what }) => certainty < SAID_BELOW && what !== 'gap filled')
    .map(({ what, taken, why }) => `${what}: ${taken} (${why})`)
}

/** Keeps the mapping, answers included, in the file of --save-mapping. @throws ProblemError when it cannot be written */
export function saveMapping({ mapping }: OpenedWeather, { values }: Options): void {
  const file = values['save-mapping']
  if (typeof file !== 'string' || mapping === null) return
  try {
    writeFileSync(file, writeMapping(mapping))
  } catch (error) {
    throw stop(
      'cannot-write',
      `The mapping could not be written (${(error as Error).message}).`,
      'Choose another file.',
      { file },
    )
  }
}
