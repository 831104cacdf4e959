import { describedRoom, machineOf, measureIdsOf, sizesPanels, type Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import { AIR_MEASURES } from './air-measures.ts'
import { BUILDING_MEASURES } from './building-measures.ts'
import type { Measure } from './measure.ts'

export const MEASURES: readonly Measure[] = [...BUILDING_MEASURES, ...AIR_MEASURES]

/** Measures of the way taken, in their order. */
export function takenMeasures(scenario: Pick<Scenario, 'job'>): Measure[] {
  const ids = measureIdsOf(scenario)
  return MEASURES.filter(({ id }) => ids.includes(id))
}

/**
 * What is simulated: the room as it is with the measures of the way taken, which is then no longer beside it, so that doing
 * this twice is doing it once. A way without panels has none, unless the user gives an area; one with a machine never.
 * @param weather  of the place, without stress: what goes through an opening at night depends on its wind
 */
export function withWay(scenario: Scenario, weather: WeatherRecord): Scenario {
  const { job, target } = scenario
  if (job.way.length === 0) return scenario
  const built = takenMeasures(scenario).reduce((s, measure) => measure.apply(s, 1, weather), scenario)
  const none = machineOf(scenario) !== 'none' || (target.autoArea && !sizesPanels(scenario))
  return {
    ...built,
    job: { ...job, way: [] },
    target: none ? { ...built.target, autoArea: false, area_m2: 0 } : built.target,
  }
}

/** The room as it is, with nothing taken. */
export function asItIs(scenario: Scenario): Scenario {
  return scenario.job.way.length === 0 ? scenario : { ...scenario, job: { ...scenario.job, way: [] } }
}

/** One number that the way taken changes, before and with it, as its field counts it; of heat inside the mean of the day. */
export interface WayChange {
  readonly field: string
  readonly before: number
  readonly after: number
}

/** What the way taken changes of the room as it is; walls and roof given by what they are made of have their U-value from that. */
export function wayChanges(scenario: Scenario, weather: WeatherRecord): WayChange[] {
  const described = { ...scenario, room: describedRoom(scenario.room) }
  const [before, after] = [numbersOf(asItIs(described)), numbersOf(withWay(described, weather))]
  return Object.entries(before).flatMap(([field, value]) =>
    after[field] === value ? [] : [{ field, before: value, after: after[field]! }],
  )
}

function numbersOf({ room, target }: Scenario): Readonly<Record<string, number>> {
  const numbers = Object.entries({
    ...room,
    gains_W: room.gains_W.reduce((sum, gain_W) => sum + gain_W, 0) / room.gains_W.length,
    nightAirChange_1h: room.nightVent ? room.nightAirChange_1h : 0,
  }).flatMap(([name, value]) => (typeof value === 'number' ? [[`room.${name}`, value] as const] : []))
  return Object.fromEntries([...numbers, ['target.airSpeed_ms', target.airSpeed_ms]])
}
