/** Over how many kelvin above the dew point the night's cooling is slowed. */
const DEW_SOFTNESS_K = 1.2

/** Air that would fall through its dew point follows it down at half the pace, with a smooth bend; °C. */
export function slowedNearDew(air_C: number, dew_C: number): number {
  const above = (air_C - dew_C) / DEW_SOFTNESS_K
  if (above > 8) return air_C
  return dew_C + DEW_SOFTNESS_K * (0.5 * above + 0.5 * Math.log(1 + Math.exp(Math.max(-40, above))))
}
