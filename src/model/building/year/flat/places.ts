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
/** Entries of a layer: its temperature, °C, heat capacity, J/K, loss, W/K; its time constants in a step, how far it comes over its mean; its mean, °C. */
export const LAYER_C = 0
export const LAYER_JK = 1
export const LAYER_LOSS_WK = 2
export const LAYER_PACE = 3
export const LAYER_END = 4
export const LAYER_MEAN_C = 5
/** While it is solved: how its mean follows the air's, 1 over its pivot, and its entry of the last column. */
export const LAYER_AIR = 6
export const LAYER_PIVOT = 7
export const LAYER_COLUMN = 8
export const PER_LAYER_HERE = 9
