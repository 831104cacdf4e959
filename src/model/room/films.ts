/** Films that are part of a U-value by definition, m²K/W: ISO 6946:2017, table 7. */
export const ROOF_INSIDE_m2KW = 0.1
export const WALL_INSIDE_m2KW = 0.13
export const OUTSIDE_m2KW = 0.04

/**
 * Film between room air and walls and roof in the model, m²K/W: ISO 6946 horizontal flow, between a ceiling that takes
 * heat in at night (up, 0.10) and one that gives it off by day (down, 0.17).
 */
export const FABRIC_FILM_m2KW = 0.13
/** Film above a floor cooler than the room, m²K/W: ISO 6946 downward flow; also ISO 13370's R_si. */
export const FLOOR_FILM_m2KW = 0.17

/** Convection outside at a wind speed, W/m²K: ISO 6946:2017, annex C. */
export function outsideConvection_Wm2K(wind_ms: number): number {
  return 4 + 4 * wind_ms
}

/**
 * Resistance between the inner surface of an element and its outside film, m²K/W: its U-value without both films.
 * A U-value larger than bare films allow is a sheet without resistance.
 */
export function bareResistance_m2KW(U_Wm2K: number, inside_m2KW: number): number {
  return Math.max(0, 1 / U_Wm2K - inside_m2KW - OUTSIDE_m2KW)
}
