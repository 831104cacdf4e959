import {
  airConductivity_WmK,
  coldBelowNusselt,
  rayleighGroup,
  exposedConvection_Wm2K,
  hollandsNusselt,
  saturationPressure_Pa,
} from '#model/outdoors/air'
import { bisected, valueAt } from '#model/basis/numbers'
import type { Exchange } from './exchange.ts'
import { flutter_Wm2K, outsideFactor_frac } from './flutter.ts'
import { massTransfer, type PanelHour } from './hour-inputs.ts'
import type { PanelSetting } from './setting.ts'
import { changeHeat_Jkg, evaporationLimit_kgm2s, wetness_frac } from './water.ts'

/** The plate at one temperature in one hour: heat leaving is positive. */
export interface PlateState {
  /** Net heat leaving the plate, W/m². */
  readonly q_Wm2: number
  /** Exposed face: the plate itself, or the film over it (dry and wet shares averaged), °C. */
  readonly surface_C: number
  /** Water gained by the exposed face, kg/m² s. */
  readonly water_kgm2s: number
}

/** Heat and water from the exposed face to the air at one face temperature. */
interface FaceLoss {
  /** Convection and latent heat leaving, W/m². */
  readonly heat_Wm2: number
  /** Evaporation (negative: dew), kg/m² s. */
  readonly evaporation_kgm2s: number
}

/**
 * Full steady balance of the panel at a plate temperature, no reduction.
 *
 *   bare:  q = ε-weighted emission − absorbed sky and sun + (h_c + U_back)(T − T_air) + latent
 *   film:  q = emission − absorbed − film's radiation + gap (T, T_f) + U_back (T − T_air); the film's own
 *          temperature T_f from its balance, solved by bisection and secant to 1e-9 K
 *
 * Convection is the cube blend of free and forced, air properties at the mean of face and air. A share of the face
 * (`wetness_frac`) is wet: it radiates as water and exchanges vapour both ways; the dry rest only gathers dew.
 * @param water_kgm2  water or frost on the exposed face
 */
export function panelBalance(
  setting: PanelSetting,
  hour: PanelHour,
  plate_C: number,
  water_kgm2: number,
): PlateState {
  const wet = wetness_frac(water_kgm2)
  const limit = evaporationLimit_kgm2s(water_kgm2)
  if (wet === 0) return partBalance(setting, setting.dry, hour, plate_C, 0)
  const wetPart = partBalance(setting, setting.wet, hour, plate_C, limit)
  if (wet === 1) return wetPart
  const dryPart = partBalance(setting, setting.dry, hour, plate_C, 0)
  const mix = (dry_: number, wet_: number) => (1 - wet) * dry_ + wet * wet_
  return {
    q_Wm2: mix(dryPart.q_Wm2, wetPart.q_Wm2),
    surface_C: mix(dryPart.surface_C, wetPart.surface_C),
    water_kgm2s: mix(dryPart.water_kgm2s, wetPart.water_kgm2s),
  }
}

/** Balance of the dry or the wet share; `limit_kgm2s`: fastest evaporation, 0 on the dry share. */
export function partBalance(
  setting: PanelSetting,
  exchange: Exchange,
  hour: PanelHour,
  plate_C: number,
  limit_kgm2s: number,
): PlateState {
  const { backLoss_Wm2K } = setting
  const { film } = setting.spec
  const absorbed =
    exchange.plateWindow * hour.window_Wm2 +
    exchange.plateOff * hour.offWindow_Wm2 +
    exchange.plateSun * hour.sun_Wm2
  const own = valueAt(exchange.plateEmission, plate_C) - absorbed + backLoss_Wm2K * (plate_C - hour.air_C)
  if (film === null) {
    const face = faceLoss(setting, hour, plate_C, limit_kgm2s)
    return { q_Wm2: own + face.heat_Wm2, surface_C: plate_C, water_kgm2s: -face.evaporation_kgm2s }
  }
  const outside = { ...hour, forced_Wm2K: hour.forced_Wm2K * outsideFactor_frac(film) }
  const pumped_Wm2K = flutter_Wm2K(film, hour.forced_Wm2K)
  const film_C = filmTemperature_C(setting, exchange, outside, pumped_Wm2K, plate_C, limit_kgm2s)
  const face = faceLoss(setting, outside, film_C, limit_kgm2s)
  const gapHeat = gapHeat_Wm2(setting, hour, pumped_Wm2K, plate_C, film_C)
  return {
    q_Wm2: own - valueAt(exchange.filmToPlate, film_C) + gapHeat,
    surface_C: film_C,
    water_kgm2s: -face.evaporation_kgm2s,
  }
}

/** Convection and latent heat from the exposed face at a temperature. */
export function faceLoss(
  setting: PanelSetting,
  hour: PanelHour,
  face_C: number,
  limit_kgm2s: number,
): FaceLoss {
  const convection = exposedConvection_Wm2K(setting.free, face_C, hour, setting.spec.freeConvectionLength_m)
  const wish = massTransfer(hour.pressure_Pa) * convection * (saturationPressure_Pa(face_C) - hour.vapour_Pa)
  const evaporation_kgm2s = Math.min(wish, limit_kgm2s)
  return {
    heat_Wm2: convection * (face_C - hour.air_C) + changeHeat_Jkg(face_C) * evaporation_kgm2s,
    evaporation_kgm2s,
  }
}

/**
 * Heat from plate to film through the gap, W/m²: Hollands 1976 when the plate is hotter, ElSherbiny 1982 by tilt when it
 * is colder, and what the film pumps as it flutters (`flutter_Wm2K`).
 */
export function gapHeat_Wm2(
  setting: PanelSetting,
  hour: Pick<PanelHour, 'pressure_Pa'>,
  pumped_Wm2K: number,
  plate_C: number,
  film_C: number,
): number {
  const gap_m = setting.spec.film?.gap_m ?? NaN
  const mean_C = 0.5 * (plate_C + film_C)
  const difference = plate_C - film_C
  const rayleigh = rayleighGroup(mean_C, hour.pressure_Pa) * Math.abs(difference) * gap_m ** 3
  const nusselt =
    difference <= 0
      ? coldBelowNusselt(rayleigh, setting.gapTilt.sine)
      : hollandsNusselt(rayleigh, setting.gapTilt)
  const still_Wm2K = (airConductivity_WmK(mean_C) / gap_m) * nusselt
  return (still_Wm2K + pumped_Wm2K) * difference
}

/** Film temperature at which its own balance closes, °C: Illinois secant inside a bracket. */
function filmTemperature_C(
  setting: PanelSetting,
  exchange: Exchange,
  hour: PanelHour,
  pumped_Wm2K: number,
  plate_C: number,
  limit_kgm2s: number,
): number {
  const gained =
    exchange.filmWindow * hour.window_Wm2 +
    exchange.filmOff * hour.offWindow_Wm2 +
    exchange.filmSun * hour.sun_Wm2 +
    valueAt(exchange.plateToFilm, plate_C)
  const imbalance = (film_C: number) =>
    valueAt(exchange.filmEmission, film_C) -
    gained +
    faceLoss(setting, hour, film_C, limit_kgm2s).heat_Wm2 -
    gapHeat_Wm2(setting, hour, pumped_Wm2K, plate_C, film_C)
  let low = Math.min(plate_C, hour.air_C) - 60
  let high = Math.max(plate_C, hour.air_C) + 60
  let atLow = imbalance(low)
  let atHigh = imbalance(high)
  for (let i = 0; i < 200 && high - low > 1e-9; i++) {
    const secant = (low * atHigh - high * atLow) / (atHigh - atLow)
    const next = secant > low && secant < high && i % 4 !== 3 ? secant : 0.5 * (low + high)
    const value = imbalance(next)
    if (value === 0) return next
    if (value > 0) {
      high = next
      atHigh = value
      atLow *= 0.5
    } else {
      low = next
      atLow = value
      atHigh *= 0.5
    }
  }
  return 0.5 * (low + high)
}

/** Plate temperature at which a panel without water takes in nothing, latent heat left out, °C. */
export function equilibriumTemperature_C(setting: PanelSetting, hour: PanelHour): number {
  const dryAir = { ...hour, vapour_Pa: 0 }
  const heat_Wm2 = (plate_C: number) => panelBalance(setting, dryAir, plate_C, 0).q_Wm2
  return bisected(heat_Wm2, 0, [hour.air_C - 80, hour.air_C + 150], 60)
}
