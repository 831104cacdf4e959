import { checksOf, testsOf, type Reaching } from './checks.ts'
import { Code, numbersIn } from './code.ts'
import { coefficientsOf, partsOnPaper, sourceIn, type Part } from './paper.ts'
import { PLACES } from './places.ts'
import { pointedAt, type Pointed } from './pointed.ts'

/** One equation on paper: where the code has it, what it rests on, and what checks it. */
export interface Entry {
  readonly part: string
  readonly equation: string
  readonly coefficients: readonly number[]
  /** What works it out, the first first. */
  readonly at: readonly Pointed[]
  readonly source: string
  /** Checks whose value is worked out with the very function, or with one of its file that uses it. */
  readonly checks: readonly string[]
  /** Where it has no check of its own: the nearest of what it is part of. */
  readonly wider: readonly string[]
  /** Likewise the nearest tests of the rooms. */
  readonly tests: readonly string[]
}

export function allCode(): Code {
  return new Code(['src/model', 'src/studies', 'tests/evidence', 'tests/rooms'])
}

/**
 * Every equation of the physics on paper, joined by tests/equations/places.ts to the code and the evidence.
 * @throws Error for an equation without a place, a place without an equation, and a name that is not in its file
 */
export function collectEquations(code = allCode()): Entry[] {
  const evidence: Evidence = { checks: checksOf(code), tests: testsOf(code) }
  const parts = partsOnPaper()
  for (const title of Object.keys(PLACES))
    if (!parts.some((part) => part.title === title)) throw new Error(`places.ts: no part "${title}" on paper`)
  return parts.flatMap((part) => {
    const entries = part.equations.map((equation) => entryOf(part, equation, code, evidence))
    for (const start of Object.keys(PLACES[part.title] ?? {}))
      if (!part.equations.some((equation) => equation.startsWith(start)))
        throw new Error(`places.ts: no equation of "${part.title}" on paper begins with "${start}"`)
    return entries
  })
}

interface Evidence {
  readonly checks: readonly Reaching[]
  readonly tests: ReadonlyMap<string, readonly string[]>
}

function entryOf(part: Part, equation: string, code: Code, { checks, tests }: Evidence): Entry {
  const starts = Object.entries(PLACES[part.title] ?? {}).filter(([start]) => equation.startsWith(start))
  if (starts.length !== 1)
    throw new Error(
      `tests/equations/places.ts names ${starts.length} places for "${equation}" (${part.title} in src/model/README.md): add one, as 'beginning of the line': 'file.ts#function'`,
    )
  const { at, source } = pointedAt(code, starts[0]![1])
  const first = checksNaming(checks, new Set(at.map(({ declared }) => declared.id)))
  const own = [
    ...new Set([...first, ...checksNaming(checks, new Set(at.flatMap((one) => users(one, code))))]),
  ]
  return {
    part: part.title,
    equation,
    coefficients: coefficientsOf(equation),
    at,
    source: source ?? sourceIn(at.map(({ comment }) => comment)),
    checks: own,
    wider: own.length > 0 ? [] : nearest(at, code, (ids) => checksNaming(checks, ids)),
    tests:
      own.length > 0
        ? []
        : nearest(at, code, (ids) => [...new Set([...ids].flatMap((id) => tests.get(id) ?? []))]),
  }
}

function checksNaming(checks: readonly Reaching[], ids: ReadonlySet<string>): string[] {
  const found = checks.filter(({ names }) => [...names].some((id) => ids.has(id)))
  return [...new Set(found.map(({ quantity }) => quantity))]
}

/** Outwards through what uses it, one call after another, until something is found. */
function nearest(
  at: readonly Pointed[],
  code: Code,
  find: (ids: ReadonlySet<string>) => string[],
): readonly string[] {
  const seen = new Set<string>()
  for (let ring = at.map(({ declared }) => declared.id); ring.length > 0;) {
    for (const id of ring) seen.add(id)
    const found = find(new Set(ring))
    if (found.length > 0) return found
    const inner = ring
    ring = [...code.declared.values()]
      .filter(
        ({ id, file, uses }) =>
          file.startsWith('src/') && !seen.has(id) && inner.some((one) => uses.has(one)),
      )
      .map(({ id }) => id)
  }
  return []
}

/** The declaration itself, and those of its file that use it, directly or by one another. */
function users({ declared }: Pointed, code: Code): string[] {
  const mates = [...code.declared.values()].filter(({ file }) => file === declared.file)
  const found = new Set([declared.id])
  for (let grown = true; grown;) {
    const more = mates.filter(({ id, uses }) => !found.has(id) && [...found].some((one) => uses.has(one)))
    for (const { id } of more) found.add(id)
    grown = more.length > 0
  }
  return [...found]
}

/** Coefficients of an equation that are written neither in what it points to nor in a declaration that is used there. */
export function missingCoefficients({ coefficients, at }: Entry, code: Code): number[] {
  const used = at.flatMap(({ declared }) =>
    [...declared.uses].flatMap((id) => code.declared.get(id)?.node ?? []),
  )
  const written = new Set([...at.map(({ node }) => node), ...used].flatMap(numbersIn))
  return coefficients.filter((one) => !written.has(one))
}
