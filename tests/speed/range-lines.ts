import type { DesignAnswer } from '#model/design/assembly'
import { drawsToSimulate, type UncertaintyResult } from '#model/design/sizing'
import { spreadOfAreas } from '#model/design/scenario'
import { drawnAreas_m2, uncertainty } from '#studies/drawn-areas.ts'
import { sampleWeather } from '../../src/shell/samples.ts'
import type { Made } from './made.ts'
import { cpu_s } from './measure.ts'
import type { Row } from './table.ts'

const DRAWS = 256
/** As many workers share the draws out. */
const WORKERS = 2
/** A climate in which the fit of the first draws is not good enough. */
const HARD_CLIMATE = 'high-dry-plateau'

/** All of a generator's work; its result. */
function ended<T>(work: Iterator<unknown, T>): T {
  for (;;) {
    const next = work.next()
    if (next.done === true) return next.value
  }
}

const quantiles = ({ low_m2, middle_m2, high_m2 }: UncertaintyResult): (number | null)[] => [
  low_m2,
  middle_m2,
  high_m2,
]

/** By how much the 10, 50 and 90 % areas are off those of every draw simulated, %, with their signs. */
function offs(found: UncertaintyResult, every: UncertaintyResult): number[] {
  const wanted = quantiles(every)
  return quantiles(found).map((area_m2, i) => 100 * ((area_m2 ?? Infinity) / (wanted[i] ?? Infinity) - 1))
}

const signed = (value: number): string => `${value >= 0 ? '+' : '−'}${Math.abs(value).toFixed(1)}`

/** The range of 256 draws: its time, its quantiles against every draw simulated, and what it does where its own check fails. */
export function ranges(made: Made): Row[] {
  const { stages, scenario, record } = made
  const answer = stages.answer(scenario, record)
  const drawn = (from: number, to: number, of: DesignAnswer, weather = record): (number | null)[] =>
    ended(drawnAreas_m2(stages, of.scenario, weather, of.sizing, DRAWS, from, to))
  const range = (): UncertaintyResult => ended(uncertainty(stages, scenario, record, answer.sizing, DRAWS))
  const first = drawsToSimulate(0, DRAWS)
  drawn(0, 8, answer)
  const times_s: number[] = []
  for (let run = 0; run < 3; run++) {
    const start = cpu_s()
    range()
    times_s.push((cpu_s() - start) / WORKERS)
  }
  const found = range()
  const every = spreadOfAreas(scenario, record, DRAWS, drawn(0, DRAWS, answer))!
  const off = offs(found, every)
  const said =
    found.miss_frac === null ? '' : `; its own check says ${(100 * found.miss_frac).toFixed(1)} % a draw`
  const hard = sampleWeather(HARD_CLIMATE)
  const hardAnswer = stages.answer(scenario, hard)
  const start = cpu_s()
  const hardFound = ended(uncertainty(stages, scenario, hard, hardAnswer.sizing, DRAWS))
  const hard_s = (cpu_s() - start) / WORKERS
  const draw = (): unknown => drawn(first - 2, first, answer)
  return [
    {
      name: `range, ${found.simulated} of ${DRAWS} draws simulated, in two workers`,
      goal: '≤ 0.5',
      unit: 's',
      values: times_s,
      met: (s) => s <= 0.5,
      why: 'Two to three seasons of a draw are two thirds of it, its own sky, panel hours and room in those hours a third.',
      work: draw,
    },
    {
      name: `its 10, 50 and 90 % areas (${off.map(signed).join(', ')} %) against every draw, the worst${said}`,
      goal: '≤ 3',
      unit: '%',
      values: [Math.max(...off.map(Math.abs))],
      met: (x) => x <= 3,
      why: 'The straight fit of the area’s logarithm misses single draws by what its own check says.',
      work: draw,
    },
    {
      name: `range where the check fails (${HARD_CLIMATE}): draws simulated of ${DRAWS}`,
      goal: `${DRAWS}, or its check ≤ 3 %`,
      unit: 'draws',
      values: [hardFound.simulated],
      met: (count) => count === DRAWS || (hardFound.miss_frac ?? Infinity) <= 0.03,
      why: 'It went on with a fit that its own check does not allow.',
      work: draw,
    },
    { name: 'its time, in two workers', goal: '', unit: 's', values: [hard_s], met: null },
  ]
}
