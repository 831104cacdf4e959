import { isTank, tankShape } from '#model/building/store'
import { figure, said, words, type Problem, type Text } from '#model/basis/words'
import { simulateYear } from '#model/building/year'
import type { Scenario } from '#model/design/scenario'
import { exceedance } from '#model/design/target'
import { type Design, designOf, moduleArea_m2 } from './design.ts'
import type { Prepared } from './prepared.ts'

/** How a plant fits its building, and what the panels that do fit would come to. */
export interface Fit {
  /** What does not fit; empty where all does. */
  readonly misfits: readonly Problem[]
  /** Where the panels are too many: the whole modules that fit, and the hours over the limit with them. */
  readonly within: { readonly area_m2: number; readonly hoursOver_h: number } | null
}

/** A tank in the room takes no more than this share of its floor (common practice, no source). */
const TANK_FLOOR_SHARE = 0.2
/** What must stay free above a tank for its pipes and lid, m (common practice, no source). */
const HEADROOM_M = 0.3

/** Roof or ground that is free for panels, m²: as the scenario says, else as much as the room's roof. */
export function freeArea_m2({ panel, room }: Scenario): number {
  return panel.freeArea_m2 > 0 ? panel.freeArea_m2 : room.length_m * room.width_m
}

/** What of a design has no room where it is to be. */
export function misfitsOf(scenario: Scenario, area_m2: number, storeVolume_m3: number): Problem[] {
  const free_m2 = freeArea_m2(scenario)
  const panels =
    area_m2 > free_m2 * (1 + 1e-9)
      ? [
          misfit(
            'panels-do-not-fit',
            'panel.freeArea_m2',
            words`${figure(area_m2, 'm2')} of panel do not fit the ${figure(free_m2, 'm2')} that are free${scenario.panel.freeArea_m2 > 0 ? '' : ' on the room’s own roof'}.`,
            'Say what is free for panels (“Free for panels”: more roof, a stand on the ground), or let other measures take a part of the load.',
          ),
        ]
      : []
  return area_m2 > 0 ? [...panels, ...tankMisfits(scenario, storeVolume_m3)] : []
}

function tankMisfits({ store, room }: Scenario, volume_m3: number): Problem[] {
  if (!isTank(store.kind) || store.place !== 'room' || volume_m3 <= 0) return []
  const bare = tankShape(volume_m3)
  const across_m = bare.diameter_m + 2 * store.insulation_m
  const high_m = bare.height_m + 2 * store.insulation_m
  const floor_m2 = room.length_m * room.width_m
  const wide = across_m ** 2 > TANK_FLOOR_SHARE * floor_m2
  const tall = high_m > room.height_m - HEADROOM_M
  if (!wide && !tall) return []
  return [
    misfit(
      'tank-does-not-fit',
      'store.place',
      words`A tank of ${figure(volume_m3, 'm3')}, ${figure(across_m, 'm', 2)} across and ${figure(high_m, 'm', 2)} high with its insulation, has no place in this room${wide ? words`: it takes more than a fifth of the floor` : words`: less than ${figure(HEADROOM_M, 'm')} stay free above it`}.`,
      'Stand it outdoors, use several lower tanks, choose a smaller volume yourself, or keep the cold in the floor slab.',
    ),
  ]
}

function misfit(code: string, field: string, message: Text, remedy: string): Problem {
  return { code, severity: 'warning', ...said(message), remedy, place: { field } }
}

/** Whether the plant fits; the modules that do are run for a year where the panels do not. */
export function fitOf(prepared: Prepared, { candidate }: Design): Fit {
  const { scenario, yardstick } = prepared
  const misfits = misfitsOf(scenario, candidate.area_m2, candidate.storeVolume_m3)
  const free_m2 = freeArea_m2(scenario)
  if (candidate.area_m2 <= free_m2) return { misfits, within: null }
  const module_m2 = moduleArea_m2(scenario)
  const area_m2 = Math.floor(free_m2 / module_m2 + 1e-9) * module_m2
  const share = area_m2 / candidate.area_m2
  const smaller = {
    ...candidate,
    area_m2,
    flow_kgsm2: prepared.flow_kgsm2(area_m2),
    storeVolume_m3: candidate.storeVolume_m3 * (scenario.store.autoVolume ? share : 1),
  }
  const { inputs } = designOf(prepared, smaller, 'built')
  const year = inputs.plant === null ? prepared.doNothing : simulateYear(inputs, { lean: true })
  return { misfits, within: { area_m2, hoursOver_h: exceedance(year.room_C, yardstick).hours_h } }
}
