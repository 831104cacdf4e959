/** How far one kind of ageing may go, as a range of a scenario field: what the uncertainty run draws from. */
export interface AgeingRange {
  /** Path of the scenario field. */
  readonly field: string
  readonly label: string
  /** Relative to the scenario's value, or added to it. */
  readonly times?: readonly [number, number]
  readonly plus?: readonly [number, number]
  readonly reason: string
}

/**
 * Named ranges of ageing. Dirt: white roofs lose 0.05 to 0.2 of reflectance in their first years, most of it in the
 * first (cool-roof ageing surveys, from memory), so that a guess may be half or double. Yellowing: binders that are not
 * made for the sun lose a few hundredths more in blue light (common practice, no source). Film life: thin
 * unstabilised film tears within weeks, stabilised film may outlive its promise (common practice, no source).
 */
export const AGEING_RANGES: Readonly<Record<'dirt' | 'yellowing' | 'filmLife', AgeingRange>> = {
  dirt: {
    field: 'coating.soiling_1y',
    label: 'Dirt on the coating',
    times: [0.5, 2],
    reason:
      'Soiling differs by place, tilt and rain; surveys of white roofs spread by a factor of two each way.',
  },
  yellowing: {
    field: 'coating.solarReflectance_frac',
    label: 'Yellowing of the binder',
    plus: [-0.03, 0],
    reason: 'Clear binders yellow in the sun: common practice, no source.',
  },
  filmLife: {
    field: 'cover.life_months',
    label: 'Film life',
    times: [0.5, 1.3],
    reason: 'Wind, heat and stabiliser decide: common practice, no source.',
  },
}
