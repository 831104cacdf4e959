/** The simple hourly method of ISO 13790:2008 annex C (five resistances, one capacity): a second room model. */
export interface Iso13790Room {
  readonly floor_m2: number
  readonly mass_m2: number
  readonly capacity_JK: number
  readonly opaque_WK: number
  readonly windows_WK: number
  readonly air_WK: number
}
export interface Iso13790Drive {
  readonly outdoor_C: number
  readonly supply_C: number
  /** Temperature behind the opaque parts when it is not the outdoor air's (sun on walls, ground). */
  readonly opaque_C?: number
  readonly gains_W: number
  readonly sun_W: number
  /** Heating (positive) or cooling power at the air node. */
  readonly power_W: number
}
export interface Iso13790State {
  readonly massEnd_C: number
  readonly air_C: number
  readonly surface_C: number
  readonly operative_C: number
}

/** One hour from the mass temperature at its beginning. */
export function iso13790Hour(room: Iso13790Room, mass_C: number, drive: Iso13790Drive): Iso13790State {
  const total = 4.5 * room.floor_m2
  const his = 3.45 * total
  const hms = 9.1 * room.mass_m2
  const hem = 1 / (1 / room.opaque_WK - 1 / hms)
  const h1 = 1 / (1 / room.air_WK + 1 / his)
  const h2 = h1 + room.windows_WK
  const h3 = 1 / (1 / h2 + 1 / hms)
  const ia = 0.5 * drive.gains_W
  const inner = ia + drive.sun_W
  const m = (room.mass_m2 / total) * inner
  const st = (1 - room.mass_m2 / total - room.windows_WK / (9.1 * total)) * inner
  const toAir = h1 * ((ia + drive.power_W) / room.air_WK + drive.supply_C)
  const all =
    m +
    hem * (drive.opaque_C ?? drive.outdoor_C) +
    (h3 * (st + room.windows_WK * drive.outdoor_C + toAir)) / h2
  const c = room.capacity_JK / 3600
  const massEnd_C = (mass_C * (c - 0.5 * (h3 + hem)) + all) / (c + 0.5 * (h3 + hem))
  const mean = (massEnd_C + mass_C) / 2
  const surface_C =
    (hms * mean + st + room.windows_WK * drive.outdoor_C + toAir) / (hms + room.windows_WK + h1)
  const air_C = (his * surface_C + room.air_WK * drive.supply_C + ia + drive.power_W) / (his + room.air_WK)
  return { massEnd_C, air_C, surface_C, operative_C: 0.3 * air_C + 0.7 * surface_C }
}
