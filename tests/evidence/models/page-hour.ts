/* Heat leaving a plate in an hour as src/model/README.md describes it (Panel; One hour, steps 7 to 12), written from that
 * page alone by someone who had not read the code. The film's temperature is found by halving. */
import { black, latent_Jkg, saturation_Pa, vapour_Pa } from './page-air.ts'
import { faceConvection_Wm2K, gap_Wm2K, windRatio, type Face, type Terrain } from './page-convection.ts'
import { onPlane, type PageWeather } from './page-sky.ts'

interface PageFilm {
  /** Transmittance and reflectance: sunlight, window, rest. */
  readonly sun: readonly [number, number]
  readonly window: readonly [number, number]
  readonly rest: readonly [number, number]
  readonly gap_m: number
  readonly flutter: number
}

export interface PagePanel {
  readonly solarReflectance: number
  /** Emittance in the window and in the rest. */
  readonly window: number
  readonly rest: number
  readonly film: PageFilm | null
  readonly tilt_deg: number
  readonly horizon_deg: number
  readonly height_m: number
  readonly terrain: Terrain
  /** Forced convection per wind at the panel. */
  readonly slope: number
  readonly exposure: number
  /** Area over perimeter. */
  readonly length_m: number
  readonly backLoss: number
}

const BANDS = ['window', 'rest'] as const

interface Hour {
  readonly w: PageWeather
  readonly panel: PagePanel
  readonly sky: { window: number; rest: number }
  readonly face: Face
  readonly plate_C: number
  readonly water_kgm2: number
}

/** Convection and vapour on the exposed face, W/m² leaving it. */
function toAir_Wm2({ w, face, water_kgm2 }: Hour, t_C: number, wet: boolean): number {
  const h = faceConvection_Wm2K(face, t_C)
  const drive = saturation_Pa(t_C) - vapour_Pa(w.dewPoint_C)
  const possible = h * (0.621945 / (1006 * w.pressure_Pa)) * 0.877 ** (-2 / 3) * drive
  const m = Math.min(possible, wet ? Math.max(water_kgm2, 0.02) / 900 : 0)
  return h * (t_C - w.air_C) + m * latent_Jkg(t_C)
}

/** Edges and back. */
function back_Wm2({ w, panel, plate_C }: Hour): number {
  const edges = 0.13 * (1 / (4 * panel.length_m) - 1)
  return (panel.backLoss + Math.max(0, edges)) * (plate_C - w.air_C)
}

function bare_Wm2(hour: Hour, wet: boolean): number {
  const { w, panel, sky, plate_C } = hour
  const plate = black(plate_C)
  let q = toAir_Wm2(hour, plate_C, wet) + back_Wm2(hour) - (1 - panel.solarReflectance) * w.sun_Wm2
  for (const band of BANDS) q += (wet ? 0.95 : panel[band]) * (plate[band] - sky[band])
  return q
}

/** What plate and film lose when the film has this temperature. */
function underFilm(
  hour: Hour,
  film: PageFilm,
  film_C: number,
  wet: boolean,
): { plate: number; film: number } {
  const { w, panel, sky, plate_C } = hour
  const [t_s, r_s] = film.sun
  const back = 1 / (1 - r_s * panel.solarReflectance)
  const lost = {
    plate: -t_s * back * (1 - panel.solarReflectance) * w.sun_Wm2,
    film: -(1 - t_s - r_s) * (1 + t_s * back * panel.solarReflectance) * w.sun_Wm2,
  }
  const [plate, cover] = [black(plate_C), black(film_C)]
  for (const band of BANDS) {
    const [passes, r] = film[band]
    const t = wet ? 0 : passes
    const below = 1 - t - r
    const above = wet ? 0.95 : below
    const e = panel[band]
    const D = 1 / (1 - r * (1 - e))
    lost.plate += e * D * ((1 - r) * plate[band] - below * cover[band] - t * sky[band])
    lost.film +=
      (below + above - below ** 2 * (1 - e) * D) * cover[band] -
      below * e * D * plate[band] -
      (above + below * (1 - e) * D * t) * sky[band]
  }
  const still = gap_Wm2K(plate_C, film_C, film.gap_m, panel.tilt_deg, w.pressure_Pa)
  const gap = (still + film.flutter * hour.face.forced_Wm2K) * (plate_C - film_C)
  lost.plate += gap + back_Wm2(hour)
  lost.film += toAir_Wm2(hour, film_C, wet) - gap
  return lost
}

function covered_Wm2(hour: Hour, film: PageFilm, wet: boolean): number {
  let low = Math.min(hour.plate_C, hour.w.air_C) - 60
  let high = Math.max(hour.plate_C, hour.w.air_C) + 100
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2
    if (underFilm(hour, film, middle, wet).film < 0) low = middle
    else high = middle
  }
  return underFilm(hour, film, (low + high) / 2, wet).plate
}

/** Net heat leaving the plate at a given temperature and with given water on it, W/m². */
export function pageHeat_Wm2(w: PageWeather, panel: PagePanel, plate_C: number, water_kgm2: number): number {
  const { film } = panel
  const wind_ms = windRatio(panel.terrain, panel.height_m) * Math.max(0, w.wind_ms)
  const flutters = film ? 1 + 0.4 * Math.min(1, film.flutter / 0.3) : 1
  const face: Face = {
    tilt_deg: panel.tilt_deg,
    length_m: panel.length_m,
    forced_Wm2K: panel.slope * panel.exposure * wind_ms * flutters,
    air_C: w.air_C,
    pressure_Pa: w.pressure_Pa,
  }
  const sky = onPlane(w, panel.tilt_deg, panel.horizon_deg)
  const hour: Hour = { w, panel, sky, face, plate_C, water_kgm2 }
  const q = (wet: boolean) => (film ? covered_Wm2(hour, film, wet) : bare_Wm2(hour, wet))
  const share = water_kgm2 < 1e-7 ? 0 : Math.min(1, water_kgm2 / 0.02)
  return (1 - share) * q(false) + (share > 0 ? share * q(true) : 0)
}
