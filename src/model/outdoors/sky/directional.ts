import { bisected } from '#model/basis/numbers'
import { RINGS, skyRings, type SkyRings } from '#model/outdoors/sun'

/** Steps of the table in hemispherical window emissivity, 0…1. */
const STEPS = 32

/**
 * How the window's longwave on an open horizontal plane turns into that on a tilted, obstructed plane: a factor for
 * each of 33 hemispherical window emissivities 0…1, and the share of a uniform sky that is seen (for the rest).
 */
export interface SkyOnPlane {
  readonly windowFactor: Float64Array
  readonly uniform_frac: number
}

/** Flux of a sky with emissivity 1 − exp(−depth/cos θ), weighted by ring. */
function weightedEmissivity(rings: SkyRings, weights: Float64Array, depth: number): number {
  let sum = 0
  for (let i = 0; i < RINGS; i++) {
    sum += weights[i]! * (1 - Math.exp(-depth / rings.cosZenith[i]!))
  }
  return sum
}

/** Optical depth at the zenith that gives a hemispherical emissivity, by bisection. */
function zenithDepth(rings: SkyRings, emissivity: number): number {
  return bisected((depth) => weightedEmissivity(rings, rings.flatWeight, depth), emissivity, [0, 20], 40)
}

/** Zenith depth by table step: the same for every plane. */
const openRings = skyRings(0, 0)
const depths = Float64Array.from({ length: STEPS + 1 }, (_, i) =>
  zenithDepth(openRings, Math.min(0.995, Math.max(0.005, i / STEPS))),
)

/**
 * The sky as a tilted plane behind a horizon sees it.
 *
 * In the window the sky is brighter near the horizon, ε(θ) = 1 − (1 − ε_z)^(1/cos θ) (Granqvist & Hjortsberg 1981,
 * J. Applied Physics 52, 4205); elsewhere it is nearly black all over and taken as uniform. An open, level plane
 * sees exactly the horizontal values.
 */
export function skyOnPlane(tilt_deg: number, horizon_deg: number): SkyOnPlane {
  const rings = skyRings(tilt_deg, horizon_deg)
  const windowFactor = Float64Array.from(
    depths,
    (depth) =>
      weightedEmissivity(rings, rings.planeWeight, depth) /
      weightedEmissivity(rings, rings.flatWeight, depth),
  )
  return { windowFactor, uniform_frac: rings.planeWeight.reduce((sum, weight) => sum + weight, 0) }
}

/** Factor for a hemispherical window emissivity (held to 0…1), by straight lines in the table. */
export function windowFactor_frac(plane: SkyOnPlane, emissivity: number): number {
  const place = Math.min(Math.max(emissivity, 0), 1) * STEPS
  const i = Math.min(STEPS - 1, Math.floor(place))
  const low = plane.windowFactor[i]!
  return low + (plane.windowFactor[i + 1]! - low) * (place - i)
}
