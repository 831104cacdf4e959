import type { AboutArea } from '#model/design/sizing'
import type { UnitSystem } from '#model/basis/units'
import type { Scenario } from '#model/design/scenario'
import type { LiveAnswer } from '#live/messages.ts'
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

/** The one number, and the line above it that says what it is. */
export function headline(answer: LiveAnswer, system: UnitSystem = 'si') {
  const area = shownQuantity('m2', system).text(answer.area_m2)
  const { machine, way } = answer.scenario.job
  const beyond = answer.fit.misfits.length > 0 ? ': does not fit' : ''
  if (machine !== 'none' && answer.area_m2 === 0)
    return { kicker: 'In place of panels', big: MACHINE_WORDS[machine] }
  switch (answer.sizing.kind) {
    case 'own':
      return { kicker: `Your own panel area${beyond}`, big: area }
    case 'met':
      return { kicker: `Panels alone, for the target${beyond}`, big: area }
    case 'notNeeded':
      return {
        kicker: way ? 'What you chose meets the target' : 'The room meets the target by itself',
        big: 'No panels',
      }
    case 'floor':
      return { kicker: `No area up to ${area} is enough`, big: 'Out of reach' }
  }
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

/** On how many of the hot days the limit is kept; and on how many without panels, where there are any. */
export function held(answer: LiveAnswer, system: UnitSystem): { kept: string; without: string } {
  const { withPanels, doNothing } = answer.sizing
  const { target, job } = answer.scenario
  if (job.machine !== 'none' && answer.area_m2 === 0)
    return { kept: `${doNothing.hours_h.toFixed(0)} h a year too warm without it`, without: '' }
  const limit = target.kind === 'adaptive' ? 'the limit' : shownQuantity('C', system).text(target.limit_C)
  const without = answer.area_m2 > 0 ? `; ${doNothing.hotDaysHeld} without` : ''
  return { kept: `${withPanels.hotDaysHeld} of ${withPanels.hotDays} hot days under ${limit}`, without }
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
      label: scenario.loop.fluid === 'air' ? 'Fan power, running' : 'Pump power, pipes full',
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
