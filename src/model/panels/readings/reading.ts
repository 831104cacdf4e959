import type { FilmOptics } from '#model/panels/coating'

/** Where the board was while it was read. */
export const LIGHTS = ['sun', 'shade', 'night'] as const
export type Light = (typeof LIGHTS)[number]

/** `metered`: a wind meter beside the board; `calm` 0–1 m/s and `breezy` 1–4 m/s are judged by feel. */
export const WIND_CLASSES = ['metered', 'calm', 'breezy'] as const
export type WindClass = (typeof WIND_CLASSES)[number]

export const COVERS = ['bare', 'film'] as const
export type Cover = (typeof COVERS)[number]

export const THERMOMETERS = ['contact', 'infrared'] as const
export type Thermometer = (typeof THERMOMETERS)[number]

/** A coating on the board. A reference paint has optics that are taken as known, within their uncertainty. */
export interface BenchSample {
  readonly name: string
  readonly known: KnownOptics | null
}

/** Assumed optics with one standard deviation each. */
export interface KnownOptics {
  readonly solarReflectance_frac: number
  readonly solarReflectanceSd_frac: number
  readonly emittance_frac: number
  readonly emittanceSd_frac: number
}

/** The board all samples sit on. */
export interface BenchBoard {
  /** 0 = facing straight up, degrees. */
  readonly tilt_deg: number
  /** Heat loss through the back to the air, W/m²K: 1 is about 30 mm of foam. */
  readonly backLoss_Wm2K: number
  readonly altitude_m: number
  /** Obstruction of the sky all round, degrees. */
  readonly horizon_deg: number
  /** Area over perimeter of one sample, m: a quarter of the side of a square one. */
  readonly freeConvectionLength_m: number
  /** Film of the readings taken under film; null when there are none. */
  readonly film: FilmOptics | null
}

/** One surface temperature. */
export interface SurfaceReading {
  /** Index into `BenchReadings.samples`. */
  readonly sample: number
  /** What the thermometer showed, °C. */
  readonly shown_C: number
  readonly cover: Cover
  readonly thermometer: Thermometer
}

/** Everything read within a few minutes, under one sky and one wind. */
export interface BenchMoment {
  /** The maker's own note of the time; no physics hangs on it. */
  readonly time: string | null
  readonly airTemp_C: number
  readonly dewPoint_C: number
  readonly light: Light
  /** Irradiance on the board's plane, W/m²; null in sun: not metered, in shade: usual. Ignored at night. */
  readonly sun_Wm2: number | null
  /** Measured downwelling longwave, W/m²; null: from the sky model and cloud. */
  readonly skyLongwave_Wm2: number | null
  readonly cloud_frac: number
  readonly wind: WindClass
  /** Wind at the board, m/s; only for `metered`. */
  readonly wind_ms: number | null
  readonly surfaces: readonly SurfaceReading[]
}

/** A maker's field notes. */
export interface BenchReadings {
  readonly board: BenchBoard
  readonly samples: readonly BenchSample[]
  readonly moments: readonly BenchMoment[]
  /** Emissivity set on the infrared thermometer, 0…1. */
  readonly infraredSetting_frac: number
  /** One sentence: whose readings, whether invented. */
  readonly basis: string
}

/** A board as most makers have it: flat, on foam, samples of about 0.2 × 0.2 m. */
export const USUAL_BOARD: BenchBoard = {
  tilt_deg: 0,
  backLoss_Wm2K: 1,
  altitude_m: 0,
  horizon_deg: 5,
  freeConvectionLength_m: 0.05,
  film: null,
}
