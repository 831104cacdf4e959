/**
 * Sky of one hour (steps 1 to 5), written from the page `src/model/README.md` (“One hour, step by step”) and nothing else: integrals where
 * the project has polynomials and tables. The plate is `page-hour.ts`. Shares no code with the project.
 */
const SIGMA = 5.670374419e-8
export const rad = Math.PI / 180
export const kelvin = (t_C: number) => t_C + 273.15
export const clamp = (x: number, low: number, high: number) => Math.min(high, Math.max(low, x))

/** Share of black radiation at T (K) between two wavelengths, µm: Planck’s law by Simpson’s rule in x = c₂/(λT). */
function planckBetween(from_um: number, to_um: number, T: number): number {
  const [a, b] = [14387.76877 / (to_um * T), 14387.76877 / (from_um * T)]
  const n = 200
  const f = (x: number) => x ** 3 / Math.expm1(x)
  let sum = f(a) + f(b)
  for (let i = 1; i < n; i++) sum += (i % 2 ? 4 : 2) * f(a + ((b - a) * i) / n)
  return ((15 / Math.PI ** 4) * sum * (b - a)) / (3 * n)
}
export const black = (t_C: number) => SIGMA * kelvin(t_C) ** 4
export const blackWindow = (t_C: number) => black(t_C) * planckBetween(8, 13, kelvin(t_C))

/** Hyland & Wexler 1983, Pa. */
export function saturation(t_C: number, ice: boolean): number {
  const T = kelvin(t_C)
  return Math.exp(
    ice
      ? -5674.5359 / T +
          6.3925247 -
          9.677843e-3 * T +
          6.2215701e-7 * T ** 2 +
          2.0747825e-9 * T ** 3 -
          9.484024e-13 * T ** 4 +
          4.1635019 * Math.log(T)
      : -5800.2206 / T +
          1.3914993 -
          4.8640239e-2 * T +
          4.1764768e-5 * T ** 2 -
          1.4452093e-8 * T ** 3 +
          6.5459673 * Math.log(T),
  )
}

export interface PageWeather {
  readonly air_C: number
  readonly dewPoint_C: number
  readonly pressure_Pa: number
  readonly wind_ms: number
  readonly cloud_frac: number
  readonly cloudWasRead: boolean
  /** On the plane, W/m². */
  readonly sun_Wm2: number
}
export interface PageFilm {
  readonly sun: readonly [passes: number, reflects: number]
  readonly window: readonly [passes: number, reflects: number]
  readonly rest: readonly [passes: number, reflects: number]
  readonly gap_m: number
  readonly flutter: number
}
export interface PagePanel {
  readonly solarReflectance: number
  readonly window: number
  readonly rest: number
  readonly film: PageFilm | null
  readonly tilt_deg: number
  readonly horizon_deg: number
  readonly height_m: number
  readonly terrain: 'open' | 'suburb' | 'city'
  readonly slope: number
  readonly exposure: number
  readonly length_m: number
  readonly backLoss: number
}

const TABLE_SHARE = planckBetween(1e4 / 1400, 1e4 / 750, 294.2)

/** Steps 1 to 4: longwave on an open level plane in the two bands, W/m². */
export function pageSky(w: PageWeather): { total: number; window: number; rest: number } {
  const e = saturation(w.dewPoint_C, false)
  const water = (46.5 * e) / 100 / kelvin(w.air_C)
  const clear = clamp(1 - (1 + water) * Math.exp(-Math.sqrt(1.2 + 3 * water)), 0, 1)
  const base = clamp(125 * (w.air_C - w.dewPoint_C), 200, 4000)
  const n = w.cloud_frac
  const emissivity = w.cloudWasRead ? clear + (1 - clear) * n * Math.exp(-base / 8200) : n + (1 - n) * clear
  const all = black(w.air_C)
  const total = emissivity * all
  const p = e / 101325
  const ew = Math.min(1, (0.1057 + 5.8689 * p ** 0.9633) / TABLE_SHARE)
  const bands =
    0.1725 +
    0.117 +
    0.0662 * Math.tanh(270.4686 * p) +
    0.1457 +
    0.0417 * p ** 0.0992 +
    0.0766 +
    0.0019 +
    0.0026
  const er = Math.min(1, bands / (1 - TABLE_SHARE))
  const Ew = blackWindow(w.air_C)
  const [dw, dr] = [(1 - ew) * Ew, (1 - er) * (all - Ew)]
  const window = Math.min(total, Math.max(0, Ew - ((all - total) * dw) / (dw + dr)))
  return { total, window, rest: total - window }
}

/** Flux of a sky of a given brightness by zenith angle on a plane, over π: rays, open and level when tilt and horizon are 0. */
function flux(bright: (theta: number) => number, tilt_deg: number, horizon_deg: number): number {
  const [rings, spokes] = [180, 72]
  let sum = 0
  for (let i = 0; i < rings; i++) {
    const theta = ((i + 0.5) / rings) * (90 - horizon_deg) * rad
    const ring = bright(theta) * Math.sin(theta) * (((90 - horizon_deg) * rad) / rings)
    for (let j = 0; j < spokes; j++) {
      const phi = ((j + 0.5) / spokes) * 2 * Math.PI
      const cosine =
        Math.cos(theta) * Math.cos(tilt_deg * rad) +
        Math.sin(theta) * Math.sin(tilt_deg * rad) * Math.cos(phi)
      if (cosine > 0) sum += ring * cosine * ((2 * Math.PI) / spokes)
    }
  }
  return sum / Math.PI
}

/** Step 5: both bands on the plane, W/m². */
export function onPlane(w: PageWeather, panel: PagePanel): { window: number; rest: number } {
  const sky = pageSky(w)
  const Ew = blackWindow(w.air_C)
  const level = (tau: number) => flux((theta) => 1 - Math.exp(-tau / Math.cos(theta)), 0, 0)
  const want = clamp(sky.window / Ew, 0.005, 0.995)
  let [low, high] = [0, 20]
  for (let i = 0; i < 30; i++) {
    const middle = 0.5 * (low + high)
    if (level(middle) < want) low = middle
    else high = middle
  }
  const tau = low
  const f =
    flux((theta) => 1 - Math.exp(-tau / Math.cos(theta)), panel.tilt_deg, panel.horizon_deg) / level(tau)
  const seen = flux(() => 1, panel.tilt_deg, panel.horizon_deg)
  return {
    window: f * sky.window + (1 - seen) * Ew,
    rest: seen * sky.rest + (1 - seen) * (black(w.air_C) - Ew),
  }
}
