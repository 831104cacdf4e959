import { count, figure, said, words, type Problem, type Wording } from '#model/basis/words'
import { simulateYear } from '#model/building/year'
import type { Scenario } from '#model/design/scenario'
import { exceedance } from '#model/design/target'
import type { Candidate } from '#model/design/sizing'
import { type Design, designOf, moduleArea_m2 } from './design.ts'
import { laidOut, modulesThatFit, roofFromAbove, shorterModules } from './panel-place.ts'
import type { Prepared } from './prepared.ts'
import { tankMisfits } from './tank-misfit.ts'
import { tankPlaceOf } from './tank-place.ts'
import { tanksSoldAbout_m3 } from './tank-sizes.ts'

/** A plant that has its place where the designed one has not, and the hours over the limit with it. */
export interface Within {
  readonly area_m2: number
  readonly storeVolume_m3: number
  readonly hoursOver_h: number
}

/** How a plant fits its building, and what as much of it as fits would come to. */
export interface Fit {
  /** What does not fit; empty where all does. */
  readonly misfits: readonly Problem[]
  /** Where something does not: as much as fits, in whole modules and a tank that is sold; null also where no tank fits. */
  readonly within: Within | null
  /** The same in a sentence for headlines. */
  readonly instead: Wording | null
}

/** Roof or ground that is free for panels, m²: as the scenario says, else as much as the room's roof. */
export function freeArea_m2({ panel, room }: Scenario): number {
  return panel.freeArea_m2 > 0 ? panel.freeArea_m2 : room.length_m * room.width_m
}

/** What of a design has no room where it is to be. */
export function misfitsOf(scenario: Scenario, area_m2: number, storeVolume_m3: number): Problem[] {
  const free_m2 = freeArea_m2(scenario)
  const panels: Problem[] =
    area_m2 > free_m2 * (1 + 1e-9)
      ? [
          {
            code: 'panels-do-not-fit',
            severity: 'warning',
            ...said(
              words`${figure(area_m2, 'm2')} of panel do not fit the ${figure(free_m2, 'm2')} that are free${scenario.panel.freeArea_m2 > 0 ? '' : ' on the room’s own roof'}.`,
            ),
            remedy:
              'Say what is free for panels (“Free for panels”: more roof, a stand on the ground), or let other measures take a part of the load.',
            place: { field: 'panel.freeArea_m2' },
          },
        ]
      : overhang(scenario, area_m2)
  return area_m2 > 0 ? [...panels, ...tankMisfits(scenario, storeVolume_m3)] : []
}

/** What has the area but not the shape: rows wider or longer than the roof they are to lie on. */
function overhang(scenario: Scenario, area_m2: number): Problem[] {
  if (!(area_m2 > 0) || laidOut(scenario, area_m2)) return []
  const roof = roofFromAbove(scenario)!
  const shorter = shorterModules(scenario, area_m2)
  return [
    {
      code: 'field-does-not-fit',
      severity: 'warning',
      ...said(
        words`${figure(area_m2, 'm2')} of panel have the area but not the shape of the room’s own roof, ${figure(roof.across_m, 'm')} along the rows × ${figure(roof.down_m, 'm')}: at most ${modulesThatFit(scenario).words} fit.${shorter === null ? words`` : words` ${shorter}`}`,
      ),
      place: { field: 'panel.moduleLength_m' },
      remedy: 'Choose modules of another length or width, or give the free area of another place for them.',
    },
  ]
}

/** Whether the plant fits; where it does not, as much of it as does is run for a year. */
export function fitOf(prepared: Prepared, { candidate }: Design): Fit {
  const { scenario } = prepared
  const misfits = misfitsOf(scenario, candidate.area_m2, candidate.storeVolume_m3)
  const within = misfits.length === 0 ? null : withinOf(prepared, candidate)
  return { misfits, within, instead: within === null ? null : insteadOf(prepared, within) }
}

function withinOf(prepared: Prepared, candidate: Candidate): Within | null {
  const { scenario, yardstick } = prepared
  const module_m2 = moduleArea_m2(scenario)
  const area_m2 = Math.min(candidate.area_m2, modulesThatFit(scenario).modules * module_m2)
  const storeVolume_m3 = tankWithin_m3(scenario, candidate, area_m2)
  if (storeVolume_m3 === null) return null
  const smaller = { area_m2, storeVolume_m3, flow_kgsm2: prepared.flow_kgsm2(area_m2) }
  const { inputs } = designOf(prepared, smaller, 'built')
  const year = inputs.plant === null ? prepared.doNothing : simulateYear(inputs, { lean: true })
  return { area_m2, storeVolume_m3, hoursOver_h: exceedance(year.room_C, yardstick).hours_h }
}

/** The tank that goes with less panel: in proportion where it is chosen, and no larger than fits; null where none does. */
function tankWithin_m3(scenario: Scenario, { area_m2, storeVolume_m3 }: Candidate, less_m2: number) {
  const place = tankPlaceOf(scenario)
  if (place === null) return storeVolume_m3
  if (place.most_m3 <= 0) return null
  const share = scenario.store.autoVolume ? less_m2 / area_m2 : 1
  const asked_m3 = storeVolume_m3 * share
  if (share === 1 && asked_m3 <= place.most_m3) return asked_m3
  return tanksSoldAbout_m3(asked_m3, place.most_m3).at(-1)!
}

function insteadOf({ scenario, doNothing, yardstick }: Prepared, within: Within): Wording {
  const { area_m2, storeVolume_m3, hoursOver_h } = within
  const all_h = exceedance(doNothing.room_C, yardstick).hours_h
  const tank =
    tankPlaceOf(scenario) === null || area_m2 === 0
      ? words``
      : words` with a tank of ${figure(storeVolume_m3, 'm3')}`
  const where = scenario.panel.freeArea_m2 > 0 ? 'what is free' : 'the roof'
  return area_m2 === 0
    ? words`No module fits ${where}.`
    : words`What fits is ${figure(area_m2, 'm2')} of panel${tank}: ${count(Math.max(0, all_h - hoursOver_h))} of ${count(all_h)} hours above the limit are gone.`
}
