import { monthOfHour } from '../quality/series.ts'
import { clockCorrections } from './clock-corrections.ts'
import { signed, wrapped, type ClockQuestion } from './clock-question.ts'
import { CLOCK_UNKNOWN, type ClockReport, type ClockVerdict } from './clock-report.ts'
import { median } from '#model/basis/numbers'
import { clearerHalf, solarNoonOffsets, type DayOffset } from './solar-noon-offset.ts'

/** Differences up to this are not called wrong, min: haze, hills and cloud shift the middle of a day's light. */
export const AGREES_MIN = 15

/**
 * Holds the file's clock against the sun: the middle of each clear day's radiation should fall on solar noon. Says how
 * late or early it is, what would explain that, and which change would mend it.
 */
export function checkClock(question: ClockQuestion): ClockReport {
  if (question.global === null) {
    return {
      ...CLOCK_UNKNOWN,
      sentence: 'Without global radiation the clock cannot be checked against the sun.',
    }
  }
  const given = { ...question, global: question.global, start_utcMs: question.names.start_utcMs }
  let days = clearerHalf(solarNoonOffsets(given))
  const rough_h = median(days.map((day) => day.late_h))
  if (Math.abs(rough_h) > 2) days = clearerHalf(solarNoonOffsets(given, rough_h))
  if (days.length === 0) return CLOCK_UNKNOWN
  const late_h = wrapped(median(days.map((day) => day.late_h)))
  const spread_h = median(days.map((day) => Math.abs(wrapped(day.late_h - late_h))))
  const seasonal = summerMinusWinter(days, question)
  const corrections = clockCorrections(question, late_h)
  const verdict = verdictOf(late_h, seasonal, corrections[0]?.verdict)
  return {
    verdict,
    sentence: sentenceOf(verdict, late_h, spread_h, days.length, question),
    late_min: late_h * 60,
    spread_min: spread_h * 60,
    days: days.length,
    corrections: verdict === 'agrees' || verdict === 'daylight-saving' ? [] : corrections,
  }
}

/** Up to this a horizon that is higher on one side can explain a difference, min. */
const HILLS_MIN = 35

/** Median lateness of April–September minus that of November–February (the other way south of the equator), h; NaN when unknown. */
function summerMinusWinter(days: readonly DayOffset[], { names, site }: ClockQuestion): number {
  const month = (day: DayOffset): number => monthOfHour(names, day.hour)
  const late = (of: readonly DayOffset[]): number =>
    of.length < 20 ? NaN : median(of.map((day) => day.late_h))
  const middle = late(days.filter((day) => month(day) >= 4 && month(day) <= 8))
  const ends = late(days.filter((day) => month(day) <= 1 || month(day) >= 10))
  return site.latitude_deg < 0 ? ends - middle : middle - ends
}

function verdictOf(late_h: number, seasonal_h: number, explained: ClockVerdict | undefined): ClockVerdict {
  if (Math.abs(seasonal_h - 1) < 0.35) return 'daylight-saving'
  if (Math.abs(late_h) * 60 <= AGREES_MIN) return 'agrees'
  return explained ?? (late_h > 0 ? 'late' : 'early')
}

function sentenceOf(
  verdict: ClockVerdict,
  late_h: number,
  spread_h: number,
  days: number,
  { site, clockOffset_h }: ClockQuestion,
): string {
  const minutes = Math.round(Math.abs(late_h) * 60)
  const size = minutes < 100 ? `${minutes} min` : `${(minutes / 60).toFixed(1)} h`
  const where = late_h >= 0 ? 'after' : 'before'
  const evidence = `on ${days} clear ${days === 1 ? 'day' : 'days'} the middle of the radiation falls ${size} ${where} solar noon (spread ${Math.round(spread_h * 60)} min)`
  const looks: Record<ClockVerdict, string> = {
    agrees: 'The clock agrees with the sun',
    late: `The clock looks ${size} late`,
    early: `The clock looks ${size} early`,
    utc: 'The clock looks like UTC',
    local: `The clock looks like local standard time, not ${clockOffset_h === 0 ? 'UTC' : `UTC${signed(clockOffset_h)}`}`,
    'longitude-flipped': `The longitude ${site.longitude_deg}° looks like it has the wrong sign`,
    'daylight-saving': 'The clock looks an hour ahead in summer: daylight-saving time',
    unknown: 'The clock could not be checked',
  }
  const slight = (verdict === 'late' || verdict === 'early') && minutes <= HILLS_MIN
  return `${looks[verdict]}: ${evidence}.${slight ? ' Hills or trees on one side can do this too.' : ''}`
}
