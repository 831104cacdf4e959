import type { UncertaintyResult } from '#model/design/sizing'
import { drawsMet } from '#model/design/sizing'
import type { HoursSpread } from '#studies/decide-sure.ts'

/** Drawn in fewer than this share of the draws, a target is rather missed than met. */
const EVEN = 0.5

/** How sure a way is: its hours, and in how many of the years tried it meets the target. */
export interface Sure {
  readonly hours: HoursSpread
  readonly met: number
  readonly draws: number
  /** True while there is more to come: the range of its area, once the way is the design. */
  readonly first: boolean
}

/** A way of the search: with panels a first look, for its area has no range yet. */
export const firstLook = (hours: HoursSpread, panels: boolean): Sure => ({
  hours,
  met: Math.round(hours.met_frac * hours.draws),
  draws: hours.draws,
  first: panels,
})

/** One whose words are as long as they may become: room is kept for them. */
export const longestSure = (panels: boolean): Sure => ({
  hours: { low_h: 1000, middle_h: 1000, high_h: 2000, met_frac: 0, draws: 32, all_h: [], own: null },
  met: 10,
  draws: 32,
  first: panels,
})

/** The design itself: what its range says of the area that is built, and otherwise its hours. */
export const ofDesign = (hours: HoursSpread, range: UncertaintyResult | null, area_m2: number): Sure =>
  range === null
    ? firstLook(hours, false)
    : { hours, met: drawsMet(range, area_m2), draws: range.draws, first: false }

/** "In practice 5 to 90 h, eight times in ten; the target is met in 12 of 32 years tried …" */
export function sureWords({ hours: { low_h, high_h }, met, draws, first }: Sure): string {
  const [low, high] = [Math.round(low_h), Math.round(high_h)]
  const range =
    high === 0
      ? 'In practice no hot hours in eight draws of ten'
      : low === high
        ? `In practice ${high} h in eight draws of ten`
        : `In practice ${low} to ${high} h, eight times in ten`
  const often = `the target is met in ${met} of ${draws} years tried with other weather and workmanship`
  const said = met < EVEN * draws ? `${range}: rather unsure, ${often}` : `${range}; ${often}`
  return first ? `First look, ${draws} draws. ${said}; taken, more are worked out.` : `${said}.`
}
