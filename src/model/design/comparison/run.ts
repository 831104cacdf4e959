import { comparisonRow, type ComparisonCase, type ComparisonRow } from './cases.ts'
import { coverReasons, type CoverReasons } from './cover-reasons.ts'
import type { DesignAnswer } from '#model/design/assembly'

/** Two rows that differ only in the cover, and why one sheds more. */
export interface CoverPair {
  /** Places in `rows`. */
  readonly bare: number
  readonly film: number
  readonly reasons: CoverReasons | null
}

/** What has been set side by side so far. */
export interface Comparison {
  readonly rows: readonly ComparisonRow[]
  readonly coverPairs: readonly CoverPair[]
}

/**
 * Answers case after case, so that a caller can show progress, keep what is there, or stop.
 * @param cases     as `comparisonCases` orders them: bare and film of one design are together
 * @param answerOf  the answer to a case
 */
export function* comparisonRun(
  cases: readonly ComparisonCase[],
  answerOf: (one: ComparisonCase) => DesignAnswer,
): Generator<Comparison, Comparison> {
  let done: Comparison = { rows: [], coverPairs: [] }
  let before: { one: ComparisonCase; answer: DesignAnswer } | null = null
  for (const [place, one] of cases.entries()) {
    const answer = answerOf(one)
    const pair = before && isCoverPair(before.one, one) ? [pairOf(before, { one, answer }, place)] : []
    done = { rows: [...done.rows, comparisonRow(one, answer)], coverPairs: [...done.coverPairs, ...pair] }
    before = { one, answer }
    yield done
  }
  return done
}

function isCoverPair(a: ComparisonCase, b: ComparisonCase): boolean {
  return (
    a.cover !== b.cover &&
    a.weather === b.weather &&
    a.plan === b.plan &&
    a.coating === b.coating &&
    a.building === b.building
  )
}

interface Answered {
  readonly one: ComparisonCase
  readonly answer: DesignAnswer
}

/** The second of the pair is at `place`, the first just before it. */
function pairOf(first: Answered, second: Answered, place: number): CoverPair {
  const [bare, film] = first.one.cover === 'bare' ? [first, second] : [second, first]
  return {
    bare: first === bare ? place - 1 : place,
    film: first === bare ? place : place - 1,
    reasons: coverReasons(bare.answer.panel, film.answer.panel, bare.answer.year),
  }
}
