import { UNDISTURBED } from './reading-errors.ts'
import { COVERS, LIGHTS, type BenchBoard, type BenchMoment, type Cover, type Light } from './reading.ts'
import { restingPlate_C } from './resting-plate.ts'
import { boardSetting, sampleHour, sampleSetting } from './surface-temperature.ts'
import type { CoatingOptics } from '#model/panels/coating'
import { panelBalance, type PanelHour, type PanelSetting, FULL_COVER_KGM2 } from '#model/panels/plate'
import type { WeatherRecord } from '#model/outdoors/weather'

/** The hour a board is to be read in. */
export interface BoardHour {
  readonly airTemp_C: number
  readonly dewPoint_C: number
  /** Wind at the board, m/s. */
  readonly wind_ms: number
  /** Irradiance on the board's plane in full sun and in open shade, W/m². */
  readonly sun_Wm2: number
  readonly shade_Wm2: number
  /** Measured downwelling longwave, W/m², or null: from the sky model and cloud. */
  readonly skyLongwave_Wm2: number | null
  readonly cloud_frac: number
}

/** A coating to be predicted; optics with the half-widths of their ranges (0 where taken as known). */
export interface BoardCoating {
  readonly name: string
  readonly optics: CoatingOptics
  readonly reflectanceHalfWidth_frac: number
  readonly emittanceHalfWidth_frac: number
}

/** Wind at a board a metre above the ground over that of the weather record: common practice, no source. */
export const WIND_AT_BOARD_FRAC = 0.5
/** Half-widths of optics that were measured at home. */
export const HOME_HALF_WIDTH = { reflectanceHalfWidth_frac: 0.03, emittanceHalfWidth_frac: 0.03 } as const

/** What a contact probe would read on one sample. */
export interface BoardPrediction {
  readonly coating: string
  readonly cover: Cover
  readonly light: Light
  readonly surface_C: number
  /** Surface minus air, K: negative is below air. */
  readonly againstAir_K: number
  /** Ends over the coating's ranges, °C. */
  readonly low_C: number
  readonly high_C: number
  /** Dew on the exposed face (the film's, where there is one). */
  readonly wet: boolean
}

/** Every coating, bare and (where the board has a film) under film, in sun, open shade and at night. */
export function predictBoard(
  board: BenchBoard,
  coatings: readonly BoardCoating[],
  hour: BoardHour,
): BoardPrediction[] {
  const setting = boardSetting(board)
  const covers = board.film === null ? (['bare'] as const) : COVERS
  return coatings.flatMap((coating) =>
    covers.flatMap((cover) => LIGHTS.map((light) => predict(setting, board, coating, cover, light, hour))),
  )
}

function predict(
  setting: PanelSetting,
  board: BenchBoard,
  coating: BoardCoating,
  cover: Cover,
  light: Light,
  hour: BoardHour,
): BoardPrediction {
  const film = cover === 'film' ? board.film : null
  const moment = momentOf(hour, light)
  const at = (optics: CoatingOptics) => {
    const sample = sampleSetting(setting, optics, film)
    return settled(sample, sampleHour(sample, board.altitude_m, moment, 0, UNDISTURBED))
  }
  const middle = at(coating.optics)
  const { reflectanceHalfWidth_frac: r, emittanceHalfWidth_frac: e } = coating
  const ends = [-1, 1].flatMap((a) => [-1, 1].map((b) => at(shifted(coating.optics, a * r, b * e)).surface_C))
  return {
    coating: coating.name,
    cover,
    light,
    surface_C: middle.surface_C,
    againstAir_K: middle.surface_C - hour.airTemp_C,
    low_C: Math.min(middle.surface_C, ...ends),
    high_C: Math.max(middle.surface_C, ...ends),
    wet: middle.wet,
  }
}

/** Resting temperature; a face below the dew point gathers dew until it radiates as water. */
function settled(sample: PanelSetting, hour: PanelHour): { surface_C: number; wet: boolean } {
  const dry_C = restingPlate_C(sample, hour, 0)
  const gathers = panelBalance(sample, hour, dry_C, 0).water_kgm2s > 0
  if (!gathers) return { surface_C: dry_C, wet: false }
  return { surface_C: restingPlate_C(sample, hour, FULL_COVER_KGM2), wet: true }
}

function momentOf(hour: BoardHour, light: Light): BenchMoment {
  return {
    time: null,
    airTemp_C: hour.airTemp_C,
    dewPoint_C: hour.dewPoint_C,
    light,
    sun_Wm2: light === 'sun' ? hour.sun_Wm2 : light === 'shade' ? hour.shade_Wm2 : 0,
    skyLongwave_Wm2: hour.skyLongwave_Wm2,
    cloud_frac: hour.cloud_frac,
    wind: 'metered',
    wind_ms: hour.wind_ms,
    surfaces: [],
  }
}

function shifted(optics: CoatingOptics, reflectance: number, emittance: number): CoatingOptics {
  const within = (value: number) => Math.min(1, Math.max(0, value))
  return {
    solarReflectance_frac: within(optics.solarReflectance_frac + reflectance),
    windowEmittance_frac: within(optics.windowEmittance_frac + emittance),
    offWindowEmittance_frac: within(optics.offWindowEmittance_frac + emittance),
  }
}

/**
 * One hour of a weather record for a level board. Its wind is that of open country at 10 m: `windAtBoard_frac` brings
 * it down to the board. Shade keeps the diffuse part.
 * @throws RangeError for an hour outside the record
 */
export function boardHourOf(weather: WeatherRecord, hour: number, windAtBoard_frac: number): BoardHour {
  if (!Number.isInteger(hour) || hour < 0 || hour >= weather.hours) {
    throw new RangeError(`hour must be 0…${weather.hours - 1}, got ${hour}`)
  }
  const longwave = weather.skyLongwave_Wm2?.[hour] ?? NaN
  return {
    airTemp_C: weather.airTemp_C[hour]!,
    dewPoint_C: weather.dewPoint_C[hour]!,
    wind_ms: weather.wind_ms[hour]! * windAtBoard_frac,
    sun_Wm2: weather.globalHorizontal_Wm2[hour]!,
    shade_Wm2: weather.diffuseHorizontal_Wm2[hour]!,
    skyLongwave_Wm2: Number.isFinite(longwave) ? longwave : null,
    cloud_frac: weather.cloud_frac[hour]!,
  }
}
