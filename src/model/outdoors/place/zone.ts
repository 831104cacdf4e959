const HOUR_MIN = 60

/**
 * Standard offset of a time zone from UTC, h: the smaller of January's and July's in the given year.
 * @throws RangeError for a name that the tz database does not have
 */
export function standardOffset_h(zone: string, year = 2023): number {
  return Math.min(offset_h(zone, Date.UTC(year, 0, 1, 12)), offset_h(zone, Date.UTC(year, 6, 1, 12)))
}

function offset_h(zone: string, moment_ms: number): number {
  const format = new Intl.DateTimeFormat('en-US', { timeZone: zone, timeZoneName: 'longOffset' })
  const written = format.formatToParts(moment_ms).find(({ type }) => type === 'timeZoneName')?.value ?? ''
  const found = /^GMT(?:([+-])(\d{2}):(\d{2}))?$/.exec(written)
  if (found === null) throw new RangeError(`offset of ${zone} is written ${written}`)
  const [, sign, hours, minutes] = found
  if (sign === undefined) return 0
  return (sign === '-' ? -1 : 1) * (Number(hours) + Number(minutes) / HOUR_MIN)
}
