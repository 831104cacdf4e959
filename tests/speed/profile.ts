import { Session, type Profiler } from 'node:inspector'

/** Work is repeated until the profiler has watched it for so long. */
const WATCHED_MS = 1500
const SAMPLING_US = 200
/** Functions named in a profile. */
const NAMED = 5

/** Not functions of the project: the tree's root, the runtime outside any function, nothing to do, the profiler. */
const OUTSIDE = new Set(['(root)', '(program)', '(idle)', 'dispatch'])
/** The bench's own frames and those of the runtime around the work: all of it is inside them. */
const AROUND = /^node:|\/tests\/speed\/|^$/

/** Microseconds by function, in it and in it with all it calls. */
export interface Shares {
  readonly own: Map<string, number>
  readonly whole: Map<string, number>
  readonly all: number
}

/** The functions that take most of some work's time, as two lines: in themselves, and with what they call. */
export async function profileOf(work: () => unknown): Promise<string[]> {
  const session = new Session()
  session.connect()
  const post = (method: string, params?: object): Promise<unknown> =>
    new Promise((resolve, reject) =>
      session.post(method, params, (error: Error | null, result?: unknown) =>
        error === null ? resolve(result) : reject(error),
      ),
    )
  try {
    await post('Profiler.enable')
    await post('Profiler.setSamplingInterval', { interval: SAMPLING_US })
    await post('Profiler.start')
    const start = performance.now()
    do await work()
    while (performance.now() - start < WATCHED_MS)
    const { profile } = (await post('Profiler.stop')) as { profile: Profiler.Profile }
    return linesOf(sharesOf(profile))
  } finally {
    session.disconnect()
  }
}

/** A function by its name and file. */
function nameOf({ functionName, url }: { readonly functionName: string; readonly url: string }): string {
  const file = url.split('/').at(-1)!.split('?')[0]!
  return `${functionName || '(nameless)'}${file === '' ? '' : ` ${file}`}`
}

/** Times of a profile by function; a function that calls itself is counted once in what is inside it. */
export function sharesOf(profile: Profiler.Profile): Shares {
  const nodes = new Map(profile.nodes.map((node) => [node.id, node]))
  const own_us = new Map<number, number>()
  profile.samples!.forEach((id, i) => own_us.set(id, (own_us.get(id) ?? 0) + (profile.timeDeltas![i] ?? 0)))
  const own = new Map<string, number>()
  const whole = new Map<string, number>()
  let all = 0
  const add = (to: Map<string, number>, name: string, us: number): Map<string, number> =>
    to.set(name, (to.get(name) ?? 0) + us)
  const walk = (id: number, inside: ReadonlySet<string>): void => {
    const { callFrame, children } = nodes.get(id)!
    const name = nameOf(callFrame)
    const us = own_us.get(id) ?? 0
    const counted = !OUTSIDE.has(callFrame.functionName)
    const within = counted && !AROUND.test(callFrame.url) ? new Set([...inside, name]) : inside
    if (counted) {
      add(own, name, us)
      all += us
      for (const each of within) add(whole, each, us)
    }
    for (const child of children ?? []) walk(child, within)
  }
  walk(profile.nodes[0]!.id, new Set())
  return { own, whole, all }
}

export function linesOf({ own, whole, all }: Shares): string[] {
  const top = (of: Map<string, number>): string =>
    [...of]
      .toSorted(([, a], [, b]) => b - a)
      .slice(0, NAMED)
      .map(([name, us]) => `${name} ${Math.round((100 * us) / all)} %`)
      .join(', ')
  return [`profile, with what they call: ${top(whole)}`, `profile, in themselves: ${top(own)}`]
}
