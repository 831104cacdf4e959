import {
  blackbody_Wm2,
  WINDOW_EMISSION,
  smallPlateConvection_Wm2K,
  standardPressure_Pa,
  vapourPressure_Pa,
} from '#model/outdoors/air'
import { valueAt } from '#model/basis/numbers'
import { irThermometerShown_C, type InfraredView } from './ir-thermometer.ts'
import { momentSun_Wm2, type Disturbance } from './reading-errors.ts'
import type { BenchBoard, BenchMoment, BenchReadings, SurfaceReading, WindClass } from './reading.ts'
import { restingPlate_C } from './resting-plate.ts'
import { WIND_CLASS_MEANS } from './unknowns.ts'
import type { CoatingOptics, FilmOptics } from '#model/panels/coating'
import {
  bareExchange,
  filmExchange,
  type PanelHour,
  panelSetting,
  type PanelSetting,
} from '#model/panels/plate'
import {
  windowPart_Wm2,
  matsunobuCoimbraPrata,
  cloudBase_m,
  cloudyMartinBerdahl,
  windowFactor_frac,
} from '#model/outdoors/sky'

/** What the fit assumes of one sample in one moment. */
export interface SampleState {
  readonly solarReflectance_frac: number
  /** Grey: the same inside and outside the window. */
  readonly emittance_frac: number
  /** Natural logarithm of the multiplier of the wind coefficient of the moment's class. */
  readonly windLog: number
}

/** What a thermometer would show on a sample at rest (no fluid), °C. */
export function shownTemperature_C(
  readings: BenchReadings,
  board: PanelSetting,
  momentIndex: number,
  surface: SurfaceReading,
  state: SampleState,
  disturbance: Disturbance,
): number {
  const moment = readings.moments[momentIndex]!
  const film = surface.cover === 'film' ? filmOf(readings.board, disturbance) : null
  const coating = greyCoating(state.solarReflectance_frac, state.emittance_frac)
  const setting = sampleSetting(board, coating, film)
  const hour = sampleHour(setting, readings.board.altitude_m, moment, state.windLog, disturbance)
  const true_C = restingPlate_C(setting, hour, 0)
  if (surface.thermometer === 'contact') return true_C
  return irThermometerShown_C(true_C, viewOf(readings, moment, hour, state.emittance_frac))
}

/** How the infrared thermometer sees a sample of this emittance in this moment. */
export function infraredView(
  readings: BenchReadings,
  moment: BenchMoment,
  emittance_frac: number,
): InfraredView {
  const sky = skyOver(moment, 0)
  return viewOf(readings, moment, { window_Wm2: sky.window_Wm2 }, emittance_frac)
}

function viewOf(
  readings: BenchReadings,
  moment: BenchMoment,
  hour: Pick<PanelHour, 'window_Wm2'>,
  emittance_frac: number,
): InfraredView {
  return {
    emittance_frac,
    setting_frac: readings.infraredSetting_frac,
    skyWindow_Wm2: hour.window_Wm2,
    assumedSurroundings_C: moment.airTemp_C,
  }
}

/** Forced-convection coefficient a wind class means, W/m²K (metered: at 1 m/s). */
export function classCoefficient_Wm2K(board: BenchBoard, wind: WindClass, windLog: number): number {
  const wind_ms = wind === 'metered' ? 1 : WIND_CLASS_MEANS[wind].wind_ms
  const { freeConvectionLength_m, tilt_deg, altitude_m } = board
  const side_m = SIDES_IN_LENGTH * freeConvectionLength_m
  const pressure_Pa = standardPressure_Pa(altitude_m)
  return smallPlateConvection_Wm2K(side_m, wind_ms, tilt_deg, USUAL_AIR_C, pressure_Pa) * Math.exp(windLog)
}

/** A square has four times its area over perimeter as side. */
const SIDES_IN_LENGTH = 4
/** Air at which a coefficient is shown to people, °C. */
const USUAL_AIR_C = 20

/** The board as a small panel with nothing flowing in it: all that does not change with coating, film and moment. */
export function boardSetting(board: BenchBoard): PanelSetting {
  return panelSetting({
    coating: { solarReflectance_frac: 0.8, windowEmittance_frac: 0.9, offWindowEmittance_frac: 0.9 },
    film: null,
    tilt_deg: board.tilt_deg,
    azimuth_deg: 0,
    horizon_deg: board.horizon_deg,
    groundAlbedo_frac: 0.2,
    height_m: 1,
    terrain: 'open',
    // Not used: a board's forced convection is that of a small plate (`sampleHour`).
    windModel: 'watmuff1977',
    windExposure_frac: 1,
    freeConvectionLength_m: board.freeConvectionLength_m,
    backLoss_Wm2K: board.backLoss_Wm2K,
    heatCapacity_Jm2K: 0,
  })
}

/** A coating on the board, bare or under a film. */
export function sampleSetting(
  board: PanelSetting,
  coating: CoatingOptics,
  film: FilmOptics | null,
): PanelSetting {
  const exchange = (wet: boolean) =>
    film === null ? bareExchange(coating, wet) : filmExchange(coating, film, wet)
  return { ...board, spec: { ...board.spec, coating, film }, dry: exchange(false), wet: exchange(true) }
}

/** One emittance for both bands, held inside 0…1. */
export function greyCoating(solarReflectance_frac: number, emittance_frac: number): CoatingOptics {
  const within = (value: number) => Math.min(1, Math.max(0, value))
  return {
    solarReflectance_frac: within(solarReflectance_frac),
    windowEmittance_frac: within(emittance_frac),
    offWindowEmittance_frac: within(emittance_frac),
  }
}

/** A moment as the sample meets it. */
export function sampleHour(
  setting: PanelSetting,
  altitude_m: number,
  moment: BenchMoment,
  windLog: number,
  disturbance: Disturbance,
): PanelHour {
  const air_C = moment.airTemp_C + disturbance.air_K
  const pressure_Pa = standardPressure_Pa(altitude_m)
  const sky = skyOver(moment, disturbance.sky_Wm2)
  const black = blackbody_Wm2(air_C)
  const blackWindow = valueAt(WINDOW_EMISSION, air_C)
  const { skyOnPlane } = setting
  const hidden = 1 - skyOnPlane.uniform_frac
  const wind_ms = moment.wind === 'metered' ? (moment.wind_ms ?? 0) : WIND_CLASS_MEANS[moment.wind].wind_ms
  const directional = windowFactor_frac(skyOnPlane, sky.window_Wm2 / blackWindow)
  const sun = momentSun_Wm2(moment) * (1 + disturbance.sunGain_frac) + disturbance.sun_Wm2
  return {
    air_C,
    pressure_Pa,
    vapour_Pa: vapourPressure_Pa(moment.dewPoint_C),
    window_Wm2: sky.window_Wm2 * directional + hidden * blackWindow,
    offWindow_Wm2: sky.off_Wm2 * skyOnPlane.uniform_frac + hidden * (black - blackWindow),
    sun_Wm2: moment.light === 'night' ? 0 : Math.max(0, sun),
    forced_Wm2K:
      Math.exp(windLog) *
      smallPlateConvection_Wm2K(
        SIDES_IN_LENGTH * setting.spec.freeConvectionLength_m,
        wind_ms * Math.exp(disturbance.windLog),
        setting.spec.tilt_deg,
        air_C,
        pressure_Pa,
      ),
  }
}

/** Longwave of the open sky in a moment, W/m²: measured, or the clear sky of a new design under Martin & Berdahl's cloud. */
function skyOver(moment: BenchMoment, more_Wm2: number) {
  const vapour = vapourPressure_Pa(moment.dewPoint_C)
  const black = blackbody_Wm2(moment.airTemp_C)
  const clear = Math.min(1, matsunobuCoimbraPrata(vapour, moment.airTemp_C))
  const base_m = cloudBase_m(moment.airTemp_C, moment.dewPoint_C)
  const modelled = black * cloudyMartinBerdahl(clear, moment.cloud_frac, base_m)
  const total = (moment.skyLongwave_Wm2 ?? modelled) + more_Wm2
  const window = windowPart_Wm2(total, black, valueAt(WINDOW_EMISSION, moment.airTemp_C), vapour)
  const window_Wm2 = Math.min(total, window)
  return { window_Wm2, off_Wm2: total - window_Wm2 }
}

/** The board's film with its errors; what is no longer passed is absorbed. */
function filmOf(board: BenchBoard, disturbance: Disturbance): FilmOptics {
  const film = board.film
  if (film === null) throw new RangeError('a reading under film needs a film on the board')
  const moved = (passes: number, by: number, reflects: number) =>
    Math.min(1 - reflects, Math.max(0, passes + by))
  const infrared = disturbance.filmInfrared_frac
  return {
    ...film,
    solarTransmittance_frac: moved(
      film.solarTransmittance_frac,
      disturbance.filmSolar_frac,
      film.solarReflectance_frac,
    ),
    windowTransmittance_frac: moved(film.windowTransmittance_frac, infrared, film.windowReflectance_frac),
    offWindowTransmittance_frac: moved(
      film.offWindowTransmittance_frac,
      infrared,
      film.offWindowReflectance_frac,
    ),
  }
}
