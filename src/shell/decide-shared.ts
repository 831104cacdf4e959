/** The search over combinations, shared out over the machine's cores. */
import { availableParallelism } from 'node:os'
import { setImmediate } from 'node:timers/promises'
import { Worker } from 'node:worker_threads'
import type { Decision, Deciding } from '#studies/decide.ts'
import { createStudies, finish, type Reply, type Studies } from '#studies/index.ts'

/** More cores than this wait for each other's memory. */
const MOST_CORES = 4

/** A worker does not inherit the loader of TypeScript: it registers its own. */
const START = `import('tsx/esm/api').then(({ register }) => {
  register()
  return import(${JSON.stringify(new URL('./decide-worker.ts', import.meta.url).href)})
})`

type Message = { readonly share: number } | { readonly reply: Reply<Decision> }

/** Of the whole: what is done on all cores. */
const SHARED = 0.8

/**
 * Decides on several cores, this thread's own among them: combinations are looked at in shares, then panels that were
 * guessed are sized where all of them together show that they may matter. Reports how far it is, 0…1. Rejects with what
 * went wrong in a share.
 */
export async function decideShared(
  question: Deciding,
  onShare: (share: number) => void,
  cores = Math.min(MOST_CORES, availableParallelism()),
): Promise<Reply<Decision>> {
  const shares = new Array<number>(cores).fill(0)
  const workers: Worker[] = []
  const studies = createStudies()
  try {
    const looked = shares.map((_, index) => {
      const onOne = (share: number): void => {
        shares[index] = share
        onShare((SHARED * shares.reduce((sum, each) => sum + each, 0)) / cores)
      }
      const part: Deciding = { ...question, part: { index, of: cores }, refines: false }
      // the last is this thread's own: the workers have begun to start by then
      return index < cores - 1 ? workerShare(part, onOne, workers) : ownShare(studies, part, onOne)
    })
    const from = (await Promise.all(looked)).map(({ result }) => result)
    return finish(studies.decide({ ...question, from }), ({ share }) => {
      onShare(Math.max(SHARED, share))
    })
  } finally {
    for (const worker of workers) void worker.terminate()
  }
}

/** A share that this thread works out, hearing the workers between its steps. */
async function ownShare(
  studies: Studies,
  question: Deciding,
  onShare: (share: number) => void,
): Promise<Reply<Decision>> {
  const study = studies.decide(question)
  for (;;) {
    const next = study.next()
    if (next.done === true) return next.value
    onShare(next.value.share)
    await setImmediate()
  }
}

function workerShare(
  question: Deciding,
  onShare: (share: number) => void,
  workers: Worker[],
): Promise<Reply<Decision>> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(START, { eval: true, workerData: question })
    workers.push(worker)
    worker.on('message', (said: Message) => {
      if ('share' in said) onShare(said.share)
      else resolve(said.reply)
    })
    worker.on('error', reject)
  })
}
