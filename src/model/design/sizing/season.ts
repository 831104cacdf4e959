import { exceedance, type Yardstick, type Exceedance } from '#model/design/target'

/**
 * Hours of the room left alone that come this close to their limit count as at risk, K: for the little that store and fan
 * can warm a room, and so that the hour that judges is among those that are run.
 */
const MARGIN_K = 0.5
/** A season is made so much wider than it must be, K. */
const BESIDE_K = 0.1
/** Two spells closer than this are run as one: a run of their own would cost as much again in warm-up. */
const JOIN_h = 21 * 24
/** Above this share of the year, warm-ups included, the whole year is run. */
const WORTH_SHARE = 0.9

/** First and one past the last hour of a spell; the second may pass the record's end and goes on at its beginning. */
export type Spell = readonly [number, number]

/**
 * The part of the year in which the target can be missed. Panels only cool: where the room left alone is well under
 * its limit, it is so with panels too, and its temperatures may be taken for theirs.
 */
export interface Season {
  readonly spells: readonly Spell[]
  /** Highest temperature, °C, and nearest approach to the limit, K, of the room left alone outside the spells. */
  readonly outsidePeak_C: number
  readonly outsideOver_K: number
}

/**
 * The season of a room left alone (°C, one entry an hour of a whole year), or null where it is most of the year.
 * @param margin_K  hours that come this close to their limit are among it
 * @param warmUp_h  hours that are run before each spell: two that are closer are run as one
 */
export function seasonAtRisk(
  doNothing_C: Float64Array,
  stick: Yardstick,
  margin_K: number = MARGIN_K,
  warmUp_h: number = JOIN_h,
): Season | null {
  const hours = doNothing_C.length
  const spells = spellsOf(doNothing_C, stick.limit_C, margin_K, warmUp_h)
  const run_h = spells.reduce((sum, [from, to]) => sum + (to - from) + warmUp_h, 0)
  if (spells.length === 0 || run_h > WORTH_SHARE * hours) return null
  let outsidePeak_C = -Infinity
  let outsideOver_K = -Infinity
  for (let h = 0; h < hours; h++) {
    const over_K = doNothing_C[h]! - stick.limit_C[h]!
    if (Number.isNaN(over_K) || spells.some((spell) => holds(spell, h, hours))) continue
    outsidePeak_C = Math.max(outsidePeak_C, doNothing_C[h]!)
    outsideOver_K = Math.max(outsideOver_K, over_K)
  }
  return { spells, outsidePeak_C, outsideOver_K }
}

/** Hours at risk, joined where the way from one to the next is short, also over the end of the year. */
function spellsOf(
  doNothing_C: Float64Array,
  limit_C: Float64Array,
  margin_K: number,
  join_h: number,
): Spell[] {
  const spells: [number, number][] = []
  for (let h = 0; h < doNothing_C.length; h++) {
    if (!(doNothing_C[h]! - limit_C[h]! > -margin_K)) continue
    const last = spells.at(-1)
    if (last !== undefined && h - last[1] < join_h) last[1] = h + 1
    else spells.push([h, h + 1])
  }
  const first = spells[0]
  const last = spells.at(-1)
  if (first === undefined || last === undefined || first === last) return spells
  if (first[0] + doNothing_C.length - last[1] >= join_h) return spells
  return [...spells.slice(1, -1), [last[0], first[1] + doNothing_C.length]]
}

const holds = ([from, to]: Spell, h: number, hours: number): boolean =>
  (h >= from && h < to) || h + hours < to

/**
 * True when the hours of the season alone settle what a run is judged by, its other hours being those of the room
 * left alone: the highest temperature, and under a peak target the nearest approach to the limit, lie in them.
 */
export function seasonDecides(season: Season, stick: Yardstick, found: Exceedance): boolean {
  const nearest = stick.target.kind === 'degreeHours' || found.measure > season.outsideOver_K
  return nearest && found.peak_C > season.outsidePeak_C
}

/**
 * A season that settles a run which another did not: all hours in which the room left alone comes as near to its limit as the hours
 * that this run is judged by in the other season alone. Null where that is most of the year.
 * @param room_C  of the run, in the other season
 */
export function widerSeason(
  { spells }: Season,
  stick: Yardstick,
  doNothing_C: Float64Array,
  room_C: Float64Array,
): Season | null {
  const within = hoursOf(spells, room_C.length)
  const { target } = stick
  const inside: Yardstick = {
    ...stick,
    target: target.kind === 'degreeHours' ? { ...target, kind: 'peak' } : target,
    limit_C: within.map((is, h) => (is === 1 ? stick.limit_C[h]! : NaN)),
  }
  return seasonAtRisk(doNothing_C, stick, BESIDE_K - exceedance(room_C, inside).measure)
}

/** 1 in the hours of spells, else 0. */
export function hoursOf(spells: readonly Spell[], hours: number): Float64Array {
  const within = new Float64Array(hours)
  for (const [from, to] of spells) {
    within.fill(1, from, Math.min(to, hours))
    within.fill(1, 0, Math.max(0, to - hours))
  }
  return within
}
