/** One core's share of a soak: every so many of the same seeded scenarios, reported one by one. */
import { parentPort, workerData } from 'node:worker_threads'
import fc from 'fast-check'
import { Stages } from '#studies/stages.ts'
import { sampleNames, sampleWeather } from '../../src/shell/samples.ts'
import { agreeing, anyFields } from '../rooms/design/scenario/random-scenario.ts'
import type { Comparisons } from './compared.ts'
import { type Verdict, verdictOf } from './complaints.ts'

/** Scenarios `from` to `until` (not included) of a seed's, those whose place among them leaves `part` over `of`. */
export interface SoakShare {
  readonly seed: number
  readonly from: number
  readonly until: number
  readonly part: number
  readonly of: number
}

export interface SoakReport extends Verdict {
  readonly comparisons: Comparisons
}

const { seed, from, until, part, of } = workerData as SoakShare
const drawn = fc.sample(anyFields, { numRuns: until, seed })
const names = sampleNames()
const weathers = names.map(sampleWeather)
const stages = new Stages()
for (let i = from + part; i < until; i += of) {
  const which = i % names.length
  const climate = { name: names[which]!, weather: weathers[which]! }
  const comparisons: Comparisons = { made: 0, refused: 0 }
  const verdict = verdictOf(stages, agreeing(drawn[i]!), climate, i, comparisons)
  parentPort!.postMessage({ ...verdict, comparisons } satisfies SoakReport)
}
