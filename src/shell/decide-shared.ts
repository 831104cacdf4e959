/** The search over combinations, shared out over the machine's cores. */
import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import { joinDecisions, type Decision, type Deciding } from '#studies/decide.ts'
import type { Reply } from '#studies/index.ts'

/** More workers than this wait for each other's memory. */
const MOST_WORKERS = 4

/** A worker does not inherit the loader of TypeScript: it registers its own. */
const START = `import('tsx/esm/api').then(({ register }) => {
  register()
  return import(${JSON.stringify(new URL('./decide-worker.ts', import.meta.url).href)})
})`

type Message = { readonly share: number } | { readonly reply: Reply<Decision> }

/** Decides on several cores; reports how far it is, 0…1. Rejects with what went wrong in a share. */
export async function decideShared(
  question: Deciding,
  onShare: (share: number) => void,
  workers = Math.min(MOST_WORKERS, availableParallelism()),
): Promise<Reply<Decision>> {
  const shares = new Array<number>(workers).fill(0)
  const replies = await Promise.all(
    shares.map((_, index) =>
      oneShare({ ...question, part: { index, of: workers } }, (share) => {
        shares[index] = share
        onShare(shares.reduce((sum, each) => sum + each, 0) / workers)
      }),
    ),
  )
  const result = joinDecisions(
    question,
    replies.map((reply) => reply.result),
  )
  return { result, remarks: replies[0]!.remarks }
}

function oneShare(question: Deciding, onShare: (share: number) => void): Promise<Reply<Decision>> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(START, { eval: true, workerData: question })
    worker.on('message', (said: Message) => {
      if ('share' in said) onShare(said.share)
      else resolve(said.reply)
    })
    worker.on('error', reject)
  })
}
