/** `npm run -s record`: writes the 200 recorded answers afresh, for a change of numbers on purpose. */
import { RECORDED_CASES } from './cases.ts'
import { digest } from './digest.ts'
import { writeRecorded } from './file.ts'

const started = Date.now()
const answers = RECORDED_CASES.map(({ name, answer }, i) => {
  if ((i + 1) % 20 === 0) console.error(`${i + 1} of ${RECORDED_CASES.length}`)
  return [name, digest(answer())] as const
})
writeRecorded(new Map(answers))
console.log(`${answers.length} answers recorded in ${((Date.now() - started) / 1000).toFixed(0)} s`)
