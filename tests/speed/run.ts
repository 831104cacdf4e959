import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { inBrowser } from './browser-lines.ts'
import { sampleClimate } from './climate-lines.ts'
import { designMap, growth, memory, sizing, uncertainty } from './design-lines.ts'
import { makeCase } from './made.ts'
import { placeYears } from './place-lines.ts'
import { starting } from './start-lines.ts'
import { printTable } from './table.ts'
import { yearRows, againstOdex, overThreeNodes, reduction } from './year-lines.ts'

/** The bench: `npm run -s bench`, or `npm run -s bench -- tests` to time `npm test` as well. Times are CPU times but for the page's, so that other work on the machine does not count. */
const made = makeCase()
const folder = mkdtempSync(join(tmpdir(), 'duskbank-bench-'))
try {
  const rows = [
    ...yearRows(made),
    overThreeNodes(made),
    againstOdex(made),
    reduction(made),
    sizing(made),
    uncertainty(made),
    designMap(made),
    ...growth(made),
    ...memory(made),
    ...sampleClimate(),
    ...placeYears(),
    ...(await inBrowser()),
    ...starting(folder, process.argv.includes('tests')),
  ]
  printTable(rows, [])
} finally {
  rmSync(folder, { recursive: true, force: true })
}
