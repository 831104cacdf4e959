/** Plain weather and boards for panel checks: one hour at a time, sky by the project's own default formula. */
import { blackbody_Wm2, WINDOW_EMISSION, vapourPressure_Pa } from '#model/outdoors/air'
import { valueAt } from '#model/basis/numbers'
import type { CoatingOptics, FilmOptics } from '#model/panels/coating'
import { panelBalance, type PanelHour, panelSetting, type PanelSetting } from '#model/panels/plate'
import { restingPlate_C } from '#inside/model/panels/readings/resting-plate.ts'
import { windowPart_Wm2 } from '#model/outdoors/sky'
import { matsunobuCoimbraPrata } from '#inside/model/outdoors/sky/clear.ts'

/** Stated weather of one moment. */
export interface Moment {
  readonly air_C: number
  readonly dewPoint_C: number
  readonly sun_Wm2: number
  /** Forced convection at the plate, W/m²K. */
  readonly forced_Wm2K: number
  /** Share of the sky the plate sees, the rest black at air temperature; 1 when left out. */
  readonly skyView_frac?: number
  readonly pressure_Pa?: number
}

export function momentHour(moment: Moment): PanelHour {
  const { air_C, dewPoint_C, sun_Wm2, forced_Wm2K, skyView_frac = 1, pressure_Pa = 101325 } = moment
  const vapour_Pa = vapourPressure_Pa(dewPoint_C)
  const black = blackbody_Wm2(air_C)
  const blackWindow = valueAt(WINDOW_EMISSION, air_C)
  const total = matsunobuCoimbraPrata(vapour_Pa, air_C) * black
  const window = windowPart_Wm2(total, black, blackWindow, vapour_Pa)
  const seen = (sky: number, around: number) => skyView_frac * sky + (1 - skyView_frac) * around
  return {
    air_C,
    pressure_Pa,
    vapour_Pa,
    window_Wm2: seen(window, blackWindow),
    offWindow_Wm2: seen(total - window, black - blackWindow),
    sun_Wm2,
    forced_Wm2K,
  }
}

export const coating = (solar: number, window: number, off = window): CoatingOptics => ({
  solarReflectance_frac: solar,
  windowEmittance_frac: window,
  offWindowEmittance_frac: off,
})

/** Polyethylene of 10–25 µm (recalled): solar 0.90, infrared 0.90 in both bands. */
export const THIN_FILM: FilmOptics = {
  solarTransmittance_frac: 0.9,
  solarReflectance_frac: 0.08,
  windowTransmittance_frac: 0.9,
  windowReflectance_frac: 0.08,
  offWindowTransmittance_frac: 0.88,
  offWindowReflectance_frac: 0.08,
  gap_m: 0.02,
  flutter_frac: 0.3,
}

/** A level panel or board. */
export function board(
  optics: CoatingOptics,
  film: FilmOptics | null = null,
  backLoss_Wm2K = 0.8,
  freeConvectionLength_m = 0.25,
): PanelSetting {
  return panelSetting({
    coating: optics,
    film,
    tilt_deg: 0,
    azimuth_deg: 0,
    horizon_deg: 0,
    groundAlbedo_frac: 0.2,
    height_m: 1,
    terrain: 'open',
    windModel: 'watmuff1977',
    windExposure_frac: 1,
    freeConvectionLength_m,
    backLoss_Wm2K,
    heatCapacity_Jm2K: 3000,
  })
}

/** The same without free convection: for sources that state one coefficient for everything. */
export function statedCoefficient(optics: CoatingOptics): PanelSetting {
  const still = { coldQuarter: 0, coldThird: 0, hotQuarter: 0, hotThird: 0 }
  return { ...board(optics, null, 0), free: still }
}

/** Heat leaving a plate held at a temperature, W/m². */
export function heatAt(setting: PanelSetting, moment: Moment, plate_C: number): number {
  return panelBalance(setting, momentHour(moment), plate_C, 0).q_Wm2
}

/** Temperature of a board left alone less that of the air, K. */
export function overAir_K(setting: PanelSetting, moment: Moment): number {
  return restingPlate_C(setting, momentHour(moment), 0) - moment.air_C
}
