import { type Scenario, defaultScenario, withField } from '#model/design/scenario'
import { sizingOf, Stages } from '#studies/stages.ts'
import { sampleWeather } from '../../src/shell/samples.ts'

const CLIMATE = 'continental'
const STEP = 0.01
/** The search ends within this share of its area: twice that is no jump. */
const SEARCH = 0.003
const MOST_JUMP = 0.02
const MOST_SHARE = 1.5

/** Inputs and the value that the sweep is about. */
const INPUTS: readonly (readonly [field: string, about: number])[] = [
  ['coating.windowEmittance_frac', 0.92],
  ['coating.solarReflectance_frac', 0.9],
  ['room.wallU_Wm2K', 1],
  ['room.roofU_Wm2K', 1],
  ['room.windowFront_m2', 2],
  ['room.airChange_1h', 1],
  ['store.insulation_m', 0.08],
  ['store.delivery_WK', 200],
  ['loop.pipeLength_m', 16],
  ['panel.fieldFactor_frac', 0.9],
  ['sky.deficitFactor_frac', 1],
  ['target.allowedHours_h', 40],
]

/**
 * The sized area, before rounding, over a fine sweep of twelve inputs about the worked example. Prints for each the areas,
 * the even share of the whole change, and the largest change from one point to the next.
 * @param points  of each sweep, 1 % of the input apart
 * @returns how many inputs have a jump of more than 2 %, or of more than 1.5 times the even share and the search's tolerance
 */
export function sweeps(points: number): number {
  const weather = sampleWeather(CLIMATE)
  const stages = new Stages()
  const areaOf = (scenario: Scenario): number => sizingOf(stages.prepare(scenario, weather)).area_m2
  let over = 0
  for (const [field, about] of INPUTS) {
    const areas = Array.from({ length: points }, (_, k) => {
      const value = about * (1 + STEP * (k - (points - 1) / 2))
      return areaOf(withField(defaultScenario(), field, String(value)))
    })
    const moves = areas.slice(1).map((area, k) => area / areas[k]! - 1)
    const largest = moves.reduce((top, move) => (Math.abs(move) > Math.abs(top) ? move : top), 0)
    const even = (areas.at(-1)! / areas[0]!) ** (1 / (points - 1)) - 1
    const apart = Math.abs(largest - even)
    const jumps =
      Math.abs(largest) > MOST_JUMP || apart > Math.max(2 * SEARCH, (MOST_SHARE - 1) * Math.abs(even))
    if (jumps) over++
    const shown = areas.map((area) => area.toFixed(3)).join(' ')
    const figures = `even share ${percent(even)}, largest ${percent(largest)}`
    console.log(`${field.padEnd(30)} ${shown} m²; ${figures}${jumps ? '  over' : ''}`)
  }
  console.log(`${INPUTS.length} inputs, ${over} over`)
  return over
}

const percent = (share: number): string => `${(100 * share).toFixed(2)} %`
