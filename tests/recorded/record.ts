/**
 * `npm run -s record`: writes the 200 recorded answers afresh, for a change of numbers on purpose. Names after `--`
 * (`npm run -s record -- random/3 sheet/0`) write only those.
 */
import { RECORDED_CASES } from './cases.ts'
import { digest } from './digest.ts'
import { readRecorded, writeRecorded } from './file.ts'

const started = Date.now()
const wanted = new Set(process.argv.slice(2))
const unknown = [...wanted].filter((name) => !RECORDED_CASES.some((one) => one.name === name))
if (unknown.length > 0) throw new Error(`no recorded answer is called ${unknown.join(', ')}`)
const kept = wanted.size === 0 ? null : readRecorded().answers
let made = 0
const answers = RECORDED_CASES.map(({ name, answer }) => {
  const before = wanted.has(name) ? undefined : kept?.get(name)
  if (before !== undefined) return [name, before] as const
  if (++made % 20 === 0) console.error(`${made} of ${wanted.size || RECORDED_CASES.length}`)
  return [name, digest(answer())] as const
})
writeRecorded(new Map(answers))
console.log(`${made} answers recorded in ${((Date.now() - started) / 1000).toFixed(0)} s`)
