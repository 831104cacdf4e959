import { emissionBelow_frac, SEA_LEVEL_PRESSURE_PA } from '#model/outdoors/air'

/** Air temperature the band table was computed at, K. */
const TABLE_AIR_K = 294.2
/** The table's window, 750–1400 cm⁻¹, µm. */
const TABLE_WINDOW_UM = [1e4 / 1400, 1e4 / 750] as const
const tableWindowShare =
  emissionBelow_frac(TABLE_WINDOW_UM[1], TABLE_AIR_K) - emissionBelow_frac(TABLE_WINDOW_UM[0], TABLE_AIR_K)

/**
 * Clear-sky emissivity inside the atmospheric window, –, at sea level.
 * Source: Li & Coimbra 2019, doi:10.1016/j.ijheatmasstransfer.2019.02.040, band 750–1400 cm⁻¹
 * (0.1057 + 5.8689 p_w^0.9633) over the blackbody share of that band. Made for 1–25 hPa.
 */
export function windowEmissivity(vapour_Pa: number): number {
  const p = vapour_Pa / SEA_LEVEL_PRESSURE_PA
  return Math.min(1, (0.1057 + 5.8689 * p ** 0.9633) / tableWindowShare)
}

/** Clear-sky emissivity outside the window, –: the table's other bands together. Source as `windowEmissivity`. */
export function offWindowEmissivity(vapour_Pa: number): number {
  const p = vapour_Pa / SEA_LEVEL_PRESSURE_PA
  const rest =
    0.1725 +
    0.117 +
    0.0662 * Math.tanh(270.4686 * p) +
    0.1457 +
    0.0417 * p ** 0.0992 +
    0.0766 +
    0.0019 +
    0.0026
  return Math.min(1, rest / (1 - tableWindowShare))
}

/** The table is made for 1–25 hPa; over damper air its share holds as at its end, where the window lacks nearly all that is lacking, Pa. */
const TABLE_END_PA = 2500

/**
 * The part of a sky's longwave that lies inside 8–13 µm, W/m².
 *
 * What the sky lacks to a blackbody at air temperature is shared between window and rest as in the clear-sky band
 * table, and both parts are scaled alike until they make up the broadband total: a cloud or a humid day closes
 * the window, a drier one opens it, and window + rest is the total, exactly. A window cannot lack more than all.
 * @param total_Wm2     broadband downwelling longwave
 * @param black_Wm2     σ T⁴ of the air
 * @param window_Wm2    part of that inside 8–13 µm
 */
export function windowPart_Wm2(
  total_Wm2: number,
  black_Wm2: number,
  window_Wm2: number,
  vapour_Pa: number,
): number {
  const inTable_Pa = Math.min(vapour_Pa, TABLE_END_PA)
  const windowDeficit = (1 - windowEmissivity(inTable_Pa)) * window_Wm2
  const restDeficit = (1 - offWindowEmissivity(inTable_Pa)) * (black_Wm2 - window_Wm2)
  const share = windowDeficit / (windowDeficit + restDeficit)
  return Math.max(0, window_Wm2 - share * (black_Wm2 - total_Wm2))
}
