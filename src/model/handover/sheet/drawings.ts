import {
  buildUp,
  modulePlan,
  wiring,
  drainsBack,
  roofPlan,
  schematic,
  section,
  waterLine_m,
  type Drawing,
} from '#model/handover/drawing'
import { figure, said, words, type Problem, type SheetLine } from '#model/basis/words'
import { factsOf } from './facts-of.ts'
import { massMisfits } from './mass-misfits.ts'
import { liftRemarks, placeLines, wayInRemarks } from './place-lines.ts'
import { plantOf, type Plant, type SheetAnswer } from './plant.ts'

/** All drawings of the sheet, in the order of the work and as they fill their pages: roof, section, panel from above, loop, panel cut, wiring. */
export function drawingsOf(plant: Plant): Drawing[] {
  const facts = factsOf(plant)
  return [roofPlan(facts), section(facts), modulePlan(facts), schematic(facts), buildUp(facts), wiring(facts)]
}

/** Panels that are to drain into water that is higher than they are; pipes that do not go into their slab. */
export function shapeMisfits(plant: Plant): Problem[] {
  return [...undrained(plant), ...massMisfits(plant)]
}

/** What the sheet says of the place of a plant, for pages that come before it; null where the answer has no panels. */
export function placeOf(answer: SheetAnswer): PlaceOfPlant | null {
  if (!(answer.area_m2 > 0)) return null
  const plant = plantOf(answer)
  return {
    misfits: shapeMisfits(plant),
    lines: placeLines(plant),
    remarks: [...wayInRemarks(plant), ...liftRemarks(plant)],
  }
}

/** Whether a plant has its place, and what that was judged by. */
export interface PlaceOfPlant {
  readonly misfits: readonly Problem[]
  readonly lines: readonly SheetLine[]
  readonly remarks: readonly Problem[]
}

/** Panels drain only into water below their low edge, with some fall to it, m (common practice, no source). */
const LEAST_DROP_m = 0.1

function undrained(plant: Plant): Problem[] {
  const facts = factsOf(plant)
  const water_m = waterLine_m(facts)
  if (!drainsBack(facts) || water_m === null) return []
  if (water_m > LEAST_DROP_m && facts.panelHeight_m >= water_m + LEAST_DROP_m) return []
  const what =
    facts.tank === null
      ? words`Under panels whose low edge is ${figure(facts.panelHeight_m, 'span')} above the ground there is no place for a vessel that they could drain into.`
      : words`The low edge of the panels is ${figure(facts.panelHeight_m, 'span')} above the ground, the tank’s water line ${figure(water_m, 'span')}: they cannot drain into it.`
  return [
    {
      code: 'panels-cannot-drain',
      severity: 'warning',
      ...said(what),
      place: { field: 'plan.freeze' },
      remedy:
        'Raise the panels, use a lower tank, fill the loop with glycol, or stop and drain it by hand in winter.',
    },
  ]
}
