import type { Agreement, Fault, Departure, HeatShare } from '#model/handover/as-built'
import { formatNumber } from '#model/basis/units'
import { PERCENT } from '#ui/words/own-quantity.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/** What each explanation says of the panel. */
export const FAULT_WORDS: Readonly<Record<Fault, string>> = {
  none: 'It works as designed',
  lowFlow: 'Too little flows',
  dirty: 'The coating or film is dirty or clouded',
  shading: 'Something hides the sky since a certain day',
}

/** Names of the faults a rehearsal can plant. */
export const REHEARSAL_WORDS: Readonly<Record<Fault, string>> = {
  none: 'a sound panel',
  lowFlow: 'half the flow',
  dirty: 'a dirty panel',
  shading: 'shading from the middle on',
}

/** How strongly a belief of 0…1 is held, in words. */
export function beliefWords(belief: number): string {
  if (belief >= 0.9) return 'almost surely'
  if (belief >= 0.6) return 'probably'
  if (belief >= 0.2) return 'possibly'
  if (belief >= 0.02) return 'hardly'
  return 'almost surely not'
}

/** The verdict as a sentence. */
export function verdict(fault: Fault, belief: Readonly<Record<Fault, number>>, shortfall: HeatShare): string {
  if (fault !== 'none') return `${FAULT_WORDS[fault]}.`
  if (shortfall.verdict === 'short') return 'It gives less than was promised, and the log does not show why.'
  if (shortfall.verdict === 'unclear') return 'It may give less than was promised; the log cannot settle it.'
  return belief.none >= 0.6
    ? 'The panel does what was predicted.'
    : 'No fault is sure and large enough to be named.'
}

/** Heat measured of what was promised, with its interval. */
export function shareWords({ share_frac, low_frac, high_frac }: HeatShare): string {
  if (share_frac === null) return 'In none of the judged hours was heat to be given off.'
  const [low, high] = [PERCENT.text(low_frac, 2), PERCENT.text(high_frac, 2)]
  return `It gave ${PERCENT.text(share_frac, 2)} of the predicted heat, field factor included (90 % sure: ${low} to ${high}).`
}

/** What was fitted, in words; only what departs. */
export function departureRows(
  departure: Departure,
  flux: ShownQuantity,
): readonly (readonly [label: string, value: string])[] {
  const { windLog, flowLog, soil_frac, veil_frac, shade_frac, sky_Wm2 } = departure
  const times = (log: number) => `${formatNumber(Math.exp(log), 2)} times the designed`
  const rows: (readonly [string, string, boolean])[] = [
    ['Flow', times(flowLog), flowLog !== 0],
    ['Wind at the panel', times(windLog), windLog !== 0],
    ['Sunlight kept out or reflected, lost to dirt', formatNumber(soil_frac, 2), soil_frac !== 0],
    ['Infrared radiation lost', PERCENT.text(veil_frac, 2), veil_frac !== 0],
    ['Sky hidden', PERCENT.text(shade_frac, 2), shade_frac !== 0],
    ['Sky radiation against the formula', flux.text(sky_Wm2, 2), sky_Wm2 !== 0],
  ]
  return rows.filter(([, , departs]) => departs).map(([label, value]) => [label, value] as const)
}

/** Columns of a table of agreements. */
export interface AgreementRow {
  readonly label: string
  readonly agreement: Agreement
  readonly quantity: ShownQuantity
  /** For differences of the same quantity: K beside °C. */
  readonly difference: ShownQuantity
}
