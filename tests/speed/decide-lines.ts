import { decideShared } from '../../src/shell/decide-shared.ts'
import { defaultScenario } from '#model/design/scenario'
import { decide, type Decision } from '#studies/decide.ts'
import { Stages } from '#studies/stages.ts'
import { finish } from '#studies/index.ts'
import { sampleWeather } from '../../src/shell/samples.ts'
import { cpu_s } from './measure.ts'
import type { Line } from './table.ts'

const CLIMATE = 'continental'
const COMBINATIONS = 200
/** Runs of the whole search: it takes some seconds. */
const RUNS = 3
const WORKERS = 2

/** The search over combinations of measures and machines as the command line asks it, scaled to 200 of them. */
export async function search(): Promise<Line[]> {
  const question = { scenario: defaultScenario(), weather: sampleWeather(CLIMATE) }
  const values: number[] = []
  let looked = 0
  let heard = 0
  let whole: Decision | null = null
  for (let run = 0; run < RUNS; run++) {
    const start = cpu_s()
    heard = 0
    const { result } = await decideShared(question, () => heard++, WORKERS)
    looked = result.looked
    whole = result
    values.push(((cpu_s() - start) / WORKERS) * (COMBINATIONS / looked))
  }
  const sets = new Set(whole!.combinations.map(({ plant }) => plant)).size
  return [
    {
      name: `search over 200 combinations in two workers, from cold (of ${looked} looked at with ${sets} kinds of plant, ${heard} reports of progress)`,
      goal: '≤ 10',
      unit: 's',
      values,
      met: (s) => s <= 10 && heard > 0,
      why: 'Each combination that is not seen to lose beforehand is its own room, its own year without panels, and with panels a sizing.',
      work: () => finish(decide(new Stages(), question)),
    },
  ]
}
