import { expect, test } from 'vitest'
import { versionsOf } from '#live/versions.ts'

const kept = (name: string, savedAt_ms: number) => ({ name, savedAt_ms, text: '' })

test('versions go under the name they were kept under, newest first; one without its name goes by itself', () => {
  const now = kept('Shed', 3)
  const before = kept('Shed (of 2026-01-31 14:30:00)', 2)
  const first = kept('Shed (of 2026-01-30 14:30:00)', 1)
  const orphan = kept('Barn (of 2026-01-30 14:30:00)', 1)
  const own = kept('Shed (of wood)', 1)
  expect(versionsOf([now, before, first, orphan, own])).toEqual([
    { latest: now, before: [before, first] },
    { latest: orphan, before: [] },
    { latest: own, before: [] },
  ])
})
