const RADIANS = Math.PI / 180
/** Rings of the hemisphere in the sums below. */
export const RINGS = 90

/** The sky in rings: zenith angle of each ring's middle, and what it counts for on a flat and on a tilted plane. */
export interface SkyRings {
  readonly cosZenith: Float64Array
  /** Share of a uniform sky's flux on a horizontal plane; adds to 1. */
  readonly flatWeight: Float64Array
  /** Flux on the tilted plane per flux of a uniform sky on an open horizontal plane; 0 in hidden rings. */
  readonly planeWeight: Float64Array
}

/** ∫ max(0, cos incidence) dφ over a ring, for the plane's cosine law: closed form. */
function ringFlux(zenith: number, tilt: number): number {
  const across = Math.cos(zenith) * Math.cos(tilt)
  const along = Math.sin(zenith) * Math.sin(tilt)
  if (across >= along) return 2 * Math.PI * across
  if (across <= -along) return 0
  const edge = Math.acos(-across / along)
  return 2 * (across * edge + along * Math.sin(edge))
}

/**
 * Rings of the visible sky as a tilted plane sees them, above a horizon that is equally high all round.
 * @param tilt_deg 0 (facing up)…180   @param horizon_deg 0…90
 */
export function skyRings(tilt_deg: number, horizon_deg: number): SkyRings {
  const tilt = tilt_deg * RADIANS
  const visible = (90 - horizon_deg) * RADIANS
  const cosZenith = new Float64Array(RINGS)
  const flatWeight = new Float64Array(RINGS)
  const planeWeight = new Float64Array(RINGS)
  for (let i = 0; i < RINGS; i++) {
    const from = (i / RINGS) * (Math.PI / 2)
    const to = ((i + 1) / RINGS) * (Math.PI / 2)
    flatWeight[i] = Math.sin(to) ** 2 - Math.sin(from) ** 2
    cosZenith[i] = Math.cos(0.5 * (from + to))
    const end = Math.min(to, visible)
    if (end <= from) continue
    const middle = 0.5 * (from + end)
    planeWeight[i] = ((Math.cos(from) - Math.cos(end)) * ringFlux(middle, tilt)) / Math.PI
  }
  if (tilt_deg === 0 && horizon_deg === 0) planeWeight.set(flatWeight)
  return { cosZenith, flatWeight, planeWeight }
}

/**
 * Share of a uniform sky that a tilted plane sees: (1 + cos β)/2 less what the horizon hides, 0…1. An upward
 * plane has cos²(horizon).
 */
export function skyView_frac(tilt_deg: number, horizon_deg: number): number {
  if (horizon_deg <= 0) return 0.5 * (1 + Math.cos(tilt_deg * RADIANS))
  if (tilt_deg === 0) return Math.cos(horizon_deg * RADIANS) ** 2
  return skyRings(tilt_deg, horizon_deg).planeWeight.reduce((sum, weight) => sum + weight, 0)
}
