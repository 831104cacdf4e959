/** `npm run -s evidence`: runs every check, writes the committed table and prints it; `-- sky` shows how the night’s sky was chosen, `-- place` years made from months against files. */
import { CHECKS } from './checks/all.ts'
import { dataPresent, runChecks } from './run.ts'
import { citation, expected, figure } from '#ui/trust/evidence-row.ts'
import { printPlaceValidation } from './place/validation.ts'
import { printSkyChoice } from './sky/choice.ts'
import { closingLine, readTable, tableOf, writeTable } from './table.ts'

if (process.argv[2] === 'sky') printSkyChoice()
else if (process.argv[2] === 'place') printPlaceValidation()
else printAll()

function printAll(): void {
  const today = new Date().toISOString().slice(0, 10)
  const rows = runChecks(CHECKS, readTable().rows, today)
  const table = tableOf(rows)
  writeTable(table)

  let theme = ''
  for (const [i, row] of rows.entries()) {
    if (row.theme !== theme) console.log(`\n${(theme = row.theme).toUpperCase()}`)
    const here = dataPresent(CHECKS[i]!)
      ? ''
      : ` [not run here: ../shared/data/${row.data} is absent; last measured ${row.measuredOn ?? 'never'}]`
    const mark = row.status === 'agrees' ? ' ' : '✗'
    console.log(
      `${mark} ${row.quantity}: ${row.ours === null ? 'not run' : figure(row.ours)} against ${expected(row)} ${row.unit} (${row.kind})${here}`,
    )
    console.log(`    ${citation(row, table.sources)}. ${row.because}`)
    if (row.status === 'misses') console.log(`    MISSES: ${row.cause || 'cause not known yet'}`)
  }
  console.log(`\n${closingLine(rows)}`)
}
