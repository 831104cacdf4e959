import type { Profiler, Session } from 'node:inspector'

const SAMPLING_US = 200

/** Samples of some work by function and line, and how many there are in all. */
export interface Sampled {
  readonly lines: readonly (readonly [file: string, name: string, line: number, samples: number])[]
  /** Samples in none of the project's functions: collecting garbage, compiling. */
  readonly outside: number
}

/** What the profiler of a session sees of some work, by lines of the code that runs. */
export async function sampledLines(session: Session, work: () => void): Promise<Sampled> {
  const post = (method: string, params?: object): Promise<unknown> =>
    new Promise((resolve, reject) =>
      session.post(method, params, (error: Error | null, result?: unknown) =>
        error === null ? resolve(result) : reject(error),
      ),
    )
  await post('Profiler.enable')
  await post('Profiler.setSamplingInterval', { interval: SAMPLING_US })
  await post('Profiler.start')
  work()
  const { profile } = (await post('Profiler.stop')) as { profile: Profiler.Profile }
  const lines: [string, string, number, number][] = []
  let outside = 0
  for (const { callFrame, positionTicks, hitCount = 0 } of profile.nodes) {
    const { url, functionName } = callFrame
    if (!url.includes('/src/'))
      outside += functionName === '(idle)' || functionName === '(root)' ? 0 : hitCount
    else for (const { line, ticks } of positionTicks ?? []) lines.push([url, functionName, line, ticks])
  }
  return { lines, outside }
}
