import { J_PER_KWH } from '#model/basis/hours'
import { AIR_MEASURES, BUILDING_MEASURES } from '#model/design/measures'
import type { Combination } from '#studies/decide-trial.ts'
import type { WayKind } from '#studies/decide-ways.ts'
import type { KeptFor } from '#studies/decide.ts'

export const WAY_TITLES: Readonly<Record<WayKind, string>> = {
  cheapest: 'Cheapest that meets the target',
  leastElectricity: 'Least electricity',
  noRoofWork: 'Without work on the roof',
  panelsOnly: 'Your panels alone',
  withinBudget: 'Best within the budget',
  nearest: 'Nearest to the target',
}

export const KEPT_FOR_LABELS: Readonly<Record<KeptFor, string>> = {
  awake: 'people awake',
  asleep: 'people asleep',
  goods: 'goods',
  plants: 'plants',
  animals: 'animals',
  battery: 'a battery or a server',
}

const MEASURES = [...BUILDING_MEASURES, ...AIR_MEASURES]

/** What each measure of a combination brings with it, in a sentence. */
export function sideEffects({ measures, plant }: Combination): { name: string; effect: string }[] {
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

/** One sentence: should there be panels? */
export function headline(best: Combination, meets: boolean): string {
  const what = best.names.length === 0 ? 'Nothing needs to be done' : best.names.join(' + ')
  if (!meets) return `Nothing looked at holds the target. Nearest: ${what}.`
  if (best.names.length === 0) return 'The room holds its target as it is: no panels, no machine.'
  return best.panelArea_m2 > 0
    ? `Panels belong here: ${what}.`
    : `No panels needed: ${what} does it for less.`
}

export const kilowattHours = (joules: number): string => {
  const value = joules / J_PER_KWH
  return `${Math.abs(value) < 10 ? value.toFixed(1) : Math.round(value)} kWh`
}
