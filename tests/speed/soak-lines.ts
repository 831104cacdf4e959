import fc from 'fast-check'
import { Stages } from '#studies/stages.ts'
import { sampleNames, sampleWeather } from '../../src/shell/samples.ts'
import { randomScenario } from '../rooms/design/scenario/random-scenario.ts'
import { verdictOf } from '../soak/complaints.ts'
import { cpu_s } from './measure.ts'
import type { Line } from './table.ts'

const SEED = 20261125
const RUNS = 9
const EACH = 4

/** Scenarios of the soak a CPU second, one worker, a few at a time; what is refused before it runs does not count. */
export function soak(): Line[] {
  const scenarios = fc.sample(randomScenario, { numRuns: (RUNS + 1) * EACH, seed: SEED })
  const names = sampleNames()
  const weathers = names.map(sampleWeather)
  const stages = new Stages()
  const judged = (from: number): number => {
    let count = 0
    for (let i = from; i < from + EACH; i++) {
      const which = i % names.length
      const climate = { name: names[which]!, weather: weathers[which]! }
      const { refused } = verdictOf(stages, scenarios[i]!, climate, i, { made: 0, refused: 0 })
      if (refused === null) count++
    }
    return count
  }
  judged(RUNS * EACH)
  const values = Array.from({ length: RUNS }, (_, run) => {
    const start = cpu_s()
    const count = judged(run * EACH)
    return count / (cpu_s() - start)
  })
  return [{ name: 'soak, scenarios a second of one core', goal: '', unit: '1/s', values, met: null }]
}
