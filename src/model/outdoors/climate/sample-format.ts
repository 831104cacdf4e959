import { MONTH_DAYS, YEAR_HOURS, HOUR_MS } from '#model/basis/hours'
import { stop, type Place } from '#model/basis/words'
import { WEATHER_COLUMNS, type Site, type WeatherColumn, type WeatherRecord } from '#model/outdoors/weather'

/**
 * The layout of Duskbank's own sample climates: `#` lines that say the place is invented and where it would
 * lie, one header row, then 8760 rows. Each row covers the hour that *begins* at its month, day and hour,
 * local standard time; radiation is the value at the middle of that hour.
 *
 * There is no longwave column on purpose: an invented one would win over the sky model as a measurement does.
 */
const TIME_COLUMNS = ['month', 'day', 'hour'] as const
const HEADER = [...TIME_COLUMNS, ...WEATHER_COLUMNS].join(',')
const FIELDS = TIME_COLUMNS.length + WEATHER_COLUMNS.length

/** Decimals kept in the file. Direct and diffuse are whole W/m²; global keeps one so that the three close. */
export const SAMPLE_DECIMALS: Readonly<Record<WeatherColumn, number>> = {
  airTemp_C: 1,
  dewPoint_C: 1,
  pressure_Pa: 0,
  wind_ms: 1,
  globalHorizontal_Wm2: 1,
  directNormal_Wm2: 0,
  diffuseHorizontal_Wm2: 0,
  cloud_frac: 2,
}

/** What a value must lie between to be weather at all. */
const LIMITS: Readonly<Record<WeatherColumn, readonly [number, number]>> = {
  airTemp_C: [-90, 65],
  dewPoint_C: [-100, 45],
  pressure_Pa: [30_000, 110_000],
  wind_ms: [0, 110],
  globalHorizontal_Wm2: [0, 1500],
  directNormal_Wm2: [0, 1450],
  diffuseHorizontal_Wm2: [0, 1000],
  cloud_frac: [0, 1],
}

const SITE_KEYS = {
  latitude_deg: [-90, 90],
  longitude_deg: [-180, 180],
  altitude_m: [-500, 9000],
  utcOffset_h: [-12, 14],
} as const
type SiteKey = keyof typeof SITE_KEYS

/** 2001-01-01T00:00Z: the nominal year of a sample, one without a leap day. */
const NOMINAL_YEAR_START_MS = 978_307_200_000

/** Month (1–12), day (1–31) and hour (0–23) of each hour of an 8760 h year, three numbers an hour. */
function calendar(): Uint8Array {
  const stamps = new Uint8Array(YEAR_HOURS * 3)
  let at = 0
  MONTH_DAYS.forEach((days, month) => {
    for (let day = 1; day <= days; day += 1) {
      for (let hour = 0; hour < 24; hour += 1) {
        stamps[at] = month + 1
        stamps[at + 1] = day
        stamps[at + 2] = hour
        at += 3
      }
    }
  })
  return stamps
}

/** Epoch milliseconds at which a sample's nominal year begins at a fixed offset from UTC. */
export function sampleStart_utcMs(utcOffset_h: number): number {
  return NOMINAL_YEAR_START_MS - utcOffset_h * HOUR_MS
}

/**
 * Writes one invented year in the sample layout.
 * @param record      8760 hours that begin at local midnight on 1 January, without longwave
 * @param description one line on the climate; line breaks become blanks
 * @throws RangeError when the record is not 8760 h long or holds a value that is not a number
 */
export function writeSampleCsv(record: WeatherRecord, description: string): string {
  if (record.hours !== YEAR_HOURS) {
    throw new RangeError(`writeSampleCsv: hours is ${record.hours}, must be ${YEAR_HOURS}`)
  }
  const { site } = record
  const lines = [
    '# INVENTED PLACE. Every number below comes from a seeded generator; none was measured anywhere.',
    '# Duskbank sample climate. A row is the hour that begins at its stamp, local standard time;',
    '# radiation is at the middle of that hour. Wind is at 10 m in open country.',
    `# description: ${oneLine(description)}`,
    `# name: ${oneLine(site.name)}`,
    ...(Object.keys(SITE_KEYS) as SiteKey[]).map((key) => `# ${key}: ${site[key]}`),
    HEADER,
  ]
  const stamps = calendar()
  const columns = WEATHER_COLUMNS.map((name) => ({ values: record[name], decimals: SAMPLE_DECIMALS[name] }))
  for (let hour = 0; hour < YEAR_HOURS; hour += 1) {
    let row = `${stamps[hour * 3]},${stamps[hour * 3 + 1]},${stamps[hour * 3 + 2]}`
    for (const { values, decimals } of columns) row += `,${rounded(values[hour]!, decimals)}`
    lines.push(row)
  }
  return `${lines.join('\n')}\n`
}

/**
 * Reads the sample layout; strict, because we wrote it.
 * @param text the whole file
 * @param file its name, for messages
 * @throws ProblemError with file, line and column where the file is not in the layout
 */
export function readSampleCsv(text: string, file: string): WeatherRecord {
  const lines = text.split('\n').map((line) => (line.endsWith('\r') ? line.slice(0, -1) : line))
  const headerAt = lines.findIndex((line) => !line.startsWith('#'))
  if (headerAt < 0 || lines[headerAt] !== HEADER) {
    throw malformed('The header row is missing or is not ours.', { file, line: Math.max(headerAt, 0) + 1 })
  }
  const notes = readNotes(lines.slice(0, headerAt))
  const site = readSite(notes, file)
  const columns = readRows(lines, headerAt + 1, file)
  return sampleRecord(site, columns, notes.get('description')?.value ?? site.name, file)
}

/**
 * The record of a sample climate from its columns.
 * @param file name of the sample, for the notes on where its columns come from
 */
export function sampleRecord(
  site: Site,
  columns: Record<WeatherColumn, Float64Array>,
  description: string,
  file: string,
): WeatherRecord {
  return {
    site,
    start_utcMs: sampleStart_utcMs(site.utcOffset_h),
    hours: YEAR_HOURS,
    radiationMiddle_h: 0.5,
    ...columns,
    origins: Object.fromEntries(
      WEATHER_COLUMNS.map((name) => [
        name,
        { kind: 'read', note: `Invented column ${name} of ${file}.`, filledHours: 0 },
      ]),
    ),
    basis: `Invented sample climate: ${description} No such place was measured.`,
  }
}

type Notes = ReadonlyMap<string, { readonly value: string; readonly line: number }>

function readNotes(lines: readonly string[]): Notes {
  const notes = new Map<string, { value: string; line: number }>()
  lines.forEach((line, index) => {
    const found = /^#\s*([A-Za-z_]+):\s*(.*)$/.exec(line)
    if (found) notes.set(found[1]!, { value: found[2]!.trim(), line: index + 1 })
  })
  return notes
}

function readSite(notes: Notes, file: string): Site {
  const value = (key: SiteKey): number => {
    const note = notes.get(key)
    if (note === undefined) throw malformed(`The header has no line "# ${key}: …".`, { file, column: key })
    const [lowest, highest] = SITE_KEYS[key]
    const number = note.value === '' ? NaN : Number(note.value)
    if (!(number >= lowest && number <= highest)) {
      throw malformed(`${key} is "${note.value}", outside ${lowest} to ${highest}.`, {
        file,
        line: note.line,
        column: key,
      })
    }
    return number
  }
  const name = notes.get('name')?.value
  if (!name) throw malformed('The header has no line "# name: …".', { file, column: 'name' })
  return {
    name,
    latitude_deg: value('latitude_deg'),
    longitude_deg: value('longitude_deg'),
    altitude_m: value('altitude_m'),
    utcOffset_h: value('utcOffset_h'),
  }
}

function readRows(
  lines: readonly string[],
  first: number,
  file: string,
): Record<WeatherColumn, Float64Array> {
  const rows = lines.length - first - (lines.at(-1) === '' ? 1 : 0)
  if (rows !== YEAR_HOURS) {
    throw malformed(`The table has ${rows} rows; a sample year has ${YEAR_HOURS}.`, {
      file,
      line: first + Math.min(rows, YEAR_HOURS) + 1,
    })
  }
  const stamps = calendar()
  const columns = WEATHER_COLUMNS.map(() => new Float64Array(YEAR_HOURS))
  for (let hour = 0; hour < YEAR_HOURS; hour += 1) {
    const place = { file, line: first + hour + 1 }
    const cells = lines[first + hour]!.split(',')
    if (cells.length !== FIELDS) {
      throw malformed(`The row has ${cells.length} fields; ${FIELDS} are expected.`, place)
    }
    checkStamp(cells, stamps, hour, place)
    WEATHER_COLUMNS.forEach((name, index) => {
      columns[index]![hour] = readCell(cells[TIME_COLUMNS.length + index]!, name, place)
    })
  }
  return Object.fromEntries(WEATHER_COLUMNS.map((name, index) => [name, columns[index]!])) as Record<
    WeatherColumn,
    Float64Array
  >
}

function checkStamp(cells: readonly string[], stamps: Uint8Array, hour: number, place: Place): void {
  TIME_COLUMNS.forEach((name, index) => {
    const wanted = stamps[hour * 3 + index]!
    if (Number(cells[index]) !== wanted || cells[index] === '') {
      throw malformed(`${name} is "${cells[index]}" where ${wanted} is due.`, { ...place, column: name })
    }
  })
}

function readCell(cell: string, name: WeatherColumn, place: Place): number {
  const value = cell === '' ? NaN : Number(cell)
  const [lowest, highest] = LIMITS[name]
  if (value >= lowest && value <= highest) return value
  throw malformed(`"${cell}" is not a number between ${lowest} and ${highest}.`, { ...place, column: name })
}

/** Fixed decimals without trailing zeros or a minus sign on zero. */
function rounded(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`writeSampleCsv: a value is ${value}, must be finite`)
  const text = String(Number(value.toFixed(decimals)))
  return text === '-0' ? '0' : text
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim()
}

function malformed(message: string, place: Place) {
  return stop(
    'sample-malformed',
    message,
    'Restore the sample file, or open it as any other weather file.',
    place,
  )
}
