import { writeFileSync } from 'node:fs'
import { Session } from 'node:inspector'
import { simulateYear, useForm } from '#model/building/year'
import { inTypeScript } from '#model/building/year/flat'
import { makeCase } from './made.ts'
import { sampledLines, type Sampled } from './sampled-lines.ts'
import { yearOfItsOwn } from './year-of-its-own.ts'

/*
 * A process of its own, so that V8 notes lines from the first compilation on: years of the bench under the profiler, one kind after
 * the other. Writes the lines that took the samples into the file named.
 */
const YEARS = 40
const WARM_UPS = 15
const { inputs } = makeCase()
const KINDS = {
  own: () => yearOfItsOwn(inputs),
  shared: () => simulateYear(inputs, { lean: true, books: false }),
} as const

// WebAssembly has no lines: what they take of the year is that of the same parts in TypeScript.
useForm(inTypeScript)
const session = new Session()
session.connect()
const kinds: Record<string, Sampled> = {}
for (const [name, year] of Object.entries(KINDS)) {
  await sampledLines(session, () => {
    for (let i = 0; i < WARM_UPS; i++) year()
  })
  kinds[name] = await sampledLines(session, () => {
    for (let i = 0; i < YEARS; i++) year()
  })
}
writeFileSync(process.argv[2]!, JSON.stringify(kinds))
