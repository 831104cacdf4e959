/** Entries of a group of faces: what of its inner temperature goes back to the room, `cb`, inner conductance. */
export const GIVEN_WK = 0
export const CB = 1
export const INNER_WM2K = 2
/** Mean temperatures of its faces over the coming step without heat at them, °C. */
export const INNER_C = 3
export const OUTER_C = 4
/** Its area where heat through it counts as the envelope's, or the ground's, m². */
export const ENVELOPE_M2 = 5
export const GROUND_M2 = 6
export const PER_GROUP_HERE = 7
/** Entries of a mode: e^−x, inner and outer shape times the share of a step's mean, and its state. */
export const STATE = 3
export const PER_MODE_HERE = 4
