/** Panels in a combination, sized just as the design page sizes them. */
import { HOUR_S } from '#model/basis/hours'
import { simulateYear } from '#model/building/year'
import { builtOf, designOf, taskOf, type Prepared } from '#model/design/assembly'
import {
  type Candidate,
  type Season,
  sizePanels,
  type SizingResult,
  surelyTooSmall,
  type SizingTask,
} from '#model/design/sizing'
import { exceedance } from '#model/design/target'

/** A year with a plant, and what it used. */
export interface PlantYear {
  readonly room_C: Float64Array
  readonly electric_J: number
  readonly water_kg: number
  readonly mostHumid_frac: number
  readonly panelArea_m2: number
  readonly storeVolume_m3: number
  /** The area is only hoped to meet the target. */
  readonly hoped?: true
  /** The largest area there is room for was not enough. */
  readonly floor?: true
}

/** What panels draw is counted, what a fan at night draws is not yet. */
export interface PanelYear extends PlantYear {
  /** Hours with windows open, or their fan on, at night. */
  readonly vented_h: number
}

/** A design before it is rounded to what is sold. */
export type Sized = Pick<SizingResult, 'kind' | 'area_m2' | 'storeVolume_m3' | 'slope'>

type Built = PanelYear & { readonly sized: Sized }

/** Where the largest area misses with any tank by more, K or K·h, it is not run with just the tank at the knee. */
const MISSED_ANYHOW = 0.2

/**
 * Sized, of whole modules, the tank at its knee: the very numbers of the design page.
 * @param floor  the largest area is known to be too small: looked at first, it is found at once
 */
export function builtPanels(prepared: Prepared, floor = false): Built {
  const task = taskOf(prepared)
  const largest = floor ? largestPanels(prepared, task) : null
  if (largest !== null) return largest
  const { design, year, sizing } = builtOf(
    prepared,
    sizePanels(floor ? { ...task, guess_m2: task.maxArea_m2 } : task, false),
  )
  const { area_m2: panelArea_m2, storeVolume_m3 } = design.candidate
  const electric_J = year.electric_W.reduce((sum, watts) => sum + watts, 0) * HOUR_S
  const { room_C, vented_h } = year
  return { ...used(electric_J), room_C, vented_h, panelArea_m2, storeVolume_m3, sized: sizing }
}

/** Null where they are not seen to be too small. */
function largestPanels(prepared: Prepared, task: SizingTask): Built | null {
  const candidate = surelyTooSmall(task, MISSED_ANYHOW)
  if (candidate === null) return null
  const year = yearWith(prepared, candidate, 'built')
  if (exceedance(year.room_C, prepared.yardstick).measure <= 0) return null
  return { ...year, sized: { ...candidate, kind: 'floor', slope: null } }
}

/** How far a design of a known area and tank is from a target: 0 or less when it is met. */
export function missOf(prepared: Prepared, area_m2: number, storeVolume_m3: number): number {
  const candidate = { area_m2, storeVolume_m3, flow_kgsm2: prepared.flow_kgsm2(area_m2) }
  const { room_C } = simulateYear(designOf(prepared, candidate, 'built').inputs, { lean: true })
  return exceedance(room_C, prepared.yardstick).measure
}

/**
 * The year with a candidate, and what its pump drew.
 * @param season  looked at alone, the other hours NaN; null: the whole year
 */
export function yearWith(
  prepared: Prepared,
  candidate: Candidate,
  making?: 'built',
  season: Season | null = null,
): PanelYear {
  const { inputs } = designOf(prepared, candidate, making)
  const { area_m2: panelArea_m2, storeVolume_m3 } = candidate
  const parts =
    season === null
      ? [simulateYear(inputs, { lean: true })]
      : season.spells.map((span) =>
          simulateYear(inputs, { lean: true, span, settled: prepared.doNothing.states }),
        )
  const pump_J = parts.reduce((sum, { ledger }) => sum + ledger.pumpHeat_J, 0)
  const vented_h = parts.reduce((sum, part) => sum + part.vented_h, 0)
  const room_C = parts.length === 1 ? parts[0]!.room_C : together(parts.map((part) => part.room_C))
  return { ...used(pump_J), room_C, vented_h, panelArea_m2, storeVolume_m3 }
}

/** Each hour from the one that has it; NaN where none does. */
const together = (parts: readonly Float64Array[]): Float64Array =>
  parts[0]!.map((_, h) => parts.find((part) => !Number.isNaN(part[h]!))?.[h] ?? NaN)

const used = (electric_J: number) => ({ electric_J, water_kg: 0, mostHumid_frac: 0 })
