import { knownColumn, type KnownColumn, type Layout } from './layout.ts'
import { splitLine } from '../table/split.ts'

const COLUMNS = [
  'year count',
  'month count',
  'day count',
  'hour count',
  'globalHorizontal W/m2',
  'skyLongwave W/m2',
  'ignore ',
  'ignore ',
  'airTemp K',
  'relativeHumidity %',
  'windSpeed m/s',
  'pressure Pa',
] as const

const between = (value: number | undefined, low: number, high: number): boolean =>
  value! >= low && value! <= high

/** Snow-station forcing tables: no header, year month day hour, short- and longwave, snow, rain, air in K, RH, wind, Pa. */
export const mountainForcing: Layout = {
  id: 'mountain-forcing',
  label: 'Snow-station forcing table',
  recognise(lines) {
    const rows = lines.slice(0, 48).map((line) => splitLine(line, 'blanks').map(Number))
    if (rows.length < 24 || !rows.every(fits)) return null
    const headers = COLUMNS.map(() => '')
    return {
      table: {
        shape: { separator: 'blanks', decimal: '.', headerLine: null, firstDataLine: 1 },
        headers,
        units: headers,
        fields: COLUMNS.length,
      },
      columns: new Map<number, KnownColumn>(COLUMNS.map((text, index) => [index, knownColumn(text)])),
      missing: [-9999, -999],
      time: { clockOffset_h: 0, stamp: 'ending', radiationOffset_h: null, shift_h: 0 },
      site: {},
      basis: 'Snow-station forcing table, measured, longwave included.',
      remarks: [
        'The table does not say its clock; UTC and hour ending are taken, as such tables usually are.',
      ],
    }
  },
}

function fits(row: readonly number[]): boolean {
  const [year, month, day, hour, , longwave, snow, rain, air, humidity, , pressure] = row
  return (
    row.length === COLUMNS.length &&
    between(year, 1900, 2100) &&
    between(month, 1, 12) &&
    between(day, 1, 31) &&
    between(hour, 0, 24) &&
    between(longwave, 80, 500) &&
    between(snow, 0, 1) &&
    between(rain, 0, 1) &&
    between(air, 200, 330) &&
    between(humidity, 0, 110) &&
    between(pressure, 40_000, 110_000)
  )
}
