/**
 * `npm run -s intake-check [-- N [first seed]]`: N tables written at random, read back; every one that is wrong in silence is
 * printed. `-- fuzz [N [first seed]]`: N files spoiled at random; every one that throws, hangs or gives no reason is printed.
 */
import { fork } from 'node:child_process'
import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { tryMangled } from '../fuzz/mangled.ts'
import { tryCase, type Verdict } from './property.ts'

/** What a share of the work found. */
interface Found {
  readonly counts: Readonly<Record<string, number>>
  readonly lines: readonly string[]
}

const [mode, ...rest] = process.argv.slice(2)
const fuzzing = mode === 'fuzz'
const [count, first] = fuzzing
  ? [Number(rest[0] ?? 10_000), Number(rest[1] ?? 1)]
  : [Number(mode ?? 20_000), Number(rest[0] ?? 1)]
const showRefused = rest.includes('refused')

if (process.send === undefined) report(await shared())
else
  process.send(share(Number(process.env['SHARE']), Number(process.env['SHARES'])), () => process.disconnect())

/** The work over the machine's cores, in processes of their own. */
async function shared(): Promise<readonly Found[]> {
  const shares = Math.max(1, Math.min(availableParallelism(), Math.ceil(count / 200)))
  return Promise.all(
    Array.from({ length: shares }, (_, at) => {
      const child = fork(fileURLToPath(import.meta.url), process.argv.slice(2), {
        env: { ...process.env, SHARE: String(at), SHARES: String(shares) },
      })
      return new Promise<Found>((resolve, reject) => {
        child.on('message', (found) => resolve(found as Found))
        child.on('exit', (code) => reject(new Error(`a share ended with ${code}`)))
      })
    }),
  )
}

function share(at: number, shares: number): Found {
  const counts: Record<string, number> = {}
  const lines: string[] = []
  for (let seed = first + at; seed < first + count; seed += shares) {
    const { verdict, line } = fuzzing ? tryFuzz(seed) : tryTable(seed)
    counts[verdict] = (counts[verdict] ?? 0) + 1
    if (line !== null) lines.push(line)
    if ((seed - first - at) % 1000 === 0) console.error(`${seed - first} of ${count}`)
  }
  return { counts, lines }
}

function tryTable(seed: number): { readonly verdict: Verdict; readonly line: string | null } {
  const { verdict, how, words } = tryCase(seed)
  const shown = verdict === 'wrong' || (verdict === 'refused' && showRefused)
  return { verdict, line: shown ? `${seed} ${verdict}: ${how}\n    ${words}` : null }
}

function tryFuzz(seed: number): { readonly verdict: string; readonly line: string | null } {
  const { fault, record } = tryMangled(seed)
  if (fault !== null) return { verdict: 'fault', line: `${seed}: ${fault}` }
  return { verdict: record ? 'record' : 'reason', line: null }
}

function report(found: readonly Found[]): void {
  for (const { lines } of found) for (const line of lines) console.log(line)
  const sum = (verdict: string): number => found.reduce((all, { counts }) => all + (counts[verdict] ?? 0), 0)
  console.log(
    fuzzing
      ? `${count} spoiled files: ${sum('record')} gave a record, ${sum('reason')} a reason, ${sum('fault')} faults`
      : `${count} tables: ${sum('right')} read right, ${sum('asked')} asked about, ${sum('refused')} refused, ${sum('wrong')} wrong in silence`,
  )
  process.exitCode = sum('wrong') + sum('fault') > 0 ? 1 : 0
}
