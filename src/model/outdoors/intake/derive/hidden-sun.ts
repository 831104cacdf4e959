import { ineichenPerez, type SunHours } from '#model/outdoors/sun'

/** The sky is looked at in fields of this width and height, degrees: the sun crosses one in about an hour. */
const FIELD_WIDTH_DEG = 15
const FIELD_HEIGHT_DEG = 5
const FIELDS_HIGH = 90 / FIELD_HEIGHT_DEG
const FIELDS = (360 / FIELD_WIDTH_DEG) * FIELDS_HIGH
/** A field is judged only when the sun was in it for this many hours: fewer may all have been cloudy. */
const ENOUGH_HOURS = 10
/** Less than this share of a clear sky's beam, even in the best hour, and something is in the way. */
const HALF = 0.5

/**
 * Hours in which a hill, a wood or a house hides the sun from the instrument: 1, else 0. Found in the record itself:
 * where the sun is in a field of the sky in which its beam, (global − diffuse) ÷ (clear global − clear diffuse)
 * of Ineichen & Perez 2002, never came half through in the whole record. Cloud comes and goes, a hill stays; a dark
 * hour there says nothing about cloud. Finding a horizon from a radiometer's own record is common practice, no source.
 * @param lowest_deg hours with a lower sun are not looked at and stay 0
 */
export function hiddenSun(
  global: Float64Array,
  sun: SunHours,
  altitude_m: number,
  lowest_deg: number,
): Uint8Array {
  const fields = Int16Array.from(global, (_, i) =>
    sun.altitude_deg[i]! < lowest_deg ? -1 : fieldOf(sun.azimuth_deg[i]!, sun.altitude_deg[i]!),
  )
  const best = new Float64Array(FIELDS).fill(-Infinity)
  const hours = new Uint16Array(FIELDS)
  for (let i = 0; i < global.length; i += 1) {
    const field = fields[i]!
    if (field < 0 || Number.isNaN(global[i]!)) continue
    const clear = ineichenPerez(sun.altitude_deg[i]!, sun.extraterrestrial_Wm2[i]!, altitude_m)
    const beam = (global[i]! - clear.diffuse_Wm2) / (clear.global_Wm2 - clear.diffuse_Wm2)
    best[field] = Math.max(best[field]!, beam)
    hours[field]! += 1
  }
  return Uint8Array.from(fields, (field) =>
    field >= 0 && hours[field]! >= ENOUGH_HOURS && best[field]! < HALF ? 1 : 0,
  )
}

function fieldOf(azimuth_deg: number, altitude_deg: number): number {
  const across = Math.floor((((azimuth_deg % 360) + 360) % 360) / FIELD_WIDTH_DEG)
  const up = Math.min(FIELDS_HIGH - 1, Math.floor(altitude_deg / FIELD_HEIGHT_DEG))
  return across * FIELDS_HIGH + up
}
