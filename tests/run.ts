/**
 * `npm test`: every check in turn (format, lint, unused code, types, unit, build, browser) and one closing line,
 * `N passed, N failed`. A check without its own count is one test. Words after the command name the checks to run;
 * `recorded` (all 200 recorded answers, of which the unit tests take every tenth) runs only when it is named.
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('../', import.meta.url))

interface Outcome {
  readonly passed: number
  readonly failed: number
}

/** Runs a program of node_modules/.bin with its output shown; true when it ends well. */
function runs(program: string, ...words: string[]): boolean {
  console.log(`\n── ${program} ${words.join(' ')}`)
  return (
    spawnSync(join(ROOT, 'node_modules/.bin', program), words, { cwd: ROOT, stdio: 'inherit' }).status === 0
  )
}

const once = (...steps: boolean[]): Outcome => {
  const failed = steps.filter((ok) => !ok).length
  return { passed: steps.length - failed, failed }
}

/** One vitest project, counted from its own report. A file that does not even load counts as one failure. */
function vitest(project: string): Outcome {
  const folder = mkdtempSync(join(tmpdir(), 'duskbank-test-'))
  const report = join(folder, 'report.json')
  const ok = runs(
    'vitest',
    'run',
    '--project',
    project,
    '--reporter=default',
    '--reporter=json',
    `--outputFile=${report}`,
  )
  try {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(report, 'utf8')) as Record<
      string,
      number
    >
    const failed = numFailedTests ?? 0
    return { passed: numPassedTests ?? 0, failed: ok ? failed : Math.max(1, failed) }
  } catch {
    return { passed: 0, failed: 1 }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const CHECKS: Readonly<Record<string, () => Outcome>> = {
  format: () => once(runs('prettier', '--check', '--log-level', 'warn', '.')),
  lint: () => once(runs('eslint', '.')),
  unused: () => once(runs('knip', '--no-progress')),
  types: () =>
    once(
      runs('svelte-check', '--tsconfig', './tsconfig.json'),
      runs('tsc', '-p', 'src/model/tsconfig.json'),
      runs('tsc', '-p', 'src/studies/tsconfig.json'),
    ),
  unit: () => vitest('unit'),
  build: () => once(runs('vite', 'build', '--logLevel', 'warn')),
  browser: () => vitest('browser'),
  recorded: () => once(runs('tsx', 'tests/recorded/check.ts')),
}

const asked = process.argv.slice(2)
const unknown = asked.filter((name) => !Object.hasOwn(CHECKS, name))
if (unknown.length > 0) {
  console.error(`There is no check ${unknown.join(', ')}. Use ${Object.keys(CHECKS).join(', ')}.`)
  process.exit(2)
}
// Linter and type checks read the settings that the framework writes.
let passed = 0
let failed = runs('svelte-kit', 'sync') ? 0 : 1
for (const [name, check] of Object.entries(CHECKS)) {
  if (asked.length > 0 ? !asked.includes(name) : name === 'recorded') continue
  const outcome = check()
  passed += outcome.passed
  failed += outcome.failed
  console.log(`${name}: ${outcome.passed} passed, ${outcome.failed} failed`)
}
console.log(`\n${passed} passed, ${failed} failed`)
process.exitCode = failed > 0 ? 1 : 0
