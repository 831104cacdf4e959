/** Holds the physics on paper (src/model/README.md) to the code beside it. */
import { readdirSync, readFileSync, existsSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'

const MODEL = fileURLToPath(new URL('../../src/model/', import.meta.url))
const paper = readFileSync(`${MODEL}README.md`, 'utf8')
const flat = paper.replace(/\s+/g, ' ')
const files = readdirSync(MODEL, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .sort()
const read = (file: string) => readFileSync(MODEL + file, 'utf8')
const named = new Set([...paper.matchAll(/`([\w/.-]+\.(?:ts|md))`/g)].map((match) => match[1]!))

/** Comments of a file on one line. */
const comments = (code: string) =>
  (code.match(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g) ?? []).join(' ').replace(/\s*\n\s*\*?\s*/g, ' ')
const AUTHOR_YEAR = /((?:[A-Z][a-zéßü]+(?:, | & ))*[A-Z][a-zéßü]{2,}) ((?:19|20)\d\d)\b/g
const STANDARD = /\b(ISO \d+|EN \d+|ASHRAE 55|IAPWS)\b/g
/** Sources a file's comments name, as "Author & Author 1999" or "ISO 13370". */
function sourcesOf(file: string): string[] {
  const text = comments(read(file))
  return [
    ...[...text.matchAll(AUTHOR_YEAR)].map((match) => `${match[1]} ${match[2]}`),
    ...[...text.matchAll(STANDARD)].map((match) => match[1]!),
  ]
}
/** Words before a year that are no author. */
const NO_AUTHOR = /^(?:Atmosphere|Handbook|January|In) /

describe('the physics on paper', () => {
  test('names only files that exist', () => {
    expect([...named].filter((file) => !existsSync(MODEL + file))).toEqual([])
  })
  test.each(files.filter((file) => sourcesOf(file).some((source) => !NO_AUTHOR.test(source))))(
    '%s rests on a published source: it and the source are named',
    (file) => {
      expect(named.has(file), `${file} is not named in src/model/README.md`).toBe(true)
      for (const source of sourcesOf(file).filter((each) => !NO_AUTHOR.test(each)))
        expect(flat, `${file} names ${source}`).toContain(source)
    },
  )
})

const parts = paper.split(/^## /m).slice(1)
/** Numbers of three digits and more: coefficients, not exponents and indices. */
const COEFFICIENT = /(?<![\w.])\d+(?:\.\d+)?(?:e-?\d+)?(?![\w.]*_)/g
const digits = (literal: string) =>
  literal
    .replace(/e.*$/, '')
    .replace(/^0+\.?0*/, '')
    .replace('.', '').length

describe('the equations on paper', () => {
  test.each(
    parts.filter((part) => part.includes('```')).map((part) => [part.split('\n')[0]!, part] as const),
  )('%s: every coefficient is in the code of its part', (_title, part) => {
    const own = [...part.matchAll(/`([\w/.-]+\.ts)`/g)].map((match) => read(match[1]!))
    const code = own
      .join('\n')
      .replace(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g, '')
      .replaceAll('_', '')
    const literals = new Set((code.match(/\d+(?:\.\d+)?(?:e-?\d+)?/g) ?? []).map(Number))
    const equations = [...part.matchAll(/```text\n([\s\S]*?)```/g)].map((match) => match[1]!).join('\n')
    const missing = (equations.match(COEFFICIENT) ?? []).filter(
      (literal) => digits(literal) >= 3 && !literals.has(Number(literal)),
    )
    expect(missing).toEqual([])
  })
})
