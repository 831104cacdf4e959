/* Sky and sun on a tilted face behind a horizon, as src/model/README.md describes them (Sun; One hour, steps 5 and 6), written
 * from that page alone: the integrals over the sky are done here. */
import { black, integral } from './page-air.ts'
import { pageSky, type PageWeather } from './page-sky.ts'

const RAD = Math.PI / 180
const held = (x: number, low: number, high: number) => Math.min(high, Math.max(low, x))

export interface PagePlane {
  readonly tilt_deg: number
  readonly azimuth_deg: number
  readonly horizon_deg: number
  readonly albedo: number
}

export interface PageSun {
  readonly altitude_deg: number
  readonly azimuth_deg: number
  readonly extraterrestrial_Wm2: number
  readonly direct_Wm2: number
  readonly diffuse_Wm2: number
  readonly global_Wm2: number
}

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

/** Share of a uniform sky that the plane sees, by flux. */
const seen = (plane: PagePlane) => flux(() => 1, plane.tilt_deg, plane.horizon_deg)

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
export function skyOn(w: PageWeather, plane: PagePlane): { window: number; rest: number } {
  const air = black(w.air_C)
  const sky = pageSky(w)
  if (plane.tilt_deg === 0 && plane.horizon_deg === 0)
    return { window: sky.window, rest: sky.total - sky.window }
  const tau = depth(held(sky.window / air.window, 0.005, 0.995))
  const brightness = (c: number) => 1 - Math.exp(-tau / c)
  const f = flux(brightness, plane.tilt_deg, plane.horizon_deg) / flux(brightness, 0, 0)
  const open = seen(plane)
  return {
    window: f * sky.window + (1 - open) * air.window,
    rest: open * (sky.total - sky.window) + (1 - open) * air.rest,
  }
}

/** Sunlight on the panel, W/m². */
export function sunOn_Wm2(sun: PageSun, plane: PagePlane): number {
  const height = sun.altitude_deg * RAD
  const tilt = plane.tilt_deg * RAD
  const shines = sun.altitude_deg > plane.horizon_deg
  const turned = (sun.azimuth_deg - plane.azimuth_deg) * RAD
  const cos = Math.max(
    0,
    Math.sin(height) * Math.cos(tilt) + Math.cos(height) * Math.sin(tilt) * Math.cos(turned),
  )
  const A = held(sun.direct_Wm2 / sun.extraterrestrial_Wm2, 0, 1)
  const R_b = cos / Math.sin(Math.max(sun.altitude_deg, 3) * RAD)
  const beam = shines ? sun.direct_Wm2 * cos + sun.diffuse_Wm2 * A * R_b : 0
  const ground = (sun.global_Wm2 * plane.albedo * (1 - Math.cos(tilt))) / 2
  return beam + sun.diffuse_Wm2 * (1 - A) * seen(plane) + ground
}
