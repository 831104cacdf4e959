import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { simulateYear, type YearInputs } from '#model/building/year'
import type { Made } from './made.ts'
import { cpu_s, median, timed_s } from './measure.ts'
import { twinInput } from './twin-input.ts'
import type { Line, Row } from './table.ts'
import { WARM_UP_H, yearOfItsOwn } from './year-of-its-own.ts'
import { yearParts } from './year-parts.ts'

const RUNS = 9
const SEARCH = { lean: true, books: false }
const SOURCE = fileURLToPath(new URL('twin.c', import.meta.url))
/** The same arithmetic as JavaScript's: no multiplication joined with an addition. */
const COMPILE = ['-O3', '-std=c11', '-ffp-contract=off', '-o']
const SAME_K = 1e-9

/** Whether the twin reads its resting plate from a course worked out before, as all designs of a panel do. */
type Resting = 'own' | 'shared'

/** CPU seconds of one year in C, and its room's temperatures. */
type Twin = (resting: Resting, runs: number) => { readonly times_s: number[]; readonly room_C: Float64Array }

/** Compiles the twin into a folder and hands it the year's columns. @throws Error without a compiler */
function compiled(inputs: YearInputs, folder: string): Twin {
  const [program, given, found] = ['twin', 'in', 'out'].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ]
  execFileSync('cc', [...COMPILE, program, SOURCE, '-lm'], { stdio: ['ignore', 'ignore', 'pipe'] })
  writeFileSync(given, twinInput(inputs, WARM_UP_H))
  return (resting, runs) => {
    const printed = execFileSync(program, [given, found, String(runs), resting], { encoding: 'utf8' })
    const times_s = printed.trim().split('\n').map(Number)
    return { times_s, room_C: new Float64Array(new Uint8Array(readFileSync(found)).buffer) }
  }
}

const apart_K = (a: Float64Array, b: Float64Array): number =>
  a.reduce((most, value, i) => Math.max(most, Math.abs(value - b[i]!)), 0)

const NAMES = {
  own: 'year, WebAssembly over C, every plate worked out',
  shared: 'year with the shared resting plate, WebAssembly over that C',
  both: 'the same, over C that shares its resting plate too',
} as const

/** A year of the search over the same year in C, turn by turn: like for like, and with the resting plate that all designs share. */
export function againstC({ inputs }: Made): Line[] {
  const folder = mkdtempSync(join(tmpdir(), 'duskbank-twin-'))
  try {
    return compared(inputs, compiled(inputs, folder))
  } catch (reason) {
    const why = `the twin in C could not be compiled or run (${String(reason).split('\n')[0]})`
    return [
      { name: NAMES.own, goal: '≤ 1.2', reason: why },
      { name: NAMES.shared, goal: '≤ 0.6', reason: why },
    ]
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

function compared(inputs: YearInputs, twin: Twin): Line[] {
  const own = (): Float64Array => yearOfItsOwn(inputs)
  const shared = (): Float64Array => simulateYear(inputs, SEARCH).room_C
  timed_s(own, 1, 12)
  timed_s(shared, 1, 12)
  const difference_K = Math.max(
    apart_K(own(), twin('own', 1).room_C),
    apart_K(shared(), twin('shared', 1).room_C),
  )
  const ratios: Record<keyof typeof NAMES | 'c', number[]> = { own: [], shared: [], both: [], c: [] }
  const twin_ms: number[] = []
  const took_s = (run: () => unknown): number => {
    const start = cpu_s()
    run()
    return cpu_s() - start
  }
  for (let turn = 0; turn < RUNS; turn++) {
    const c_s = Math.min(...twin('own', 2).times_s)
    const sharedC_s = Math.min(...twin('shared', 2).times_s)
    const [own_s, shared_s] = [took_s(own), took_s(shared)]
    twin_ms.push(1e3 * c_s)
    ratios.own.push(own_s / c_s)
    ratios.shared.push(shared_s / c_s)
    ratios.both.push(shared_s / sharedC_s)
    ratios.c.push(sharedC_s / c_s)
  }
  const steps = 4 * (WARM_UP_H + inputs.room.hours)
  const alike = `one year of ${steps} steps of 15 min with its warm-up, the same columns and equations in the same order, rooms within ${difference_K.toExponential(1)} K; CPU time, turn by turn, the faster of two in C; cc ${COMPILE.slice(0, -1).join(' ')}.`
  let sampled: ReturnType<typeof yearParts> | null = null
  const parts = (): ReturnType<typeof yearParts> => (sampled ??= yearParts())
  const row = (name: string, unit: string, values: readonly number[]): Row => ({
    name,
    goal: '',
    unit,
    values,
    met: null,
  })
  return [
    {
      name: 'room temperatures of the year, WebAssembly and C apart, at most',
      goal: `≤ ${SAME_K}`,
      unit: 'K',
      values: [difference_K],
      met: (kelvin) => kelvin <= SAME_K,
      why: 'The twin is not the same equations: its times say nothing.',
    },
    row('year in C, every plate worked out', 'ms', twin_ms),
    {
      ...row(NAMES.own, '×', ratios.own),
      goal: '≤ 1.2',
      met: (x) => x <= 1.2,
      why: 'WebAssembly is compiled while it runs and reads each number where it is; what the parts take of each other is in the profile below, of the same parts in TypeScript.',
      alike,
      parts: () => parts().own,
      work: own,
    },
    {
      ...row(NAMES.shared, '×', ratios.shared),
      goal: '≤ 0.6',
      met: (x) => x <= 0.6,
      why: `The C it is over works out every plate; the same C with the shared plate takes ${median(ratios.c).toFixed(2)} of that, so that 0.6 × asks for a year ${(0.6 / median(ratios.c)).toFixed(1)} × as long as the C that shares.`,
      alike,
      parts: () => parts().shared,
      work: shared,
    },
    row(NAMES.both, '×', ratios.both),
  ]
}
