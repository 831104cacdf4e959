import {
  rayleighGroup,
  freeFactors,
  gapTilt,
  WIND_SLOPES,
  type FreeFactors,
  type GapTilt,
  windFactor_frac,
} from '#model/outdoors/air'
import { edgeLoss_Wm2K } from './edge-loss.ts'
import { bareExchange, filmExchange, type Exchange } from './exchange.ts'
import type { PanelSpec } from './spec.ts'
import { waterLimit_kgm2 } from './water.ts'
import { skyOnPlane, type SkyOnPlane } from '#model/outdoors/sky'

/** A panel spec worked out once: everything about a panel that does not change with the hour. */
export interface PanelSetting {
  readonly spec: PanelSpec
  readonly dry: Exchange
  readonly wet: Exchange
  readonly free: FreeFactors
  readonly skyOnPlane: SkyOnPlane
  /** Forced convection per m/s of the weather record's wind, W/m²K per m/s. */
  readonly windSlope: number
  readonly gapTilt: GapTilt
  /** Through the back, and at the edges of a small plate, W/m²K. */
  readonly backLoss_Wm2K: number
  readonly waterLimit_kgm2: number
}

/** @throws RangeError naming the first quantity of the spec that makes no sense */
export function panelSetting(spec: PanelSpec): PanelSetting {
  checkSpec(spec)
  const { coating, film } = spec
  const exchange = (wet: boolean) =>
    film === null ? bareExchange(coating, wet) : filmExchange(coating, film, wet)
  return {
    spec,
    dry: exchange(false),
    wet: exchange(true),
    free: freeFactors(spec.tilt_deg),
    skyOnPlane: skyOnPlane(spec.tilt_deg, spec.horizon_deg),
    windSlope:
      WIND_SLOPES[spec.windModel] * spec.windExposure_frac * windFactor_frac(spec.terrain, spec.height_m),
    gapTilt: gapTilt(spec.tilt_deg),
    backLoss_Wm2K: spec.backLoss_Wm2K + edgeLoss_Wm2K(spec.freeConvectionLength_m),
    waterLimit_kgm2: waterLimit_kgm2(spec.tilt_deg),
  }
}

/** Plate-over-film difference at which convection starts in the gap (Ra cos β = 1708), K, air properties at `temp_C`. */
export function gapOnset_K(temp_C: number, pressure_Pa: number, gap_m: number, tilt: GapTilt): number {
  return 1708 / (rayleighGroup(temp_C, pressure_Pa) * gap_m ** 3 * tilt.cosine)
}

function checkSpec(spec: PanelSpec): void {
  const { coating, film } = spec
  inside('solar reflectance', coating.solarReflectance_frac, 0, 1)
  inside('window emittance', coating.windowEmittance_frac, 0, 1)
  inside('off-window emittance', coating.offWindowEmittance_frac, 0, 1)
  inside('tilt (degrees)', spec.tilt_deg, 0, 90)
  inside('horizon (degrees)', spec.horizon_deg, 0, 89)
  inside('ground albedo', spec.groundAlbedo_frac, 0, 1)
  inside('panel height (m)', spec.height_m, 0.01, 500)
  inside('wind exposure', spec.windExposure_frac, 0, 10)
  inside('free-convection length (m)', spec.freeConvectionLength_m, 0.001, 100)
  inside('back loss (W/m²K)', spec.backLoss_Wm2K, 0, 1000)
  inside('heat capacity (J/m²K)', spec.heatCapacity_Jm2K, 0, 1e9)
  if (film === null) return
  inside('film gap (m)', film.gap_m, 0.0005, 1)
  inside('film flutter', film.flutter_frac, 0, 1)
  inside('film solar sum', film.solarTransmittance_frac + film.solarReflectance_frac, 0, 1 + 1e-9)
  inside('film window sum', film.windowTransmittance_frac + film.windowReflectance_frac, 0, 1 + 1e-9)
  inside(
    'film off-window sum',
    film.offWindowTransmittance_frac + film.offWindowReflectance_frac,
    0,
    1 + 1e-9,
  )
}

function inside(quantity: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) {
    throw new RangeError(`panel ${quantity} is ${value}, must be ${low}…${high}`)
  }
}
