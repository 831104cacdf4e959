import type { Stamp } from '../mapping.ts'
import { signed, wrapped, type ClockQuestion } from './clock-question.ts'
import type { ClockCorrection } from './clock-report.ts'
import { stampToMiddle_h } from './hours.ts'

/** How far a correction may leave the middle of the radiation from noon and still explain it, h. */
const EXPLAINS_H = 0.3

interface Candidate extends Omit<ClockCorrection, 'left_min'> {
  /** How late the radiation would look if this were the cause, h. */
  readonly looksLate_h: number
  /** Causes that are commoner come first among those that explain equally well. */
  readonly rank: number
}

/** The changes that would bring the radiation to solar noon, the likeliest first; a plain shift comes last. */
export function clockCorrections(question: ClockQuestion, late_h: number): ClockCorrection[] {
  const found = [...zones(question), ...flips(question), ...stamps(question)]
    .map((candidate) => ({ ...candidate, left_h: wrapped(late_h - candidate.looksLate_h) }))
    .filter((candidate) => Math.abs(candidate.left_h) <= EXPLAINS_H && Math.abs(candidate.looksLate_h) > 0.2)
    .sort((a, b) => Math.round((Math.abs(a.left_h) - Math.abs(b.left_h)) * 20) || a.rank - b.rank)
    .map(({ verdict, sentence, change, left_h }) => ({ verdict, sentence, change, left_min: left_h * 60 }))
  const shift_h = -Math.round(late_h * 12) / 12
  const all: ClockCorrection[] = [
    ...found,
    {
      verdict: late_h > 0 ? 'late' : 'early',
      sentence: `Move every stamp by ${(shift_h * 60).toFixed(0)} min.`,
      change: { time: { shift_h: question.shift_h + shift_h } },
      left_min: (late_h + shift_h) * 60,
    },
  ]
  const seen = new Set<string>()
  return all.filter(({ change }) => {
    const key = JSON.stringify(change)
    return !seen.has(key) && seen.add(key)
  })
}

/** A clock on UTC taken for local time, or the other way round. */
function zones({ clockOffset_h, site }: ClockQuestion): Candidate[] {
  const zone_h = Math.round(site.longitude_deg / 15)
  const offsets = new Set([0, site.utcOffset_h, zone_h])
  offsets.delete(clockOffset_h)
  return [...offsets].map((offset) => ({
    verdict: offset === 0 ? 'utc' : 'local',
    sentence:
      offset === 0
        ? 'Read the stamps as UTC.'
        : `Read the stamps as local standard time, UTC${signed(offset)}.`,
    change: { time: { clockOffset_h: offset } },
    looksLate_h: wrapped(offset - clockOffset_h),
    rank: 1,
  }))
}

/** East taken for west: alone, and with the time zone that was worked out from it. */
function flips({ site, clockOffset_h }: ClockQuestion): Candidate[] {
  const longitude_deg = -site.longitude_deg
  const turn_h = wrapped((2 * site.longitude_deg) / 15)
  const utcOffset_h = Math.round(longitude_deg / 15)
  const alone: Candidate = {
    verdict: 'longitude-flipped',
    sentence: `Take the longitude as ${longitude_deg}°.`,
    change: { site: { longitude_deg, utcOffset_h }, time: { clockOffset_h } },
    looksLate_h: turn_h,
    rank: 2,
  }
  if (clockOffset_h === 0 || clockOffset_h !== site.utcOffset_h) return [alone]
  return [
    alone,
    {
      ...alone,
      sentence: `Take the longitude as ${longitude_deg}° and the clock as UTC${signed(utcOffset_h)}.`,
      change: { site: { longitude_deg, utcOffset_h }, time: { clockOffset_h: utcOffset_h } },
      looksLate_h: wrapped(turn_h + utcOffset_h - clockOffset_h),
      rank: 4,
    },
  ]
}

/** Another reading of what the stamp marks, and a clock an hour ahead or behind. */
function stamps({ stamp, step_h, shift_h }: ClockQuestion): Candidate[] {
  const middle = stampToMiddle_h(stamp, step_h)
  const others: Stamp[] = (['ending', 'beginning', 'centred'] as const).filter(
    (other) => stampToMiddle_h(other, step_h) !== middle,
  )
  const readings = others.map((other): Candidate => {
    const looksLate_h = middle - stampToMiddle_h(other, step_h)
    return {
      verdict: looksLate_h > 0 ? 'late' : 'early',
      sentence: `Read each stamp as ${STAMP_WORDS[other]}.`,
      change: { time: { stamp: other } },
      looksLate_h,
      rank: Math.abs(looksLate_h) === 1 ? 3 : 0,
    }
  })
  const hours = [1, -1].map((hour): Candidate => ({
    verdict: hour > 0 ? 'late' : 'early',
    sentence: `Put every stamp an hour ${hour > 0 ? 'earlier' : 'later'}.`,
    change: { time: { shift_h: shift_h - hour } },
    looksLate_h: hour,
    rank: 2,
  }))
  return [...readings, ...hours]
}

const STAMP_WORDS: Readonly<Record<Stamp, string>> = {
  ending: 'the end of its period',
  beginning: 'the beginning of its period',
  centred: 'the middle of its period',
  instant: 'a moment',
}
