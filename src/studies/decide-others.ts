/** The best of each kind of plant that was not chosen, and by what it loses. */
import { count, words, type Wording } from '#model/basis/words'
import type { PlantKind } from './decide-machines.ts'
import type { Combination } from './decide-trial.ts'
import { least, missed, missWords, type MissUnit, type Way } from './decide-ways.ts'

/** One that lost. */
export interface Other {
  readonly plant: PlantKind
  readonly combination: Combination
  /** By what it loses to the first way. */
  readonly why: Wording
}

/** For each plant but that of the first way: its best combination, and why it is not the first way. */
export function othersOf(
  all: readonly Combination[],
  first: Way | undefined,
  unit: MissUnit,
): readonly Other[] {
  if (first === undefined) return []
  const chosen = first.combination
  const plants = [...new Set(all.map(({ plant }) => plant))].filter((plant) => plant !== chosen.plant)
  return plants.flatMap((plant) => {
    const best = least(
      all.filter((one) => one.plant === plant),
      (one) => [missed(one), one.totalCost],
    )
    return best === undefined ? [] : [{ plant, combination: best, why: whyNot(best, chosen, unit) }]
  })
}

function whyNot(one: Combination, chosen: Combination, unit: MissUnit): Wording {
  if (!one.meets) {
    const over = missWords(one.miss, unit)
    const hours = count(Math.round(one.hoursOver_h))
    return one.mostHumid_frac > 0
      ? words`Misses the target: too warm, or its air too humid, in ${hours} hours; ${over}.`
      : words`Misses the target: too warm in ${hours} hours; ${over}.`
  }
  const dearer = Math.round(one.totalCost - chosen.totalCost)
  return dearer > 0
    ? words`Meets it too, for ${count(dearer)} more over the years counted.`
    : words`Meets it, for ${count(-dearer)} less over the years counted.`
}
