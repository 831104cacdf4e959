import { execFileSync } from 'node:child_process'
import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Line } from './table.ts'

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

/** What the unit tests took before speed was worked on, minutes on two cores. */
const UNIT_BEFORE_min = 21
const UNIT = {
  name: `unit tests in half their time (${UNIT_BEFORE_min} min before)`,
  goal: `≤ ${UNIT_BEFORE_min / 2}`,
}

/** How long a newcomer waits: `npm ci` into an empty folder, the build, and, if asked for, the unit tests. Once each. */
export function starting(withTests: boolean): Line[] {
  const fresh = mkdtempSync(join(tmpdir(), 'duskbank-fresh-'))
  for (const file of ['package.json', 'package-lock.json']) cpSync(join(ROOT, file), join(fresh, file))
  const times: [string, number | null][] = [
    ['npm ci', seconds('npm ci', fresh, ['ci', '--no-audit', '--no-fund', '--ignore-scripts'])],
    ['npm run build', seconds('the build', ROOT, ['run', '-s', 'build'])],
  ]
  rmSync(fresh, { recursive: true, force: true })
  return [
    ...times
      .filter((time): time is [string, number] => time[1] !== null)
      .map(([name, value]) => ({ name, goal: '', unit: 's', values: [value], met: null })),
    withTests ? unitTests() : { ...UNIT, reason: NOT_ASKED },
  ]
}

const NOT_ASKED =
  'they alone take longer than all other parts; the word `tests` times them (`npm run -s bench -- start tests`).'

function unitTests(): Line {
  const took_s = seconds('npm test unit', ROOT, ['test', '--', 'unit'])
  if (took_s === null) return { ...UNIT, reason: 'they did not end well (above).' }
  return {
    ...UNIT,
    unit: 'min',
    values: [took_s / 60],
    met: (min) => min <= UNIT_BEFORE_min / 2,
    why: 'They have become more: the time is the sum of their cases.',
  }
}
