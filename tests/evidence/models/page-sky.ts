/* The sky of an hour as src/model/README.md describes it (Sky; One hour, steps 1 to 4), written from that page alone by
 * someone who had not read the code; integrals are done here, where the project has polynomials and tables. On a tilted face: `page-tilt.ts`. */
import { black, blackShare, vapour_Pa, ZERO_K } from './page-air.ts'

export const FORMULAS = [
  'matsunobuCoimbraPrata',
  'matsunobuCoimbra2024',
  'berdahlMartin1984',
  'brutsaert1975',
  'prata1996',
] as const

export interface PageWeather {
  readonly formula: (typeof FORMULAS)[number]
  /** What Matsunobu & Coimbra add for the height of the place, if asked for. */
  readonly altitudeTerm: boolean
  readonly altitude_m: number
  /** Factor on what a clear sky lacks. */
  readonly correction: number
  /** Longwave of the sky, where a file has it. */
  readonly measured_Wm2: number | null
  /** Past mean solar midnight, middle of the hour. */
  readonly solarHour: number
  readonly air_C: number
  readonly dewPoint_C: number
  readonly pressure_Pa: number
  readonly wind_ms: number
  readonly cloud_frac: number
  readonly cloudWasRead: boolean
}

interface PageSky {
  readonly total: number
  readonly window: number
}

const held = (x: number, low: number, high: number) => Math.min(high, Math.max(low, x))

function formula(w: PageWeather): number {
  const e_Pa = vapour_Pa(w.dewPoint_C)
  const perKelvin = e_Pa / 100 / (w.air_C + ZERO_K)
  const matsunobuCoimbra = 0.6 + 1.652 * Math.sqrt(e_Pa / 101325)
  const prata = 1 - (1 + 46.5 * perKelvin) * Math.exp(-Math.sqrt(1.2 + 3 * 46.5 * perKelvin))
  switch (w.formula) {
    case 'matsunobuCoimbraPrata':
      return 0.5 * (matsunobuCoimbra + prata)
    case 'matsunobuCoimbra2024':
      return matsunobuCoimbra + (w.altitudeTerm ? 0.15 * Math.expm1(-w.altitude_m / 8500) : 0)
    case 'berdahlMartin1984': {
      const d = w.dewPoint_C / 100
      const course = 0.013 * Math.cos((2 * Math.PI * w.solarHour) / 24)
      return 0.711 + 0.56 * d + 0.73 * d ** 2 + course + 0.00012 * (w.pressure_Pa / 100 - 1000)
    }
    case 'brutsaert1975':
      return 1.24 * perKelvin ** (1 / 7)
    case 'prata1996':
      return prata
  }
}

function emissivity(w: PageWeather): number {
  const clear = Math.max(0, 1 - w.correction * (1 - held(formula(w), 0, 1)))
  if (!w.cloudWasRead) return w.cloud_frac + (1 - w.cloud_frac) * clear
  const base_m = held(125 * (w.air_C - w.dewPoint_C), 200, 4000)
  return clear + (1 - clear) * w.cloud_frac * Math.exp(-base_m / 8200)
}

/** Emissivity of a clear sky inside and outside the window, by the band table. */
function clearBands(p: number): { window: number; rest: number } {
  const share = blackShare(294.2, 1e4 / 1400, 1e4 / 750)
  const rest =
    0.1725 +
    0.117 +
    0.0662 * Math.tanh(270.4686 * p) +
    0.1457 +
    0.0417 * p ** 0.0992 +
    0.0766 +
    0.0019 +
    0.0026
  return {
    window: Math.min(1, (0.1057 + 5.8689 * p ** 0.9633) / share),
    rest: Math.min(1, rest / (1 - share)),
  }
}

/** Longwave of the sky on an open level plane, W/m². */
export function pageSky(w: PageWeather): PageSky {
  const air = black(w.air_C)
  const total = w.measured_Wm2 ?? emissivity(w) * air.all
  const clear = clearBands(Math.min(vapour_Pa(w.dewPoint_C), 2500) / 101325)
  const lacks = { window: (1 - clear.window) * air.window, rest: (1 - clear.rest) * air.rest }
  const share = lacks.window / (lacks.window + lacks.rest)
  return { total, window: held(air.window - (air.all - total) * share, 0, total) }
}
