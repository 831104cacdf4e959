import { nightEdges, type NightEdges } from '#model/outdoors/sun'
import { dayLabel, monthLabel, wallClock, type Clock } from '#ui/words/calendar.ts'

/** How the hours of a record lie in a picture of nights, noon to noon. */
export interface NightColumns extends NightEdges {
  readonly columns: number
  /** Hour of the record in a cell; outside 0…hours − 1 there is none. */
  readonly hourAt: (column: number, row: number) => number
  readonly names: readonly string[]
}

/** Columns of a record: the first is the night that holds its first hour. `altitude_deg` is taken at `middle_h`. */
export function nightColumns(
  weather: Clock & { readonly hours: number },
  altitude_deg: Float64Array,
  middle_h: number,
): NightColumns {
  const sinceNoon = (wallClock(weather, 0).hour + 12) % 24
  const columns = Math.ceil((sinceNoon + weather.hours) / 24)
  const names =
    columns >= 360
      ? Array.from({ length: 12 }, (_, month) => monthLabel(month))
      : [...new Set([dayLabel(weather, 0), dayLabel(weather, weather.hours - 1)])]
  return {
    columns,
    hourAt: (column, row) => column * 24 + row - sinceNoon,
    names,
    ...nightEdges(altitude_deg, middle_h, -sinceNoon, columns),
  }
}
