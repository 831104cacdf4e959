/** Twelve ways in which hourly tables say when a row was. */

/** One column of the stamp. */
export interface StampColumn {
  readonly name: string
  readonly cell: (at: Date) => string
}

export interface StampLayout {
  readonly name: string
  readonly columns: readonly StampColumn[]
  /** Stamps of this layout can't say that a row ends at midnight but by hour 24 of the day before. */
  readonly hours?: '1–24'
  /** Written as four lines of a logger's header, or as columns of JSON. */
  readonly form?: 'logger' | 'json'
  /** The clock's name can't be written beside the stamp. */
  readonly mute?: boolean
}

const two = (value: number): string => String(value).padStart(2, '0')
const date = (at: Date, order: 'ymd' | 'dmy' | 'mdy', mark: string): string => {
  const parts = { y: String(at.getUTCFullYear()), m: two(at.getUTCMonth() + 1), d: two(at.getUTCDate()) }
  return [...order].map((part) => parts[part as 'y']).join(mark)
}
const clock = (at: Date): string => `${two(at.getUTCHours())}:${two(at.getUTCMinutes())}`
const halfDay = (at: Date): string =>
  `${at.getUTCHours() % 12 || 12}:${two(at.getUTCMinutes())} ${at.getUTCHours() < 12 ? 'AM' : 'PM'}`
const dayOfYear = (at: Date): number =>
  Math.floor((at.getTime() - Date.UTC(at.getUTCFullYear(), 0, 1)) / 86_400_000) + 1
/** The day and the hour 1–24 of a row that ends at a moment. */
const endingHour = (at: Date): { readonly day: Date; readonly hour: number } => {
  const begin = new Date(at.getTime() - 3.6e6)
  return { day: begin, hour: begin.getUTCHours() + 1 }
}

export const STAMP_LAYOUTS: readonly StampLayout[] = [
  { name: 'ISO', columns: [{ name: 'time', cell: (at) => `${date(at, 'ymd', '-')} ${clock(at)}` }] },
  { name: 'ISO with T', columns: [{ name: 'timestamp', cell: (at) => `${date(at, 'ymd', '-')}T${clock(at)}` }] },
  { name: 'day.month.year', columns: [{ name: 'Datum', cell: (at) => `${date(at, 'dmy', '.')} ${clock(at)}` }] },
  { name: '12-hour clock', columns: [{ name: 'Date', cell: (at) => `${date(at, 'mdy', '/')} ${halfDay(at)}` }] },
  {
    name: 'date and time',
    columns: [
      { name: 'Date', cell: (at) => date(at, 'ymd', '/') },
      { name: 'Time', cell: clock },
    ],
  },
  {
    name: 'year, month, day, hour',
    mute: true,
    columns: [
      { name: 'Year', cell: (at) => String(at.getUTCFullYear()) },
      { name: 'Month', cell: (at) => String(at.getUTCMonth() + 1) },
      { name: 'Day', cell: (at) => String(at.getUTCDate()) },
      { name: 'Hour', cell: (at) => String(at.getUTCHours()) },
    ],
  },
  { name: 'packed', columns: [{ name: 'timestamp', cell: (at) => `${date(at, 'ymd', '')}${two(at.getUTCHours())}00` }] },
  {
    name: 'hours 1–24',
    hours: '1–24',
    columns: [
      { name: 'Date', cell: (at) => date(endingHour(at).day, 'ymd', '-') },
      { name: 'Hour', cell: (at) => String(endingHour(at).hour) },
    ],
  },
  {
    name: 'day of the year',
    mute: true,
    columns: [
      { name: 'Year', cell: (at) => String(at.getUTCFullYear()) },
      { name: 'DOY', cell: (at) => String(dayOfYear(at)) },
      { name: 'Time', cell: (at) => String(at.getUTCHours() * 100) },
    ],
  },
  { name: 'epoch', mute: true, columns: [{ name: 'epoch', cell: (at) => String(at.getTime() / 1000) }] },
  { name: 'logger', form: 'logger', mute: true, columns: [{ name: 'TIMESTAMP', cell: (at) => `${date(at, 'ymd', '-')} ${clock(at)}:00` }] },
  { name: 'JSON', form: 'json', mute: true, columns: [{ name: 'time', cell: (at) => `${date(at, 'ymd', '-')}T${clock(at)}` }] },
] // prettier-ignore
