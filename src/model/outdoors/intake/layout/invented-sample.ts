import { columnsByHeader, type Layout } from './layout.ts'
import { splitLine } from '../table/split.ts'

const COLUMNS = {
  month: 'month count',
  day: 'day count',
  hour: 'hour count',
  airTemp_C: 'airTemp C',
  dewPoint_C: 'dewPoint C',
  pressure_Pa: 'pressure Pa',
  wind_ms: 'windSpeed m/s',
  globalHorizontal_Wm2: 'globalHorizontal W/m2',
  directNormal_Wm2: 'directNormal W/m2',
  diffuseHorizontal_Wm2: 'diffuseHorizontal W/m2',
  cloud_frac: 'opaqueCloud frac',
  skyLongwave_Wm2: 'skyLongwave W/m2',
} as const

/** Duskbank's own tables: `# key: value` lines, then columns named as in the record. */
export const inventedSample: Layout = {
  id: 'invented-sample',
  label: 'Duskbank sample climate',
  recognise(lines) {
    const header = lines.findIndex((line) => !line.startsWith('#'))
    if (header < 1 || !lines[header]!.startsWith('month,day,hour,airTemp_C,')) return null
    const note = (key: string): string =>
      lines
        .slice(0, header)
        .find((line) => line.startsWith(`# ${key}: `))
        ?.slice(key.length + 4)
        .trim() ?? ''
    const headers = splitLine(lines[header]!, ',')
    const numbers = ['latitude_deg', 'longitude_deg', 'altitude_m', 'utcOffset_h'] as const
    const said = numbers.filter((key) => note(key) !== '' && Number.isFinite(Number(note(key))))
    const site = Object.fromEntries(said.map((key) => [key, Number(note(key))]))
    return {
      table: {
        shape: { separator: ',', decimal: '.', headerLine: header + 1, firstDataLine: header + 2 },
        headers,
        units: headers.map(() => ''),
        fields: headers.length,
      },
      columns: columnsByHeader(headers, COLUMNS),
      missing: [],
      time: {
        clockOffset_h: site['utcOffset_h'] ?? null,
        stamp: 'beginning',
        radiationOffset_h: null,
        shift_h: 0,
      },
      site: { name: note('name'), ...site },
      basis: `Invented sample climate: ${note('description') || note('name')} No such place was measured.`,
    }
  },
}
