/** One share of a search over combinations, on a core of its own. */
import { parentPort, workerData } from 'node:worker_threads'
import { createStudies, finish } from '#studies/index.ts'
import type { Deciding } from '#studies/decide.ts'

const reply = finish(createStudies().decide(workerData as Deciding), ({ share }) => {
  parentPort!.postMessage({ share })
})
parentPort!.postMessage({ reply })
