/** The search over combinations, shared out over the machine's cores. */
import { availableParallelism } from 'node:os'
import { setImmediate } from 'node:timers/promises'
import type { Decision, Deciding } from '#studies/decide.ts'
import { createStudies, type Reply, type Studies } from '#studies/index.ts'
import { DecideWorker, WorkersAsOthers } from './decide-workers.ts'

/** More cores than this wait for each other's memory. */
const MOST_CORES = 4

/** Of the whole: what is looked at in shares. */
const SHARED = 0.8

/** Of each seven or more groups: those of a worker, which has to start first, and those of this thread. */
const WORKERS_OWN = 3
const THIS_OWN = 4

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
  const of = WORKERS_OWN * (cores - 1) + THIS_OWN
  const onOne = (index: number, share: number): void => {
    shares[index] = share
    onShare((SHARED * shares.reduce((sum, each) => sum + each, 0)) / cores)
  }
  const workers = Array.from({ length: cores - 1 }, (_, index) => {
    const part = { index: WORKERS_OWN * index, of, wide: WORKERS_OWN }
    return new DecideWorker({ ...question, part, refines: false }, (share) => onOne(index, share))
  })
  const studies = createStudies()
  try {
    // the workers have begun to start by the time this thread begins
    const part = { index: of - THIS_OWN, of, wide: THIS_OWN }
    const own = inSteps(studies, { ...question, part, refines: false }, (share) => onOne(cores - 1, share))
    const replies = await Promise.all([...workers.map(({ reply }) => reply), own])
    const others = new WorkersAsOthers(workers)
    return await inSteps(
      studies,
      { ...question, from: replies.map(({ result }) => result), others },
      (share) => onShare(Math.max(SHARED, share)),
      () => others.heard(),
    )
  } finally {
    for (const worker of workers) worker.end()
  }
}

/** Works a question out in this thread, hearing the workers between its steps. */
async function inSteps(
  studies: Studies,
  question: Deciding,
  onShare: (share: number) => void,
  pause: () => Promise<unknown> = () => setImmediate(),
): Promise<Reply<Decision>> {
  const study = studies.decide(question)
  for (;;) {
    const next = study.next()
    if (next.done === true) return next.value
    onShare(next.value.share)
    await pause()
  }
}
