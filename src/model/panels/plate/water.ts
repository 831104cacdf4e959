import { evaporationHeat_Jkg, SUBLIMATION_HEAT_JKG } from '#model/outdoors/air'

/** Water that covers a whole surface and makes it radiate as water, kg/m²; less covers a share of it. */
export const FULL_COVER_KGM2 = 0.02

/** Less than this counts as dry, kg/m²: a tenth of a gram on a thousand square metres. */
export const DRY_KGM2 = 1e-7

/**
 * Evaporation is held to what would use up the water in this time, s: a step of the year no longer than this can
 * never take more water, nor more heat, than is there.
 */
export const LONGEST_STEP_S = 900

/** Wet share of the surface, 0…1. */
export function wetness_frac(water_kgm2: number): number {
  return water_kgm2 >= FULL_COVER_KGM2 ? 1 : water_kgm2 <= 0 ? 0 : water_kgm2 / FULL_COVER_KGM2
}

/** A face freezes and melts in patches over this much either side of 0 °C, K (common practice, no source). */
export const PATCHY_K = 0.5

/** Heat of the change of state at a face, J/kg: sublimation when frozen, evaporation when not. */
export function changeHeat_Jkg(face_C: number): number {
  if (face_C >= PATCHY_K) return evaporationHeat_Jkg(face_C)
  if (face_C <= -PATCHY_K) return SUBLIMATION_HEAT_JKG
  const melted = (face_C + PATCHY_K) / (2 * PATCHY_K)
  return SUBLIMATION_HEAT_JKG + (evaporationHeat_Jkg(face_C) - SUBLIMATION_HEAT_JKG) * melted
}

/** Fastest evaporation from the wet share of a surface, kg/m² s (per m² of wet surface). */
export function evaporationLimit_kgm2s(water_kgm2: number): number {
  return (water_kgm2 > FULL_COVER_KGM2 ? water_kgm2 : FULL_COVER_KGM2) / LONGEST_STEP_S
}

/**
 * Water that clings to a surface before drops run off, kg/m²: 0.8 on a level one (the most a night can give,
 * Beysens 2016), falling to 0.1 on one tilted 30° or more (drops slide; common practice, no source).
 */
export function waterLimit_kgm2(tilt_deg: number): number {
  return 0.8 - 0.7 * Math.min(1, Math.max(0, tilt_deg) / 30)
}

/**
 * Frost that stays on a face, kg/m²: three of the best nights there can be (Beysens 2016: 0.8 each). A thicker rime breaks
 * off or is swept off (common practice, no source); without an end a plate held below freezing would gather a metre of it.
 */
export const FROST_LIMIT_KGM2 = 2.4

/**
 * Water on the surface after a step, kg/m². Dew and frost add, evaporation takes no more than is there, and what
 * is over the limit runs off; frost stays until it melts, up to a limit of its own.
 * @param rate_kgm2s  water gained, from `panelTangent`
 * @param step_s      no longer than `LONGEST_STEP_S`
 * @param plate_C     plate temperature: below 0 °C nothing runs
 */
export function waterAfter_kgm2(
  water_kgm2: number,
  rate_kgm2s: number,
  step_s: number,
  plate_C: number,
  limit_kgm2: number,
): number {
  const next = water_kgm2 + rate_kgm2s * step_s
  if (next <= DRY_KGM2) return 0
  if (plate_C >= 0) return next > limit_kgm2 ? limit_kgm2 : next
  return next > FROST_LIMIT_KGM2 ? FROST_LIMIT_KGM2 : next
}
