import { knownColumn, type KnownColumn, type Layout } from './layout.ts'
import { splitLine } from '../table/split.ts'

const COLUMNS: Readonly<Record<number, string>> = {
  0: 'year count',
  2: 'month count',
  3: 'day count',
  4: 'hour count',
  5: 'minute count',
  8: 'globalHorizontal W/m2',
  12: 'directNormal W/m2',
  14: 'diffuseHorizontal W/m2',
  16: 'skyLongwave W/m2',
  38: 'airTemp C',
  40: 'relativeHumidity %',
  42: 'windSpeed m/s',
  44: 'windDirection deg',
  46: 'pressure hPa',
}
const FIELDS = 48

/** NOAA surface-radiation station days: name, site line, then 48 blank-separated columns a minute, UTC. */
export const surfaceRadiationDay: Layout = {
  id: 'surface-radiation-day',
  label: 'NOAA surface-radiation station day',
  recognise(lines) {
    const site = /^\s*(-?\d+\.\d+)\s+(-?\d+\.\d+)\s+(-?\d+)\s*m?\s+version/.exec(lines[1] ?? '')
    if (site === null || splitLine(lines[2] ?? '', 'blanks').length !== FIELDS) return null
    const longitude = Number(site[2])
    const name = lines[0]!.trim()
    const headers = Array.from({ length: FIELDS }, () => '')
    return {
      table: {
        shape: { separator: 'blanks', decimal: '.', headerLine: null, firstDataLine: 3 },
        headers,
        units: headers,
        fields: FIELDS,
      },
      columns: new Map<number, KnownColumn>(
        Object.entries(COLUMNS).map(([index, text]) => [Number(index), knownColumn(text)]),
      ),
      missing: [-9999.9],
      time: { clockOffset_h: 0, stamp: 'ending', radiationOffset_h: null, shift_h: 0 },
      site: {
        name,
        latitude_deg: Number(site[1]),
        longitude_deg: -Math.abs(longitude),
        altitude_m: Number(site[3]),
      },
      basis: `NOAA surface-radiation station ${name}, measured, longwave included.`,
      remarks:
        longitude > 0
          ? [
              `The file prints the longitude ${longitude} without a sign; this network’s stations lie west, so −${longitude}° is used.`,
            ]
          : [],
    }
  },
}
