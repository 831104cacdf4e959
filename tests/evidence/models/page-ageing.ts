/* Coating and film after some years, and the water a panel keeps, as src/model/README.md describes them (One hour, steps 13
 * and 14), written from that page alone. */

export interface PageCoating {
  readonly solarReflectance: number
  /** Emittance in the window and in the rest. */
  readonly window: number
  readonly rest: number
}

/** A film as it is entered, new. */
export interface PageSheet {
  readonly sun: number
  readonly window: number
  readonly rest: number
  /** Of its surfaces, in all bands. */
  readonly reflectance: number
  /** Sunlight scattered back besides. */
  readonly scattered: number
  readonly gap_m: number
  readonly flutter: number
  readonly life_months: number
}

export interface PageFilm {
  /** Transmittance and reflectance: sunlight, window, rest. */
  readonly sun: readonly [number, number]
  readonly window: readonly [number, number]
  readonly rest: readonly [number, number]
  readonly gap_m: number
  readonly flutter: number
}

export function soiled(coating: PageCoating, soiling_1y: number, years: number): PageCoating {
  const fresh = coating.solarReflectance
  const end = Math.min(fresh, 0.2 + 0.67 * (fresh - 0.2))
  const fall = fresh - end
  const lost = fall > 0 ? fall * (1 - Math.exp((-soiling_1y * years) / fall)) : 0
  return { ...coating, solarReflectance: fresh - lost }
}

export function weathered(sheet: PageSheet, years: number): PageFilm {
  const worn = Math.min(1, (12 * years) / sheet.life_months)
  return {
    sun: [sheet.sun * (1 - 0.1 * worn), sheet.reflectance + sheet.scattered],
    window: [sheet.window * (1 - 0.05 * worn), sheet.reflectance],
    rest: [sheet.rest * (1 - 0.05 * worn), sheet.reflectance],
    gap_m: sheet.gap_m,
    flutter: sheet.flutter,
  }
}

/** Water on a face after a step in which it gained so much, kg/m². */
export function waterKept_kgm2(before: number, gained: number, plate_C: number, tilt_deg: number): number {
  const held = Math.max(0, before + gained)
  return Math.min(held, plate_C >= 0 ? 0.8 - 0.7 * Math.min(1, tilt_deg / 30) : 2.4)
}
