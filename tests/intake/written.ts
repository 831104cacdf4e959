/** Tables written from a known year in many ways: what the reading must get right, or ask about. */
import type { RandomSource } from '#model/basis/numbers'
import type { WeatherRecord } from '#model/outdoors/weather'

export interface Written {
  readonly text: string
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
  const shift_h = (clock === 'local' ? 0 : -record.site.utcOffset_h) + (stamp === 'ending' ? 1 : 0)
  const timeName = clock === 'UTC named' ? 'time (UTC)' : pick(random, ['time', 'Date', 'timestamp'])
  const headed = (column: Column): string =>
    unitPlace === 'bracket' && column.unit !== null ? `${column.name} (${column.unit.spelt})` : column.name
  const lines: string[] = []
  if (preamble)
    lines.push(
      `# Station: made up`,
      `# Latitude: ${record.site.latitude_deg}`,
      `# Longitude: ${record.site.longitude_deg}`,
    )
  if (header) {
    lines.push([timeName, ...order.map(headed)].join(separator))
    if (unitPlace === 'row') lines.push(['', ...order.map(({ unit }) => unit?.spelt ?? '')].join(separator))
  }
  for (let h = 0; h < record.hours; h++) {
    const when = new Date(Date.UTC(2023, 0, 1) + (h + shift_h) * 3.6e6).toISOString()
    lines.push(
      [`${when.slice(0, 10)} ${when.slice(11, 16)}`, ...order.map(({ at }) => at(h))].join(separator),
    )
  }
  const how = [
    names.temp,
    units.temp.spelt,
    units.wind.spelt,
    units.sun.spelt,
    `units ${unitPlace}`,
    `separator ${JSON.stringify(separator)}`,
    comma ? 'decimal comma' : '',
    clock,
    stamp,
    header ? '' : 'no header',
    missing === '' ? '' : `missing ${missing}`,
  ]
    .filter((part) => part !== '')
    .join(', ')
  return { text: `${lines.join('\n')}\n`, how }
}
