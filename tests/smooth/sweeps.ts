import { defaultScenario, withField } from '#model/design/scenario'
import { sizingOf, Stages } from '#studies/stages.ts'
import { sampleWeather } from '../../src/shell/samples.ts'

const CLIMATE = 'continental'
const STEP_frac = 0.01
/** The search ends within this share of its area: twice that is no jump. */
const SEARCH = 0.003
const MOST_JUMP = 0.02
const MOST_SHARE = 1.5
/** Parts in which a move over its share is looked at again. */
const PARTS = 10

interface Input {
  readonly field: string
  readonly about: number
  /** From one point to the next: 1 % of `about`, or one of what is counted whole. */
  readonly step: number
  readonly isCounted: boolean
}

const moved = (field: string, about: number): Input => ({
  field,
  about,
  step: about * STEP_frac,
  isCounted: false,
})

/** Inputs and the value that the sweep is about. Hours are judged whole, each by the hour that is then the first too many. */
const INPUTS: readonly Input[] = [
  moved('coating.windowEmittance_frac', 0.92),
  moved('coating.solarReflectance_frac', 0.9),
  moved('room.wallU_Wm2K', 1),
  moved('room.roofU_Wm2K', 1),
  moved('room.windowFront_m2', 2),
  moved('room.airChange_1h', 1),
  moved('store.insulation_m', 0.08),
  moved('store.delivery_WK', 200),
  moved('loop.pipeLength_m', 16),
  moved('panel.fieldFactor_frac', 0.9),
  moved('sky.deficitFactor_frac', 1),
  { field: 'target.allowedHours_h', about: 40, step: 1, isCounted: true },
]

/** Areas at points of a sweep, the even share of the whole change, and the largest change from one point to the next. */
interface Sweep {
  readonly areas: readonly number[]
  readonly even: number
  readonly largest: number
  /** Where the largest begins. */
  readonly at: number
}

function sweepOf(areaOf: (value: number) => number, from: number, step: number, points: number): Sweep {
  const areas = Array.from({ length: points }, (_, k) => areaOf(from + step * k))
  const moves = areas.slice(1).map((area, k) => area / areas[k]! - 1)
  const sizes = moves.map(Math.abs)
  const which = sizes.indexOf(Math.max(...sizes))
  const even = (areas.at(-1)! / areas[0]!) ** (1 / (points - 1)) - 1
  return { areas, even, largest: moves[which]!, at: from + step * which }
}

/** One move is more than its share of them all, and than the search's tolerance. */
const isUneven = ({ even, largest }: Sweep): boolean =>
  Math.abs(largest - even) > Math.max(2 * SEARCH, (MOST_SHARE - 1) * Math.abs(even))

/**
 * The sized area, before rounding, over a fine sweep of twelve inputs about the worked example. Prints for each the areas,
 * the even share of the whole change, and the largest change from one point to the next. A move of more than 1.5 times
 * the even share is looked at again in ten parts: a slope that changes there, as where the tank has become the largest
 * that fits, is spread over the parts; a jump is in one of them. Between two whole hours there is nothing to look at.
 * @param points  of each sweep
 * @returns how many inputs have a jump: more than 2 %, or in ten parts more than 1.5 times the even share and the search's tolerance
 */
export function sweeps(points: number): number {
  const weather = sampleWeather(CLIMATE)
  const stages = new Stages()
  let over = 0
  for (const { field, about, step, isCounted } of INPUTS) {
    const areaOf = (value: number): number =>
      sizingOf(stages.prepare(withField(defaultScenario(), field, String(value)), weather)).area_m2
    const sweep = sweepOf(areaOf, about - (step * (points - 1)) / 2, step, points)
    const closer = isUneven(sweep) && !isCounted ? sweepOf(areaOf, sweep.at, step / PARTS, PARTS + 1) : null
    const jumps = Math.abs(sweep.largest) > MOST_JUMP || (closer !== null && isUneven(closer))
    if (jumps) over++
    console.log(`${field.padEnd(30)} ${shown(sweep)}${jumps ? '  over' : ''}`)
    if (closer !== null) console.log(`  from ${closer.at.toPrecision(4)} in ${PARTS} parts: ${shown(closer)}`)
  }
  console.log(`${INPUTS.length} inputs, ${over} over`)
  return over
}

const shown = ({ areas, even, largest }: Sweep): string =>
  `${areas.map((area) => area.toFixed(3)).join(' ')} m²; even share ${percent(even)}, largest ${percent(largest)}`
const percent = (share: number): string => `${(100 * share).toFixed(2)} %`
