import type { ComparisonRow } from './cases.ts'
import { reasonSentences } from './reason-words.ts'
import { sizedArea_m2, type CoverVerdict, type Verdict } from './verdicts.ts'
import { type UnitSystem, formatQuantity } from '#model/basis/units'
import { sentenceCase } from '#model/basis/words'

/** `Night-only needs 20 % more area than all-day (12 against 10 m²), but half the pump hours (800 against 1600 h a year).` */
export function planSentence(verdict: Verdict, system: UnitSystem): string {
  return compared(verdict, 'night-only', 'all-day', system)
}

/** Which cover, then why: both worked out, neither canned. */
export function coverSentences(verdict: CoverVerdict, system: UnitSystem): readonly string[] {
  const head = compared(verdict, 'bare', 'film', system)
  return verdict.reasons === null ? [head] : [head, ...reasonSentences(verdict.reasons, system)]
}

/** The room left alone: what every change is measured against. */
export function doNothingSentence(described: ComparisonRow, system: UnitSystem): string {
  return `Do nothing: the hottest hour reaches ${temperature(described.doNothingPeak_C, system)}, and ${whole(described.doNothingHoursOver_h)} h lie above the limit.`
}

/** What a change of the building does without any panel, and to the panel still needed. */
export function cutSentence(verdict: Verdict, system: UnitSystem): string {
  const { first: changed, second: described } = verdict
  const peaks = [described, changed].map((row) => temperature(row.doNothingPeak_C, system))
  const hours = [described, changed].map((row) => whole(row.doNothingHoursOver_h))
  const peak =
    peaks[0] === peaks[1]
      ? `leaves the hottest hour at ${peaks[0]}`
      : `takes the hottest hour from ${peaks.join(' to ')}`
  const over =
    hours[0] === hours[1]
      ? `${hours[0]} h above the limit as before`
      : `hours above the limit from ${hours.join(' to ')}`
  return `${changed.building}: by itself it ${peak}, ${over}; ${stillNeeded(verdict, system)}.`
}

function stillNeeded(verdict: Verdict, system: UnitSystem): string {
  const { first: changed, second: described, areaRatio } = verdict
  const now_m2 = sizedArea_m2(changed)
  const before_m2 = sizedArea_m2(described)
  if (changed.kind === 'own' || described.kind === 'own')
    return `with your panels the hottest hour is ${temperature(changed.peak_C, system)} instead of ${temperature(described.peak_C, system)}`
  if (now_m2 === null) return 'with panels the target stays out of reach'
  if (now_m2 === 0) return 'no panel is needed then'
  if (before_m2 === null)
    return `${area(now_m2, system)} of panel are enough then, where no area was without it`
  if (areaRatio === null)
    return `it then takes ${area(now_m2, system)} of panel, where none was needed without it`
  if (verdict.better === 'even') return `the panel stays about the same at ${area(now_m2, system)}`
  return `it takes ${percentWords(areaRatio, 'panel')} than as described: ${area(now_m2, system)}`
}

function compared(verdict: Verdict, first: string, second: string, system: UnitSystem): string {
  const subject = sentenceCase(first)
  const pump = pumpWords(verdict)
  switch (verdict.decidedBy) {
    case 'area':
      return areaSentence(verdict, subject, second, pump, system)
    case 'reach': {
      const [winner, loser, best, worst] =
        verdict.better === 'first'
          ? [subject, second, verdict.first, verdict.second]
          : [sentenceCase(second), first, verdict.second, verdict.first]
      return `Only ${winner.toLowerCase()} meets the target, with ${area(best.area_m2 ?? 0, system)}; ${loser} still reaches ${temperature(worst.peak_C, system)} with all the area there is room for.`
    }
    case 'peak':
      return peakSentence(verdict, subject, second, pump, system)
  }
}

function areaSentence(
  verdict: Verdict,
  subject: string,
  second: string,
  pump: PumpWords | null,
  system: UnitSystem,
): string {
  const [first_m2, second_m2] = [sizedArea_m2(verdict.first)!, sizedArea_m2(verdict.second)!]
  if (first_m2 === 0 && second_m2 === 0) return 'The room meets the target by itself: no panels either way.'
  const areas = `${area(first_m2, system)} against ${area(second_m2, system)}`
  const even = verdict.better === 'even' || verdict.areaRatio === null
  const head = even
    ? `${subject} and ${second} need about the same area (${areas})`
    : `${subject} needs ${percentWords(verdict.areaRatio, 'area')} than ${second} (${areas})`
  if (pump === null) return `${head}.`
  const against = verdict.areaRatio !== null && verdict.areaRatio > 1 !== pump.more
  return `${head}, ${!even && against && !pump.same ? 'but' : 'and'} ${pump.text}${even ? ` for ${subject.toLowerCase()}` : ''}.`
}

function peakSentence(
  verdict: Verdict,
  subject: string,
  second: string,
  pump: PumpWords | null,
  system: UnitSystem,
): string {
  const peaks = `${temperature(verdict.first.peak_C, system)} against ${temperature(verdict.second.peak_C, system)}`
  const where =
    verdict.first.kind === 'own' ? 'With your own area' : 'Neither meets the target; at the largest area'
  const result =
    verdict.better === 'even'
      ? `${subject.toLowerCase()} and ${second} come to about the same hottest hour`
      : `${subject.toLowerCase()} ends ${verdict.better === 'first' ? 'cooler' : 'warmer'} than ${second}`
  return `${where}, ${result} (${peaks})${pump === null ? '' : `, with ${pump.text}`}.`
}

interface PumpWords {
  readonly text: string
  readonly more: boolean
  readonly same: boolean
}

function pumpWords({ first, second, pumpHoursRatio }: Verdict): PumpWords | null {
  if (pumpHoursRatio === null || first.pumpRun_h === 0) return null
  const hours = `(${whole(first.pumpRun_h)} against ${whole(second.pumpRun_h)} h a year)`
  const same = Math.abs(pumpHoursRatio - 1) < SAME_SHARE
  const text = same ? 'about the same pump hours' : pumpShare(pumpHoursRatio)
  return { text: `${text} ${hours}`, more: pumpHoursRatio > 1, same }
}

/** Within this of one, half or twice a ratio is called that. */
const SAME_SHARE = 0.02
const ROUND_SHARE = 0.03

/** `half the pump hours`, `20 % more pump hours`, `twice the pump hours`, `2.7 times the pump hours`. */
function pumpShare(ratio: number): string {
  if (Math.abs(ratio - 0.5) < ROUND_SHARE) return `half the pump hours`
  if (Math.abs(ratio - 2) < 2 * ROUND_SHARE) return `twice the pump hours`
  if (ratio > 2) return `${ratio.toFixed(1)} times the pump hours`
  return `${Math.round(Math.abs(ratio - 1) * 100)} % ${ratio > 1 ? 'more' : 'fewer'} pump hours`
}

/** Before “than”: `20 % more area`, `35 % less panel`. */
function percentWords(ratio: number, what: string): string {
  return `${Math.round(Math.abs(ratio - 1) * 100)} % ${ratio > 1 ? 'more' : 'less'} ${what}`
}

const whole = (value: number): string => value.toFixed(0)
const area = (value_m2: number, system: UnitSystem): string => formatQuantity(value_m2, 'm2', system)
const temperature = (value_C: number, system: UnitSystem): string => formatQuantity(value_C, 'C', system)
