import { columnsByHeader, numberIn, tableAt, type Layout } from './layout.ts'

const COLUMNS = {
  'time(UTC)': 'dateTime stamp',
  T2m: 'airTemp C',
  RH: 'relativeHumidity %',
  'G(h)': 'globalHorizontal W/m2',
  'Gb(n)': 'directNormal W/m2',
  'Gd(h)': 'diffuseHorizontal W/m2',
  'IR(h)': 'skyLongwave W/m2',
  WS10m: 'windSpeed m/s',
  WD10m: 'windDirection deg',
  SP: 'pressure Pa',
} as const

/** European Commission typical years: site preamble, month → year table, header, 8760 rows in UTC, a legend at the foot. */
export const europeanTypicalYear: Layout = {
  id: 'european-typical-year',
  label: 'European Commission typical year',
  recognise(lines) {
    const header = lines.findIndex((line) => line.startsWith('time(UTC),'))
    if (header < 0 || !lines.slice(0, header).some((line) => line.startsWith('Latitude'))) return null
    const value = (word: string): number => {
      const line = lines.slice(0, header).find((candidate) => candidate.startsWith(word))
      return numberIn(line?.split(':')[1])
    }
    const latitude_deg = value('Latitude')
    const longitude_deg = value('Longitude')
    const offset_h = value('Irradiance Time Offset')
    const table = tableAt(lines, header, ',')
    return {
      table,
      columns: columnsByHeader(table.headers, COLUMNS),
      missing: [],
      time: {
        clockOffset_h: 0,
        stamp: 'instant',
        radiationOffset_h: Number.isNaN(offset_h) ? null : offset_h,
        shift_h: 0,
      },
      site: {
        name: `${Math.abs(latitude_deg)}° ${latitude_deg < 0 ? 'S' : 'N'}, ${Math.abs(longitude_deg)}° ${longitude_deg < 0 ? 'W' : 'E'}`,
        latitude_deg,
        longitude_deg,
        altitude_m: value('Elevation'),
      },
      basis:
        'European Commission typical year; months from several years; longwave from a reanalysis (a model).',
    }
  },
}
