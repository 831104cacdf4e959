/** Tables written from a known year in many ways: what the reading must get right, or ask about. */
import type { RandomSource } from '#model/basis/numbers'
import type { WeatherRecord } from '#model/outdoors/weather'
import { STAMP_LAYOUTS } from './written-stamps.ts'

export interface Written {
  readonly bytes: Uint8Array
  /** How it was written, for a report. */
  readonly how: string
}

const pick = <T>(random: RandomSource, all: readonly T[]): T => all[Math.floor(random() * all.length)]!

interface Unit {
  readonly spelt: string
  readonly from: (value: number) => number
  readonly digits: number
}
const UNITS: Readonly<Record<string, readonly Unit[]>> = {
  temp: [
    { spelt: '°C', from: (t) => t, digits: 1 },
    { spelt: 'C', from: (t) => t, digits: 2 },
    { spelt: 'F', from: (t) => t * 1.8 + 32, digits: 1 },
    { spelt: 'K', from: (t) => t + 273.15, digits: 2 },
  ],
  wind: [
    { spelt: 'm/s', from: (v) => v, digits: 1 },
    { spelt: 'km/h', from: (v) => v * 3.6, digits: 1 },
    { spelt: 'mph', from: (v) => v / 0.44704, digits: 1 },
    { spelt: 'knots', from: (v) => (v * 3600) / 1852, digits: 1 },
  ],
  pressure: [
    { spelt: 'hPa', from: (p) => p / 100, digits: 1 },
    { spelt: 'kPa', from: (p) => p / 1000, digits: 2 },
    { spelt: 'inHg', from: (p) => p / 3386.39, digits: 2 },
  ],
  sun: [
    { spelt: 'W/m2', from: (g) => g, digits: 0 },
    { spelt: 'W/m²', from: (g) => g, digits: 1 },
    { spelt: 'kJ/m2', from: (g) => g * 3.6, digits: 0 },
    { spelt: 'MJ/m2', from: (g) => g * 0.0036, digits: 3 },
    { spelt: 'J/cm2', from: (g) => g * 0.36, digits: 1 },
  ],
}

const NAMES = [
  {
    temp: 'Air temperature',
    dew: 'Dew point',
    rh: 'Relative humidity',
    wind: 'Wind speed',
    pressure: 'Station pressure',
    sun: 'Global radiation',
  },
  { temp: 'Temp', dew: 'Dewpt', rh: 'RH', wind: 'WS', pressure: 'Press', sun: 'GHI' },
  {
    temp: 'Lufttemperatur',
    dew: 'Taupunkt',
    rh: 'Relative Feuchte',
    wind: 'Windgeschwindigkeit',
    pressure: 'Luftdruck',
    sun: 'Globalstrahlung',
  },
  {
    temp: 'temperatura',
    dew: 'punto de rocio',
    rh: 'humedad relativa',
    wind: 'velocidad del viento',
    pressure: 'presion',
    sun: 'radiacion global',
  },
  { temp: 'AirTC_Avg', dew: 'DewPt', rh: 'RH_Avg', wind: 'WS_ms_Avg', pressure: 'BP', sun: 'SlrW_Avg' },
] as const

const DISTRACTORS = [
  'Battery (V)',
  'Soil temperature (C)',
  'Indoor temperature (C)',
  'Wind gust (m/s)',
  'Record',
] as const

/** A record as text in a way drawn at random. */
export function written(record: WeatherRecord, random: RandomSource): Written {
  const names = pick(random, NAMES)
  const units = {
    temp: pick(random, UNITS['temp']!),
    wind: pick(random, UNITS['wind']!),
    pressure: pick(random, UNITS['pressure']!),
    sun: pick(random, UNITS['sun']!),
  }
  const unitPlace = pick(random, ['bracket', 'bracket', 'row', 'none'] as const)
  const separator = pick(random, [',', ';', '\t'])
  const comma = separator === ';' && random() < 0.4
  const missing = pick(random, ['', '-9999', '-999.9', 'NaN'])
  const clock = pick(random, ['local', 'UTC named', 'UTC unnamed'] as const)
  const stamp = pick(random, ['beginning', 'ending'] as const)
  const header = random() > 0.08
  const preamble = random() < 0.4
  const decimal = (text: string): string => (comma ? text.replace('.', ',') : text)
  const printed = (value: number, { from, digits }: Unit): string =>
    random() < 0.01 && missing !== '' ? missing : decimal(from(value).toFixed(digits))
  const percent: Unit = { spelt: '%', from: (v) => v, digits: 0 }
  const rh = (h: number): number => {
    const e = (t: number) => Math.exp((17.62 * t) / (243.12 + t))
    return Math.min(100, (100 * e(record.dewPoint_C[h]!)) / e(record.airTemp_C[h]!))
  }
  type Column = { readonly name: string; readonly unit: Unit | null; readonly at: (h: number) => string }
  const columns: Column[] = [
    { name: names.temp, unit: units.temp, at: (h) => printed(record.airTemp_C[h]!, units.temp) },
    { name: names.rh, unit: percent, at: (h) => printed(rh(h), percent) },
    { name: names.wind, unit: units.wind, at: (h) => printed(record.wind_ms[h]!, units.wind) },
    { name: names.sun, unit: units.sun, at: (h) => printed(record.globalHorizontal_Wm2[h]!, units.sun) },
  ]
  if (random() < 0.6)
    columns.push({
      name: names.pressure,
      unit: units.pressure,
      at: (h) => printed(record.pressure_Pa[h]!, units.pressure),
    })
  if (random() < 0.4)
    columns.push({ name: names.dew, unit: units.temp, at: (h) => printed(record.dewPoint_C[h]!, units.temp) })
  for (const distractor of DISTRACTORS)
    if (random() < 0.25)
      columns.push({
        name: distractor,
        unit: null,
        at: (h) =>
          ({
            B: '12.6',
            S: (12 + Math.sin(h / 1400)).toFixed(1),
            I: (21 + Math.sin(h / 4)).toFixed(1),
            W: (1.6 * record.wind_ms[h]!).toFixed(1),
            R: String(h),
          })[distractor[0] as 'B']!,
      })
  const order = columns
    .map((column) => ({ column, key: random() }))
    .toSorted((a, b) => a.key - b.key)
    .map(({ column }) => column)
  const layout = pick(random, STAMP_LAYOUTS)
  const encoding = pick(random, ['UTF-8', 'UTF-8', 'UTF-16', 'Windows-1252'] as const)
  const ending = layout.hours === '1–24' || stamp === 'ending'
  // seconds since 1970 are UTC by definition
  const local = clock === 'local' && layout.name !== 'epoch'
  const shift_h = (local ? 0 : -record.site.utcOffset_h) + (ending ? 1 : 0)
  const named = clock === 'UTC named' && layout.mute !== true
  const headed = (column: Column): string =>
    unitPlace === 'bracket' && column.unit !== null ? `${column.name} (${column.unit.spelt})` : column.name
  const spelt = order.map(({ unit }) => unit?.spelt ?? '')
  const rows = Array.from({ length: record.hours }, (_, h) => {
    const when = new Date(Date.UTC(2023, 0, 1) + (h + shift_h) * 3.6e6)
    return [...layout.columns.map(({ cell }) => cell(when)), ...order.map(({ at }) => at(h))]
  })
  const headings = [
    ...layout.columns.map(({ name }, at) => (named && at === 0 ? `${name} (UTC)` : name)),
    ...order.map(headed),
  ]
  const lines: string[] = []
  if (preamble)
    lines.push(
      `# Station: made up`,
      `# Latitude: ${record.site.latitude_deg}`,
      `# Longitude: ${record.site.longitude_deg}`,
    )
  if (layout.form === 'logger') {
    lines.length = 0
    lines.push(
      ['"TABLE"', '"logger 3"', '"made up"'].join(separator),
      headings.map((name) => `"${name}"`).join(separator),
    )
    lines.push(
      ['"TS"', ...spelt.map((unit) => `"${unit}"`)].join(separator),
      ['""', ...spelt.map(() => '"Avg"')].join(separator),
    )
  } else if (header) {
    lines.push(headings.join(separator))
    if (unitPlace === 'row') lines.push([...layout.columns.map(() => ''), ...spelt].join(separator))
  }
  for (const row of rows) lines.push(row.join(separator))
  const text = layout.form === 'json' ? jsonOf(headings, rows, comma) : `${lines.join('\n')}\n`
  const how = [
    names.temp,
    units.temp.spelt,
    units.wind.spelt,
    units.sun.spelt,
    `units ${unitPlace}`,
    `separator ${JSON.stringify(separator)}`,
    comma ? 'decimal comma' : '',
    layout.name,
    encoding,
    clock,
    ending ? 'ending' : 'beginning',
    header ? '' : 'no header',
    missing === '' ? '' : `missing ${missing}`,
  ]
    .filter((part) => part !== '')
    .join(', ')
  return { bytes: encoded(text, encoding), how }
}

/** Columns of numbers, and of text where they are none. */
function jsonOf(names: readonly string[], rows: readonly (readonly string[])[], comma: boolean): string {
  const plain = (cell: string): string | number | null => {
    const text = comma ? cell.replace(',', '.') : cell
    return text === '' || text === 'NaN' ? null : Number.isFinite(Number(text)) ? Number(text) : text
  }
  const hourly = Object.fromEntries(names.map((name, at) => [name, rows.map((row) => plain(row[at]!))]))
  return JSON.stringify({ hourly })
}

function encoded(text: string, encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252'): Uint8Array {
  if (encoding === 'UTF-8') return new TextEncoder().encode(text)
  if (encoding === 'Windows-1252') return Uint8Array.from(Buffer.from(text, 'latin1'))
  return Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(text, 'utf16le')])
}
