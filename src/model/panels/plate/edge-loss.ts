/** Loss at the rim of a plate lying in insulation, W/m²K times metres across. */
const RIM_WMK = 0.13
/** A plate this wide or wider has its edges in the back loss it is given, m. */
const WIDE_m = 1

/**
 * What a small plate loses at its edges beyond the back loss of one a metre across, W/m²K: 0.13 (1/∅ − 1/1 m).
 * Source: axisymmetric conduction worked out apart for a disc flush in foam, ∅ 0.1 to 1 m, 25 to 100 mm thick: the
 * one-dimensional loss + 0.13/∅ within 10 %.
 * @param length_m  area over perimeter; ∅ is four times that
 */
export function edgeLoss_Wm2K(length_m: number): number {
  return Math.max(0, RIM_WMK / (4 * length_m) - RIM_WMK / WIDE_m)
}
