import { WEATHER_COLUMNS, type WeatherRecord } from '#model/outdoors/weather'

/** Id of the user's own weather as designs kept before files were distinguished carry it. */
export const OWN_CLIMATE = 'own'

/** True for the id of weather a user brought, whoever it was. */
export function isOwnId(id: string): boolean {
  return id === OWN_CLIMATE || id.startsWith(`${OWN_CLIMATE}:`)
}

/**
 * Id of a record the user brought, e.g. `own:9f3c01ab`, by what a year of it computes with: its hours, its place and its
 * clock. A link or a kept design that uses another file is then distinguished from this one. Its end is the 32-bit
 * FNV-1a hash: two files share one by chance once in 4 × 10⁹.
 */
export function ownId(record: WeatherRecord): string {
  const { site } = record
  const start = new Float64Array([
    record.start_utcMs,
    site.latitude_deg,
    site.longitude_deg,
    site.utcOffset_h,
  ])
  let hash = 0x811c9dc5
  for (const column of [start, ...WEATHER_COLUMNS.map((name) => record[name])]) {
    for (const byte of new Uint8Array(column.buffer, column.byteOffset, column.byteLength)) {
      hash = Math.imul(hash ^ byte, 0x01000193)
    }
  }
  return `${OWN_CLIMATE}:${(hash >>> 0).toString(16).padStart(8, '0')}`
}

/** A link written before files were distinguished names no file: on another machine it must not open on the one kept there. */
export function ownIdInLink(climate: string): string {
  return climate === OWN_CLIMATE ? `${OWN_CLIMATE}:unnamed` : climate
}
