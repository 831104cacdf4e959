import { YEAR_HOURS } from '#model/basis/hours'
import { WEATHER_COLUMNS, type WeatherColumn, type WeatherRecord } from '#model/outdoors/weather'
import { SAMPLE_DECIMALS, sampleRecord } from './sample-format.ts'

/**
 * A sample climate as bytes that compress well, for the page: a line of JSON about the place, a line break, then for
 * every column of the sample file its 8760 values as whole numbers of the file's last decimal, differenced in time,
 * sign folded into the last bit, all low bytes before all high bytes. Exact: the file's own digits come back.
 */

/** How often a column is differenced in time: twice where it runs smoothly, not at all where it stops at night. */
const DIFFERENCED: Readonly<Record<WeatherColumn, 0 | 1 | 2>> = {
  airTemp_C: 2,
  dewPoint_C: 1,
  pressure_Pa: 2,
  wind_ms: 1,
  globalHorizontal_Wm2: 0,
  directNormal_Wm2: 0,
  diffuseHorizontal_Wm2: 0,
  cloud_frac: 1,
}

/** What the first value of a column is counted from, in whole numbers of its last decimal; 0 where it is not named. */
const COUNTED_FROM: Partial<Readonly<Record<WeatherColumn, number>>> = { pressure_Pa: 85_000 }

const LINE_BREAK = 10
const COLUMN_BYTES = 2 * YEAR_HOURS

/**
 * Packs one sample climate.
 * @param record      8760 hours as they are read from the sample's file
 * @param description the file's line on the climate
 * @throws RangeError when the record is not a sample's year, or a difference does not fit two bytes
 */
export function packSample(record: WeatherRecord, description: string): Uint8Array {
  if (record.hours !== YEAR_HOURS) {
    throw new RangeError(`packSample: hours is ${record.hours}, must be ${YEAR_HOURS}`)
  }
  const head = ascii(JSON.stringify({ site: record.site, description }))
  const bytes = new Uint8Array(head.length + 1 + WEATHER_COLUMNS.length * COLUMN_BYTES)
  bytes.set(head)
  bytes[head.length] = LINE_BREAK
  WEATHER_COLUMNS.forEach((name, index) => {
    const at = head.length + 1 + index * COLUMN_BYTES
    packColumn(record[name], name, bytes.subarray(at, at + COLUMN_BYTES))
  })
  return bytes
}

/**
 * The record of a packed sample climate.
 * @param file name of the sample, for the notes on where its columns come from
 * @throws RangeError when the bytes are not a packed sample
 */
export function unpackSample(bytes: Uint8Array, file: string): WeatherRecord {
  const headEnd = bytes.indexOf(LINE_BREAK)
  if (headEnd < 0 || bytes.length !== headEnd + 1 + WEATHER_COLUMNS.length * COLUMN_BYTES) {
    throw new RangeError(`unpackSample: ${file} has ${bytes.length} bytes, which is no packed sample`)
  }
  const head = JSON.parse(String.fromCharCode(...bytes.subarray(0, headEnd))) as {
    site: WeatherRecord['site']
    description: string
  }
  const columns = WEATHER_COLUMNS.map((name, index) => {
    const at = headEnd + 1 + index * COLUMN_BYTES
    return [name, unpackColumn(bytes.subarray(at, at + COLUMN_BYTES), name)] as const
  })
  return sampleRecord(
    head.site,
    Object.fromEntries(columns) as Record<WeatherColumn, Float64Array>,
    head.description,
    file,
  )
}

/** JSON as bytes; letters beyond ASCII by their escapes. */
function ascii(json: string): Uint8Array {
  const escaped = json.replace(
    /[^\x20-\x7e]/g,
    (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`,
  )
  return Uint8Array.from(escaped, (letter) => letter.charCodeAt(0))
}

function packColumn(values: Float64Array, name: WeatherColumn, into: Uint8Array): void {
  const [scale, order] = [10 ** SAMPLE_DECIMALS[name], DIFFERENCED[name]]
  let [expected, before] = [COUNTED_FROM[name] ?? 0, NaN]
  for (let hour = 0; hour < YEAR_HOURS; hour += 1) {
    const whole = Math.round(values[hour]! * scale)
    const difference = whole - expected
    const folded = difference < 0 ? -2 * difference - 1 : 2 * difference
    if (!(folded <= 0xffff)) throw new RangeError(`packSample: ${name} is ${values[hour]} in hour ${hour}`)
    into[hour] = folded & 0xff
    into[YEAR_HOURS + hour] = folded >> 8
    if (order > 0) expected = order === 1 || hour === 0 ? whole : 2 * whole - before
    before = whole
  }
}

function unpackColumn(bytes: Uint8Array, name: WeatherColumn): Float64Array {
  const values = new Float64Array(YEAR_HOURS)
  const [scale, order] = [10 ** SAMPLE_DECIMALS[name], DIFFERENCED[name]]
  let [expected, before] = [COUNTED_FROM[name] ?? 0, 0]
  for (let hour = 0; hour < YEAR_HOURS; hour += 1) {
    const folded = bytes[hour]! | (bytes[YEAR_HOURS + hour]! << 8)
    const whole = expected + ((folded >>> 1) ^ -(folded & 1))
    values[hour] = whole / scale
    if (order > 0) expected = order === 1 || hour === 0 ? whole : 2 * whole - before
    before = whole
  }
  return values
}
