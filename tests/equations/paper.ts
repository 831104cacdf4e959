import { readFileSync } from 'node:fs'
import { ROOT } from '../house-rules/source-files.ts'

/** One part of the physics on paper (src/model/README.md). */
export interface Part {
  readonly title: string
  /** From src/model, with forward slashes. */
  readonly files: readonly string[]
  readonly equations: readonly string[]
}

const AUTHOR_YEAR = /((?:[A-Z][a-zéßü]+(?:, | & ))*(?:[A-Z][a-z]+-)?[A-Z][a-zéßü]{2,}) ((?:19|20)\d\d)\b/g
const STANDARD = /\b(ISO \d+|EN \d+|ASHRAE 55|ASHRAE Fundamentals|IAPWS)\b/g
/** Words before a year that are no author. */
const NO_AUTHOR = /^(?:Atmosphere|Handbook|January|In|Fundamentals) /

/** Sources that a text names, each once, in its order. */
function sourcesIn(text: string): string[] {
  const flat = text.replace(/\s*\n\s*\*?\s*/g, ' ')
  const authors = [...flat.matchAll(AUTHOR_YEAR)].map((m) => `${m[1]} ${m[2]}`)
  const standards = [...flat.matchAll(STANDARD)].map((m) => m[1]!)
  return [...new Set([...authors.filter((one) => !NO_AUTHOR.test(one)), ...standards])]
}

export function partsOnPaper(): Part[] {
  const paper = readFileSync(`${ROOT}src/model/README.md`, 'utf8')
  return paper
    .split(/^## /m)
    .slice(1)
    .map((text) => ({
      title: text.split('\n')[0]!,
      files: [...new Set([...text.matchAll(/`([\w/.-]+\.ts)`/g)].map((m) => m[1]!))],
      equations: [...text.matchAll(/```text\n([\s\S]*?)```/g)].flatMap((m) => linesOf(m[1]!)),
    }))
    .filter(({ equations }) => equations.length > 0)
}

/** Lines of a block; one that begins far to the right belongs to the line before it. */
function linesOf(block: string): string[] {
  const lines: string[] = []
  for (const line of block.split('\n').filter((one) => one.trim() !== '')) {
    if (/^\s{4,}/.test(line) && lines.length > 0) lines.push(`${lines.pop()!}; ${line.trim()}`)
    else lines.push(line.trim())
  }
  return lines.map((line) => line.replace(/\s+/g, ' '))
}

/** Numbers of three digits and more in an equation: its coefficients, not exponents and indices. */
export function coefficientsOf(equation: string): number[] {
  const found =
    equation.replace(/\b(?:ISO|EN) [\d-]+/g, '').match(/(?<![\w.])\d+(?:\.\d+)?(?:e-?\d+)?(?![\w.]*_)/g) ?? []
  const digits = (literal: string) =>
    literal
      .replace(/e.*$/, '')
      .replace(/^0+\.?0*/, '')
      .replace('.', '').length
  return found.filter((literal) => digits(literal) >= 3).map(Number)
}

const BOOK =
  /(?:Duffie & Beckman|Incropera & DeWitt|Siegel & Howell|Raithby & Hollands|White, Viscous Fluid Flow|CODATA 2018)(?:,? (?:eqs?\.|ch\.|table|§+) ?[\d.–-]*\d)?/g

/**
 * The source that comments name: what follows "Source:", else the handbooks, papers and standards in them, else that it is
 * common practice. Empty when they name none.
 */
export function sourceIn(comments: readonly string[]): string {
  const texts = comments.map((one) =>
    one.replace(/^\s*(?:\/\*\*|\*\/|\*|\/\/)|\*\//gm, ' ').replace(/\s+/g, ' '),
  )
  const given = texts.flatMap(
    (one) => /\bSources?:? (?:as in )?(.+?)(?= @|\.? *$)/.exec(one)?.[1]?.trim() ?? [],
  )
  if (given.length > 0) return [...new Set(given)].join('; ')
  const text = texts.join(' ')
  const named = [...new Set([...[...text.matchAll(BOOK)].map((found) => found[0]), ...sourcesIn(text)])]
  const memory = /from memory/.test(text)
  if (named.length > 0) return `${named.join('; ')}${memory ? ' (from memory)' : ''}`
  if (/common practice, no source/.test(text)) return 'common practice, no source'
  return memory ? 'from memory' : ''
}
