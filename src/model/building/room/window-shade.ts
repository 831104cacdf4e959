/** What is before the panes of one facade: lengths in m. */
export interface WindowShade {
  /** How far an overhang reaches out from the wall's face; 0: none. */
  readonly overhang_m: number
  /** Its height above the head of the window. */
  readonly overhangAbove_m: number
  /** How deep the glass sits behind the wall's face. */
  readonly reveal_m: number
  readonly height_m: number
  readonly width_m: number
}

/**
 * Share of a window that the sun reaches, 0…1. The overhang is taken as long beside the window; the reveal shades from its
 * head and from the side the sun comes from.
 *   lit height = h − max(0, D' tan p − a, r tan p),  lit width = w − r tan s,  D' = D + r
 * with p the profile angle (sun altitude seen in section) and s the sun's azimuth from the wall's normal.
 * Source: geometry; Duffie & Beckman, Solar Engineering of Thermal Processes, ch. 14 (shading by overhangs).
 * @param sinAltitude   sine of the sun's altitude
 * @param cosIncidence  cosine of the incidence angle on the upright pane, above 0
 */
export function litShare_frac(shade: WindowShade, sinAltitude: number, cosIncidence: number): number {
  if (shade.overhang_m === 0 && shade.reveal_m === 0) return 1
  const tanProfile = Math.max(0, sinAltitude) / cosIncidence
  // cos i = cos(altitude) cos s, so tan² s = (1 − sin² altitude) / cos² i − 1.
  const tanSide = Math.sqrt(Math.max(0, (1 - sinAltitude * sinAltitude) / (cosIncidence * cosIncidence) - 1))
  const out_m = shade.overhang_m > 0 ? shade.overhang_m + shade.reveal_m : 0
  const fromHead_m = Math.max(0, out_m * tanProfile - shade.overhangAbove_m, shade.reveal_m * tanProfile)
  const lit_m2 =
    Math.max(0, shade.height_m - fromHead_m) * Math.max(0, shade.width_m - shade.reveal_m * tanSide)
  return lit_m2 / (shade.height_m * shade.width_m)
}

/** Share of the sky's light and of the ground's that a shaded window keeps, 0…1 each. */
export interface DiffuseShares {
  readonly sky_frac: number
  readonly ground_frac: number
}

/**
 * Crossed strings (Hottel & Sarofim 1967) on the section: a pane of height h below an edge that is D out and a above
 * the head sees (√((a + h)² + D²) − √(a² + D²))/h of what an open pane sees of the sky. Of overhang and head of the reveal the one
 * that hides more counts, point by point in their means; sides and sill of the reveal likewise across and from below. The
 * faces of the shade are black: light they throw back is left out.
 */
export function diffuseShares(shade: WindowShade): DiffuseShares {
  const { overhang_m, overhangAbove_m, reveal_m, height_m, width_m } = shade
  const sides = seen_frac(reveal_m, 0, width_m)
  const head = seen_frac(reveal_m, 0, height_m)
  const over = overhang_m > 0 ? seen_frac(overhang_m + reveal_m, overhangAbove_m, height_m) : 1
  return { sky_frac: sides * Math.min(head, over), ground_frac: sides * head }
}

function seen_frac(out_m: number, above_m: number, height_m: number): number {
  return (Math.hypot(above_m + height_m, out_m) - Math.hypot(above_m, out_m)) / height_m
}
