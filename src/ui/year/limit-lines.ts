import { LIMIT_NAMES, type UncertaintyResult } from '#model/design/sizing'
import type { Scenario } from '#model/design/scenario'
import { isShown, type FieldRef } from '#ui/choosing/parts.ts'
import type { UnitSystem } from '#model/basis/units'
import type { AreaRangeRun } from '#live/area-range.svelte.ts'
import type { LiveAnswer } from '#live/messages.ts'
import { shownQuantity } from '#ui/words/quantity.ts'

/** A rank correlation weaker than this is chance among a few hundred draws. */
const TELLING_CORRELATION = 0.15

/** The inputs that move the area; none where every draw comes out the same, as where no area is enough. */
export function tellingDrivers(
  result: UncertaintyResult | null,
  scenario: Scenario,
): UncertaintyResult['drivers'] {
  return driversOf(result, scenario).filter(({ correlation }) => Math.abs(correlation) >= TELLING_CORRELATION)
}

/** Inputs that mean something in the design: a bare panel has no film to age. */
export function driversOf(
  result: UncertaintyResult | null,
  scenario: Scenario,
): UncertaintyResult['drivers'] {
  return (result?.drivers ?? []).filter(({ field }) => isShown(field as FieldRef, scenario))
}

/** What holds the design back or deserves a look, in sentences. */
export function limitLines(answer: LiveAnswer, range: AreaRangeRun, system: UnitSystem): readonly string[] {
  const { year, sizing } = answer
  const drivers = range.isFor(answer) ? tellingDrivers(range.run.result, answer.scenario) : []
  const kelvin = shownQuantity('K', system)
  const lines: string[] = []
  if (drivers.length > 0) {
    const names = drivers.slice(0, 3).map(({ label }) => label.toLowerCase())
    lines.push(`What moves the area most, of all that is uncertain: ${names.join(', then ')}.`)
  }
  if (sizing.limit !== null) lines.push(sharesLine(sizing.limit.shares, kelvin.text))
  if (year.dewHeld_h > 0) {
    lines.push(`For ${year.dewHeld_h.toFixed(0)} hours delivery is held back by the dew point indoors.`)
  }
  if (year.freezeRisk_h > 0) {
    lines.push(
      `For ${year.freezeRisk_h.toFixed(0)} hours the plate is below its frost limit (${shownQuantity('C', system).text(answer.scenario.plan.freezeLimit_C)}): the freeze protection has to work.`,
    )
  }
  for (const cut of sizing.loadCuts) {
    lines.push(
      `${cut.name}: ${kelvin.text(cut.peakDrop_K)} off the hottest hour${cut.area_m2 === null ? '' : ', and then this area is enough'}.`,
    )
  }
  if (lines.length === 0)
    lines.push(
      answer.area_m2 > 0
        ? 'Nothing: the area does what is asked, with no hour held back by dew or frost.'
        : withoutPanels(answer),
    )
  return lines
}

function withoutPanels({ way }: LiveAnswer): string {
  if (way === null) return 'Nothing: the room does what is asked without panels.'
  return way.meets
    ? 'Nothing: with the way you took, the room does what is asked.'
    : 'The way you took is not enough for the target: take another under “Cooling”, or size panels under “Panel”.'
}

/** What the hottest hour hangs on, largest share first, and the sum. */
function sharesLine(
  shares: readonly { readonly cause: keyof typeof LIMIT_NAMES; readonly share_K: number }[],
  text: (kelvin: number) => string,
): string {
  const parts = shares
    .toSorted((a, b) => b.share_K - a.share_K)
    .map(({ cause, share_K }) => `${LIMIT_NAMES[cause]} ${text(share_K)}`)
  const sum_K = shares.reduce((sum, { share_K }) => sum + share_K, 0)
  return `What the hottest hour hangs on, each switched off in turn: ${parts.join(', ')}; together ${text(sum_K)}.`
}
