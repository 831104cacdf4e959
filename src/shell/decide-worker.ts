/** One share of a search over combinations, on a core of its own; then panels that were guessed, as they are asked for. */
import { parentPort, workerData } from 'node:worker_threads'
import { asItIs } from '#model/design/measures'
import { decide, type Deciding } from '#studies/decide.ts'
import { guessedOf, sizedAsBuilt } from '#studies/decide-refine.ts'
import { type Combination, Trials } from '#studies/decide-trial.ts'
import { Stages } from '#studies/stages.ts'
import { finish } from '#studies/study.ts'

const stages = new Stages()
const question = workerData as Deciding
const reply = finish(decide(stages, question), ({ share }) => {
  parentPort!.postMessage({ share })
})
parentPort!.postMessage({ reply })

const trials = new Trials(stages, asItIs(question.scenario), question.weather)
parentPort!.on('message', ({ id, rough }: { id: number; rough: Combination }) => {
  parentPort!.postMessage({ id, sized: sizedAsBuilt(trials, guessedOf(rough)) })
})
