import { MADE_BY, type Recorded } from './file.ts'
import { digest, type Digest } from './digest.ts'
import type { RecordedCase } from './cases.ts'

/** On another machine or Node a number may differ by so much of itself; on the same, not at all. */
const ELSEWHERE = 1e-9

/** What differs between an answer as recorded and as it is now: path, before → after. Empty when nothing does. */
export function differences(one: RecordedCase, { madeBy, answers }: Recorded): string[] {
  const before = answers.get(one.name)
  if (before === undefined) return ['was not recorded']
  const now = digest(one.answer())
  const share = madeBy === MADE_BY ? 0 : ELSEWHERE
  return [...new Set([...Object.keys(before), ...Object.keys(now)])]
    .filter((path) => !(share > 0 && path.endsWith('#')))
    .filter((path) => !same(before[path], now[path], share))
    .map((path) => `${path}: ${shown(before[path])} → ${shown(now[path])}`)
}

type Value = Digest[string] | undefined

function same(a: Value, b: Value, share: number): boolean {
  if (typeof a !== 'number' || typeof b !== 'number' || share === 0) return a === b
  return Math.abs(a - b) <= share * Math.max(1, Math.abs(a))
}

const shown = (value: Value): string => (value === undefined ? 'absent' : String(value))
