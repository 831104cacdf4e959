import type { LiveAnswer } from '#live/messages.ts'
import { coolerWords } from '#ui/answer/answer-words.ts'
import type { TableOf } from '#ui/chart/DataTable.svelte'
import { monthLabel } from '#ui/words/calendar.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/**
 * Steps of the picture, coolest first. Each is darker than the one before, so that it reads in black and white;
 * the last three lie above the limit.
 */
export const STEPS = [
  { upTo_K: -9, colour: [244, 243, 238] },
  { upTo_K: -6, colour: [219, 224, 224] },
  { upTo_K: -3, colour: [183, 199, 205] },
  { upTo_K: 0, colour: [139, 166, 180] },
  { upTo_K: 2, colour: [190, 104, 58] },
  { upTo_K: 4, colour: [131, 55, 40] },
  { upTo_K: Infinity, colour: [58, 20, 33] },
] as const

/** The steps with their words: `3 to 6 below`, in the reader's degrees from the limit. */
export function stepsInWords(difference: ShownQuantity): { colour: readonly number[]; words: string }[] {
  const size = (of_K: number): string => difference.bare(Math.abs(of_K), 2)
  return STEPS.map(({ upTo_K, colour }, i) => {
    const from_K = STEPS[i - 1]?.upTo_K ?? -Infinity
    const side = upTo_K <= 0 ? 'below' : 'above'
    const [near_K, far_K] = upTo_K <= 0 ? [upTo_K, from_K] : [from_K, upTo_K]
    const span = !Number.isFinite(far_K)
      ? `over ${size(near_K)}`
      : near_K === 0
        ? `up to ${size(far_K)}`
        : `${size(near_K)} to ${size(far_K)}`
    return { colour, words: `${span} ${side}` }
  })
}

/** Step of a temperature, as its place in STEPS. */
export function stepOf(above_K: number): number {
  return STEPS.findIndex(({ upTo_K }) => above_K <= upTo_K)
}

/** Colour of an hour so far from its limit; null where the hour does not count. */
export function colourOf(above_K: number): (typeof STEPS)[number]['colour'] | null {
  return Number.isNaN(above_K) ? null : STEPS[stepOf(above_K)]!.colour
}

/** Hours over the limit by month, as the answer has them. */
export function overLimitTable(answer: LiveAnswer): TableOf {
  const cools = coolerWords(answer) ?? 'panels'
  return {
    caption: 'Hours over the limit by month, those hours of the day that count',
    columns: ['Month', `Without ${cools}, h`, `With ${cools}, h`],
    rows: answer.months.map(({ month, doNothingHoursOver_h, hoursOver_h }) => [
      monthLabel(month - 1),
      String(doNothingHoursOver_h),
      String(hoursOver_h),
    ]),
  }
}
