/**
 * Plate of one hour (steps 6 to 12 of “One hour, step by step”), written from the page `src/model/README.md` and nothing else;
 * bisection where the project has Newton’s rule. Shares no code with the project.
 */
import {
  black,
  blackWindow,
  clamp,
  kelvin,
  onPlane,
  rad,
  saturation,
  type PagePanel,
  type PageWeather,
} from './page-sky.ts'

const faceSaturation = (t_C: number) => saturation(t_C, t_C < 0.01)

const TERRAIN = { open: [0.14, 270], suburb: [0.22, 370], city: [0.33, 460] } as const

function airAt(t_C: number, pressure_Pa: number) {
  const T = kelvin(t_C)
  const k = (0.0241 * (T / 273) ** 1.5 * 467) / (T + 194)
  const mu = (1.716e-5 * (T / 273) ** 1.5 * 384) / (T + 111)
  const density = pressure_Pa / (287.055 * T)
  return { k, group: (9.80665 / T) * (density / mu) * ((density * 1006) / k) }
}

/** Steps 7 and 8: convection of the exposed face, W/m²K. */
function convection(face_C: number, w: PageWeather, panel: PagePanel, forced: number): number {
  const at = (t_C: number): number => {
    const { k, group } = airAt(0.5 * (t_C + w.air_C), w.pressure_Pa)
    const Ra = group * Math.abs(t_C - w.air_C) * panel.length_m ** 3
    const [s, c] = [Math.sin(panel.tilt_deg * rad), Math.cos(panel.tilt_deg * rad)]
    const hot = t_C > w.air_C
    const quarter = Math.max((hot ? 0.54 : 0.27) * c ** 0.25, 0.59 * s ** 0.25) * Ra ** 0.25
    const third = Math.max(hot ? 0.15 * Math.cbrt(c) : 0, 0.1 * Math.cbrt(s)) * Math.cbrt(Ra)
    const free = ((quarter ** 10 + third ** 10) ** 0.1 * k) / panel.length_m
    return Math.cbrt(free ** 3 + forced ** 3)
  }
  const y = face_C - w.air_C
  if (Math.abs(y) >= 1) return at(face_C)
  const [cold, warm] = [at(w.air_C - 1), at(w.air_C + 1)]
  return cold + ((warm - cold) * (y + 1)) / 2
}

/** Step 10: heat leaving the face by convection and vapour, W/m². */
function faceHeat(
  t_C: number,
  w: PageWeather,
  panel: PagePanel,
  forced: number,
  wet: boolean,
  water: number,
): number {
  const h = convection(t_C, w, panel, forced)
  const wish =
    ((h * 0.621945) / (1006 * w.pressure_Pa)) *
    0.877 ** (-2 / 3) *
    (faceSaturation(t_C) - saturation(w.dewPoint_C, false))
  const m = Math.min(wish, wet ? Math.max(water, 0.02) / 900 : 0)
  const evaporation = 2.501e6 - 2361 * t_C
  const melted = clamp(t_C + 0.5, 0, 1)
  const r = melted * evaporation + (1 - melted) * 2.8346e6
  return h * (t_C - w.air_C) + m * r
}

function upright(Ra: number): number {
  if (Ra < 1000) return 1
  const cell = (0.104 * Ra ** 0.293) / (1 + (6310 / Ra) ** 1.36)
  return Math.max(Math.cbrt(1 + cell ** 3), 0.0605 * Math.cbrt(Ra))
}

/** Step 12: heat through the gap, W/m². */
function gapHeat(plate_C: number, film_C: number, w: PageWeather, panel: PagePanel, pumped: number): number {
  const gap_m = panel.film!.gap_m
  const { k, group } = airAt(0.5 * (plate_C + film_C), w.pressure_Pa)
  const Ra = group * Math.abs(plate_C - film_C) * gap_m ** 3
  let Nu: number
  if (plate_C > film_C) {
    const beta = Math.min(panel.tilt_deg, 60) * rad
    const ra = Ra * Math.cos(beta)
    const plus = (x: number) => Math.max(0, x)
    Nu =
      ra <= 1708
        ? 1
        : 1 +
          1.44 * (1 - (1708 * Math.sin(1.8 * beta) ** 1.6) / ra) * plus(1 - 1708 / ra) +
          plus(Math.cbrt(ra / 5830) - 1)
  } else Nu = 1 + (upright(Ra) - 1) * Math.sin(panel.tilt_deg * rad)
  return ((Nu * k) / gap_m + pumped) * (plate_C - film_C)
}

/** Steps 5 to 12: heat leaving the plate at a temperature, W/m², with so much water on the face, kg/m². */
export function pageHeat_Wm2(w: PageWeather, panel: PagePanel, plate_C: number, water_kgm2: number): number {
  const fall = onPlane(w, panel)
  const share = water_kgm2 < 1e-7 ? 0 : Math.min(1, water_kgm2 / 0.02)
  const parts: number[] = [0, 0]
  for (const wet of [false, true]) {
    if ((wet ? share : 1 - share) === 0) continue
    parts[wet ? 1 : 0] = partHeat(w, panel, plate_C, water_kgm2, wet, fall)
  }
  return (1 - share) * parts[0]! + share * parts[1]!
}

function partHeat(
  w: PageWeather,
  panel: PagePanel,
  plate_C: number,
  water: number,
  wet: boolean,
  fall: { window: number; rest: number },
): number {
  const [a, d] = TERRAIN[panel.terrain]
  const factor = 27 ** 0.14 * (panel.height_m / d) ** a
  const rigid = panel.slope * panel.exposure * factor * Math.max(0, w.wind_ms)
  const back = panel.backLoss + Math.max(0, 0.13 / (4 * panel.length_m) - 0.13)
  const Ew = blackWindow(plate_C)
  const Er = black(plate_C) - Ew
  const through = back * (plate_C - w.air_C)
  const R = panel.solarReflectance
  const { film } = panel
  if (film === null) {
    const [ew, er] = wet ? [0.95, 0.95] : [panel.window, panel.rest]
    return (
      ew * (Ew - fall.window) +
      er * (Er - fall.rest) -
      (1 - R) * w.sun_Wm2 +
      through +
      faceHeat(plate_C, w, panel, rigid, wet, water)
    )
  }
  const outside = 1 + 0.4 * Math.min(1, film.flutter / 0.3)
  const forced = rigid * outside
  const pumped = film.flutter * forced
  const [ts, rs] = film.sun
  const B = 1 / (1 - rs * R)
  const band = (emits: number, [t0, r]: readonly [number, number], L: number) => {
    const t = wet ? 0 : t0
    const inside = 1 - t - r
    const out = wet ? 0.95 : inside
    const rho = 1 - emits
    const D = 1 / (1 - r * rho)
    return {
      plate: (Ep: number, Ef: number) => emits * D * ((1 - r) * Ep - inside * Ef - t * L),
      film: (Ep: number, Ef: number) =>
        (inside + out - inside ** 2 * rho * D) * Ef -
        inside * emits * D * Ep -
        (out + inside * rho * D * t) * L,
    }
  }
  const window = band(panel.window, film.window, fall.window)
  const rest = band(panel.rest, film.rest, fall.rest)
  const bands = (film_C: number) => {
    const Efw = blackWindow(film_C)
    return [Efw, black(film_C) - Efw] as const
  }
  const filmLoss = (film_C: number) => {
    const [Efw, Efr] = bands(film_C)
    return (
      window.film(Ew, Efw) +
      rest.film(Er, Efr) -
      (1 - ts - rs) * (1 + ts * B * R) * w.sun_Wm2 +
      faceHeat(film_C, w, panel, forced, wet, water) -
      gapHeat(plate_C, film_C, w, panel, pumped)
    )
  }
  let [low, high] = [Math.min(plate_C, w.air_C) - 70, Math.max(plate_C, w.air_C) + 70]
  for (let i = 0; i < 45; i++) {
    const middle = 0.5 * (low + high)
    if (filmLoss(middle) < 0) low = middle
    else high = middle
  }
  const [Efw, Efr] = bands(low)
  return (
    window.plate(Ew, Efw) +
    rest.plate(Er, Efr) -
    ts * B * (1 - R) * w.sun_Wm2 +
    through +
    gapHeat(plate_C, low, w, panel, pumped)
  )
}
