import { RingPart } from '#model/basis/hours'
import { simulateYear, USUAL_YEAR, type YearInputs, type YearResult } from '#model/building/year'
import { withRows, type RoomNetwork, type RoomParts } from '#model/building/room'
import {
  LIMIT_CAUSES,
  limitOf,
  worstHour,
  type Limit,
  type LimitCause,
  type LimitShare,
} from '#model/design/sizing'
import { type Design, designOf } from './design.ts'
import type { Prepared } from './prepared.ts'

/** Hours before and after the hottest one that make its spell. */
const BEFORE_h = 96
const AFTER_h = 24
/** A plant's limit is lifted by making the part this much larger (common practice, no source). */
const LARGER = 2
/** Colder than any store or dew point that could hold a design back, °C. */
const NO_LIMIT_C = -60

/** A design's year with one thing switched off. */
type Switch = (inputs: YearInputs, spell: RingPart) => YearInputs

const closed = (room: RoomParts, name: RoomNetwork['groups'][number]['name']): RoomParts => ({
  ...room,
  groups: room.groups.map((group) => (group.name === name ? { ...group, outside: null } : group)),
})
const none = (room: RoomParts): Float64Array => new Float64Array(room.hours)

/** The room changed, its rows worked out in the hours of the spell alone. */
function ofRoom(change: (room: RoomParts) => RoomParts): Switch {
  return (inputs, spell) => ({ ...inputs, room: withRows(change(inputs.room), spell) })
}
function ofPlant(change: (plant: NonNullable<YearInputs['plant']>) => YearInputs['plant']): Switch {
  return (inputs) => (inputs.plant === null ? inputs : { ...inputs, plant: change(inputs.plant) })
}

/** Heat that comes in is taken away, limits of the plant are lifted. */
const SWITCHES: Readonly<Record<LimitCause, (prepared: Prepared, design: Design) => Switch>> = {
  walls: () => ofRoom((room) => closed(closed(room, 'wall'), 'adjoining')),
  roof: () => ofRoom((room) => closed(room, 'roof')),
  floor: () => ofRoom((room) => closed(room, 'floor')),
  sunGain: () => ofRoom((room) => ({ ...room, windows: null, sun_W: none(room) })),
  airChange: () => ofRoom((room) => ({ ...room, ventilation_WK: none(room), nightVent_WK: 0 })),
  gains: () => ofRoom((room) => ({ ...room, gains_W: none(room) })),
  dewPoint: () => ofRoom((room) => ({ ...room, indoorDewPoint_C: none(room).fill(NO_LIMIT_C) })),
  store: () =>
    ofPlant((plant) => ({
      ...plant,
      plan: { ...plant.plan, lowestStore_C: NO_LIMIT_C },
      store: { ...plant.store, layerCapacity_JK: plant.store.layerCapacity_JK.map((one) => LARGER * one) },
    })),
  delivery: () =>
    ofPlant((plant) => ({
      ...plant,
      store: { ...plant.store, delivery_WK: LARGER * plant.store.delivery_WK },
    })),
  sky: (prepared, { candidate }) => {
    const area_m2 = LARGER * candidate.area_m2
    const { loop } = designOf(prepared, { ...candidate, area_m2, flow_kgsm2: prepared.flow_kgsm2(area_m2) })
    return ofPlant((plant) => ({ ...plant, loop }))
  },
}

/**
 * How much of the hottest hour each thing is answerable for, K: the fall of the peak over that hour's spell when it is
 * switched off. Things act together, so they are switched off one after another, once in the order of the list and once
 * against it, and the two falls are averaged: so the shares add up to the fall with everything off.
 * @param worst_h  the hour furthest over its limit
 */
function limitShares(prepared: Prepared, design: Design, worst_h: number): LimitShare[] {
  const { doNothing, yardstick } = prepared
  const first = Math.max(0, worst_h - BEFORE_h)
  const span = [first, Math.min(doNothing.hours, worst_h + AFTER_h)] as const
  const spell = new RingPart(doNothing.hours, [[first - USUAL_YEAR.warmUp_h, span[1]]])
  const options = { lean: true, books: false, span, settled: doNothing.states }
  const peak_C = (inputs: YearInputs): number => {
    const { room_C } = simulateYear(inputs, options)
    let peak = -Infinity
    for (let h = span[0]; h < span[1]; h++)
      if (!Number.isNaN(yardstick.limit_C[h]!)) peak = Math.max(peak, room_C[h]!)
    return peak
  }
  const all_C = peak_C(design.inputs)
  const falls = (order: readonly LimitCause[]): Map<LimitCause, number> => {
    let inputs = design.inputs
    let before_C = all_C
    return new Map(
      order.map((cause) => {
        inputs = SWITCHES[cause](prepared, design)(inputs, spell)
        const after_C = peak_C(inputs)
        const fall_K = before_C - after_C
        before_C = after_C
        return [cause, fall_K]
      }),
    )
  }
  const forth = falls(LIMIT_CAUSES)
  const back = falls(LIMIT_CAUSES.toReversed())
  return LIMIT_CAUSES.map((cause) => ({ cause, share_K: (forth.get(cause)! + back.get(cause)!) / 2 }))
}

/** What limits a design that has been run through the year. */
export function limitOfDesign(prepared: Prepared, design: Design, year: YearResult): Limit {
  const worst_h = worstHour(year, prepared.yardstick)
  const { roofReflectance_frac } = prepared.scenario.room
  return limitOf(year, design.inputs, limitShares(prepared, design, worst_h), worst_h, roofReflectance_frac)
}
