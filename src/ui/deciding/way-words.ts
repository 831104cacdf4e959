import { J_PER_KWH } from '#model/basis/hours'
import { heatingCost } from '#model/design/cost'
import { count, sentenceCase, words, type Wording } from '#model/basis/words'
import { AIR_MEASURES, BUILDING_MEASURES } from '#model/design/measures'
import { targetWords, type TargetSpec } from '#model/design/target'
import type { Combination } from '#studies/decide-trial.ts'
import type { Decision } from '#studies/decide.ts'
import type { WayKind } from '#studies/decide-ways.ts'
import { isUnsure, metIn, type Met } from '#ui/answer/sureness.ts'

export const WAY_TITLES: Readonly<Record<WayKind, string>> = {
  cheapest: 'Cheapest that meets the target',
  leastElectricity: 'Least electricity',
  noRoofWork: 'Without work on the roof',
  withPanels: 'Cheapest with panels',
  panelsOnly: 'Your panels alone',
  withinBudget: 'Best within the budget',
  nearest: 'Nearest to the target',
}

const MEASURES = [...BUILDING_MEASURES, ...AIR_MEASURES]

export const MEASURE_NAMES = Object.fromEntries(MEASURES.map(({ id, name }) => [id, name])) as Readonly<
  Record<(typeof MEASURES)[number]['id'], string>
>

/** "At most 32 h a year above 26 °C, counted from 22 to 7 h." */
export function targetLine(target: TargetSpec): Wording {
  const { occupiedFrom_h: from_h, occupiedUntil_h: until_h } = target
  const counted = from_h === until_h ? 'all day' : words`from ${count(from_h)} to ${count(until_h)} h`
  return words`${sentenceCase(targetWords(target))}, counted ${counted}.`
}

/** What each measure of a combination brings with it, in a sentence. */
export function sideEffects({
  measures,
  plant,
}: Pick<Combination, 'measures' | 'plant'>): { name: string; effect: string }[] {
  const named = MEASURES.filter(({ id }) => measures.includes(id)).map(({ name, sideEffect }) => ({
    name,
    effect: sideEffect,
  }))
  const machine = MACHINE_EFFECTS[plant]
  return machine === undefined ? named : [...named, machine]
}

const MACHINE_EFFECTS: Readonly<Partial<Record<Combination['plant'], { name: string; effect: string }>>> = {
  panels: {
    name: 'Panels',
    effect:
      'Roof work, a tank, pipes and a pump. Have the roof, its fixings and the floor under the tank checked.',
  },
  direct: {
    name: 'Direct evaporative cooler',
    effect: 'Damp air inside, a window that stays open, and a pad and sump to be cleaned against germs.',
  },
  indirect: {
    name: 'Indirect evaporative cooler',
    effect: 'No damp air, but more fan power, and a sump to be cleaned against germs.',
  },
  airConditioner: {
    name: 'Small air conditioner',
    effect: 'Refrigerant and a machine outdoors: a licensed fitter, and a bill in the hottest week.',
  },
}

/** Each machine with no measure beside it: null where it was not simulated so. */
export const alonePlants = (decision: Decision): { name: string; alone: Combination | null }[] =>
  Object.entries(MACHINE_EFFECTS).map(([plant, { name }]) => ({
    name: plant === 'panels' ? 'Panels, sized' : name,
    alone: decision.combinations.find((one) => one.plant === plant && one.measures.length === 0) ?? null,
  }))

/** One sentence: should there be panels? Surely said only where most of the years tried meet the target; null: not known yet. */
export function headline(best: Combination, sure: Met | null): string {
  const what = listed(best.names) || 'Nothing needs to be done'
  if (!best.meets) return `Nothing looked at holds the target. Nearest: ${what}.`
  const often = sure === null ? 'as described' : metIn(sure)
  const surely = sure !== null && !isUnsure(sure)
  if (best.names.length === 0)
    return surely
      ? 'The room holds its target as it is: no panels, no machine.'
      : `No panels, no machine: the room meets its target as it is ${often}.`
  const belong = best.panelArea_m2 > 0 ? 'Panels belong here.' : 'No panels here.'
  return surely ? `${belong} Do this: ${what}.` : `${belong} ${what}: meets the target ${often}.`
}

/** "Paint the roof, shade the windows outside, ceiling fan". */
export function listed(names: readonly string[]): string {
  const all = names.map((name, i) => (i === 0 ? name : `${name[0]!.toLowerCase()}${name.slice(1)}`))
  return all.length === 0
    ? ''
    : `${all[0]![0]!.toUpperCase()}${all[0]!.slice(1)}${all
        .slice(1)
        .map((name) => `, ${name}`)
        .join('')}`
}

export const kilowattHours = (joules: number): string => {
  const value = joules / J_PER_KWH
  return `${Math.abs(value) < 10 ? value.toFixed(1) : Math.round(value)} kWh`
}

/** Sign of a change, for a number without its own. */
export const signed = (change: number): string => (change > 0 ? '+' : change < 0 ? '−' : '')

/** The named ways that meet the target, with what each costs once winter is counted; the cheapest of them. */
function countedWithHeating({ ways, winter, years_y }: Decision, heat_perkWh: number) {
  const counted = ways.flatMap(({ combination }, i) => {
    const line = winter[i]
    if (line === undefined || !combination.meets) return []
    return [
      {
        combination,
        all: combination.totalCost + heatingCost({ heat_perkWh, years_y }, line.heatingChange_J),
      },
    ]
  })
  if (heat_perkWh === 0 || counted.length < 2) return null
  return { counted, best: counted.reduce((a, b) => (b.all < a.all ? b : a)) }
}

/** What the card of the cheapest way says where another is cheaper with heating; empty where none is. */
export function cheaperWithHeating(decision: Decision, heat_perkWh: number): string {
  const found = countedWithHeating(decision, heat_perkWh)
  const first = found?.counted.find(({ combination }) => combination === decision.ways[0]?.combination)
  if (!found || !first) return ''
  const less = Math.round(first.all) - Math.round(found.best.all)
  const name = listed(found.best.combination.names) || 'The room as it is'
  return less > 0 ? `With heating counted, “${name}” is cheaper by ${less}.` : ''
}

/** Which of the named ways that meet the target is cheapest once winter is counted, in a sentence. */
export function withHeating(decision: Decision, heat_perkWh: number): string {
  const found = countedWithHeating(decision, heat_perkWh)
  if (found === null) return ''
  const { best } = found
  const { ways, years_y } = decision
  const first = best.combination === ways[0]?.combination
  return `With heating at ${heat_perkWh} per kWh counted, ${first ? 'the first of these is the cheapest too' : `“${listed(best.combination.names)}” is the cheapest of these`} (${Math.round(best.all)} in ${years_y} years); where the room is not heated, leave that out (“Heat in winter” 0).`
}
