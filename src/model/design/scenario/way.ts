import type { Scenario } from './fields.ts'
import {
  PLANT_NAMES,
  WAY_NAMES,
  type MachineId,
  type MeasureId,
  type WayPart,
  type WayPlant,
} from './way-field.ts'

type Way = Pick<Scenario, 'job'>

const ORDER = Object.keys(WAY_NAMES) as WayPart[]
const isPlant = (part: string): part is WayPlant => Object.hasOwn(PLANT_NAMES, part)

/** Measures of the way taken, in their order; empty where there is none. */
export function measureIdsOf({ job }: Way): MeasureId[] {
  return ORDER.filter((part) => job.way.includes(part)).filter((part) => !isPlant(part))
}

/** What cools the room in the way taken beside its measures. */
export function plantOf({ job }: Way): WayPlant | 'none' {
  return job.way.find(isPlant) ?? 'none'
}

/** The machine in place of panels in the way taken. */
export function machineOf(scenario: Way): MachineId | 'none' {
  const plant = plantOf(scenario)
  return plant === 'panels' ? 'none' : plant
}

/** "Insulate the roof + Night fan + panels"; empty where no way is taken. */
export function wayText({ job }: Way): string {
  return ORDER.filter((part) => job.way.includes(part))
    .map((part) => WAY_NAMES[part])
    .join(' + ')
}

/** The description with a way taken, its parts in their order; none takes the way back. */
export function withWayTaken(scenario: Scenario, parts: readonly WayPart[]): Scenario {
  return { ...scenario, job: { ...scenario.job, way: ORDER.filter((part) => parts.includes(part)) } }
}

/** True where both have the same parts, in whatever order. */
export function sameWay(a: readonly WayPart[], b: readonly WayPart[]): boolean {
  return a.length === b.length && a.every((part) => b.includes(part))
}

/** True where an area is looked for: no machine takes its place, and no way without panels was taken. */
export function sizesPanels(scenario: Scenario): boolean {
  const { way } = scenario.job
  return scenario.target.autoArea && (way.length === 0 || way.includes('panels'))
}

/** Measures with what cools the room beside them, as a search has them. */
interface Combined {
  readonly measures: readonly MeasureId[]
  readonly plant: WayPlant | 'none'
}

/** The parts of a way that a combination is. */
export const partsOf = ({ measures, plant }: Combined): readonly WayPart[] =>
  plant === 'none' ? measures : [...measures, plant]

/** True where a combination is the way taken. */
export const isTaken = (one: Combined, taken: readonly WayPart[]): boolean =>
  taken.length > 0 && sameWay(partsOf(one), taken)

/** The same description with panels in its way, in place of a machine; one without a way has panels already. */
export function withPanelsInWay(scenario: Scenario): Scenario {
  const { way } = scenario.job
  if (way.length === 0 || way.includes('panels')) return scenario
  return withWayTaken(scenario, [...measureIdsOf(scenario), 'panels'])
}
