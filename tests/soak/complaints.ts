import type { Prepared } from '#model/design/assembly'
import { exceedance } from '#model/design/target'
import { type Scenario, crossFieldProblems, hold } from '#model/design/scenario'
import { simulateYear, type YearResult } from '#model/building/year'
import type { WeatherRecord } from '#model/outdoors/weather'
import { createStudies, finish } from '#studies/index.ts'
import type { Stages } from '#studies/stages.ts'
import { type Comparisons, comparedComplaints } from './compared.ts'
import { hottest, hottestAround_C } from './hottest.ts'
import { ownBuilt, refusal } from './light.ts'

export interface Complaint {
  readonly index: number
  readonly climate: string
  readonly what: string
}

/** What a scenario comes to: refused before it ran, or what is wrong with it (nothing: empty). */
export interface Verdict {
  readonly refused: string | null
  readonly complaints: readonly Complaint[]
}

/** Books must close to this share of what went through them. */
const CLOSURE = 1e-9
/** Colder than anything in these climates, and than any sky makes a tank, °C. */
const COLDEST_C = -90
/** Every so many scenarios is asked as page and shell ask it, by a fresh memory: the figures must be the same to the last digit. */
const REPEATED_EVERY = 25

/** Runs one scenario in one climate and holds it against better ones. Counts what it compares. */
export function verdictOf(
  stages: Stages,
  scenario: Scenario,
  climate: { readonly name: string; readonly weather: WeatherRecord },
  index: number,
  comparisons: Comparisons,
): Verdict {
  const say = (what: string): Complaint => ({ index, climate: climate.name, what })
  const refused = crossFieldProblems(scenario).find((problem) => problem.severity === 'error')
  if (refused !== undefined) return { refused: refused.code, complaints: [] }
  try {
    const own = hold(scenario, { area_m2: Math.max(0.5, Math.min(scenario.target.area_m2, 200)) })
    const range = refusal(own)
    if (range !== null) return { refused: range, complaints: [] }
    const { prepared, design } = ownBuilt(stages, own, climate.weather)
    const year = simulateYear(design.inputs)
    const found = exceedance(year.room_C, prepared.yardstick)
    const heard = [
      ...yearComplaints(year, prepared),
      ...comparedComplaints(stages, own, { prepared, design, year, found }, climate.weather, comparisons),
    ]
    if (index % REPEATED_EVERY === 0) heard.push(...repeatComplaints(own, year, climate.weather))
    return { refused: null, complaints: heard.map(say) }
  } catch (error) {
    return { refused: null, complaints: [say(`threw ${(error as Error).message}`)] }
  }
}

function yearComplaints(year: YearResult, prepared: Prepared): string[] {
  const heard: string[] = []
  const closure = Math.abs(year.ledger.residual_J) / year.ledger.throughput_J
  if (!(closure <= CLOSURE)) heard.push(`books open by ${closure.toExponential(1)} of throughput`)
  const columns = [
    'room_C',
    'air_C',
    'radiant_C',
    'slab_C',
    'store_C',
    'plate_C',
    'panelHeat_W',
    'delivered_W',
    'water_kgm2',
  ] as const
  for (const name of columns) if (year[name].some(Number.isNaN)) heard.push(`NaN in ${name}`)
  const limit_C = hottestAround_C(prepared)
  for (const name of ['room_C', 'store_C'] as const) {
    const top_C = hottest(year[name])
    if (top_C > limit_C + RISE_K)
      heard.push(`${name} reaches ${top_C.toFixed(1)} °C, nothing about it passes ${limit_C.toFixed(1)} °C`)
    if (year[name].some((value) => value < COLDEST_C)) heard.push(`${name} falls below ${COLDEST_C} °C`)
  }
  return heard
}

/** Pump and fan may warm room and store a little above the room left alone, K. */
const RISE_K = 12

function repeatComplaints(scenario: Scenario, year: YearResult, weather: WeatherRecord): string[] {
  const again = finish(createStudies().size({ scenario, weather })).result
  const same = again.year.room_C.every((value, h) => value === year.room_C[h])
  const finite = Number.isFinite(again.sizing.withPanels.measure)
  return [
    ...(same ? [] : ['the answer of page and shell has another room temperature']),
    ...(finite ? [] : ['the distance from the target is not finite']),
  ]
}
