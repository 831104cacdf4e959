import {
  CONVECTION_INSIDE_Wm2K as HC,
  FILM_INSIDE_Wm2K as HI,
  RADIATION_INSIDE_Wm2K as HR,
  CONVECTIVE_GAINS_frac,
  absorbed_Wm2,
  type RoomNetwork,
} from '#model/building/room'
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
  for (let i = 0; i < network.groups.length; i++) {
    const { name, area_m2 } = network.groups[i]!
    const through_J = step_s * area_m2 * room.outer_Wm2[i]!
    if (name === 'floor') books.ground_J += through_J
    else books.envelope_J += through_J
  }
  enterAir(books, network, hour, step_s, step_s * airMean_C, step_s * room.radiantMean_C)
  books.nightVent_J += step_s * vent_WK * (network.outdoor_C[hour]! - airMean_C)
}

/**
 * Enters air change, panes, sunlight and gains for a time within an hour.
 * @param air_Cs, radiant_Cs  sums of the two temperatures over it, °C s
 */
export function enterAir(
  books: Books,
  network: RoomNetwork,
  hour: number,
  time_s: number,
  air_Cs: number,
  radiant_Cs: number,
): void {
  const { windows, groups } = network
  books.envelope_J += network.ventilation_WK[hour]! * (time_s * network.outdoor_C[hour]! - air_Cs)
  let sunShare = 0
  let areaShare = 0
  for (const group of groups) {
    sunShare += group.sunShare
    areaShare += group.areaShare
  }
  if (windows !== null) {
    const q_Wm2 = absorbed_Wm2(network, windows, hour, false)
    const U = 1 / (1 / HI + windows.resistance_m2KW + 1 / windows.outside.film_Wm2K[hour]!)
    const inside_Cs = (HC * air_Cs + HR * radiant_Cs + time_s * q_Wm2) / HI
    books.envelope_J += windows.area_m2 * U * (time_s * windows.outside.temp_C[hour]! - inside_Cs)
    areaShare += windows.areaShare
  }
  const given = CONVECTIVE_GAINS_frac + (1 - CONVECTIVE_GAINS_frac) * areaShare
  books.gains_J += time_s * (sunShare * network.sun_W[hour]! + given * network.gains_W[hour]!)
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
