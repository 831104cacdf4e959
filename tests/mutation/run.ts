/**
 * `npm run -s mutation`: changes the code of sky, panel and year in one place at a time and asks whether the room's own
 * tests notice. Prints every change they did not notice, a score by file and by room, and one closing line; fails
 * under 80 % in any room. Words after the command choose rooms or files (`npm run -s mutation -- outdoors/sky
 * src/model/building/year/delivery.ts`); `--cores=1` runs one change at a time instead of two; `--sample=0.3` tries three tenths of
 * the changes, always the same ones (`sample.js`), and says so.
 */
import { Stryker } from '@stryker-mutator/core'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { leftOut, pct, scoreOf, survived, undrawn, words, type Mutant } from './score.ts'

const ROOT = fileURLToPath(new URL('../../', import.meta.url))
const ROOMS = ['outdoors/sky', 'panels/plate', 'building/year'] as const
/** Changes that each room's tests must notice, %. */
const REACH_pct = 80

const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'))
const option = (name: string, usual: number): number =>
  Number(new RegExp(`--${name}=([\\d.]+)`).exec(process.argv.join(' '))?.[1] ?? usual)
const cores = option('cores', 2)
const sample = option('sample', 1)
process.env.MUTATION_SAMPLE = String(sample)

/** Mutants of a room, or of some files of it, under the room's own tests. */
async function mutate(room: string, files: readonly string[]): Promise<readonly Mutant[]> {
  const folder = mkdtempSync(join(tmpdir(), 'duskbank-mutation-'))
  process.env.MUTATED_ROOM = room
  try {
    return await new Stryker({
      mutate: [...files],
      testRunner: 'vitest',
      vitest: { configFile: 'tests/mutation/vitest.config.ts', related: false },
      coverageAnalysis: 'perTest',
      ignoreStatic: false,
      plugins: [
        '@stryker-mutator/vitest-runner',
        './tests/mutation/error-words.js',
        './tests/mutation/sample.js',
      ],
      checkers: sample < 1 ? ['sample'] : [],
      ignorers: ['error-words'],
      // What the tests of these rooms never open is not copied; the tsconfig that SvelteKit writes is.
      ignorePatterns: ['build', 'static', 'src/ui', 'src/routes', '!.svelte-kit', '.svelte-kit/output'],
      concurrency: cores,
      tempDirName: folder,
      cleanTempDir: 'always',
      reporters: ['dots'],
      warnings: false,
      logLevel: 'warn' as never,
      allowConsoleColors: false,
    }).runMutationTest()
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const fileOf = ({ fileName }: Mutant): string => relative(ROOT, resolve(ROOT, fileName))

const placeOf = (mutant: Mutant): string =>
  `${fileOf(mutant)}:${mutant.location.start.line}:${mutant.location.start.column + 1}`

function report(room: string, mutants: readonly Mutant[], seconds: number): void {
  for (const mutant of mutants.filter(survived)) {
    const how = mutant.status === 'NoCoverage' ? 'not run' : 'survived'
    const change = (mutant.replacement ?? '').replace(/\s+/g, ' ').slice(0, 80)
    console.log(`${how.padEnd(8)} ${placeOf(mutant)}  ${mutant.mutatorName} → ${change}`)
  }
  for (const file of [...new Set(mutants.map(fileOf))].sort()) {
    const score = scoreOf(mutants.filter((mutant) => fileOf(mutant) === file))
    if (score.mutants > 0) console.log(`  ${file}: ${words(score)}`)
  }
  const of = (status: Mutant['status']) => mutants.filter((mutant) => mutant.status === status).length
  console.log(
    `${room}: ${words(scoreOf(mutants))} (${of('Timeout')} by never ending, ${of('RuntimeError')} by a test file that no longer loads; ` +
      `${mutants.filter(leftOut).length} in the words of an error left out; ${of('CompileError')} not drawn for the sample; ${Math.round(seconds)} s)\n`,
  )
}

const all: Mutant[] = []
let short = false
for (const room of ROOMS) {
  const files = asked.filter((word) => word.startsWith(`src/model/${room}/`))
  if (asked.length > 0 && files.length === 0 && !asked.includes(room)) continue
  const begin = Date.now()
  const mutants = await mutate(room, files.length > 0 ? files : [`src/model/${room}/**/*.ts`])
  report(room, mutants, (Date.now() - begin) / 1000)
  all.push(...mutants)
  if (!(pct(scoreOf(mutants)) >= REACH_pct)) short = true
}
if (sample < 1)
  console.log(
    `a sample: ${all.filter(undrawn).length} of ${all.filter((mutant) => !leftOut(mutant)).length} mutants were not tried`,
  )
console.log(words(scoreOf(all)))
process.exitCode = short ? 1 : 0
