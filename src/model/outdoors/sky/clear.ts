import { SEA_LEVEL_PRESSURE_PA } from '#model/outdoors/air'
import { KELVIN_OFFSET } from '#model/basis/units'
import type { SkyModel } from './hours.ts'

/** What the clear-sky formulas look at. */
export interface ClearSkyAir {
  readonly air_C: number
  readonly dewPoint_C: number
  readonly vapour_Pa: number
  readonly pressure_Pa: number
  readonly altitude_m: number
  /** Hours past solar midnight. */
  readonly solarHour_h: number
}

/**
 * Clear-sky emissivity, hemispherical, broadband, –.
 *   ε = 0.600 + 1.652 √(p_w/101325) (+ 0.15 (exp(−z/8500) − 1) where asked for)
 * Source: Matsunobu & Coimbra 2024, doi:10.1029/2023JD039798.
 */
export function matsunobuCoimbra2024(vapour_Pa: number): number {
  return 0.6 + 1.652 * Math.sqrt(vapour_Pa / SEA_LEVEL_PRESSURE_PA)
}

/** Altitude term of Matsunobu & Coimbra 2024, –: zero at sea level, negative above. */
export function altitudeTerm(altitude_m: number): number {
  return 0.15 * (Math.exp(-altitude_m / 8500) - 1)
}

/**
 * Clear-sky emissivity from the dew point, –, with the terms for time of day and pressure.
 * Source: Berdahl & Martin 1984, Solar Energy 32, 663 (hour and pressure terms: Martin & Berdahl 1984, from memory).
 */
export function berdahlMartin1984(dewPoint_C: number, solarHour_h: number, pressure_Pa: number): number {
  const t = dewPoint_C / 100
  return (
    0.711 +
    0.56 * t +
    0.73 * t * t +
    0.013 * Math.cos((2 * Math.PI * solarHour_h) / 24) +
    0.00012 * (pressure_Pa / 100 - 1000)
  )
}

/** Clear-sky emissivity, –: 1.24 (e/T)^(1/7), e in hPa. Source: Brutsaert 1975, Water Resources Research 11, 742. */
export function brutsaert1975(vapour_Pa: number, air_C: number): number {
  return 1.24 * (vapour_Pa / 100 / (air_C + KELVIN_OFFSET)) ** (1 / 7)
}

/** Clear-sky emissivity, –: 1 − (1 + w) exp(−√(1.2 + 3w)), w = 46.5 e/T cm. Source: Prata 1996, QJRMS 122, 1127. */
export function prata1996(vapour_Pa: number, air_C: number): number {
  const water_cm = (46.5 * (vapour_Pa / 100)) / (air_C + KELVIN_OFFSET)
  return 1 - (1 + water_cm) * Math.exp(-Math.sqrt(1.2 + 3 * water_cm))
}

/**
 * Mean of Matsunobu & Coimbra 2024 and Prata 1996, –: their errors differ from place to place. Taken where places with measured
 * longwave cannot tell a single formula from it (`npm run -s evidence -- sky`).
 */
export function matsunobuCoimbraPrata(vapour_Pa: number, air_C: number): number {
  return 0.5 * (matsunobuCoimbra2024(vapour_Pa) + prata1996(vapour_Pa, air_C))
}

/** Clear-sky emissivity by the formula chosen, –, held to 0…1. */
export function clearEmissivity(model: SkyModel, withAltitudeTerm: boolean, air: ClearSkyAir): number {
  const emissivity = byAuthor(model, air) + altitudePart(model, withAltitudeTerm, air.altitude_m)
  return Math.min(1, Math.max(0, emissivity))
}

function altitudePart(model: SkyModel, wanted: boolean, altitude_m: number): number {
  return wanted && model === 'matsunobuCoimbra2024' ? altitudeTerm(altitude_m) : 0
}

function byAuthor(model: SkyModel, air: ClearSkyAir): number {
  switch (model) {
    case 'matsunobuCoimbra2024':
      return matsunobuCoimbra2024(air.vapour_Pa)
    case 'berdahlMartin1984':
      return berdahlMartin1984(air.dewPoint_C, air.solarHour_h, air.pressure_Pa)
    case 'brutsaert1975':
      return brutsaert1975(air.vapour_Pa, air.air_C)
    case 'prata1996':
      return prata1996(air.vapour_Pa, air.air_C)
    case 'matsunobuCoimbraPrata':
      return matsunobuCoimbraPrata(air.vapour_Pa, air.air_C)
  }
}
