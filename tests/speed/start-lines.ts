import { execFileSync } from 'node:child_process'
import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Row } from './table.ts'

const ROOT = fileURLToPath(new URL('../../', import.meta.url))

/** Wall-clock seconds of a program; null, with the reason printed, where it fails. */
function seconds(name: string, cwd: string, words: readonly string[]): number | null {
  const start = performance.now()
  try {
    execFileSync('npm', words, { cwd, stdio: 'pipe' })
    return (performance.now() - start) / 1e3
  } catch (reason) {
    console.log(`${name} is not timed: ${String(reason).split('\n')[0]}`)
    return null
  }
}

/** How long a newcomer waits: `npm ci` into an empty folder, the build, and, if asked for, every test. Once each. */
export function starting(withTests: boolean): Row[] {
  const fresh = mkdtempSync(join(tmpdir(), 'duskbank-fresh-'))
  for (const file of ['package.json', 'package-lock.json']) cpSync(join(ROOT, file), join(fresh, file))
  const times: [string, number | null][] = [
    ['npm ci', seconds('npm ci', fresh, ['ci', '--no-audit', '--no-fund', '--ignore-scripts'])],
    ['npm run build', seconds('the build', ROOT, ['run', '-s', 'build'])],
  ]
  rmSync(fresh, { recursive: true, force: true })
  if (withTests) times.push(['npm test', seconds('npm test', ROOT, ['test'])])
  return times
    .filter((time): time is [string, number] => time[1] !== null)
    .map(([name, value]) => ({ name, goal: '', unit: 's', values: [value], met: null }))
}
