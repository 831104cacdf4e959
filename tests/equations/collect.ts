import { checksOf, type Reaching } from './checks.ts'
import { modelDeclarations, type Declared } from './code.ts'
import { coefficientsOf, partsOnPaper, sourcesIn, type Part } from './paper.ts'

/** One equation on paper: where the code has it, what it rests on, and what checks it. */
export interface Entry {
  readonly part: string
  readonly equation: string
  readonly coefficients: readonly number[]
  /** Where its coefficients stand; null for an equation that has none, which its part's files hold together. */
  readonly at: Declared | null
  readonly sources: readonly string[]
  /** The sources are those of the whole part: the code beside the equation names none. */
  readonly ofPart: boolean
  readonly checks: readonly string[]
}

export function collectEquations(): Entry[] {
  const all = modelDeclarations()
  const checks = checksOf()
  return partsOnPaper().flatMap((part) =>
    part.equations.map((equation) => entryOf(part, equation, all, checks)),
  )
}

function entryOf(part: Part, equation: string, all: readonly Declared[], checks: readonly Reaching[]): Entry {
  const coefficients = coefficientsOf(equation)
  const near = all.filter(({ file }) => part.files.includes(file))
  const at = placeOf(coefficients, near)
  const beside = at === null ? [] : sourcesIn(at.comment)
  const reached =
    at === null ? [] : checks.filter(({ reaches }) => callers(at, all).some((c) => reaches.has(c)))
  return {
    part: part.title,
    equation,
    coefficients,
    at,
    sources: beside.length > 0 ? beside : part.sources,
    ofPart: beside.length === 0,
    checks: [...new Set(reached.map(({ quantity }) => quantity))],
  }
}

/** The declaration with most of the coefficients; the first of those that have as many. */
function placeOf(coefficients: readonly number[], near: readonly Declared[]): Declared | null {
  if (coefficients.length === 0) return null
  const count = (one: Declared) => coefficients.filter((c) => one.numbers.has(c)).length
  const best = near.reduce<Declared | null>((a, b) => (count(b) > (a === null ? 0 : count(a)) ? b : a), null)
  return best
}

/** The declaration's own name, and those of its file that use it, directly or by one another. */
function callers(at: Declared, all: readonly Declared[]): string[] {
  const mates = all.filter(({ file }) => file === at.file)
  const names = new Set([at.name])
  for (let grown = true; grown;) {
    const more = mates.filter(({ name, uses }) => !names.has(name) && [...names].some((n) => uses.has(n)))
    for (const { name } of more) names.add(name)
    grown = more.length > 0
  }
  return [...names]
}
