import type { Agreement, AsBuiltResult, Departure, Fault, HeatShare } from '#model/handover/as-built'
import { formatNumber } from '#model/basis/units'
import type { AsBuiltReport } from '#studies/check-as-built.ts'
import { PERCENT } from '#ui/words/own-quantity.ts'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/** What each explanation says of the panel. */
export const FAULT_WORDS: Readonly<Record<Fault, string>> = {
  none: 'It works as designed',
  lowFlow: 'Too little flows',
  air: 'Air is in the loop',
  deadModule: 'A part of the panel passes no fluid',
  poorBond: 'Tube and plate have a poor bond',
  dirty: 'The coating or film is dirty or clouded',
  wornFilm: 'The film is torn or loose',
  wetInsulation: 'The insulation behind is wet or missing',
  shading: 'Something hides sky or sun',
  sensorOffset: 'The two panel sensors disagree',
  wrongClock: 'The logger’s clock is wrong',
  warmMixing: 'Warm return mixes into what the panel gets',
  tankLeak: 'The tank loses water',
}

/** Names of the faults a rehearsal can plant. */
export const REHEARSAL_WORDS: Readonly<Record<Fault, string>> = {
  none: 'a sound panel',
  lowFlow: 'half the flow',
  air: 'air in the loop',
  deadModule: 'a dead third of the panel',
  poorBond: 'a poor bond',
  dirty: 'a dirty panel',
  wornFilm: 'a torn film (needs a film in the design)',
  wetInsulation: 'wet insulation',
  shading: 'shading from the middle on',
  sensorOffset: 'a sensor off by 1 K',
  wrongClock: 'a clock two hours ahead',
  warmMixing: 'warm return mixing in',
  tankLeak: 'a leaking tank',
}

/** How strongly a belief of 0…1 is held, in words. */
export function beliefWords(belief: number): string {
  if (belief >= 0.9) return 'almost surely'
  if (belief >= 0.6) return 'probably'
  if (belief >= 0.2) return 'possibly'
  if (belief >= 0.02) return 'hardly'
  return 'almost surely not'
}

/** The verdict as a sentence, and the only one: what else is shown follows from it. */
export function verdict({ faults, shortfall }: Pick<AsBuiltResult, 'faults' | 'shortfall'>): string {
  const [first, second] = faults
  if (first !== undefined && second !== undefined)
    return `Two things at once: ${lowered(FAULT_WORDS[first])}, and ${lowered(FAULT_WORDS[second])}.`
  if (first !== undefined) return `${FAULT_WORDS[first]}.`
  if (shortfall.verdict === 'short') return 'It gives less than was promised, and the log does not show why.'
  if (shortfall.verdict === 'unclear') return 'It may give less than was promised; the log cannot settle it.'
  return 'The panel does what was predicted.'
}

const lowered = (sentence: string) => sentence.charAt(0).toLowerCase() + sentence.slice(1)

/** What is left of the promise, what would bring it back, and what it costs in hours. */
export function remainingWords(
  { remaining }: Pick<AsBuiltResult, 'remaining'>,
  overLimit: AsBuiltReport['overLimit'],
  area: ShownQuantity,
): readonly string[] {
  if (remaining === null) return []
  const { share_frac, add_m2, mended } = remaining
  const lost = add_m2 > 0
  const said = lost
    ? `With this, ${PERCENT.text(share_frac, 2)} of the promised heat is left: as much as ${area.text(add_m2, 2)} more panel would bring back.`
    : 'In the hours logged, this takes no heat from the panel.'
  const each = mended
    .filter(({ worth_m2 }) => lost && worth_m2 > 0)
    .map(
      ({ fault, worth_m2 }) =>
        `Mending “${lowered(FAULT_WORDS[fault])}” is worth ${area.text(worth_m2, 2)} of sound panel.`,
    )
  const hours =
    overLimit === null
      ? []
      : [
          `Over the whole year: ${Math.round(overLimit.asFound_h)} h over the limit as found, ${Math.round(overLimit.designed_h)} h as designed, with the same area.`,
        ]
  return [said, ...each, ...hours]
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
  const { windLog, soil_frac, veil_frac, shade_frac, sky_Wm2, bondLog, back_Wm2K, clock_h } = departure
  const flowLog = departure.flowLog + departure.meterLog
  const times = (log: number) => `${formatNumber(Math.exp(log), 2)} times the designed`
  const rows: (readonly [string, string, boolean])[] = [
    ['Flow', times(flowLog), flowLog !== 0],
    ['Wind at the panel', times(windLog), windLog !== 0],
    ['Sunlight kept out or reflected, lost to dirt', formatNumber(soil_frac, 2), soil_frac !== 0],
    ['Infrared radiation lost', PERCENT.text(veil_frac, 2), veil_frac !== 0],
    ['Area that no fluid passes', PERCENT.text(departure.dead_frac, 2), departure.dead_frac !== 0],
    ['Area kept by air', PERCENT.text(departure.airy_frac, 2), departure.airy_frac !== 0],
    ['Conductance from fluid to plate', times(bondLog), bondLog !== 0],
    ['Film gone', PERCENT.text(departure.torn_frac, 2), departure.torn_frac !== 0],
    ['Loss through the back, beyond the designed', `${formatNumber(back_Wm2K, 2)} W/m²K`, back_Wm2K !== 0],
    ['Sun hidden at its hours', PERCENT.text(departure.dayShade_frac, 2), departure.dayShade_frac !== 0],
    ['Sensors apart', `${formatNumber(departure.offset_K, 2)} K`, departure.offset_K !== 0],
    ['Clock ahead', `${formatNumber(clock_h, 2)} h`, clock_h !== 0],
    ['Warm water in what is drawn', PERCENT.text(departure.mixing_frac, 2), departure.mixing_frac !== 0],
    ['Tank water lost a day', PERCENT.text(departure.leak_1d, 2), departure.leak_1d !== 0],
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
