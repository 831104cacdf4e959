import fc from 'fast-check'
import { Stages } from '#studies/stages.ts'
import { sampleNames, sampleWeather } from '../../src/shell/samples.ts'
import { randomScenario } from '../rooms/design/scenario/random-scenario.ts'
import { verdictOf } from '../soak/complaints.ts'
import { cpu_s } from './measure.ts'
import type { Line } from './table.ts'

const SEED = 20261125
const RUNS = 5
const EACH = 8
/** Where the soak runs. */
const CORES = 2
/** What it took before speed was worked on: so many a second of two idle cores, the refused ones among them. */
const BEFORE_1s = 4.1

/** Scenarios of the soak a CPU second, times the cores that share it out, a few at a time; what is refused counts as it does there. */
export function soak(): Line[] {
  const scenarios = fc.sample(randomScenario, { numRuns: (RUNS + 1) * EACH, seed: SEED })
  const names = sampleNames()
  const weathers = names.map(sampleWeather)
  const stages = new Stages()
  const judged = (from: number): void => {
    for (let i = from; i < from + EACH; i++) {
      const which = i % names.length
      const climate = { name: names[which]!, weather: weathers[which]! }
      verdictOf(stages, scenarios[i]!, climate, i, { made: 0, refused: 0 })
    }
  }
  judged(RUNS * EACH)
  const values = Array.from({ length: RUNS }, (_, run) => {
    const start = cpu_s()
    judged(run * EACH)
    return (CORES * EACH) / (cpu_s() - start)
  })
  return [
    {
      name: `soak of 20,000 in half its time: scenarios a second of two cores (${BEFORE_1s} before)`,
      goal: `≥ ${2 * BEFORE_1s}`,
      unit: '1/s',
      values,
      met: (rate) => rate >= 2 * BEFORE_1s,
      why: 'Seven tenths of it are years: those of its comparisons (more area, a better coating, a lower limit, a thicker back and tank), whole and with books, and only the search between them is shortened to the season.',
      work: () => judged(0),
    },
  ]
}
