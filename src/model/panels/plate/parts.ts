import { valueAt } from '#model/basis/numbers'
import { faceLoss, partBalance } from './balance.ts'
import type { Exchange } from './exchange.ts'
import { outsideFactor_frac } from './flutter.ts'
import type { PanelHour } from './hour-inputs.ts'
import type { PanelSetting } from './setting.ts'
import { changeHeat_Jkg, evaporationLimit_kgm2s, wetness_frac } from './water.ts'

/** Where the heat of a panel goes in one hour, W/m² of panel, leaving positive; together they are `panelBalance`’s heat. */
export interface PanelParts {
  /** Longwave to sky and surroundings, net. */
  readonly sky_Wm2: number
  /** Sunlight taken up by plate and film (0 or negative). */
  readonly sun_Wm2: number
  /** To the air by convection from the exposed face. */
  readonly air_Wm2: number
  /** By evaporation; negative where dew or frost forms. */
  readonly water_Wm2: number
  /** Through the back and the edges. */
  readonly back_Wm2: number
}

/** The parts of the balance of a panel at one plate temperature (°C) with so much water on it (kg/m²), no reduction. */
export function panelParts(
  setting: PanelSetting,
  hour: PanelHour,
  plate_C: number,
  water_kgm2: number,
): PanelParts {
  const wet = wetness_frac(water_kgm2)
  const limit = evaporationLimit_kgm2s(water_kgm2)
  const dryPart = partsOf(setting, setting.dry, hour, plate_C, 0)
  if (wet === 0) return dryPart
  const wetPart = partsOf(setting, setting.wet, hour, plate_C, limit)
  const mix = (part: keyof PanelParts): number => (1 - wet) * dryPart[part] + wet * wetPart[part]
  return {
    sky_Wm2: mix('sky_Wm2'),
    sun_Wm2: mix('sun_Wm2'),
    air_Wm2: mix('air_Wm2'),
    water_Wm2: mix('water_Wm2'),
    back_Wm2: mix('back_Wm2'),
  }
}

/** The parts of the dry or the wet share. */
function partsOf(
  setting: PanelSetting,
  exchange: Exchange,
  hour: PanelHour,
  plate_C: number,
  limit_kgm2s: number,
): PanelParts {
  const { film } = setting.spec
  const { surface_C } = partBalance(setting, exchange, hour, plate_C, limit_kgm2s)
  const outside = film === null ? hour : { ...hour, forced_Wm2K: hour.forced_Wm2K * outsideFactor_frac(film) }
  const face = faceLoss(setting, outside, surface_C, limit_kgm2s)
  const water_Wm2 = changeHeat_Jkg(surface_C) * face.evaporation_kgm2s
  const emitted =
    valueAt(exchange.plateEmission, plate_C) -
    valueAt(exchange.plateToFilm, plate_C) +
    valueAt(exchange.filmEmission, surface_C) -
    valueAt(exchange.filmToPlate, surface_C)
  return {
    sky_Wm2:
      emitted -
      (exchange.plateWindow + exchange.filmWindow) * hour.window_Wm2 -
      (exchange.plateOff + exchange.filmOff) * hour.offWindow_Wm2,
    sun_Wm2: -(exchange.plateSun + exchange.filmSun) * hour.sun_Wm2,
    air_Wm2: face.heat_Wm2 - water_Wm2,
    water_Wm2,
    back_Wm2: setting.backLoss_Wm2K * (plate_C - hour.air_C),
  }
}
