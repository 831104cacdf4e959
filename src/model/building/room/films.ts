/** Film outside that is part of a U-value, m²K/W: ISO 6946:2017, table 7. */
export const OUTSIDE_m2KW = 0.04

/** Convection from an inner face to the room's air, W/m²K: ISO 52016-1:2017, horizontal flow. */
export const CONVECTION_INSIDE_Wm2K = 2.5
/** Longwave exchange of an inner face with the mean radiant temperature, W/m²K: ISO 52016-1:2017. */
export const RADIATION_INSIDE_Wm2K = 5.13
/** Share of convection in what a cooled ceiling takes up: 5 W/m²K (heat flowing up) beside longwave; ISO 52016-1:2017, from memory. */
export const CEILING_CONVECTIVE_frac = 5 / (5 + RADIATION_INSIDE_Wm2K)
/** Both together. */
export const FILM_INSIDE_Wm2K = CONVECTION_INSIDE_Wm2K + RADIATION_INSIDE_Wm2K

/** Convection outside at a wind speed, W/m²K: ISO 6946:2017, annex C. */
export function outsideConvection_Wm2K(wind_ms: number): number {
  return 4 + 4 * wind_ms
}
