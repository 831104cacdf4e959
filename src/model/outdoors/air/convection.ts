import { airConductivity_WmK, rayleighGroup } from './air-properties.ts'
import { interpolatingPolynomial, valueAt } from '#model/basis/numbers'

const RADIANS = Math.PI / 180

/**
 * Rise of the convection coefficient with wind over a flat plate, W/m²K per m/s, by author. Only the slopes are
 * used: the intercept of each published line (beside it) is the still air of a *warm* plate, and a plate
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
 * Nusselt-number factors of free convection on the upper face of a plate at one tilt: Nu is quarter · Ra^¼ and
 * third · Ra^⅓ joined by `joinedLaws`, for a face colder and hotter than the air.
 */
export interface FreeFactors {
  readonly coldQuarter: number
  readonly coldThird: number
  readonly hotQuarter: number
  readonly hotThird: number
}

/**
 * Factors for a tilt. Flat: cold face up 0.27 Ra^¼; hot face up 0.54 Ra^¼ and 0.15 Ra^⅓ (they cross at
 * Ra = 4.7e6; the printed change at 1e7 would be a jump). Upright: 0.59 Ra^¼ and 0.10 Ra^⅓.
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

/** Larger law × (1 + (smaller/larger)^10)^(1/10), the root as a polynomial of degree 5, right to 1e-6. */
const JOINING = 10
const joiningRoot = interpolatingPolynomial((x) => (1 + x) ** (1 / JOINING), 0, 1)

/**
 * The laminar and the turbulent law as one, (a¹⁰ + b¹⁰)^(1/10): the larger away from their crossing, 7 % more at it.
 * Source: Raithby & Hollands, Natural Convection, in Handbook of Heat Transfer (from memory).
 */
export function joinedLaws(a: number, b: number): number {
  const larger = a > b ? a : b
  if (larger <= 0) return 0
  const ratio = (a > b ? b : a) / larger
  const square = ratio * ratio
  const fourth = square * square
  return larger * valueAt(joiningRoot, fourth * fourth * square)
}

/** Nusselt number of free convection, –; `rayleigh` ≥ 0; hot: the face is warmer than the air. */
export function freeNusselt(factors: FreeFactors, rayleigh: number, hot: boolean): number {
  return joinedLaws(
    Math.sqrt(Math.sqrt(rayleigh)) * (hot ? factors.hotQuarter : factors.coldQuarter),
    Math.cbrt(rayleigh) * (hot ? factors.hotThird : factors.coldThird),
  )
}

/**
 * Free convection on the upper face of a plate by the correlation of the side it is on, W/m²K, air properties at the
 * mean of plate and air.
 * @param length_m  area over perimeter of the face
 */
export function freeConvection_Wm2K(
  factors: FreeFactors,
  surface_C: number,
  air_C: number,
  pressure_Pa: number,
  length_m: number,
): number {
  const mean_C = 0.5 * (surface_C + air_C)
  const difference_K = Math.abs(surface_C - air_C)
  const rayleigh = rayleighGroup(mean_C, pressure_Pa) * difference_K * length_m * length_m * length_m
  return (freeNusselt(factors, rayleigh, surface_C > air_C) * airConductivity_WmK(mean_C)) / length_m
}

/** Free and forced convection together, W/m²K: (free³ + forced³)^⅓ (Churchill 1977, exponent 3). */
export function blendedConvection_Wm2K(free_Wm2K: number, forced_Wm2K: number): number {
  return Math.cbrt(free_Wm2K * free_Wm2K * free_Wm2K + forced_Wm2K * forced_Wm2K * forced_Wm2K)
}

/**
 * Within this of the air, K, the coefficient goes in a straight line from the cold side's value to the hot side's.
 * The correlations on either side would fall to nothing at no difference, and take evaporation with them; air
 * over a face is never that still (common practice, no source).
 */
export const STILL_SPAN_K = 1

/** Air over an exposed face: what free and forced convection need besides the face's own temperature. */
export interface FaceAir {
  readonly air_C: number
  readonly pressure_Pa: number
  readonly forced_Wm2K: number
}

/** Convection of an exposed face, free and forced together, with the straight line near the air's temperature, W/m²K. */
export function exposedConvection_Wm2K(
  factors: FreeFactors,
  surface_C: number,
  air: FaceAir,
  length_m: number,
): number {
  const difference_K = surface_C - air.air_C
  if (Math.abs(difference_K) >= STILL_SPAN_K) return sideConvection_Wm2K(factors, surface_C, air, length_m)
  const cold = sideConvection_Wm2K(factors, air.air_C - STILL_SPAN_K, air, length_m)
  const hot = sideConvection_Wm2K(factors, air.air_C + STILL_SPAN_K, air, length_m)
  return cold + ((hot - cold) * (difference_K + STILL_SPAN_K)) / (2 * STILL_SPAN_K)
}

/** The same by the correlation of the side that the face is on, W/m²K. */
function sideConvection_Wm2K(
  factors: FreeFactors,
  face_C: number,
  { air_C, pressure_Pa, forced_Wm2K }: FaceAir,
  length_m: number,
): number {
  const free_Wm2K = freeConvection_Wm2K(factors, face_C, air_C, pressure_Pa, length_m)
  return blendedConvection_Wm2K(free_Wm2K, forced_Wm2K)
}

/** Tilt beyond which the gap correlation is not carried, degrees. */
const HOLLANDS_MAX_TILT_DEG = 60

/** What of a gap depends only on its tilt: cos β and (sin 1.8 β)^1.6 of the hotter plate, held at 60°, and sin β of the colder. */
export interface GapTilt {
  readonly cosine: number
  readonly shear: number
  readonly sine: number
}

export function gapTilt(tilt_deg: number): GapTilt {
  const tilt = Math.min(Math.abs(tilt_deg), HOLLANDS_MAX_TILT_DEG) * RADIANS
  return {
    cosine: Math.cos(tilt),
    shear: Math.sin(1.8 * tilt) ** 1.6,
    sine: Math.sin(Math.min(Math.abs(tilt_deg), 90) * RADIANS),
  }
}

/**
 * Nusselt number of an air gap heated from below, –.
 *   Nu = 1 + 1.44 [1 − 1708 (sin 1.8β)^1.6/(Ra cos β)] [1 − 1708/(Ra cos β)]⁺ + [(Ra cos β/5830)^⅓ − 1]⁺
 * Ra on the gap; tilt 0…60° (held at 60° beyond). Heated from above: `coldBelowNusselt`.
 * Source: Hollands, Unny, Raithby & Konicek 1976, J. Heat Transfer 98, 189.
 */
export function hollandsNusselt(rayleigh: number, tilt: GapTilt): number {
  const ra = rayleigh * tilt.cosine
  if (ra <= 1708) return 1
  const onset = 1.44 * (1 - (1708 * tilt.shear) / ra) * (1 - 1708 / ra)
  const growth = ra > 5830 ? Math.cbrt(ra / 5830) - 1 : 0
  return 1 + onset + growth
}
