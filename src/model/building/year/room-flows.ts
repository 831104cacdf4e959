import {
  CONVECTION_INSIDE_Wm2K as HC,
  FILM_INSIDE_Wm2K as HI,
  RADIATION_INSIDE_Wm2K as HR,
  CONVECTIVE_GAINS_frac,
  absorbed_Wm2,
  type RoomNetwork,
} from '#model/building/room'
import { HOUR_S } from '#model/basis/hours'
import type { Books } from './books.ts'
import type { Delivery } from './delivery.ts'
import type { RoomStep } from './room-step.ts'

/** Enters what crossed the room's boundaries in a step that `room` has just finished. */
export function enterRoom(
  books: Books,
  network: RoomNetwork,
  room: RoomStep,
  hour: number,
  airMean_C: number,
  vent_WK: number,
  step_s: number,
): void {
  const outdoor_C = network.outdoor_C[hour]!
  let envelope_W = network.ventilation_WK[hour]! * (outdoor_C - airMean_C)
  let ground_W = 0
  let sunShare = 0
  let areaShare = 0
  for (let i = 0; i < network.groups.length; i++) {
    const group = network.groups[i]!
    const through_W = group.area_m2 * room.outer_Wm2[i]!
    if (group.name === 'floor') ground_W += through_W
    else envelope_W += through_W
    sunShare += group.sunShare
    areaShare += group.areaShare
  }
  const { windows } = network
  if (windows !== null) {
    const q_Wm2 = absorbed_Wm2(network, windows, hour, false)
    const U = 1 / (1 / HI + windows.resistance_m2KW + 1 / windows.outside.film_Wm2K[hour]!)
    const inside_C = (HC * airMean_C + HR * room.radiantMean_C + q_Wm2) / HI
    envelope_W += windows.area_m2 * U * (windows.outside.temp_C[hour]! - inside_C)
    areaShare += windows.areaShare
  }
  const given = CONVECTIVE_GAINS_frac + (1 - CONVECTIVE_GAINS_frac) * areaShare
  const gains_W = sunShare * network.sun_W[hour]! + given * network.gains_W[hour]!
  books.envelope_J += step_s * envelope_W
  books.ground_J += step_s * ground_W
  books.gains_J += step_s * gains_W
  books.nightVent_J += step_s * vent_WK * (outdoor_C - airMean_C)
}

/** Air change, panes, sunlight and gains of a whole hour, whose sums of temperatures are entered: what `enterRoom` enters step by step. */
export function enterHour(books: Books, network: RoomNetwork, hour: number): void {
  const { windows, groups } = network
  books.envelope_J += network.ventilation_WK[hour]! * (HOUR_S * network.outdoor_C[hour]! - books.air_Cs)
  let sunShare = 0
  let areaShare = 0
  for (const group of groups) {
    sunShare += group.sunShare
    areaShare += group.areaShare
  }
  if (windows !== null) {
    const q_Wm2 = absorbed_Wm2(network, windows, hour, false)
    const U = 1 / (1 / HI + windows.resistance_m2KW + 1 / windows.outside.film_Wm2K[hour]!)
    const inside_Cs = (HC * books.air_Cs + HR * books.radiant_Cs + HOUR_S * q_Wm2) / HI
    books.envelope_J += windows.area_m2 * U * (HOUR_S * windows.outside.temp_C[hour]! - inside_Cs)
    areaShare += windows.areaShare
  }
  const given = CONVECTIVE_GAINS_frac + (1 - CONVECTIVE_GAINS_frac) * areaShare
  books.gains_J = HOUR_S * (sunShare * network.sun_W[hour]! + given * network.gains_W[hour]!)
}

/** The same for a tank: through its insulation, and what its delivery took from the room. */
export function enterTank(
  books: Books,
  delivery: Delivery,
  loss_WK: Float64Array,
  tank_C: Float64Array,
  around_C: number,
  step_s: number,
): void {
  for (let i = 0; i < tank_C.length; i++) books.gain_J += step_s * loss_WK[i]! * (around_C - tank_C[i]!)
  books.fan_J += step_s * delivery.fan_W()
  books.delivered_J += step_s * delivery.delivered_W
  books.latent_J += step_s * delivery.latent_W
  books.condensate_kg += step_s * delivery.condensate_kgs
}
