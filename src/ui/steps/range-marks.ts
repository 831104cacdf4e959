import { niceTicks } from '#ui/steps/nice-ticks.ts'
import type { UncertaintyResult } from '#model/design/sizing'
import type { LiveAnswer } from '#live/messages.ts'

/** Where the marks of the range stand, each as a share of the axis, 0…1. */
export interface RangeMarks {
  readonly low: number
  readonly middle: number | null
  readonly high: number
  /** True where the upper end lies beyond the largest area that is tried. */
  readonly open: boolean
  readonly built: number
  readonly fits_m2: number
  readonly fits_frac: number
  readonly never_frac: number
  readonly ticks: readonly { readonly share: number; readonly m2: number }[]
  readonly summary: (text: (area_m2: number) => string) => string
}

/** Null where nine draws in ten have no area at all: then there is no range to draw. */
export function rangeMarks(answer: LiveAnswer, result: UncertaintyResult): RangeMarks | null {
  const { low_m2, middle_m2, high_m2 } = result
  if (low_m2 === null) return null
  const { panel, room, target } = answer.scenario
  const fits_m2 = panel.freeArea_m2 > 0 ? panel.freeArea_m2 : room.length_m * room.width_m
  const top_m2 = 1.12 * Math.max(high_m2 ?? target.maxArea_m2, answer.area_m2, fits_m2)
  const share = (m2: number) => Math.min(1, m2 / top_m2)
  return {
    low: share(low_m2),
    middle: middle_m2 === null ? null : share(middle_m2),
    high: high_m2 === null ? 1 : share(high_m2),
    open: high_m2 === null,
    built: share(answer.area_m2),
    fits_m2,
    fits_frac: share(fits_m2),
    never_frac: result.unreachable_frac,
    ticks: niceTicks(top_m2).map((m2) => ({ share: share(m2), m2 })),
    summary: (text) =>
      `Eight draws in ten lie between ${text(low_m2)} and ${high_m2 === null ? `more than ${text(target.maxArea_m2)}` : text(high_m2)}; this design has ${text(answer.area_m2)}; ${text(fits_m2)} fit.`,
  }
}
