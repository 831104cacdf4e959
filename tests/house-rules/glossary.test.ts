import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { GLOSSARY, glossaryText } from '#model/basis/words'
import { ROOT, sourceFiles } from './source-files.ts'

/* One quantity, one name: the glossary is the list, and the words it rules out are in no text that a person reads. */

/** Everything that may hold a label, column, help or sentence, without the glossary itself. */
const texts = [...sourceFiles('src', ['.ts', '.svelte']), ...sourceFiles('src', ['.md'])].filter(
  ({ path }) => !/words\/glossary\.ts$|GLOSSARY\.md$/.test(path),
)

/** Text without comments of code, where a word may be explained. */
const withoutComments = (text: string): string =>
  text.replace(/\/\*[^]*?\*\/|<!--[^]*?-->|(?<![:'"`])\/\/.*$/gm, '')

describe('the glossary', () => {
  test('the file of the repository is the glossary of the app', () => {
    expect(readFileSync(`${ROOT}src/model/GLOSSARY.md`, 'utf8').replace(/[ -]{2,}/g, ' ')).toBe(
      glossaryText().replace(/[ -]{2,}/g, ' '),
    )
  })

  test('no name, no column and no ruled-out word is in it twice', () => {
    const all = GLOSSARY.flatMap(({ name, instead, columns }) => [
      name,
      ...(instead ?? []),
      ...(columns ?? []),
    ])
    expect(all.filter((word, i) => all.indexOf(word) !== i)).toEqual([])
  })

  test.each(GLOSSARY.flatMap(({ name, instead }) => (instead ?? []).map((word) => [word, name] as const)))(
    '“%s” is nowhere: the name is “%s”',
    (word) => {
      const found = texts.filter(({ text }) => new RegExp(`\\b${word}\\b`, 'i').test(withoutComments(text)))
      expect(found.map(({ path }) => path)).toEqual([])
    },
  )

  test('sunshine is hours: no text gives it in W/m²', () => {
    const found = texts.filter(({ text }) => /sunshine[^.\n]{0,40}(W\/m²|Wm2)/i.test(withoutComments(text)))
    expect(found.map(({ path }) => path)).toEqual([])
  })
})
