/** Which hours of the simulated year a builder may compare readings with; all three are common practice, no source. */

/** An hour counts as run through above this share. */
export const RAN_frac = 0.99
/** Clear: less cloud than this. */
export const CLEAR_frac = 0.2
/** Night: the sun is lower than this, degrees. */
export const NIGHT_deg = -6
