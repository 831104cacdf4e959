import { columnsByHeader, tableAt, type Layout } from './layout.ts'
import { splitLine } from '../table/split.ts'

const COLUMNS = {
  'Date (MM/DD/YYYY)': 'date stamp',
  'Time (HH:MM)': 'timeOfDay stamp',
  'GHI (W/m^2)': 'globalHorizontal W/m2',
  'DNI (W/m^2)': 'directNormal W/m2',
  'DHI (W/m^2)': 'diffuseHorizontal W/m2',
  'TotCld (tenths)': 'totalCloud tenths',
  'OpqCld (tenths)': 'opaqueCloud tenths',
  'Dry-bulb (C)': 'airTemp C',
  'Dew-point (C)': 'dewPoint C',
  'RHum (%)': 'relativeHumidity %',
  'Pressure (mbar)': 'pressure hPa',
  'Wdir (degrees)': 'windDirection deg',
  'Wspd (m/s)': 'windSpeed m/s',
} as const

/** US national typical years: a site line, a header line, 8760 rows stamped at the end of the hour, 01:00 to 24:00. */
export const usTypicalYear: Layout = {
  id: 'us-typical-year',
  label: 'US national typical year',
  recognise(lines) {
    if (!/^Date \(MM\/DD\/YYYY\),Time \(HH:MM\),ETR /.test(lines[1] ?? '')) return null
    const [station, name, state, offset, latitude, longitude, altitude] = splitLine(lines[0]!, ',')
    const table = tableAt(lines, 1, ',')
    return {
      table,
      columns: columnsByHeader(table.headers, COLUMNS),
      missing: [-9900],
      time: { clockOffset_h: Number(offset), stamp: 'ending', radiationOffset_h: null, shift_h: 0 },
      site: {
        name: `${name}, ${state}`,
        latitude_deg: Number(latitude),
        longitude_deg: Number(longitude),
        altitude_m: Number(altitude),
        utcOffset_h: Number(offset),
      },
      basis: `US national typical year, station ${station} ${name}, ${state}; months from several years.`,
    }
  },
}
