import { YEAR_HOURS } from '#model/basis/hours'
import type { WeatherRecord } from '#model/outdoors/weather'

/** A slab on the ground, as ISO 13370:2017 sees it. */
export interface GroundFloor {
  readonly area_m2: number
  readonly perimeter_m: number
  /** Full thickness of the walls around it, m. */
  readonly wall_m: number
  /** Ground conductivity, W/mK. */
  readonly ground_WmK: number
  /** Resistance of slab and insulation, m²K/W. */
  readonly floor_m2KW: number
}

const INSIDE_m2KW = 0.17
const OUTSIDE_m2KW = 0.04

/** Equivalent thickness of the floor, m: ISO 13370, eq. for d_t. */
export function equivalentThickness_m(floor: GroundFloor): number {
  return floor.wall_m + floor.ground_WmK * (INSIDE_m2KW + floor.floor_m2KW + OUTSIDE_m2KW)
}

/** Steady U-value of a slab on ground, inside to outside, W/m²K: ISO 13370, slab-on-ground floors. */
export function slabOnGroundU_Wm2K(floor: GroundFloor): number {
  const width_m = floor.area_m2 / (0.5 * floor.perimeter_m)
  const thick_m = equivalentThickness_m(floor)
  if (thick_m >= width_m) return floor.ground_WmK / (0.457 * width_m + thick_m)
  const around_m = Math.PI * width_m
  return ((2 * floor.ground_WmK) / (around_m + thick_m)) * Math.log(around_m / thick_m + 1)
}

const YEAR_s = 3.15e7

/** Heat capacity of ground, J/m³K: ISO 13370's clay (1.5 W/mK) 3.0e6, sand and rock (2 W/mK and more) 2.0e6. */
function groundCapacity_Jm3K(ground_WmK: number): number {
  const share = Math.min(1, Math.max(0, (ground_WmK - 1.5) / 0.5))
  return 3e6 - 1e6 * share
}

/** Depth to which the year's swing reaches, m: ISO 13370, periodic penetration depth. */
export function annualDepth_m(ground_WmK: number): number {
  return Math.sqrt((YEAR_s * ground_WmK) / (Math.PI * groundCapacity_Jm3K(ground_WmK)))
}

/** Heat through the floor per K of the year's outdoor swing, W/K: ISO 13370, H_pe, no edge insulation. */
export function outdoorSwing_WK(floor: GroundFloor): number {
  const ratio = annualDepth_m(floor.ground_WmK) / equivalentThickness_m(floor)
  return 0.37 * floor.perimeter_m * floor.ground_WmK * Math.log(ratio + 1)
}

/** The year's outdoor swing: mean + cosine·cos ωt + sine·sin ωt, t in hours from the record's start, ω = 2π/8760 h. */
export interface AnnualSwing {
  readonly mean_C: number
  readonly cosine_K: number
  readonly sine_K: number
}

const OMEGA_1h = (2 * Math.PI) / YEAR_HOURS

/**
 * Mean and first harmonic of the outdoor temperature over the record's whole years, so that either hemisphere comes out
 * right. A record shorter than a year has only its mean: the ground is taken to be there.
 */
export function annualSwing(weather: WeatherRecord): AnnualSwing {
  const years = Math.floor(weather.hours / YEAR_HOURS)
  const span = years === 0 ? weather.hours : years * YEAR_HOURS
  let sum = 0
  let cosine = 0
  let sine = 0
  for (let h = 0; h < span; h++) {
    const air_C = weather.airTemp_C[h]!
    sum += air_C
    cosine += air_C * Math.cos(OMEGA_1h * (h + 0.5))
    sine += air_C * Math.sin(OMEGA_1h * (h + 0.5))
  }
  const scale = years === 0 ? 0 : 2 / span
  return { mean_C: sum / span, cosine_K: cosine * scale, sine_K: sine * scale }
}

/** Lag of the floor's heat flow behind the outdoor swing, h: ISO 13370, one month for a slab on ground. */
const LAG_h = YEAR_HOURS / 12

/**
 * Temperature that, across the steady conductance, gives the floor's heat flow, °C per hour: the year's mean plus the
 * swing times H_pe/H_g, a month late.
 */
export function groundTemp_C(floor: GroundFloor, weather: WeatherRecord): Float64Array {
  const swing = annualSwing(weather)
  const damping = outdoorSwing_WK(floor) / (slabOnGroundU_Wm2K(floor) * floor.area_m2)
  return new Float64Array(weather.hours).map((_, h) => {
    const angle = OMEGA_1h * (h + 0.5 - LAG_h)
    return swing.mean_C + damping * (swing.cosine_K * Math.cos(angle) + swing.sine_K * Math.sin(angle))
  })
}
