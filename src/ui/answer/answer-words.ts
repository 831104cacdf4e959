import type { AboutArea } from '#model/design/sizing'
import type { UnitSystem } from '#model/basis/units'
import type { Scenario } from '#model/design/scenario'
import type { LiveAnswer } from '#live/messages.ts'
import { limitText } from '#ui/answer/limit-text.ts'
import { flowText, messageIn, wordingText } from '#model/basis/words'
import { shownQuantity } from '#ui/words/quantity.ts'

export const MACHINE_WORDS: Readonly<Record<Exclude<Scenario['job']['machine'], 'none'>, string>> = {
  direct: 'Direct evaporative cooler',
  indirect: 'Indirect evaporative cooler',
  airConditioner: 'Small air conditioner',
}

export interface AnswerRow {
  readonly label: string
  readonly value: string
}

/** Electric power of the loop's pump or fan: what the year's electricity is counted with. */
export const POWER_LABELS = {
  pump: 'Pump power at design flow, pipes full',
  fan: 'Fan power at design flow',
} as const

/** The one number, and the line above it that says what it is. */
export function headline(answer: Headed, system: UnitSystem = 'si') {
  const area = shownQuantity('m2', system).text(answer.area_m2)
  const { machine, way } = answer.scenario.job
  const beyond = answer.fit.misfits.length > 0 ? ': does not fit' : ''
  if (machine !== 'none' && answer.area_m2 === 0)
    return { kicker: 'In place of panels', big: MACHINE_WORDS[machine] }
  switch (answer.sizing.kind) {
    case 'own':
      return { kicker: `Your own panel area${beyond}`, big: area }
    case 'met':
      return { kicker: `${whatIsSized(answer.scenario)}, for the target${beyond}`, big: area }
    case 'notNeeded':
      return {
        kicker: way ? 'What you chose meets the target' : 'The room meets the target by itself',
        big: 'No panels',
      }
    case 'floor':
      return { kicker: `No area up to ${area} is enough`, big: 'Out of reach' }
  }
}

/** What of an answer its headline is made of. */
type Headed = Pick<LiveAnswer, 'scenario' | 'area_m2' | 'fit'> & {
  readonly sizing: Pick<LiveAnswer['sizing'], 'kind'>
}

/** Measures chosen together with panels; none: the room as it is described. */
export function besidePanels({ job: { way } }: Pick<Scenario, 'job'>): readonly string[] {
  const parts = way.split(' + ').filter((part) => part !== '')
  return parts.includes('panels') ? parts.filter((part) => part !== 'panels') : []
}

/** "Panels alone", or with how many measures. */
export function whatIsSized(scenario: Pick<Scenario, 'job'>): string {
  const { length } = besidePanels(scenario)
  return length === 0 ? 'Panels alone' : `Panels, with ${length === 1 ? 'one measure' : `${length} measures`}`
}

/** The same while a slider moves: about the area, before modules and tank are chosen anew. */
export function followingHeadline({ kind, area_m2 }: AboutArea, system: UnitSystem = 'si') {
  const area = shownQuantity('m2', system).text(area_m2)
  switch (kind) {
    case 'met':
      return { kicker: 'Area needed, about', big: `≈ ${area}` }
    case 'notNeeded':
      return { kicker: 'The room meets the target by itself', big: 'No panels' }
    case 'floor':
      return { kicker: `No area up to ${area} is enough`, big: 'Out of reach' }
  }
}

/** Hours over the limit, against those that are allowed, and without panels, where there are any: what the target asks. */
export function held(answer: LiveAnswer, system: UnitSystem): { kept: string; without: string } {
  const { withPanels, doNothing } = answer.sizing
  const { target, job } = answer.scenario
  if (job.machine !== 'none' && answer.area_m2 === 0)
    return { kept: `${doNothing.hours_h.toFixed(0)} h a year too warm without it`, without: '' }
  const counted = target.kind === 'hours' || target.kind === 'adaptive'
  const allowed = counted ? `, ${target.allowedHours_h} h allowed` : ''
  const without = answer.area_m2 > 0 ? `; ${doNothing.hours_h.toFixed(0)} h without` : ''
  return {
    kept: `${withPanels.hours_h.toFixed(0)} h a year above ${limitText(target, system)}${allowed}`,
    without,
  }
}

/** What has no place, and what the panels that have one would do. */
export function fitLines({ fit }: Pick<LiveAnswer, 'fit'>, system: UnitSystem): readonly string[] {
  const lines = fit.misfits.map((misfit) => messageIn(misfit, system))
  return fit.instead === null ? lines : [wordingText(fit.instead, system), ...lines]
}

/** The rest of the answer, a line each. */
export function answerRows(answer: LiveAnswer, system: UnitSystem): readonly AnswerRow[] {
  const { scenario, loop, sizing, year, doNothing } = answer
  const t = shownQuantity('C', system)
  const m = shownQuantity('m', system)
  const energy = shownQuantity('J', system)
  const none = answer.area_m2 === 0
  const beside = (text: string) => (none ? '' : `; ${text} without`)
  const rows: AnswerRow[] = [
    {
      label: none && scenario.job.machine !== 'none' ? 'Hottest hour without it' : 'Hottest hour',
      value: `${t.text(sizing.withPanels.peak_C)}${beside(t.text(sizing.doNothing.peak_C))}`,
    },
    {
      label:
        none && scenario.job.machine !== 'none'
          ? 'Hours above the limit without it'
          : 'Hours above the limit',
      value: `${sizing.withPanels.hours_h.toFixed(0)}${beside(sizing.doNothing.hours_h.toFixed(0))}`,
    },
  ]
  if (sizing.withPanels.hotDays > 0)
    rows.push({
      label: `Of the ${sizing.withPanels.hotDays} hottest days, under the limit all day`,
      value: `${sizing.withPanels.hotDaysHeld} of ${sizing.withPanels.hotDays}${beside(String(sizing.doNothing.hotDaysHeld))}`,
    })
  if (year === doNothing || answer.area_m2 === 0) return rows
  const bore_m = loop.pipeInnerDiameter_m
  const flow_m3s = loop.pipeVelocity_ms * Math.PI * (bore_m / 2) ** 2
  return [
    ...rows,
    ...(sizing.kind === 'met' ? [{ label: 'Needed at least', value: neededWords(answer, system) }] : []),
    {
      label: 'Panels',
      value: `${loop.modules} of ${m.bare(scenario.panel.moduleLength_m)} × ${m.text(scenario.panel.moduleWidth_m)}`,
    },
    { label: 'Flow', value: flowText(flow_m3s, scenario.loop.fluid, system) },
    {
      label: scenario.loop.fluid === 'air' ? 'Duct' : 'Pipe, inside',
      value: shownQuantity('m', system, 0.5).text(bore_m),
    },
    { label: 'Store', value: storeWords(answer, system) },
    ...(answer.rounding === null
      ? []
      : [{ label: 'Rounded last', value: wordingText(answer.rounding, system) }]),
    {
      label: POWER_LABELS[scenario.loop.fluid === 'air' ? 'fan' : 'pump'],
      value: shownQuantity('W', system).text(loop.pumpPower_W, 2),
    },
    {
      label: 'Pump runs',
      value: `${answer.months.reduce((sum, x) => sum + x.pumpRun_h, 0).toFixed(0)} h a year`,
    },
    {
      label: 'Electricity',
      value: `${energy.text(
        answer.months.reduce((sum, x) => sum + x.electric_J, 0),
        2,
      )} a year`,
    },
    {
      label: 'Heat given off',
      value: `${energy.text(
        answer.months.reduce((sum, x) => sum + x.panelHeat_J, 0),
        3,
      )} a year`,
    },
  ]
}

/** The area sized, and how far up it was seen to stay enough. */
function neededWords({ sizing }: LiveAnswer, system: UnitSystem): string {
  const { area_m2, looked_m2, widestStep_frac, missedAgainFrom_m2 } = sizing
  const area = shownQuantity('m2', system)
  if (looked_m2.length === 0) return area.text(area_m2)
  const step = Math.round(100 * widestStep_frac)
  const upTo =
    missedAgainFrom_m2 === null
      ? `enough at all ${looked_m2.length} larger areas tried`
      : `missed again at ${area.text(missedAgainFrom_m2)}; ${looked_m2.length} larger areas tried`
  return `${area.text(area_m2)}; ${upTo}, up to ${area.text(looked_m2.at(-1)!)}, ${step} % apart at most`
}

function storeWords(answer: LiveAnswer, system: UnitSystem): string {
  if (answer.store.kind === 'slab') return 'the floor slab'
  if (answer.store.kind === 'building') return 'the building itself'
  const volume = shownQuantity('m3', system).text(answer.storeVolume_m3)
  return `${volume} tank, ${shownQuantity('kg', system).text(answer.store.waterMass_kg)} full`
}
