import type { UncertaintyResult } from '#model/design/sizing'
import { count, figure, words, type Wording } from '#model/basis/words'
import type { Plant } from './plant.ts'
import type { DesignRanges, Range } from './ranges.ts'

/** How sure the headline is, to stand beside it: eight draws in ten. null while nothing is worked out. */
export function sureLine(
  { answer }: Pick<Plant, 'answer'>,
  doubts: { readonly area: UncertaintyResult | null; readonly design: DesignRanges | null },
): Wording | null {
  const { area, design } = doubts
  const most_m2 = answer.scenario.target.maxArea_m2
  const parts: Wording[] = [
    ...(design === null
      ? []
      : [
          words`as built, ${spanWords(design.hoursAbove_h)} h a year above the limit, hottest hour ${figure(design.peak_C.low, 'C')} to ${figure(design.peak_C.high, 'C')}`,
        ]),
    ...(area === null ? [] : [areaWords(area, most_m2)]),
  ]
  if (parts.length === 0) return null
  return words`How sure, eight cases in ten: ${parts.flatMap((part, i) => [...(i === 0 ? [] : ['; ']), ...part])}.`
}

const spanWords = ({ low, high }: Range): Wording =>
  words`${count(Math.round(low))} to ${count(Math.round(high))}`

function areaWords({ low_m2, high_m2 }: UncertaintyResult, most_m2: number): Wording {
  const most = figure(most_m2, 'm2')
  if (low_m2 === null) return words`no area up to ${most} meets the target in nine of ten`
  const high = high_m2 === null ? words`more than ${most}` : words`${figure(high_m2, 'm2', 2)}`
  return words`area that meets the target ${figure(low_m2, 'm2', 2)} to ${high}`
}
