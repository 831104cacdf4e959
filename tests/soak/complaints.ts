import type { DesignAnswer } from '#model/design/assembly'
import { type Comparisons, comparedComplaints } from './compared.ts'
import { type Scenario, hold } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import { createStudies, finish, type Studies } from '#studies/index.ts'

export interface Complaint {
  readonly index: number
  readonly climate: string
  readonly what: string
}

/** Books must close to this share of what went through them. */
const CLOSURE = 1e-9
/** Colder than anything in these climates, and than any sky makes a tank, °C. */
const COLDEST_C = -90
/** Every so many scenarios is repeated, and held against better ones. */
const REPEATED_EVERY = 25
const COMPARED_EVERY = 5
/** What is wrong with one scenario in one climate; empty when nothing is. Counts what it compares. */
export function complaints(
  studies: Studies,
  scenario: Scenario,
  climate: { readonly name: string; readonly weather: WeatherRecord },
  index: number,
  comparisons: Comparisons,
): Complaint[] {
  const say = (what: string): Complaint => ({ index, climate: climate.name, what })
  try {
    const own = hold(scenario, { area_m2: Math.max(0.5, Math.min(scenario.target.area_m2, 200)) })
    const answer = finish(studies.size({ scenario: own, weather: climate.weather })).result
    const heard = yearComplaints(answer)
    if (index % COMPARED_EVERY === 0)
      heard.push(...comparedComplaints(studies, own, answer, climate.weather, comparisons))
    if (index % REPEATED_EVERY === 0) heard.push(...repeatComplaints(own, answer, climate.weather))
    return heard.map(say)
  } catch (error) {
    return [say(`threw ${(error as Error).message}`)]
  }
}

function yearComplaints(answer: DesignAnswer): string[] {
  const { year, sizing, doNothing } = answer
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
  const limit_C = Math.max(hottest(doNothing.room_C), hottest(doNothing.slab_C), hottest(doNothing.radiant_C))
  for (const name of ['room_C', 'store_C'] as const) {
    const top_C = hottest(year[name])
    if (top_C > limit_C + RISE_K)
      heard.push(
        `${name} reaches ${top_C.toFixed(1)} °C, nothing in the room left alone passes ${limit_C.toFixed(1)} °C`,
      )
    if (year[name].some((value) => value < COLDEST_C)) heard.push(`${name} falls below ${COLDEST_C} °C`)
  }
  if (!Number.isFinite(sizing.withPanels.measure)) heard.push('the distance from the target is not finite')
  return heard
}

/** Pump and fan may warm room and store a little above the room left alone, K. */
const RISE_K = 12

const hottest = (column: Float64Array): number =>
  column.reduce((top, value) => Math.max(top, value), -Infinity)

function repeatComplaints(scenario: Scenario, answer: DesignAnswer, weather: WeatherRecord): string[] {
  const again = finish(createStudies().size({ scenario, weather })).result
  const same = again.year.room_C.every((value, h) => value === answer.year.room_C[h])
  return same ? [] : ['a repeat run gave another room temperature']
}
