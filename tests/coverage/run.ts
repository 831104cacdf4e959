/**
 * `npm run -s coverage`: the unit tests with the lines of src/model counted, the files that fall short, and one closing
 * line. The report itself goes to a folder of the system's and is removed.
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('../../', import.meta.url))
/** Lines of src/model that the unit tests must run, %. */
const REACH_pct = 95

interface FileCover {
  readonly lines: { readonly total: number; readonly covered: number; readonly pct: number }
}

const folder = mkdtempSync(join(tmpdir(), 'duskbank-coverage-'))
const { status } = spawnSync(
  join(ROOT, 'node_modules/.bin/vitest'),
  [
    'run',
    '--project=unit',
    '--reporter=dot',
    '--coverage.enabled',
    '--coverage.provider=v8',
    '--coverage.include=src/model/**/*.ts',
    '--coverage.reporter=json-summary',
    `--coverage.reportsDirectory=${folder}`,
    '--coverage.reportOnFailure',
  ],
  { cwd: ROOT, stdio: ['ignore', 'inherit', 'inherit'] },
)
const summary = JSON.parse(readFileSync(join(folder, 'coverage-summary.json'), 'utf8')) as Record<
  string,
  FileCover
>
rmSync(folder, { recursive: true, force: true })

const { total, ...files } = summary
console.log(`\nfiles of src/model under ${REACH_pct} % of their lines`)
for (const [path, { lines }] of Object.entries(files).sort(([, a], [, b]) => a.lines.pct - b.lines.pct)) {
  if (lines.pct >= REACH_pct) continue
  console.log(
    `${lines.pct.toFixed(1).padStart(6)} %  ${relative(ROOT, path)} (${lines.total - lines.covered} lines)`,
  )
}
if (status !== 0) console.log('some unit tests failed: see above')
const reached = total!.lines.pct
console.log(`src/model lines: ${reached.toFixed(1)} % (reach ${REACH_pct} %)`)
process.exitCode = reached >= REACH_pct && status === 0 ? 0 : 1
