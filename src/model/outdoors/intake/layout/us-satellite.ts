import { columnsByHeader, tableAt, type Layout } from './layout.ts'
import { splitLine } from '../table/split.ts'

const COLUMNS = {
  Year: 'year count',
  Month: 'month count',
  Day: 'day count',
  Hour: 'hour count',
  Minute: 'minute count',
  GHI: 'globalHorizontal W/m2',
  DNI: 'directNormal W/m2',
  DHI: 'diffuseHorizontal W/m2',
  Temperature: 'airTemp C',
  'Dew Point': 'dewPoint C',
  'Relative Humidity': 'relativeHumidity %',
  Pressure: 'pressure hPa',
  'Wind Speed': 'windSpeed m/s',
  'Wind Direction': 'windDirection deg',
} as const

/** US satellite-derived series: names and values of the site on two lines, a header, rows that are snapshots at the stamp. */
export const usSatellite: Layout = {
  id: 'us-satellite',
  label: 'US satellite-derived series',
  recognise(lines) {
    if (!/^Source,Location ID,/.test(lines[0] ?? '') || !/^Year,Month,Day,Hour/.test(lines[2] ?? ''))
      return null
    const names = splitLine(lines[0]!, ',')
    const values = splitLine(lines[1]!, ',')
    const value = (name: string): string => values[names.indexOf(name)] ?? ''
    const clock = Number(value('Time Zone'))
    const table = tableAt(lines, 2, ',')
    return {
      table,
      columns: columnsByHeader(table.headers, COLUMNS),
      missing: [],
      time: { clockOffset_h: clock, stamp: 'instant', radiationOffset_h: null, shift_h: 0 },
      site: {
        name: `Satellite cell ${value('Location ID')}`,
        latitude_deg: Number(value('Latitude')),
        longitude_deg: Number(value('Longitude')),
        altitude_m: Number(value('Elevation')),
        utcOffset_h: Number(value('Local Time Zone')),
      },
      basis: `US satellite-derived series, cell ${value('Location ID')}.`,
    }
  },
}
