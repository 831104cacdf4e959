import { HOUR_MS } from '#model/basis/hours'
import { AS_DESIGNED } from './departure.ts'
import type { Cause, Free } from './causes.ts'
import { nightOf } from './errors.ts'
import { gainOfOneMore, scaled, slopes, type Fitted } from './fit.ts'
import type { Observed } from './observed.ts'

/** Days needed before and after a date for it to be seen. */
const FEWEST_DAYS = 2
/** Shade that comes and goes with the sun: from one to eight hours of the day. */
const LONGEST_WINDOW_H = 8
const SINCE: Free = { shade_frac: { sd: 0.35, min: 0, max: 1 } }
const DAILY: Free = {
  dayShade_frac: { sd: 0.6, min: 0, max: 1 },
  shade_frac: { sd: 0.15, min: 0, max: 1 },
}

/** The two kinds of shading, each at the date or the hours that would explain the log best. */
export function shades(observed: Observed, sound: Fitted): Cause[] {
  return [since(observed, sound), daily(observed, sound)].filter((cause) => cause !== null)
}

/** Something new hides sky and sun from a date on. */
function since(observed: Observed, sound: Fitted): Cause | null {
  const hours = observed.hours
  const days = [...new Set(hours.map(nightOf))]
  const column = slopeOf(observed, sound, SINCE, 'shade_frac')
  let best = { shadeFrom: 0, gain: 0, size: 0 }
  let tried = 0
  for (let day = FEWEST_DAYS; day <= days.length - FEWEST_DAYS; day++) {
    const shadeFrom = hours.find((hour) => nightOf(hour) === days[day])!
    tried += 1
    best = better(best, { shadeFrom }, observed, sound, column, (hour) => hour >= shadeFrom)
  }
  if (best.gain <= 0) return null
  const start = { shade_frac: Math.min(0.9, best.size * SINCE.shade_frac!.sd) }
  return { fault: 'shading', free: SINCE, fixed: { shadeFrom: best.shadeFrom }, starts: [start], tried }
}

/** Something hides the sun at the same hours each day, and a part of the sky always. */
function daily(observed: Observed, sound: Fitted): Cause | null {
  const { start_utcMs, site } = observed.inputs.weather
  const first_h = start_utcMs / HOUR_MS + site.utcOffset_h + 0.5
  const column = slopeOf(observed, sound, DAILY, 'dayShade_frac')
  let best = { dayShadeFrom_h: 0, dayShadeTo_h: 0, gain: 0, size: 0 }
  let tried = 0
  for (let from = 4; from < 21; from++) {
    for (let to = from + 1; to <= Math.min(21, from + LONGEST_WINDOW_H); to++) {
      tried += 1
      const inside = (hour: number) => {
        const clock = (((first_h + hour) % 24) + 24) % 24
        return clock >= from && clock < to
      }
      best = better(best, { dayShadeFrom_h: from, dayShadeTo_h: to }, observed, sound, column, inside)
    }
  }
  if (best.gain <= 0) return null
  const { dayShadeFrom_h, dayShadeTo_h } = best
  return {
    fault: 'shading',
    free: DAILY,
    fixed: { dayShadeFrom_h, dayShadeTo_h },
    starts: [{ dayShade_frac: Math.min(0.9, best.size * DAILY.dayShade_frac!.sd), shade_frac: 0.03 }],
    tried,
  }
}

function slopeOf(observed: Observed, sound: Fitted, free: Free, key: 'shade_frac' | 'dayShade_frac') {
  const about = { ...sound.departure, shadeFrom: AS_DESIGNED.shadeFrom, dayShadeFrom_h: 0, dayShadeTo_h: 24 }
  const slope = slopes(observed, about, free, [key], observed.predict(about)).get(key)!
  return scaled(slope, free[key]!.sd)
}

/** The better of the best so far and one more choice; only shade that hides (size above 0) counts. */
function better<T extends { readonly gain: number; readonly size: number }>(
  best: T,
  choice: Omit<T, 'gain' | 'size'>,
  observed: Observed,
  sound: Fitted,
  column: Float64Array,
  counts: (hour: number) => boolean,
): T {
  const masked = column.map((value, i) => (counts(observed.rows[i]!.hour) ? value : 0))
  const { gain, size } = gainOfOneMore(sound, sound.whitener.whiten(masked))
  return size > 0 && gain > best.gain ? ({ ...choice, gain, size } as T) : best
}
