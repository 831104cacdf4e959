/* Random hours of all the kinds that src/model/README.md describes, for `page-case.ts`: bare and film, new and aged, level to
 * upright, behind a horizon, day and night, clear to overcast, dry, dew and frost, each formula, terrain and wind line. */
import type { PageCoating, PageSheet } from './page-ageing.ts'
import { SLOPE, TERRAIN, type Terrain, type WindFormula } from './page-convection.ts'
import { FORMULAS, type PageWeather } from './page-sky.ts'
import type { PagePlane, PageSun } from './page-tilt.ts'
import { xorshift } from './random.ts'

export interface DrawnHour {
  readonly weather: PageWeather
  readonly sun: PageSun
  readonly plane: PagePlane
  readonly fresh: PageCoating
  readonly soiling_1y: number
  readonly sheet: PageSheet | null
  readonly years: number
  readonly wind: WindFormula
  readonly terrain: Terrain
  readonly height_m: number
  readonly exposure: number
  /** Area over perimeter. */
  readonly length_m: number
  readonly backLoss: number
  readonly plate_C: number
  readonly water_kgm2: number
}

/** As many hours as asked for, always the same. */
export function drawHours(count: number, seed = 20261129): readonly DrawnHour[] {
  const draw = xorshift(seed)
  const chance = (share: number) => draw() < share
  const between = (low: number, high: number) => low + (high - low) * draw()
  const one = <T>(of: readonly T[]): T => of[Math.floor(of.length * draw())]!

  const weather = (): PageWeather => {
    const air_C = between(-30, 46)
    return {
      formula: chance(0.4) ? FORMULAS[0] : one(FORMULAS),
      altitudeTerm: chance(0.3),
      altitude_m: between(0, 3500),
      correction: chance(0.5) ? 1 : between(0.7, 1.3),
      measured_Wm2: chance(0.1) ? between(0.6, 1) * 5.67e-8 * (air_C + 273.15) ** 4 : null,
      solarHour: Math.floor(between(0, 24)) + 0.5,
      air_C,
      dewPoint_C: air_C - (chance(0.1) ? 0 : between(0, 25)),
      pressure_Pa: between(65000, 104000),
      wind_ms: chance(0.15) ? 0 : between(0, 9),
      cloud_frac: chance(0.3) ? 0 : chance(0.1) ? 1 : draw(),
      cloudWasRead: chance(0.5),
    }
  }

  const sun = (): PageSun => {
    const night = chance(0.45)
    const altitude_deg = night ? between(-60, -1) : between(-1, 89)
    const extraterrestrial_Wm2 = between(1317, 1408)
    const direct_Wm2 = night || altitude_deg < 0 || chance(0.2) ? 0 : between(0, 1000)
    const diffuse_Wm2 = night ? 0 : between(5, 450)
    return {
      altitude_deg,
      azimuth_deg: between(0, 360),
      extraterrestrial_Wm2,
      direct_Wm2,
      diffuse_Wm2,
      global_Wm2: diffuse_Wm2 + Math.max(0, direct_Wm2 * Math.sin((altitude_deg * Math.PI) / 180)),
    }
  }

  const sheet = (): PageSheet => {
    const reflectance = chance(0.3) ? between(0.02, 0.4) : between(0.02, 0.1)
    const rest = 1 - reflectance
    const scattered = chance(0.5) ? 0 : between(0, rest)
    return {
      reflectance,
      scattered,
      sun: (rest - scattered) * between(0.3, 1),
      window: rest * between(0, 1),
      rest: rest * between(0, 1),
      gap_m: between(0.003, 0.1),
      flutter: chance(0.3) ? 0.3 : between(0, 0.5),
      life_months: between(3, 60),
    }
  }

  const hour = (): DrawnHour => {
    const w = weather()
    const nearFrost = chance(0.05)
    return {
      weather: w,
      sun: sun(),
      plane: {
        tilt_deg: chance(0.3) ? 0 : chance(0.1) ? 90 : between(0, 90),
        azimuth_deg: between(0, 360),
        horizon_deg: chance(0.5) ? 0 : between(0, 60),
        albedo: between(0, 0.8),
      },
      fresh: {
        solarReflectance: between(0.05, 0.98),
        window: between(0.05, 0.98),
        rest: between(0.03, 0.98),
      },
      soiling_1y: between(0, 0.12),
      sheet: chance(0.5) ? sheet() : null,
      years: chance(0.3) ? 0 : between(0, 8),
      wind: one(Object.keys(SLOPE) as WindFormula[]),
      terrain: one(Object.keys(TERRAIN) as Terrain[]),
      height_m: between(0.5, 12),
      exposure: between(0.3, 1.3),
      length_m: between(0.03, 1.5),
      backLoss: between(0, 3),
      plate_C: nearFrost ? between(-1, 1) : w.air_C + (chance(0.1) ? between(15, 50) : between(-20, 15)),
      water_kgm2: chance(0.4)
        ? 0
        : chance(0.15)
          ? between(0.05, 3)
          : chance(0.1)
            ? between(0, 1e-6)
            : between(0, 0.06),
    }
  }

  return Array.from({ length: count }, hour)
}
