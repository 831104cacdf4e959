import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { LICENCES_FILE, licencesText, shippedPackages } from '../../src/shell/list-licences.ts'

test('the licences of everything shipped are listed, each with its text, and the list is up to date', () => {
  expect(shippedPackages()).toEqual(expect.arrayContaining(['svelte', 'chart.js', 'suncalc', 'devalue']))
  expect(licencesText()).not.toContain('carries no licence text')
  expect(readFileSync(LICENCES_FILE, 'utf8'), 'run npx tsx src/shell/list-licences.ts').toBe(licencesText())
})
