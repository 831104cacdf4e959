/**
 * `npm run -s rehearse [-- SEEDS [first seed] [bare]]`, or `-- bench` for the bench's methods on simulated samples: invented logs of a fortnight with planted faults (12 faults × 4
 * sizes × 3 climates × SEEDS, sound panels and pairs), judged by the as-built check. Prints the confusion table and the
 * figures against their goals. `bare`: without a sensor on the plate. Sensors err by 0.2 K, meters by 3 %, clocks by
 * minutes; sky, wind and sun are off their record. Ends with 1 where a goal is missed.
 */
import { fork } from 'node:child_process'
import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { benchStudy, reachedBy, studyLine } from './bench-study.ts'
import { casesOf, type RehearsedCase } from './cases.ts'
import { judged, type Judged } from './judged.ts'
import { confusion, figureLine, figures, pairTable, reached } from './table.ts'

/** Seeds that judge; those under 1000 are for development. */
const FIRST_SEED = 2001
const words = process.argv.slice(2)
const [seeds = 5, first = FIRST_SEED] = words.filter((word) => !['bare', 'bench'].includes(word)).map(Number)
const plateSensor = !words.includes('bare')
if (![seeds, first].every((n) => Number.isInteger(n) && n > 0)) {
  console.error('Usage: npm run -s rehearse [-- number of seeds [first seed] [bare]]')
  process.exit(2)
}
const cases = casesOf(Array.from({ length: seeds }, (_, i) => first + i))

if (words.includes('bench')) bench()
else if (process.send === undefined) report((await shared()).flat())
else process.send(share(), () => process.disconnect())

/** The bench's methods on 1000 simulated samples of known truth. */
function bench(): void {
  const studies = benchStudy(1000, FIRST_SEED)
  console.log('90 % intervals that hold the truth, 1000 simulated samples a method')
  for (const study of studies) console.log(studyLine(study))
  process.exitCode = studies.every((study) => reachedBy(study)) ? 0 : 1
}

/** The cases over the machine's cores, in processes of their own. */
async function shared(): Promise<readonly (readonly Judged[])[]> {
  const shares = Math.max(1, availableParallelism())
  return Promise.all(
    Array.from({ length: shares }, (_, at) => {
      const child = fork(fileURLToPath(import.meta.url), words, {
        env: { ...process.env, SHARE: String(at), SHARES: String(shares) },
      })
      return new Promise<readonly Judged[]>((resolve, reject) => {
        child.on('message', (found) => resolve(found as Judged[]))
        child.on('exit', (code) => reject(new Error(`a share ended with ${code}`)))
      })
    }),
  )
}

function share(): Judged[] {
  const mine = (_: RehearsedCase, i: number) =>
    i % Number(process.env['SHARES']) === Number(process.env['SHARE'])
  return cases.filter(mine).map((one) => judged(one, plateSensor))
}

function report(all: readonly Judged[]): void {
  console.log(
    `Planted (rows) against held most strongly (columns), ${all.length} invented logs of a fortnight`,
  )
  console.log(
    `seeds ${first} to ${first + seeds - 1}, ${plateSensor ? 'with' : 'without'} a sensor on the plate\n`,
  )
  console.log(confusion(all))
  console.log(`\nTwo at once:\n${pairTable(all)}\n`)
  const found = figures(all)
  for (const figure of found) console.log(figureLine(figure))
  process.exitCode = found.every(reached) ? 0 : 1
}
