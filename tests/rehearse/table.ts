import { FAULTS, type Fault } from '#model/handover/as-built'
import type { Judged } from './judged.ts'

/** One figure of the rehearsal against its goal. */
export interface Figure {
  readonly name: string
  readonly hits: number
  readonly of: number
  readonly goal_pct: number
  readonly atMost: boolean
}

/** Heat at or under this share of the promise must be found short. */
const SHORT_FRAC = 0.85

export function figures(all: readonly Judged[]): Figure[] {
  const sound = all.filter(({ planted }) => planted.length === 0)
  const single = all.filter(({ planted }) => planted.length === 1)
  const double = all.filter(({ planted }) => planted.length === 2)
  const short = [...single, ...double].filter(({ trueShare_frac }) => trueShare_frac <= SHORT_FRAC)
  const figure = (name: string, of: readonly Judged[], hit: (j: Judged) => boolean, goal_pct: number) => ({
    name,
    hits: of.filter(hit).length,
    of: of.length,
    goal_pct,
    atMost: false,
  })
  return [
    figure('shortfall found where heat is at most 85 %', short, ({ alarm }) => alarm, 95),
    { ...figure('false alarm on a sound panel', sound, ({ alarm }) => alarm, 5), atMost: true },
    figure('right cause first', single, (j) => j.alarm && j.ranked[0] === j.planted[0], 75),
    figure('right cause in the first three', single, (j) => j.ranked.slice(0, 3).includes(j.planted[0]!), 95),
    figure('two at once, both named', double, (j) => j.planted.every((fault) => j.named.includes(fault)), 60),
    { ...figure('cards that contradict', all, ({ contradicts }) => contradicts, 0), atMost: true },
  ]
}

export const reached = ({ hits, of, goal_pct, atMost }: Figure) =>
  of === 0 || (atMost ? (100 * hits) / of <= goal_pct : (100 * hits) / of >= goal_pct)

export function figureLine(figure: Figure): string {
  const { name, hits, of, goal_pct, atMost } = figure
  const share = of === 0 ? '–' : `${((100 * hits) / of).toFixed(1)} %`
  return `${name.padEnd(46)} ${share.padStart(8)} (${hits} of ${of}; goal ${atMost ? '≤' : '≥'} ${goal_pct} %) ${reached(figure) ? 'reached' : 'MISSED'}`
}

/** Rows: what was planted; columns: what was held most strongly (`none` where no alarm was raised). */
export function confusion(all: readonly Judged[]): string {
  const short = (fault: Fault) => fault.slice(0, 7).padStart(8)
  const lines = [`${''.padEnd(14)}${FAULTS.map(short).join('')}   first three`]
  for (const fault of FAULTS) {
    const rows = all.filter(({ planted }) =>
      fault === 'none' ? planted.length === 0 : planted[0] === fault && planted.length === 1,
    )
    const first = ({ alarm, ranked }: Judged): Fault => (alarm ? (ranked[0] ?? 'none') : 'none')
    const cells = FAULTS.map((said) =>
      String(rows.filter((row) => first(row) === said).length || '·').padStart(8),
    )
    const three =
      fault === 'none' ? '' : rows.filter(({ ranked }) => ranked.slice(0, 3).includes(fault)).length
    lines.push(`${fault.padEnd(14)}${cells.join('')}   ${three} of ${rows.length}`)
  }
  return lines.join('\n')
}

/** Each pair, and how often both were named, one, or none. */
export function pairTable(all: readonly Judged[]): string {
  const double = all.filter(({ planted }) => planted.length === 2)
  const names = [...new Set(double.map(({ planted }) => planted.join(' + ')))]
  return names
    .map((name) => {
      const rows = double.filter(({ planted }) => planted.join(' + ') === name)
      const count = (n: number) =>
        rows.filter(({ planted, named }) => planted.filter((f) => named.includes(f)).length === n).length
      return `${name.padEnd(30)} both ${count(2)}, one ${count(1)}, none ${count(0)}`
    })
    .join('\n')
}
