import { HOUR_MS } from '#model/basis/hours'
import { lightFormat } from 'date-fns'
import type { WeatherRecord } from '#model/outdoors/weather'

/** What a record knows of its hours. */
export type Clock = Pick<WeatherRecord, 'start_utcMs' | 'site'>

/**
 * Clock of a weather record: hour index → what the site's own clock (standard time) shows. Charts keep the
 * hour index on their axis and only word it here: a browser's time zone and its daylight saving never enter.
 */
export function wallClock(weather: Clock, hour: number) {
  const wall = new Date(weather.start_utcMs + (weather.site.utcOffset_h + hour) * HOUR_MS)
  return { month: wall.getUTCMonth(), day: wall.getUTCDate(), hour: wall.getUTCHours() }
}

/** `14 Jul`: the day an hour lies in. */
export function dayLabel(weather: Clock, hour: number): string {
  const { month, day } = wallClock(weather, hour)
  return `${lightFormat(new Date(2001, month, day, 12), 'd')} ${monthLabel(month)}`
}

/** `14 Jul 15:00`. */
export function hourLabel(weather: Clock, hour: number): string {
  return `${dayLabel(weather, hour)} ${clockLabel(wallClock(weather, hour).hour)}`
}

/** `06:00`. */
export function clockLabel(hour: number): string {
  return lightFormat(new Date(2001, 0, 15, Math.floor(hour) % 24), 'HH:00')
}

/** Month names by the platform: the library's own ones bring its whole language along, 4.6 kB at first load. */
const MONTH = new Intl.DateTimeFormat('en-US', { month: 'short', timeZone: 'UTC' })

/** `Jan` … `Dec` for month 0…11. */
export function monthLabel(month: number): string {
  return MONTH.format(Date.UTC(2001, month, 15))
}
