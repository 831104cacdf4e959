/**
 * `npm run -s equations [-- words]`: every equation of the model, or those in which the words occur, with the place in
 * the code, the source and the checks. `-- --write` writes src/model/EQUATIONS.md.
 */
import { writeFileSync } from 'node:fs'
import { ROOT } from '../house-rules/source-files.ts'
import { collectEquations } from './collect.ts'
import { indexText, printed } from './text.ts'

const asked = process.argv.slice(2)
const entries = collectEquations()
if (asked.includes('--write')) writeFileSync(`${ROOT}src/model/EQUATIONS.md`, indexText(entries))
else {
  const wanted = asked.join(' ').toLowerCase()
  const found = entries.map(printed).filter((text) => text.toLowerCase().includes(wanted))
  console.log(found.join('\n\n'))
  console.log(`\n${found.length} of ${entries.length} equations`)
}
