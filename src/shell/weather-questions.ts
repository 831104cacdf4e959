import { writeFileSync } from 'node:fs'
import { stop, type Problem } from '#model/basis/words'
import {
  asksAboutClock,
  isQuantity,
  isUnitOf,
  ledgerOf,
  writeMapping,
  type OpenedWeather,
} from '#model/outdoors/intake'
import type { Options } from './options.ts'

/** Lines of the ledger less sure than this are said with every answer. */
const SAID_BELOW = 0.8

/** The answer that leaves a clock alone. */
const AS_READ = 'as-read'

/** The answers of --yes-to by name. @throws ProblemError for one that is no quantity with one of its units, and not the clock's */
export function answersOf({ values }: Options): Record<string, string> {
  const given = (values['yes-to'] ?? []) as string[]
  return Object.fromEntries(
    given.map((answer) => {
      const at = answer.indexOf('=')
      const [name, value] = [answer.slice(0, at), answer.slice(at + 1)]
      if (name === 'clock' ? value === AS_READ : isQuantity(name) && isUnitOf(name, value))
        return [name, value]
      throw stop(
        'bad-answer',
        `--yes-to ${answer} answers no question.`,
        `Write --yes-to QUANTITY=UNIT, e.g. windSpeed=km/h, or clock=${AS_READ}.`,
      )
    }),
  )
}

/** What the reading must be told before its answer counts: units that more than one fits, and a clock that the sun contradicts. */
export function openQuestions(opened: OpenedWeather, options: Options, file: string): Problem[] {
  const answers = answersOf(options)
  const units = opened.problems
    .filter(({ code }) => code === 'weather-question')
    .map((problem): Problem => ({
      ...problem,
      severity: 'error',
      remedy: problem.remedy.replace(/(\w+)=/g, '--yes-to $1='),
    }))
  const { sentence, corrections } = opened.clock
  const saidClock = ['clock-offset', 'stamp'].some((name) => options.values[name] !== undefined)
  const settled = saidClock || answers['clock'] !== undefined
  if (opened.record === null || settled || !asksAboutClock(opened.clock)) return units
  const ways = corrections.map(({ change, sentence: what }) => {
    const { time } = change
    if (time?.clockOffset_h !== undefined) return `--clock-offset ${time.clockOffset_h} (${what})`
    if (time?.stamp !== undefined) return `--stamp ${time.stamp} (${what})`
    return what
  })
  return [
    ...units,
    {
      code: 'weather-clock-question',
      severity: 'error',
      message: sentence,
      remedy: `Say what is right: ${[...ways, `--yes-to clock=${AS_READ} (it is right as it is)`].join('; or ')}.`,
      place: { file },
    },
  ]
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
