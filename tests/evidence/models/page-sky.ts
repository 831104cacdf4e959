/* The sky of an hour as src/model/README.md describes it (Sky; One hour, steps 1 to 5), written from that page alone by
 * someone who had not read the code; integrals are done here, where the project has polynomials and tables. */
import { black, blackShare, integral, vapour_Pa, ZERO_K } from './page-air.ts'

export interface PageWeather {
  readonly air_C: number
  readonly dewPoint_C: number
  readonly pressure_Pa: number
  readonly wind_ms: number
  readonly cloud_frac: number
  readonly cloudWasRead: boolean
  /** On the panel. */
  readonly sun_Wm2: number
}

interface PageSky {
  readonly total: number
  readonly window: number
}

const held = (x: number, low: number, high: number) => Math.min(high, Math.max(low, x))

function prata(w: PageWeather): number {
  const water = (46.5 * vapour_Pa(w.dewPoint_C)) / 100 / (w.air_C + ZERO_K)
  return 1 - (1 + water) * Math.exp(-Math.sqrt(1.2 + 3 * water))
}

function emissivity(w: PageWeather): number {
  const clear = held(prata(w), 0, 1)
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
  const total = emissivity(w) * air.all
  const clear = clearBands(vapour_Pa(w.dewPoint_C) / 101325)
  const lacks = { window: (1 - clear.window) * air.window, rest: (1 - clear.rest) * air.rest }
  const share = lacks.window + lacks.rest > 0 ? lacks.window / (lacks.window + lacks.rest) : 0
  return { total, window: held(air.window - (air.all - total) * share, 0, total) }
}

const RAD = Math.PI / 180

/** Flux on a plane over π from a sky of the given brightness at zenith angle θ, as far as horizon and plane let it be seen.
 * Around the azimuth a direction counts a + b cos φ where that is positive; the rest is summed over θ, both sides of the
 * angle at which the plane begins to cut the sky off. */
function flux(brightness: (cosZenith: number) => number, tilt_deg: number, horizon_deg: number): number {
  const around = (theta: number) => {
    const a = Math.cos(tilt_deg * RAD) * Math.cos(theta)
    const b = Math.sin(tilt_deg * RAD) * Math.sin(theta)
    if (a >= b) return 2 * Math.PI * a
    const edge = Math.acos(-a / b)
    return 2 * (a * edge + b * Math.sin(edge))
  }
  const ring = (theta: number) => (brightness(Math.cos(theta)) * around(theta) * Math.sin(theta)) / Math.PI
  const last = (90 - horizon_deg) * RAD
  const cut = Math.min(last, (90 - tilt_deg) * RAD)
  return integral(ring, 0, cut, 200) + integral(ring, cut, last, 200)
}

/** Optical depth upwards of a window sky of which an open level plane gets this share of black. */
function depth(share: number): number {
  let low = 0
  let high = 20
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2
    if (flux((c) => 1 - Math.exp(-middle / c), 0, 0) < share) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** Longwave on the panel in window and rest: what it sees of the sky, and ground and horizon as warm as the air. */
export function onPlane(
  w: PageWeather,
  tilt_deg: number,
  horizon_deg: number,
): { window: number; rest: number } {
  const air = black(w.air_C)
  const sky = pageSky(w)
  if (tilt_deg === 0 && horizon_deg === 0) return { window: sky.window, rest: sky.total - sky.window }
  const seen = flux(() => 1, tilt_deg, horizon_deg)
  const tau = depth(held(sky.window / air.window, 0.005, 0.995))
  const brightness = (c: number) => 1 - Math.exp(-tau / c)
  const f = flux(brightness, tilt_deg, horizon_deg) / flux(brightness, 0, 0)
  return {
    window: f * sky.window + (1 - seen) * air.window,
    rest: seen * (sky.total - sky.window) + (1 - seen) * air.rest,
  }
}
