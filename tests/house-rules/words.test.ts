import { expect, test } from 'vitest'
import { readFileSync } from 'node:fs'
import { ROOT, sourceFiles } from './source-files.ts'

/* Docs, comments and screens are in plain professional English: words that had grown into a dialect of the project's own. */

const DIALECT: readonly (readonly [string, RegExp, instead: string])[] = [
  ['coolth', /\bcoolth\b/i, 'cold'],
  ['told', /\btold\b(?! apart)/i, 'given, said'],
  ['honest', /\bhonest(?:y|ly)?\b/i, 'measured, as it is'],
  ['the books', /\b(?:the|keeps?|keeping) books\b/i, 'the energy balance'],
  // a tank, a tree or a board stands somewhere; a sign stands for something, and what is plain stands out
  ['stands', /(?<!\b(?:tank|tanks|pot|board|trees|floor it) )\b(?:stands|stood)\b(?! (?:for|out)\b)/i, 'is'],
]

const DOCS = ['README.md', 'DEVELOPERS.md'].map((path) => ({
  path,
  text: readFileSync(`${ROOT}${path}`, 'utf8'),
}))
const TEXTS = [
  ...DOCS,
  ...sourceFiles('src', ['.ts', '.svelte', '.md']),
  ...sourceFiles('tests', ['.ts', '.md']),
]

const linesWith = (word: RegExp, text: string): string[] => text.split('\n').filter((line) => word.test(line))

test.each(DIALECT)('“%s” is not said', (_name, word) => {
  const found = TEXTS.filter(({ path }) => !path.endsWith('house-rules/words.test.ts')).flatMap(
    ({ path, text }) => linesWith(word, text).map((line) => `${path}: ${line.trim()}`),
  )
  expect(found).toEqual([])
})

test.each(DIALECT)('“%s” in a comment is found', (name, word) => {
  expect(linesWith(word, `/* as the answer: ${name} here */`)).toHaveLength(1)
})
