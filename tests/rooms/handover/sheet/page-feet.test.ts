import { expect, test } from 'vitest'
import { pageFeet } from '#model/handover/sheet'

const FEET = { title: 'Shed', made: 'Made 2026-11-30 with Duskbank 0.1.0', address: '', notBuildable: false }

test('every page carries job, date, version and number; the stamp only where something does not fit', () => {
  expect(pageFeet(FEET)).toMatch(
    /"Shed".*"Made 2026-11-30 with Duskbank 0\.1\.0".*counter\(page\).*counter\(pages\)/,
  )
  expect(pageFeet(FEET)).not.toContain('NOT BUILDABLE')
  const stamped = pageFeet({ ...FEET, notBuildable: true })
  expect(stamped).toContain('NOT BUILDABLE AS IT IS')
  expect(stamped).toContain(FEET.made)
})

test('no title can end the string or the style sheet', () => {
  const rules = pageFeet({ ...FEET, title: '"}</style><script>\n\\' })
  expect(rules).not.toMatch(/<|\n|\\"/)
})
