import type { Profiler, Runtime } from 'node:inspector'
import type { Page } from 'playwright-core'
import { linesOf, sharesOf } from './profile.ts'

/** What Chromium writes of every thread: samples of its scripts, and its own work on the page. */
const CATEGORIES = ['disabled-by-default-v8.cpu_profiler', 'devtools.timeline', 'v8']
/** The page thread's own work that is worth naming. */
const OF_THE_PAGE = ['UpdateLayoutTree', 'Layout', 'PrePaint', 'Paint', 'Layerize', 'Commit', 'v8.compile']

interface TraceEvent {
  readonly name: string
  readonly pid: number
  readonly tid: number
  readonly id?: string
  readonly dur?: number
  readonly args: {
    readonly name?: string
    readonly data?: {
      readonly cpuProfile?: { readonly nodes?: readonly TracedNode[]; readonly samples?: readonly number[] }
      readonly timeDeltas?: readonly number[]
    }
  }
}
interface TracedNode {
  readonly id: number
  readonly parent?: number
  readonly callFrame: Runtime.CallFrame
}

/** Runs `work` on a page with Chromium's tracing on: what each thread spent its time on, one thread after another. */
export async function pageProfileOf(page: Page, work: () => Promise<unknown>): Promise<string[]> {
  const browser = page.context().browser()!
  await browser.startTracing(page, { categories: CATEGORIES })
  let events: readonly TraceEvent[]
  const start = performance.now()
  try {
    await work()
  } finally {
    const written = await browser.stopTracing()
    events = (JSON.parse(written.toString('utf8')) as { traceEvents: TraceEvent[] }).traceEvents
  }
  return threadsOf(events, 1e3 * (performance.now() - start))
}

function threadsOf(events: readonly TraceEvent[], watched_us: number): string[] {
  const key = ({ pid, tid }: TraceEvent): string => `${pid} ${tid}`
  const names = new Map<string, string>()
  for (const event of events)
    if (event.name === 'thread_name' && event.args.name) names.set(key(event), event.args.name)
  const threadOf = new Map(
    events.filter(({ name }) => name === 'Profile').map((event) => [`${event.pid} ${event.id}`, key(event)]),
  )
  const chunks = grouped(
    events.filter(({ name }) => name === 'ProfileChunk'),
    (event) => threadOf.get(`${event.pid} ${event.id}`) ?? '',
  )
  const lines: string[] = []
  for (const [thread, mine] of chunks) {
    const shares = sharesOf(joined(mine))
    const busy = Math.round((100 * shares.all) / watched_us)
    if (busy < 1) continue
    const page = events.filter((event) => key(event) === thread && OF_THE_PAGE.includes(event.name))
    const own = [...grouped(page, ({ name }) => name)]
      .map(([name, of]) => [name, of.reduce((sum, { dur = 0 }) => sum + dur, 0) / watched_us] as const)
      .filter(([, share]) => share >= 0.01)
      .map(([name, share]) => `${name} ${Math.round(100 * share)} %`)
    const also = own.length === 0 ? '' : `; beside them ${own.join(', ')}`
    lines.push(`${threadName(names.get(thread))}, scripts ${busy} % of the time${also}`)
    lines.push(...linesOf(shares).map((line) => `  ${line}`))
  }
  return lines
}

function grouped<T>(all: readonly T[], key: (one: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>()
  for (const one of all) groups.set(key(one), [...(groups.get(key(one)) ?? []), one])
  return groups
}

const threadName = (name = 'a thread'): string =>
  name.startsWith('CrRendererMain') ? 'the page’s thread' : name.startsWith('Dedicated') ? 'a worker' : name

/** The pieces of one thread's profile as a whole one. */
function joined(chunks: readonly TraceEvent[]): Profiler.Profile {
  const nodes = new Map<number, Profiler.ProfileNode>()
  const samples: number[] = []
  const timeDeltas: number[] = []
  for (const { args } of chunks) {
    for (const { id, parent, callFrame } of args.data?.cpuProfile?.nodes ?? []) {
      nodes.set(id, { id, callFrame: { ...callFrame, url: callFrame.url ?? '' }, children: [] })
      if (parent !== undefined) nodes.get(parent)?.children!.push(id)
    }
    samples.push(...(args.data?.cpuProfile?.samples ?? []))
    timeDeltas.push(...(args.data?.timeDeltas ?? []))
  }
  return { nodes: [...nodes.values()], samples, timeDeltas, startTime: 0, endTime: 0 }
}
