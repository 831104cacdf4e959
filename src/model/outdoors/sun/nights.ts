/** When the sun set and rose in one night, hours after the noon before it; NaN where it does neither. */
export interface NightEdges {
  readonly sunset_h: Float64Array
  readonly sunrise_h: Float64Array
}

/** Altitude of the sun's centre at sunset to the eye, degrees: refraction and half the disc (Meeus 1998, ch. 15). */
export const SUNSET_deg = -0.833

/**
 * Sunset and sunrise of every night of a record, noon to noon.
 * @param altitude_deg altitude of the sun, one entry an hour, at `middle_h` after the beginning of the hour
 * @param middle_h     hours from the beginning of index i to the moment of its altitude
 * @param firstNoon_h  index of the hour that begins at the noon before the first night; may be negative
 * @param nights       number of nights
 * @returns            linear between the hourly altitudes: within about two minutes away from polar day and night
 */
export function nightEdges(
  altitude_deg: Float64Array,
  middle_h: number,
  firstNoon_h: number,
  nights: number,
): NightEdges {
  const sunset_h = new Float64Array(nights).fill(NaN)
  const sunrise_h = new Float64Array(nights).fill(NaN)
  for (let night = 0; night < nights; night++) {
    const noon = firstNoon_h + 24 * night
    for (let h = Math.max(0, noon); h < Math.min(noon + 24, altitude_deg.length - 1); h++) {
      const above = altitude_deg[h]! - SUNSET_deg
      const next = altitude_deg[h + 1]! - SUNSET_deg
      if (above > 0 === next > 0) continue
      const at_h = h - noon + middle_h + above / (above - next)
      if (above > 0) sunset_h[night] = at_h
      else sunrise_h[night] = at_h
    }
  }
  return { sunset_h, sunrise_h }
}
