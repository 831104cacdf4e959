import { airConductivity_WmK, rayleighGroup } from '#model/air/air-properties.ts'

const RADIANS = Math.PI / 180

/**
 * Rise of the convection coefficient with wind over a flat plate, W/m²K per m/s, by author. Only the slopes are
 * used: the intercept of each published line (beside it) stands for the still air of a *warm* plate, and a plate
 * colder than the air has far less. Still air is worked out on its own (`freeConvection_Wm2K`).
 * Sources as in Kumar & Mullick 2010, table 1: McAdams 1954 5.7 + 3.8 v; Watmuff 1977 2.8 + 3.0 v;
 * Test 1981 8.55 + 2.56 v; Sharples & Charlesworth 1998 6.5 + 3.3 v; Kumar & Mullick 2010 6.9 + 3.87 v.
 */
export const WIND_SLOPES = {
  watmuff1977: 3.0,
  mcAdams1954: 3.8,
  test1981: 2.56,
  sharplesCharlesworth1998: 3.3,
  kumarMullick2010: 3.87,
} as const

/** Forced convection, W/m²K: slope by author × wind at the plate. */
export function forcedConvection_Wm2K(author: keyof typeof WIND_SLOPES, wind_ms: number): number {
  return WIND_SLOPES[author] * wind_ms
}

/**
 * Nusselt-number factors of free convection on the upper face of a plate at one tilt: Nu is the larger of
 * quarter · Ra^¼ and third · Ra^⅓, for a face colder and hotter than the air.
 */
export interface FreeFactors {
  readonly coldQuarter: number
  readonly coldThird: number
  readonly hotQuarter: number
  readonly hotThird: number
}

/**
 * Factors for a tilt. Flat: cold face up 0.27 Ra^¼; hot face up 0.54 Ra^¼ and 0.15 Ra^⅓ (the larger: they
 * cross at Ra = 4.7e6 and the printed change at 1e7 would make a jump). Upright: 0.59 Ra^¼ and 0.10 Ra^⅓.
 * Tilted: the larger of the flat rule with g cos β and the upright rule with g sin β.
 * Source: McAdams 1954 as in Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, eqs. 9.24, 9.30–9.32.
 */
export function freeFactors(tilt_deg: number): FreeFactors {
  const along = Math.max(0, Math.sin(tilt_deg * RADIANS))
  const across = Math.max(0, Math.cos(tilt_deg * RADIANS))
  const uprightQuarter = 0.59 * along ** 0.25
  const uprightThird = 0.1 * Math.cbrt(along)
  return {
    coldQuarter: Math.max(0.27 * across ** 0.25, uprightQuarter),
    coldThird: uprightThird,
    hotQuarter: Math.max(0.54 * across ** 0.25, uprightQuarter),
    hotThird: Math.max(0.15 * Math.cbrt(across), uprightThird),
  }
}

/** Nusselt number of free convection, –; `rayleigh` ≥ 0; hot: the face is warmer than the air. */
export function freeNusselt(factors: FreeFactors, rayleigh: number, hot: boolean): number {
  const quarter = Math.sqrt(Math.sqrt(rayleigh)) * (hot ? factors.hotQuarter : factors.coldQuarter)
  const third = Math.cbrt(rayleigh) * (hot ? factors.hotThird : factors.coldThird)
  return quarter > third ? quarter : third
}

/**
 * Within this of the air, K, the coefficient goes in a straight line from the cold side's value to the hot side's.
 * The correlations on either side would fall to nothing at no difference, and take evaporation with them; air
 * over a wet face is never that still (common practice, no source).
 */
export const STILL_SPAN_K = 1

/**
 * Free convection on the upper face of a plate, W/m²K, air properties at the mean of plate and air.
 * @param length_m  area over perimeter of the face
 */
export function freeConvection_Wm2K(
  factors: FreeFactors,
  surface_C: number,
  air_C: number,
  pressure_Pa: number,
  length_m: number,
): number {
  const difference_K = surface_C - air_C
  if (Math.abs(difference_K) >= STILL_SPAN_K) {
    return sideConvection_Wm2K(factors, difference_K, air_C, pressure_Pa, length_m)
  }
  const cold = sideConvection_Wm2K(factors, -STILL_SPAN_K, air_C, pressure_Pa, length_m)
  const hot = sideConvection_Wm2K(factors, STILL_SPAN_K, air_C, pressure_Pa, length_m)
  return cold + ((hot - cold) * (difference_K + STILL_SPAN_K)) / (2 * STILL_SPAN_K)
}

/** The correlation of the side the face is on, W/m²K. */
function sideConvection_Wm2K(
  factors: FreeFactors,
  difference_K: number,
  air_C: number,
  pressure_Pa: number,
  length_m: number,
): number {
  const mean_C = air_C + 0.5 * difference_K
  const rayleigh =
    rayleighGroup(mean_C, pressure_Pa) * Math.abs(difference_K) * length_m * length_m * length_m
  return (freeNusselt(factors, rayleigh, difference_K > 0) * airConductivity_WmK(mean_C)) / length_m
}

/** Free and forced convection together, W/m²K: (free³ + forced³)^⅓ (Churchill 1977, exponent 3). */
export function blendedConvection_Wm2K(free_Wm2K: number, forced_Wm2K: number): number {
  return Math.cbrt(free_Wm2K * free_Wm2K * free_Wm2K + forced_Wm2K * forced_Wm2K * forced_Wm2K)
}

/** Tilt beyond which the gap correlation is not carried, degrees. */
const HOLLANDS_MAX_TILT_DEG = 60

/** The two constants of the gap correlation that depend only on tilt: cos β and (sin 1.8 β)^1.6. */
export interface GapTilt {
  readonly cosine: number
  readonly shear: number
}

export function gapTilt(tilt_deg: number): GapTilt {
  const tilt = Math.min(Math.abs(tilt_deg), HOLLANDS_MAX_TILT_DEG) * RADIANS
  return { cosine: Math.cos(tilt), shear: Math.sin(1.8 * tilt) ** 1.6 }
}

/**
 * Nusselt number of an air gap heated from below, –.
 *   Nu = 1 + 1.44 [1 − 1708 (sin 1.8β)^1.6/(Ra cos β)] [1 − 1708/(Ra cos β)]⁺ + [(Ra cos β/5830)^⅓ − 1]⁺
 * Ra on the gap; tilt 0…60° (held at 60° beyond). Heated from above it is 1 (pure conduction).
 * Source: Hollands, Unny, Raithby & Konicek 1976, J. Heat Transfer 98, 189.
 */
export function hollandsNusselt(rayleigh: number, tilt: GapTilt): number {
  const ra = rayleigh * tilt.cosine
  if (ra <= 1708) return 1
  const onset = 1.44 * (1 - (1708 * tilt.shear) / ra) * (1 - 1708 / ra)
  const growth = ra > 5830 ? Math.cbrt(ra / 5830) - 1 : 0
  return 1 + onset + growth
}
