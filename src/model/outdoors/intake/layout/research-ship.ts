import { columnsByHeader, tableAt, type Layout } from './layout.ts'
import { splitLine } from '../table/split.ts'

const COLUMNS = {
  jd: 'dayOfYear count',
  u: 'windSpeed m/s',
  ta: 'airTemp C',
  rh: 'relativeHumidity %',
  P: 'pressure hPa',
  sw_dn: 'globalHorizontal W/m2',
  lw_dn: 'skyLongwave W/m2',
  lat: 'latitude deg',
  lon: 'longitude deg',
} as const
const ASSUMED_YEAR = 2020

/** Research-ship flux series: one header line of blank-separated names, day of the year with a fraction, UTC. */
export const researchShip: Layout = {
  id: 'research-ship',
  label: 'Research-ship flux series',
  recognise(lines) {
    const headers = splitLine(lines[0] ?? '', 'blanks')
    if (
      headers[0] !== 'jd' ||
      !['u', 'ta', 'rh', 'sw_dn', 'lw_dn', 'lat', 'lon'].every((h) => headers.includes(h))
    ) {
      return null
    }
    const table = tableAt(lines, 0, 'blanks')
    return {
      table,
      columns: columnsByHeader(headers, COLUMNS),
      missing: [],
      time: { clockOffset_h: 0, stamp: 'beginning', radiationOffset_h: null, shift_h: 0 },
      site: { name: 'Ship at sea', altitude_m: 0 },
      basis: 'Research-ship series, measured, longwave included; wind as read at the mast.',
      year: ASSUMED_YEAR,
      remarks: [
        `The year is not in the file; ${ASSUMED_YEAR} is assumed.`,
        'The wind is used as measured at the mast height (column zu), not brought to 10 m.',
      ],
    }
  },
}
