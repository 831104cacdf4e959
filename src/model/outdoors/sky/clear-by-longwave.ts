/** Between neighbouring hours the clear sky's deficit may change by this share: a tenth of cloud more or less. */
const STEADY_frac = 0.1
/** At least this share of the clear sky's deficit must be left: the middle between a clear and a black sky. */
const LEFT_frac = 0.5

/**
 * Hours in which the measured longwave itself says that the sky was clear, 1 or 0: it holds steady from hour to hour
 * and the sky is much colder than the air. Sunlight speaks only of the days on either side of a night. Steady
 * and cold as signs of a clear sky: Dürr & Philipona 2004, J. Geophys. Res. 109, D05305; Long & Turner 2008,
 * J. Geophys. Res. 113, D18206 (both from memory; for minutes, so the two limits for hours are ours).
 *
 * The deficit is what the sky lacks to a blackbody at air temperature, (black − measured)/(black − formula): about 1 for a
 * clear sky, 0 under low cloud. The lower limit lies half way between, far from where the formula's own error could
 * decide which hours are kept. An hour without a measured neighbour on both sides does not count.
 * @param measured_Wm2 NaN where there is none
 * @param formula_Wm2  clear-sky formula without cloud
 * @param black_Wm2    σ T⁴ of the air
 * @throws RangeError when the series differ in length
 */
export function clearByLongwave(
  measured_Wm2: Float64Array,
  formula_Wm2: Float64Array,
  black_Wm2: Float64Array,
): Uint8Array {
  const { length } = measured_Wm2
  if (formula_Wm2.length !== length || black_Wm2.length !== length) {
    throw new RangeError(
      `clearByLongwave: measured ${length} h, formula ${formula_Wm2.length} h, blackbody ${black_Wm2.length} h`,
    )
  }
  const deficit = measured_Wm2.map((flux, i) => (black_Wm2[i]! - flux) / (black_Wm2[i]! - formula_Wm2[i]!))
  const steady = (i: number, j: number): boolean => Math.abs(deficit[i]! - deficit[j]!) < STEADY_frac
  return Uint8Array.from(deficit, (left, i) =>
    left > LEFT_frac && steady(i, i - 1) && steady(i, i + 1) ? 1 : 0,
  )
}
