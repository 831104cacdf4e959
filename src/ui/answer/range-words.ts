import type { UnitSystem } from '#model/basis/units'
import type { AreaRangeRun } from '#live/area-range.svelte.ts'
import type { LiveAnswer } from '#live/messages.ts'
import { shownQuantity } from '#ui/words/quantity.ts'

/** `9.1 to 16 m² in practice, eight times in ten`, or what there is to say when the range has an open end. */
export function rangeWords(answer: LiveAnswer, range: AreaRangeRun, system: UnitSystem): string {
  const area = shownQuantity('m2', system)
  const found = range.of(answer)
  if (!found) return 'out of reach in nine of ten draws'
  const most = area.text(answer.scenario.target.maxArea_m2)
  if (found.high_m2 === null) return `${area.bare(found.low_m2, 2)} to more than ${most} in practice`
  return `${area.bare(found.low_m2, 2)} to ${area.text(found.high_m2, 2)} in practice, eight times in ten`
}
