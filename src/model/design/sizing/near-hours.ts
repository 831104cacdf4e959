import type { Exceedance, Yardstick } from '#model/design/target'
import type { Judged } from './runs.ts'
import { hoursOf, type Season, seasonAtRisk, type Spell } from './season.ts'
import type { SizingTask } from './task.ts'

/** Hours that come this close to what a run was judged by are run again near by, K (chosen for speed; what comes of it is checked in whole seasons). */
const MARGIN_K = 0.5

/** A spell begins this much before its first such hour: a large tank has not come to its own after the usual warm-up, h. */
const EARLIER_h = 10 * 24
/** The usual one, which every spell has before its beginning, h. */
const WARM_UP_h = 21 * 24

/** The hours that some runs were judged by and those that came close; empty where they are most of the year. */
export function judgingHours(stick: Yardstick, runs: readonly Judged[]): readonly Spell[] {
  const over_K = new Float64Array(stick.limit_C.length).fill(-Infinity)
  for (const { found, room_C, season } of runs) {
    const level_K = levelOf(stick, found)
    const ran = season === null ? null : hoursOf(season.spells, room_C.length)
    for (let h = 0; h < room_C.length; h++)
      if (ran === null || ran[h] === 1)
        over_K[h] = Math.max(over_K[h]!, room_C[h]! - stick.limit_C[h]! - level_K)
  }
  const close_C = over_K.map((over, h) => stick.limit_C[h]! + over)
  const season = seasonAtRisk(close_C, stick, MARGIN_K, WARM_UP_h + EARLIER_h)
  return (season?.spells ?? []).map(([from, to]) => {
    const turn_h = from < EARLIER_h ? close_C.length : 0
    return [from + turn_h - EARLIER_h, to + turn_h] as const
  })
}

/** What the hottest hours of a run come to, K over their limit. */
const levelOf = ({ target }: Yardstick, { measure }: Exceedance): number =>
  target.kind === 'degreeHours' ? 0 : measure

/** The same task judged by some hours alone; by its own where there are none. */
export function taskIn(task: SizingTask, spells: readonly Spell[]): SizingTask {
  if (spells.length === 0) return task
  const { limit_C } = task.yardstick
  const within = hoursOf(spells, limit_C.length)
  const season: Season = { spells, outsidePeak_C: -Infinity, outsideOver_K: -Infinity }
  const yardstick = { ...task.yardstick, limit_C: limit_C.map((limit, h) => (within[h] === 1 ? limit : NaN)) }
  return { ...task, yardstick, season }
}
