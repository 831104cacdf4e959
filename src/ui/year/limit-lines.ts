import { drawsMet, LIMIT_NAMES, type UncertaintyResult } from '#model/design/sizing'
import type { Scenario } from '#model/design/scenario'
import { isShown, type FieldRef } from '#ui/choosing/parts.ts'
import type { UnitSystem } from '#model/basis/units'
import type { AreaRangeRun } from '#live/area-range.svelte.ts'
import type { LiveAnswer } from '#live/messages.ts'
import { isUnsure, metIn, type Met } from '#ui/answer/sureness.ts'
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

/** What holds the design back or deserves a look, in sentences; `hours`: how sure its hours are, where that is known. */
export function limitLines(
  answer: LiveAnswer,
  range: AreaRangeRun,
  hours: Met | null,
  system: UnitSystem,
): readonly string[] {
  const { year, sizing } = answer
  const drivers = range.isFor(answer) ? tellingDrivers(range.run.result, answer.scenario) : []
  const kelvin = shownQuantity('K', system)
  const result = range.isFor(answer) ? range.run.result : null
  const sure = result ? { met: drawsMet(result, answer.area_m2), draws: result.draws } : hours
  const meets = answer.way?.meets ?? answer.sizing.withPanels.measure <= 0
  const lines: string[] = []
  if (meets && isUnsure(sure)) lines.push(unsureLine(answer, sure))
  if (drivers.length > 0) {
    const names = drivers.slice(0, 3).map(({ label }) => label.toLowerCase())
    lines.push(`What moves the area most, of all that is uncertain: ${names.join(', then ')}.`)
  }
  if (sizing.limit !== null) lines.push(sharesLine(sizing.limit.shares, kelvin.text))
  if (year.dewHeld_h > 0) {
    lines.push(`For ${hoursText(year.dewHeld_h)} delivery is held back by the dew point indoors.`)
  }
  if (year.freezeRisk_h > 0) {
    lines.push(
      `For ${hoursText(year.freezeRisk_h)} the plate is below its frost limit (${shownQuantity('C', system).text(answer.scenario.plan.freezeLimit_C)}): the freeze protection has to work.`,
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
        ? 'Nothing in the year as described: the area does what is asked, with no hour held back by dew or frost.'
        : withoutPanels(answer),
    )
  return lines
}

/** "1 hour", "12 hours". */
export function hoursText(hours_h: number): string {
  const text = hours_h.toFixed(0)
  return text === '1' ? '1 hour' : `${text} hours`
}

function unsureLine({ area_m2 }: LiveAnswer, sure: Met): string {
  const more = area_m2 > 0 ? 'a larger area' : 'more measures'
  return `Weather and workmanship: the target is met ${metIn(sure)}. For more of them, allow fewer hours under “Room” and look again under “Cooling”, or take ${more}.`
}

function withoutPanels({ way }: LiveAnswer): string {
  if (way === null) return 'Nothing in the year as described: the room does what is asked without panels.'
  return way.meets
    ? 'Nothing in the year as described: with the way you took, the room does what is asked.'
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
