import type { UncertaintyResult } from '#model/design/sizing'
import {
  type Figure,
  type Problem,
  saysInvented,
  count,
  figure,
  words,
  type Wording,
  type SheetLine,
} from '#model/basis/words'
import { assumptionLines } from './assumptions.ts'
import { buildSteps } from './build-steps.ts'
import { cautionsOf, onceEach, type Caution } from './cautions.ts'
import { commissioningSteps } from './commissioning.ts'
import type { Step } from './step.ts'
import { controlLines, sensorLines } from './controls.ts'
import { expectedMonths, nightTest, type ExpectedMonth, type NightTest } from './expected.ts'
import type { Drawing } from '#model/handover/drawing'
import { clearNights, type ClearNight } from './clear-nights.ts'
import { controlStates, type ControlState } from './control-states.ts'
import { drawingsOf, shapeMisfits } from './drawings.ts'
import { maintenanceLines } from './maintenance.ts'
import { flowFigure } from './figures.ts'
import { partsOfWorks, type GroupedPart } from './part.ts'
import { powerFigures } from './pump-duty.ts'
import { partsList } from './parts.ts'
import { liftRemarks, placeLines, wayInRemarks } from './place-lines.ts'
import { plantOf, type Plant, type SheetAnswer } from './plant.ts'
import { quantitiesOf, type Quantities } from './quantities.ts'
import type { DesignRanges } from './ranges.ts'
import { siteLinesOf, titleOf } from './site-lines.ts'
import { sureLine } from './sure.ts'
import { besidePanels } from './way/chosen.ts'
import type { Work } from './way/work.ts'
import { jobLines, loopLines, panelLines, storeLines } from './sections.ts'

/** Everything on the sheet, unrounded and in SI; the page words it in the reader's units. */
export interface BuilderSheet {
  readonly title: string
  readonly note: string
  /** Flow of all panels together, in the unit its pump or fan is bought by. */
  readonly flow: Figure
  /** The design in one line. */
  readonly headline: Wording
  /** How sure that is: the range of area, hottest hour and hours; null until they are worked out. */
  readonly sure: Wording | null
  /** Said first when the sheet rests on data that nobody measured; else null. */
  readonly invented: Wording | null
  /** Said before all else when the design does not reach its target; else null. */
  readonly outOfReach: Wording | null
  /** Stamped on the sheet where something does not fit; empty where all does. */
  readonly notBuildable: readonly Problem[]
  readonly job: readonly SheetLine[]
  readonly site: readonly SheetLine[]
  readonly panels: readonly SheetLine[]
  /** Roof plan, section, loop and panel, in the order of the work. */
  readonly drawings: readonly Drawing[]
  readonly loop: readonly SheetLine[]
  readonly store: readonly SheetLine[]
  /** The control as a table; where several states hold, the earlier one decides. */
  readonly states: readonly ControlState[]
  readonly controls: readonly SheetLine[]
  readonly sensors: readonly SheetLine[]
  readonly months: readonly ExpectedMonth[]
  readonly night: NightTest
  /** Readings of clear nights by outdoor temperature; empty where the year has too few. */
  readonly clearNights: readonly ClearNight[]
  /** Null until the ranges are worked out. */
  readonly ranges: DesignRanges | null
  readonly quantities: Quantities
  /** Panels, loop, store and control, then what the measures chosen with them need. */
  readonly parts: readonly GroupedPart[]
  /** Measures chosen together with the panels. */
  readonly works: readonly Work[]
  /** From the bench to the wiring, in order. */
  readonly build: readonly Wording[]
  readonly commissioning: readonly Step[]
  readonly maintenance: readonly Wording[]
  readonly cautions: readonly Caution[]
  /** Warnings of the answer itself: suspicious fields, slow water … */
  readonly remarks: readonly Problem[]
  readonly assumptions: readonly Wording[]
}

/** What is known about the doubts of the design. */
export interface Doubts {
  /** Range of the area, from the uncertainty run. */
  readonly area: UncertaintyResult | null
  /** Ranges of what the built design does. */
  readonly design: DesignRanges | null
}

/**
 * The sheet of an answer.
 * @returns null where there is nothing to build: the room needs no panels, or the user's own area is 0
 */
export function builderSheet(
  answer: SheetAnswer,
  doubts: Doubts = { area: null, design: null },
): BuilderSheet | null {
  if (!(answer.area_m2 > 0)) return null
  const plant = plantOf(answer)
  const quantities = quantitiesOf(plant)
  const night = nightTest(plant)
  const beside = besidePanels(answer)
  return {
    title: titleOf(answer.scenario, answer.weather),
    note: answer.scenario.job.note,
    flow: flowFigure(plant),
    headline: headlineOf(plant, beside.works),
    sure: sureLine(plant, doubts),
    invented: inventedPart(answer),
    outOfReach: outOfReach(answer),
    notBuildable: [...answer.fit.misfits, ...shapeMisfits(plant)],
    job: jobLines(plant),
    site: [...siteLinesOf(answer.scenario, answer.weather), ...placeLines(plant)],
    panels: panelLines(plant),
    drawings: [...drawingsOf(plant), ...beside.drawings],
    loop: loopLines(plant, quantities),
    store: storeLines(plant),
    states: controlStates(plant),
    controls: controlLines(plant),
    sensors: sensorLines(plant),
    months: expectedMonths(answer, doubts.design),
    night,
    clearNights: clearNights(plant),
    ranges: doubts.design,
    quantities,
    parts: [...partsList(plant, quantities), ...partsOfWorks(beside.works)],
    works: beside.works,
    build: buildSteps(plant),
    commissioning: commissioningSteps(plant, night),
    maintenance: maintenanceLines(plant),
    cautions: onceEach([...cautionsOf(plant), ...beside.works.flatMap(({ cautions }) => cautions)]),
    remarks: [...answer.warnings, ...wayInRemarks(plant), ...liftRemarks(plant)],
    assumptions: assumptionLines(plant, doubts.area),
  }
}

/** The design in one line, with what was chosen beside the panels: without that they do not reach what is said of them. */
function headlineOf(plant: Plant, works: readonly Work[]): Wording {
  const { answer, layout, tank, names } = plant
  const { panel } = answer.scenario
  const store = tank === null ? words`` : words`, a ${figure(tank.volume_m3, 'm3')} tank`
  const fits = answer.fit.instead === null ? words`` : words`. It does not fit. ${answer.fit.instead}`
  return words`${figure(answer.area_m2, 'm2')} of panel: ${count(layout.modules)} of ${figure(panel.moduleLength_m, 'span')} × ${figure(panel.moduleWidth_m, 'span')}, ${flowFigure(plant)}${store}, a ${names.mover} of ${powerFigures(plant)}${besideWords(works)}${fits}`
}

const besideWords = (works: readonly Work[]): Wording =>
  works.length === 0 ? words`` : words`. Together with: ${works.map(({ name }) => name).join('; ')}`

function inventedPart({ weather }: SheetAnswer): Wording | null {
  return saysInvented(weather.basis)
    ? words`The climate of ${weather.site.name} is invented: nobody measured it. Choose your own place before you build from this sheet.`
    : null
}

function outOfReach({ sizing }: SheetAnswer): Wording | null {
  if (sizing.withPanels.measure <= 0) return null
  const cause = sizing.limit === null ? '' : words` ${sizing.limit.sentence}`
  if (sizing.kind === 'floor')
    return words`No area reaches the target: this is the largest that was tried.${cause}`
  return sizing.kind === 'own' ? words`This area of your own does not reach the target.` : null
}
