/** `npm run -s evidence`: runs every check, writes the committed table and prints it; `-- sky` shows how the night’s sky was chosen, `-- film` plates under film in the field, `-- --format json` the table as data, `-- place` years made from months against files, `-- every-place` that the year of every town is sound. */
import { CHECKS } from './checks/all.ts'
import { dataPresent, runChecks } from './run.ts'
import { areaErrors, citation, expected, figure, kindCounts } from '#ui/trust/evidence-row.ts'
import { printFilmChoice } from './film/choice.ts'
import { printEveryPlace } from './place/every-place.ts'
import { printPlaceValidation } from './place/validation.ts'
import { printSkyChoice } from './sky/choice.ts'
import { printSpellDoubts } from './sky/doubt.ts'
import { closingLine, readTable, summaryLines, tableOf, writeTable } from './table.ts'

if (process.argv[2] === 'sky') {
  printSkyChoice()
  printSpellDoubts()
} else if (process.argv[2] === 'film') printFilmChoice()
else if (process.argv[2] === 'place') printPlaceValidation()
else if (process.argv[2] === 'every-place') printEveryPlace(Number(process.argv[3] ?? 1))
else printAll()

function printAll(): void {
  const today = new Date().toISOString().slice(0, 10)
  const rows = runChecks(CHECKS, readTable().rows, today)
  const table = tableOf(rows)
  writeTable(table)
  if (process.argv.includes('json')) {
    console.log(JSON.stringify({ kinds: kindCounts(rows), areas: areaErrors(rows), ...table }, null, 1))
    return
  }

  let theme = ''
  for (const [i, row] of rows.entries()) {
    if (row.theme !== theme) console.log(`\n${(theme = row.theme).toUpperCase()}`)
    const here = dataPresent(CHECKS[i]!)
      ? ''
      : ` [not run here: ../shared/data/${row.data} is absent; last measured ${row.measuredOn ?? 'never'}]`
    const mark = row.status === 'agrees' ? ' ' : '✗'
    console.log(
      `${mark} ${row.quantity}: ${row.ours === null ? 'not run' : figure(row.ours)} against ${expected(row)} ${row.unit} (${row.evidence}: ${row.kind})${here}`,
    )
    console.log(`    ${citation(row, table.sources)}. ${row.because}`)
    if (row.choice !== '') console.log(`    choice: ${row.choice}`)
    if (row.status === 'misses') console.log(`    MISSES: ${row.cause || 'cause not known yet'}`)
  }
  console.log(`\n${summaryLines(rows).join('\n')}`)
  console.log(`\n${closingLine(rows)}`)
}
