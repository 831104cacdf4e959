import type { Check } from './check.ts'

/**
 * Checks that stay as unit tests but are no evidence, so that the table leaves them out: the value wanted is the very constant
 * or printed formula that the code holds, or the code is called by nothing in src.
 */
const RETYPED: readonly RegExp[] = [
  /^diffuse share at clearness/,
  /^extraterrestrial irradiance on day/,
  /^relative air mass at zenith/,
  /^saturation pressure at /,
  /^standard atmosphere, pressure/,
  /^gap below its critical Rayleigh/,
  /^flat gap heated from below/,
  /^conduction through 20 mm of still air/,
  /^rise of the wind coefficient/,
  /^wind at 3 m in a suburb/,
  /^clear-sky emissivity by/,
  /^emissivity under low overcast/,
  /^surface resistance (?:inside|outside)/,
  /of the default (?:slab|tank foam), against medium concrete/,
  /^depth the year’s swing reaches/,
  /^roof in 800 W\/m² at 30 °C/,
  /^loss of real tanks over ideal ones/,
  /^comfort temperature at a running mean/,
  /^ASHRAE 55, half width/,
  /^EN 16798-1 category II, upper limit/,
  /^what a fan is worth/,
  /^mass over heat transfer/,
  /^resting plate of emittance 0/,
]

const CALLED_BY_NOTHING: readonly RegExp[] = [
  /^clear-sky global at zenith .* by the sun’s height alone/,
  /: (?:periodic transmittance|time shift|areal heat capacity)/,
  /^(?:200 mm of concrete|100 mm of concrete .*|boards, wool, boards): U-value/,
  /^heat removal factor F_R/,
  /^collector flow factor/,
  /^light box: sphere multiplier/,
]

/** Why a check is left out of the table; null for one that is in it. */
export function untabled({
  quantity,
}: Pick<Check, 'quantity'>): 'retyped' | 'called by nothing in src' | null {
  if (RETYPED.some((pattern) => pattern.test(quantity))) return 'retyped'
  return CALLED_BY_NOTHING.some((pattern) => pattern.test(quantity)) ? 'called by nothing in src' : null
}

/** Every pattern, for the test that each still meets a check. */
export const UNTABLED_PATTERNS = [...RETYPED, ...CALLED_BY_NOTHING]
