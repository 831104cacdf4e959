/** `npm test -- recorded`: all 200 recorded answers against what the program answers now. */
import { RECORDED_CASES } from './cases.ts'
import { differences } from './compare.ts'
import { readRecorded } from './file.ts'

/** Differences shown of one answer. */
const SHOWN = 4

const recorded = readRecorded()
let unchanged = 0
for (const one of RECORDED_CASES) {
  const found = differences(one, recorded)
  if (found.length === 0) unchanged++
  else console.log(`${one.name}: ${found.length} differ, ${found.slice(0, SHOWN).join('; ')}`)
}
console.log(`${unchanged} of ${RECORDED_CASES.length} unchanged`)
process.exitCode = unchanged === RECORDED_CASES.length ? 0 : 1
