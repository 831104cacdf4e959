import { AS_DESCRIBED, type ComparisonRow } from './cases.ts'
import type { Comparison } from './run.ts'
import { coverSentences, cutSentence, doNothingSentence, planSentence } from './verdict-words.ts'
import { cutOrNot, filmOrBare, nightOrAllDay, sameBut } from './verdicts.ts'
import type { UnitSystem } from '#model/basis/units'
import { rowName, wordColumns, type WordColumn } from './row-names.ts'

/** What is to be said about one pair of rows. */
export interface VerdictWords {
  /** What they have in common, where that is not the same for all; else empty. */
  readonly about: string
  readonly sentences: readonly string[]
}

/** Every fair pair of the comparison in words: plans, covers, then changes of the building. */
export function verdictList(comparison: Comparison, system: UnitSystem): readonly VerdictWords[] {
  return [
    ...planVerdicts(comparison.rows, system),
    ...coverVerdicts(comparison, system),
    ...cutVerdicts(comparison.rows, system),
  ]
}

/** The parts in which rows differ, but for the one a verdict is on. */
function common(rows: readonly ComparisonRow[], but: WordColumn['id']): readonly WordColumn[] {
  const columns = wordColumns(rows).filter(({ id }) => id !== but)
  return columns.filter(({ id }) => new Set(rows.map((row) => row[id])).size > 1)
}

export function planVerdicts(rows: readonly ComparisonRow[], system: UnitSystem): VerdictWords[] {
  const columns = common(rows, 'plan')
  return rows
    .filter(({ plan }) => plan === 'nightOnly')
    .flatMap((night) => {
      const allDay = rows.find((row) => row.plan === 'allDay' && sameBut('plan', row, night))
      if (!allDay) return []
      return [
        { about: rowName(night, columns), sentences: [planSentence(nightOrAllDay(night, allDay), system)] },
      ]
    })
}

export function coverVerdicts({ rows, coverPairs }: Comparison, system: UnitSystem): VerdictWords[] {
  const columns = common(rows, 'cover')
  return coverPairs.map(({ bare, film, reasons }) => ({
    about: rowName(rows[bare]!, columns),
    sentences: coverSentences(filmOrBare(rows[bare]!, rows[film]!, reasons), system),
  }))
}

function cutVerdicts(rows: readonly ComparisonRow[], system: UnitSystem): VerdictWords[] {
  const columns = common(rows, 'building')
  return rows
    .filter(({ building }) => building === AS_DESCRIBED)
    .flatMap((described) => {
      const changes = rows.filter((row) => row !== described && sameBut('building', row, described))
      if (changes.length === 0) return []
      const least = (row: ComparisonRow) => row.area_m2 ?? Infinity
      const ordered = changes.toSorted((a, b) => (least(a) === least(b) ? 0 : least(a) - least(b)))
      const sentences = ordered.map((row) => cutSentence(cutOrNot(row, described), system))
      return [
        {
          about: rowName(described, columns),
          sentences: [doNothingSentence(described, system), ...sentences],
        },
      ]
    })
}
