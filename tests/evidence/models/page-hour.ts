/* Heat leaving a plate in an hour as src/model/README.md describes it (Panel; One hour, steps 7 to 12), written from that
 * page alone by someone who had not read the code. */
import { black, latent_Jkg, saturation_Pa, vapour_Pa } from './page-air.ts'
import type { PageCoating, PageFilm } from './page-ageing.ts'
import {
  faceConvection_Wm2K,
  gap_Wm2K,
  SLOPE,
  windRatio,
  type Face,
  type Terrain,
  type WindFormula,
} from './page-convection.ts'
import type { PageWeather } from './page-sky.ts'
import { skyOn, type PagePlane } from './page-tilt.ts'

export interface PagePanel extends PagePlane {
  readonly coating: PageCoating
  readonly film: PageFilm | null
  readonly height_m: number
  readonly terrain: Terrain
  readonly wind: WindFormula
  readonly exposure: number
  /** Area over perimeter. */
  readonly length_m: number
  readonly backLoss: number
}

const BANDS = ['window', 'rest'] as const

interface Hour {
  readonly w: PageWeather
  readonly panel: PagePanel
  readonly sun_Wm2: number
  readonly sky: { window: number; rest: number }
  readonly face: Face
  readonly plate_C: number
  readonly water_kgm2: number
}

/** What leaves: heat, W/m², and vapour, kg/m² s. */
export interface PageLosses {
  readonly heat: number
  readonly vapour: number
}

/** Convection and vapour on the exposed face. */
function toAir({ w, face, water_kgm2 }: Hour, t_C: number, wet: boolean): PageLosses {
  const h = faceConvection_Wm2K(face, t_C)
  const drive = saturation_Pa(t_C) - vapour_Pa(w.dewPoint_C)
  const possible = h * (0.621945 / (1006 * w.pressure_Pa)) * 0.877 ** (-2 / 3) * drive
  const vapour = Math.min(possible, wet ? Math.max(water_kgm2, 0.02) / 900 : 0)
  return { heat: h * (t_C - w.air_C) + vapour * latent_Jkg(t_C), vapour }
}

/** Edges and back. */
function back_Wm2({ w, panel, plate_C }: Hour): number {
  const edges = 0.13 * (1 / (4 * panel.length_m) - 1)
  return (panel.backLoss + Math.max(0, edges)) * (plate_C - w.air_C)
}

function bare(hour: Hour, wet: boolean): PageLosses {
  const { coating } = hour.panel
  const plate = black(hour.plate_C)
  const air = toAir(hour, hour.plate_C, wet)
  let heat = air.heat + back_Wm2(hour) - (1 - coating.solarReflectance) * hour.sun_Wm2
  for (const band of BANDS) heat += (wet ? 0.95 : coating[band]) * (plate[band] - hour.sky[band])
  return { heat, vapour: air.vapour }
}

/** What plate and film lose when the film has this temperature. */
function underFilm(hour: Hour, film: PageFilm, film_C: number, wet: boolean) {
  const { w, panel, sky, plate_C } = hour
  const { coating } = panel
  const R = coating.solarReflectance
  const [t_s, r_s] = film.sun
  const B = 1 / (1 - r_s * R)
  const still = gap_Wm2K(plate_C, film_C, film.gap_m, panel.tilt_deg, w.pressure_Pa)
  const gap = (still + film.flutter * hour.face.forced_Wm2K) * (plate_C - film_C)
  const air = toAir(hour, film_C, wet)
  let ofPlate = gap + back_Wm2(hour) - t_s * B * (1 - R) * hour.sun_Wm2
  let ofFilm = air.heat - gap - (1 - t_s - r_s) * (1 + t_s * B * R) * hour.sun_Wm2
  const plate = black(plate_C)
  const cover = black(film_C)
  for (const band of BANDS) {
    const [passes, r] = film[band]
    const t = wet ? 0 : passes
    const below = 1 - t - r
    const above = wet ? 0.95 : below
    const e = coating[band]
    const D = 1 / (1 - r * (1 - e))
    ofPlate += e * D * ((1 - r) * plate[band] - below * cover[band] - t * sky[band])
    ofFilm += (below + above - below ** 2 * (1 - e) * D) * cover[band]
    ofFilm -= below * e * D * plate[band] + (above + below * (1 - e) * D * t) * sky[band]
  }
  return { plate: { heat: ofPlate, vapour: air.vapour }, film: ofFilm }
}

/** The film's temperature by halving. */
function covered(hour: Hour, film: PageFilm, wet: boolean): PageLosses {
  let low = Math.min(hour.plate_C, hour.w.air_C) - 60
  let high = Math.max(hour.plate_C, hour.w.air_C) + (hour.face.curve_K ? 150 : 60)
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2
    if (underFilm(hour, film, middle, wet).film < 0) low = middle
    else high = middle
  }
  return underFilm(hour, film, (low + high) / 2, wet).plate
}

/** Heat and vapour leaving the panel at a given temperature of the plate, with given water and sunlight on it: in full, or as
 * the page says it is reduced for the year. */
export function pageLosses(
  w: PageWeather,
  sun_Wm2: number,
  panel: PagePanel,
  plate_C: number,
  water_kgm2: number,
  reduced = false,
): PageLosses {
  const { film } = panel
  const wind_ms = windRatio(panel.terrain, panel.height_m) * Math.max(0, w.wind_ms)
  const flutters = film ? 1 + 0.4 * Math.min(1, film.flutter / 0.3) : 1
  const face: Face = {
    tilt_deg: panel.tilt_deg,
    length_m: panel.length_m,
    forced_Wm2K: SLOPE[panel.wind] * panel.exposure * wind_ms * flutters,
    air_C: w.air_C,
    pressure_Pa: w.pressure_Pa,
    curve_K: reduced ? [-35, 45] : null,
  }
  const hour: Hour = { w, panel, sun_Wm2, sky: skyOn(w, panel), face, plate_C, water_kgm2 }
  const of = (wet: boolean) => (film ? covered(hour, film, wet) : bare(hour, wet))
  const share = water_kgm2 < 1e-7 ? 0 : Math.min(1, water_kgm2 / 0.02)
  const dry = of(false)
  if (share === 0) return dry
  const wet = of(true)
  return {
    heat: (1 - share) * dry.heat + share * wet.heat,
    vapour: (1 - share) * dry.vapour + share * wet.vapour,
  }
}
