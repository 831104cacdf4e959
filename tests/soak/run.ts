/**
 * `npm run -s soak [-- N [SEED [FROM]]]`: N seeded random scenarios in the sample climates, from number FROM of the seed
 * on, over all cores. Each must simulate a year without NaN or runaway and with closed books; none may be worse with
 * more area or a better coating, and a lower limit must not be missed less. Thicker insulation, of the panel's back and of
 * the tank, is asked what is true of it by physics in every scenario (`insulation.ts` says why that is not “never a hotter
 * room”). A scenario is refused only by what checks its fields before anything of it runs. Closes with
 * `N scenarios, F failures, R refused`.
 */
import { availableParallelism } from 'node:os'
import type { Complaint } from './complaints.ts'
import { typescriptWorker } from '../../src/shell/typescript-worker.ts'
import type { SoakReport, SoakShare } from './share.ts'

const USUAL_SCENARIOS = 20_000
const USUAL_SEED = 20261125
/** Worst things shown one by one; the rest is only counted. */
const SHOWN = 200
const PROGRESS_EVERY = 20

const count = Number(process.argv[2] ?? USUAL_SCENARIOS)
const seed = Number(process.argv[3] ?? USUAL_SEED)
const from = Number(process.argv[4] ?? 0)
if (![count, seed, from].every(Number.isInteger) || count < 1 || from < 0) {
  console.error('Usage: npm run -s soak -- [number of scenarios] [seed] [first], all whole numbers.')
  process.exit(2)
}

const SHARE = new URL('./share.ts', import.meta.url)

const found: Complaint[] = []
const refused = new Map<string, number>()
let done = 0
let failures = 0
const comparisons = { made: 0, refused: 0 }
const started = Date.now()

function take(report: SoakReport): void {
  done++
  comparisons.made += report.comparisons.made
  comparisons.refused += report.comparisons.refused
  if (report.refused !== null) refused.set(report.refused, (refused.get(report.refused) ?? 0) + 1)
  if (report.complaints.length > 0) failures++
  found.push(...report.complaints)
  for (const { index, climate, what } of report.complaints)
    console.error(`scenario ${index} in ${climate}: ${what}`)
  if (done % PROGRESS_EVERY !== 0) return
  const seconds = (Date.now() - started) / 1000
  console.error(`${done} of ${count}, ${failures} failures, ${(done / seconds).toFixed(2)} scenarios/s`)
}

const of = Math.min(availableParallelism(), count)
await Promise.all(
  Array.from(
    { length: of },
    (_, part) =>
      new Promise<void>((resolve, reject) => {
        const workerData: SoakShare = { seed, from, until: from + count, part, of }
        const worker = typescriptWorker(SHARE, workerData)
        worker.on('message', take)
        worker.on('error', reject)
        worker.on('exit', () => resolve())
      }),
  ),
)

found.sort((a, b) => a.index - b.index)
for (const { index, climate, what } of found.slice(0, SHOWN))
  console.log(`scenario ${index} in ${climate}: ${what}`)
if (found.length > SHOWN) console.log(`… and ${found.length - SHOWN} more`)
console.log(
  `${comparisons.made} comparisons with one that should be no worse, ${comparisons.refused} refused`,
)
const kinds = new Map<string, Set<number>>()
for (const { index, what } of found) {
  const kind = what.split(':')[0]!.replace(/-?\d[\d.e-]*/g, '…')
  kinds.set(kind, (kinds.get(kind) ?? new Set()).add(index))
}
for (const [kind, indices] of kinds) console.log(`${indices.size} failures: ${kind}`)
for (const [reason, times] of refused) console.log(`refused for ${reason}: ${times}`)
const all = [...refused.values()].reduce((sum, times) => sum + times, 0)
console.log(`${done} scenarios, ${failures} failures, ${all} refused`)
process.exitCode = failures > 0 || done < count ? 1 : 0
