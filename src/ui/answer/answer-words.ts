import type { AboutArea } from '#model/design/sizing'
import type { UnitSystem } from '#model/basis/units'
import { machineOf, measureIdsOf, type MachineId, type Scenario } from '#model/design/scenario'
import type { LiveAnswer } from '#live/messages.ts'
import { limitText } from '#ui/answer/limit-text.ts'
import { isUnsure, metIn, type Met } from '#ui/answer/sureness.ts'
import { flowText, messageIn, wordingText } from '#model/basis/words'
import { shownQuantity } from '#ui/words/quantity.ts'

export const MACHINE_WORDS: Readonly<Record<MachineId, string>> = {
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

/** The machine, and how many measures beside it. */
export function machineWords(machine: MachineId, scenario: Pick<Scenario, 'job'>): string {
  const { length } = measureIdsOf(scenario)
  const beside = length === 0 ? '' : ` with ${length === 1 ? 'one measure' : `${length} measures`}`
  return `${MACHINE_WORDS[machine]}${beside}`
}

/** The one number, and the line above it that says what it is and, where that is known, in how many years it holds. */
export function headline(answer: Headed, system: UnitSystem = 'si', sure: Met | null = null) {
  const area = shownQuantity('m2', system).text(answer.area_m2)
  const { way } = answer
  const measures = measureIdsOf(answer.scenario).length > 0
  /** Said first: on a phone the line may be cut. */
  const named = (what: string): string =>
    answer.fit.misfits.length > 0 ? `Does not fit: ${what[0]!.toLowerCase()}${what.slice(1)}` : what
  if (way !== null && answer.area_m2 === 0) {
    const machine = machineOf(answer.scenario)
    const reached = way.meets ? `Your way meets the target${often(sure)}` : 'Your way misses the target'
    return { kicker: reached, big: machine === 'none' ? 'No panels' : machineWords(machine, answer.scenario) }
  }
  switch (answer.sizing.kind) {
    case 'own':
      return { kicker: named('Your own panel area'), big: area }
    case 'met':
      return {
        kicker: named(`${whatIsSized(answer.scenario)}${measures ? '' : ', for the target'}`),
        big: area,
      }
    case 'notNeeded':
      return {
        kicker: `${way === null ? 'The room meets the target by itself' : 'What you took meets the target'}${isUnsure(sure) ? often(sure) : ''}`,
        big: 'No panels',
      }
    case 'floor':
      return outOfReach(area)
  }
}

const outOfReach = (area: string) => ({ kicker: `Even ${area} is not enough`, big: 'Out of reach' })

const often = (sure: Met | null): string => (sure === null ? ' as described' : ` ${metIn(sure)}`)

/** What of an answer its headline is made of. */
type Headed = Pick<LiveAnswer, 'scenario' | 'area_m2' | 'fit' | 'way'> & {
  readonly sizing: Pick<LiveAnswer['sizing'], 'kind'>
}

/** What cools the room beside measures, in a sentence; null where nothing does. */
export function coolerWords({ area_m2, scenario }: Pick<LiveAnswer, 'area_m2' | 'scenario'>): string | null {
  if (area_m2 > 0) return 'panels'
  return machineOf(scenario) === 'none' ? null : 'the machine'
}

/** "Panels alone", or with how many measures. */
export function whatIsSized(scenario: Pick<Scenario, 'job'>): string {
  const { length } = measureIdsOf(scenario)
  return length === 0 ? 'Panels alone' : `Panels and ${length === 1 ? 'one measure' : `${length} measures`}`
}

/** The same while a slider moves: about the area; once it rests (`built`), the area with modules and tank chosen anew. */
export function followingHeadline(
  { kind, area_m2, built }: AboutArea & { readonly built: boolean },
  scenario: Pick<Scenario, 'job'>,
  system: UnitSystem = 'si',
) {
  const area = shownQuantity('m2', system).text(area_m2)
  switch (kind) {
    case 'met':
      return built
        ? { kicker: `${whatIsSized(scenario)}, for the target`, big: area }
        : { kicker: 'Area needed, about', big: `≈ ${area}` }
    case 'notNeeded':
      return { kicker: 'The room meets the target by itself', big: 'No panels' }
    case 'floor':
      return outOfReach(area)
  }
}

/** Hours over the limit, against those that are allowed, and without panels or machine, where there are any: what the target asks. */
export function held(answer: LiveAnswer, system: UnitSystem): { kept: string; without: string } {
  const { withPanels, doNothing } = answer.sizing
  const { target } = answer.scenario
  const counted = target.kind === 'hours' || target.kind === 'adaptive'
  const allowed = counted ? `, ${target.allowedHours_h} h allowed` : ''
  const plant = answer.area_m2 > 0 || machineOf(answer.scenario) !== 'none'
  const without = plant ? `; ${doNothing.hours_h.toFixed(0)} h without` : ''
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
  const { way } = answer
  const machine = none ? machineOf(scenario) : 'none'
  const beside = (text: string) =>
    none && machine === 'none' ? '' : `; ${text} without${none ? ' the machine' : ''}`
  const rows: AnswerRow[] = [
    {
      label: 'Hottest hour',
      value: `${t.text(sizing.withPanels.peak_C)}${beside(t.text(sizing.doNothing.peak_C))}`,
    },
    {
      label: 'Hours above the limit',
      value: `${sizing.withPanels.hours_h.toFixed(0)}${beside(sizing.doNothing.hours_h.toFixed(0))}`,
    },
  ]
  if (sizing.withPanels.hotDays > 0)
    rows.push({
      label: `Of the ${sizing.withPanels.hotDays} hottest days, under the limit all day`,
      value: `${sizing.withPanels.hotDaysHeld} of ${sizing.withPanels.hotDays}${beside(String(sizing.doNothing.hotDaysHeld))}`,
    })
  if (way !== null)
    rows.push({
      label: 'The room as it is',
      value: `${t.text(way.asItIs.peak_C)}, ${way.asItIs.hours_h.toFixed(0)} h above the limit`,
    })
  if (year === doNothing || answer.area_m2 === 0)
    return way === null ? rows : [...rows, ...usedBy(way, system)]
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
      : [{ label: 'As it is sold', value: wordingText(answer.rounding, system) }]),
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
        way?.electric_J ?? answer.months.reduce((sum, x) => sum + x.electric_J, 0),
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
  const { area_m2, looked_m2, missedAgainFrom_m2 } = sizing
  const area = shownQuantity('m2', system)
  if (looked_m2.length === 0) return area.text(area_m2)
  const upTo = area.text(looked_m2.at(-1)!)
  if (missedAgainFrom_m2 !== null)
    return `${area.text(area_m2)}; larger areas were tried up to ${upTo}, and ${area.text(missedAgainFrom_m2)} is not enough again`
  return looked_m2.length === 1
    ? `${area.text(area_m2)}; ${upTo} was tried and is enough too`
    : `${area.text(area_m2)}; ${looked_m2.length} larger areas were tried, up to ${upTo}: all are enough too`
}

function storeWords(answer: LiveAnswer, system: UnitSystem): string {
  if (answer.store.kind === 'slab') return 'the floor slab'
  if (answer.store.kind === 'building') return 'the building itself'
  const volume = shownQuantity('m3', system).text(answer.storeVolume_m3)
  return `${volume} tank, ${shownQuantity('kg', system).text(answer.store.waterMass_kg)} full`
}

/** What a way without panels uses. */
function usedBy({ electric_J, water_m3 }: NonNullable<LiveAnswer['way']>, system: UnitSystem): AnswerRow[] {
  const electricity = {
    label: 'Electricity',
    value: `${shownQuantity('J', system).text(electric_J, 2)} a year`,
  }
  if (water_m3 === 0) return [electricity]
  return [electricity, { label: 'Water', value: `${shownQuantity('m3', system).text(water_m3)} a year` }]
}
