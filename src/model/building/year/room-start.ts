import { HOUR_S } from '#model/basis/hours'
import type { Modes } from '#model/building/construction'
import { withRows, type OutsideHours, type RoomNetwork, type RoomParts } from '#model/building/room'
import { RoomStep } from './room-step.ts'

/** A step so long that every mass has come to rest, s. */
const FOR_EVER_S = 1e16
/** Steps in which a room's past is followed, for slow masses feel the mean of a day. */
const DAY_h = 24
/** How far back it is followed: by then the slowest soil under an insulated slab has forgotten. */
const PAST_DAYS = 365

/** Air and masses of a room at one moment. */
export interface RoomState {
  readonly air_C: number
  readonly masses: Float64Array
}

/**
 * The room at rest under the mean of some hours of its record.
 * @param hours indices into the record, at least one
 */
export function restingRoom(room: RoomNetwork, hours: ArrayLike<number>): RoomState {
  const step = new RoomStep(withRows(means(room, hours, hours.length)), FOR_EVER_S)
  advance(step, 0)
  return { air_C: step.air_C, masses: step.masses }
}

/**
 * The room, left alone and shut, as its past has left it: at rest under the mean of that past, then day by day under each
 * day's means up to the moment asked, so that masses slower than any warm-up begin where a whole year would bring them.
 * @param hours indices into the record, the oldest first, at least one; what comes before the last year is not looked at
 */
export function pastRoom(room: RoomNetwork, hours: readonly number[]): RoomState {
  const count = Math.min(PAST_DAYS, Math.floor(hours.length / DAY_h))
  if (count === 0) return restingRoom(room, hours)
  const days = withRows(means(room, hours.slice(-count * DAY_h), DAY_h))
  const rest = restingRoom(days, [...Array(count).keys()])
  const step = new RoomStep(days, DAY_h * HOUR_S)
  step.begin(rest.air_C, rest.masses)
  for (let day = 0; day < count; day++) advance(step, day)
  return { air_C: step.air_C, masses: step.masses }
}

const known = new WeakMap<RoomNetwork, Map<number, RoomState>>()

/** The same, as the year before the beginning of hour `start` has left it, the record being a ring; kept for the room’s next year. */
export function roomAt(room: RoomNetwork, start: number): RoomState {
  const states = known.get(room) ?? new Map<number, RoomState>()
  known.set(room, states)
  const found =
    states.get(start) ??
    pastRoom(
      room,
      Array.from({ length: room.hours }, (_, k) => (start + k) % room.hours),
    )
  states.set(start, found)
  return found
}

function advance(step: RoomStep, hour: number): void {
  step.prepare(hour, 0)
  step.finish(step.airDrive_W / step.air_WK)
}

/** Angular frequency of a day, 1/s. */
const DAY_1S = (2 * Math.PI) / 86_400

/**
 * How far a face outside follows what lies before it within a day, m²K/W: real part of its temperature for 1 W/m² that
 * swings daily. Behind insulation it follows wholly, and the film's own swing then moves next to no heat.
 */
function followed_m2KW({ decay_1s, outer, outerResistance_m2KW }: Modes): number {
  return decay_1s.reduce(
    (sum, decay, k) => sum + (outer[k]! ** 2 * decay) / (decay * decay + DAY_1S * DAY_1S),
    outerResistance_m2KW,
  )
}

/** One hour in place of every `size` of them: means, temperatures outside weighted by what lets them in. */
function means(room: RoomNetwork, hours: ArrayLike<number>, size: number): RoomParts {
  const plain = (values: Float64Array): Float64Array => meansOf(values, values, false, hours, size)
  const weighted = (values: Float64Array, weights: Float64Array): Float64Array =>
    meansOf(values, weights, true, hours, size)
  const outside = ({ temp_C, film_Wm2K }: OutsideHours, behind_m2KW: number): OutsideHours => ({
    temp_C: weighted(
      temp_C,
      film_Wm2K.map((film) => film / (1 + film * behind_m2KW)),
    ),
    film_Wm2K: plain(film_Wm2K),
  })
  return {
    ...room,
    hours: hours.length / size,
    groups: room.groups.map((group) => ({
      ...group,
      outside: group.outside === null ? null : outside(group.outside, followed_m2KW(group.modes)),
    })),
    windows:
      room.windows === null
        ? null
        : { ...room.windows, outside: outside(room.windows.outside, room.windows.resistance_m2KW) },
    ventilation_WK: plain(room.ventilation_WK),
    outdoor_C: weighted(room.outdoor_C, room.ventilation_WK),
    sun_W: plain(room.sun_W),
    gains_W: plain(room.gains_W),
  }
}

function meansOf(
  values: Float64Array,
  weights: Float64Array,
  weighs: boolean,
  hours: ArrayLike<number>,
  size: number,
): Float64Array {
  const found = new Float64Array(hours.length / size)
  for (let set = 0; set < found.length; set++) {
    let sum = 0
    let all = 0
    for (let k = set * size; k < (set + 1) * size; k++) {
      const weight = weighs ? weights[hours[k]!]! : 1
      sum += weight * values[hours[k]!]!
      all += weight
    }
    found[set] = sum / all
  }
  return found
}
