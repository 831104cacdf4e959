import type { Site } from '#model/outdoors/weather'
import { splitLine } from './split.ts'

const NUMBER = String.raw`([-+]?\d+(?:\.\d+)?)`
const gap = (upTo: number): string => String.raw`[^\d\-+\n]{0,${upTo}}`
/** An angle by its name, the side of the Earth before or behind the number: "Latitude: S 33.9", "lat 33.9 S". */
const angle = (name: string, sides: string): RegExp =>
  new RegExp(
    String.raw`\b${name}(?:_deg)?\b${gap(40)}?(?:\b([${sides}])\s*)?${NUMBER}\s*°?\s*([${sides}])?\b`,
    'i',
  )
const LATITUDE = angle('lat(?:itude)?', 'NS')
const LONGITUDE = angle('lon(?:g|gitude)?', 'EWO')
/** A unit in brackets behind the name of an angle: "Latitude [1°N]", "LON(east)". */
const UNIT_BRACKET = /\b((?:lat|lon)[a-z]*)\s*[([][^)\]\n]{1,16}[)\]]/gi
const ALTITUDE = new RegExp(
  String.raw`\b(?:elev(?:ation)?|alt(?:itude)?|h(?:ö|oe)he)(?:_m)?\b${gap(30)}()${NUMBER}`,
  'i',
)
const OFFSET = new RegExp(
  String.raw`\b(?:utc ?offset(?:_h)?|time ?zone|utcOffset_h|tz)\b[^\d\-+\n]{0,20}()${NUMBER}`,
  'i',
)
const NAME = /\b(?:station|site|name|location|place|ort)\s*[:=]\s*([^\n;,]+)/i

/** What the lines above a table say about the place. Numbers outside their range are passed over. */
export function siteNotes(preamble: readonly string[]): Partial<Site> {
  const lines = preamble.map((line) => line.replace(/^\s*(#+|!|%|\/\/)\s*/, '').replace(UNIT_BRACKET, '$1'))
  const text = lines.join('\n')
  const zipped = namesOverValues(lines)
  const read = (pattern: RegExp, name: RegExp, within: number): number | undefined => {
    const found = pattern.exec(text)
    const value =
      zippedValue(zipped, name) ??
      (found === null ? NaN : Number(found[2]) * (/[SW]/i.test(found[1] ?? found[3] ?? '') ? -1 : 1))
    return Math.abs(value) <= within ? value : undefined
  }
  const offset = zippedValue(zipped, /^utc_offset_seconds$/)
  const name = NAME.exec(text)?.[1]?.trim()
  const site = {
    name: name === '' ? undefined : name,
    latitude_deg: sexagesimal(text, /\blat/i, /[NS]/i, 90) ?? read(LATITUDE, /^lat(itude)?\b/i, 90),
    longitude_deg: sexagesimal(text, /\blon/i, /[EWO]/i, 180) ?? read(LONGITUDE, /^lon(g|gitude)?\b/i, 180),
    altitude_m: heightInFeet_m(text) ?? read(ALTITUDE, /^(elev(ation)?|alt(itude)?)\b/i, 9000),
    utcOffset_h: offset === undefined ? read(OFFSET, /^(time ?zone|tz|utc ?offset)$/i, 14) : offset / 3600,
  }
  return Object.fromEntries(Object.entries(site).filter(([, value]) => value !== undefined))
}

/** Degrees and minutes, seconds where they are given: 35°50'24"N. */
const SEXAGESIMAL =
  /(\d{1,3})\s*(?:°|º|deg|d)\s*(\d{1,2}(?:\.\d+)?)\s*(?:['′’]|min|m)\s*(?:(\d{1,2}(?:\.\d+)?)\s*(?:["″”]|''|sec|s))?\s*([NSEWO])?/i

/** An angle in degrees and minutes on a line that names it, decimal degrees; undefined when there is none. */
function sexagesimal(text: string, name: RegExp, sides: RegExp, within: number): number | undefined {
  for (const line of text.split('\n')) {
    const from = line.search(name)
    if (from < 0) continue
    const found = SEXAGESIMAL.exec(line.slice(from))
    if (found === null || (found[4] !== undefined && !sides.test(found[4]))) continue
    const size_deg = Number(found[1]) + Number(found[2]) / 60 + Number(found[3] ?? 0) / 3600
    const south = /[SW]/i.test(found[4] ?? '')
    return size_deg <= within ? (south ? -size_deg : size_deg) : undefined
  }
  return undefined
}

const FEET = /\b(?:elev(?:ation)?|alt(?:itude)?)\b[^\d\n-]{0,30}(-?\d+(?:\.\d+)?)\s*(?:ft|feet|foot|['′])/i
const IN_FEET = /\b(?:elev(?:ation)?|alt(?:itude)?)_?\s*[([]?\s*(?:ft|feet)\b[^\d\n-]{0,20}(-?\d+(?:\.\d+)?)/i

function heightInFeet_m(text: string): number | undefined {
  const found = FEET.exec(text) ?? IN_FEET.exec(text)
  return found === null ? undefined : Number(found[1]) * 0.3048
}

/** Pairs of a line of names and the line of values under it. */
function namesOverValues(lines: readonly string[]): ReadonlyMap<string, string> {
  const pairs = new Map<string, string>()
  for (let i = 0; i + 1 < lines.length; i += 1) {
    if (!/\blat/i.test(lines[i]!)) continue
    for (const separator of [',', ';', '\t', 'blanks'] as const) {
      const names = splitLine(lines[i]!, separator)
      const values = splitLine(lines[i + 1]!, separator)
      if (
        names.length > 1 &&
        (separator === 'blanks' ? values.length >= names.length : values.length === names.length) &&
        values.some((value) => Number.isFinite(Number(value)))
      ) {
        names.forEach((name, at) => pairs.set(name, values[at]!))
        return pairs
      }
    }
  }
  return pairs
}

function zippedValue(pairs: ReadonlyMap<string, string>, name: RegExp): number | undefined {
  for (const [key, value] of pairs) {
    if (name.test(key.trim()) && value !== '' && Number.isFinite(Number(value))) return Number(value)
  }
  return undefined
}

/** Standard times that mean one zone only. */
const ZONES = [
  ['MST', -7],
  ['PST', -8],
  ['EST', -5],
  ['AKST', -9],
  ['HST', -10],
  ['JST', 9],
  ['KST', 9],
  ['AEST', 10],
  ['AWST', 8],
  ['NZST', 12],
] as const

/** The file's clock minus UTC as header or preamble name it: "time(UTC)", "UTC+1", "GMT"; null when they do not. */
export function namedClock_h(texts: readonly string[]): number | null {
  for (const text of texts) {
    const found = /(?:^|[^a-z])(?:utc|gmt|ut(?=[^a-z]|$))\s*([+\-−]\s*\d{1,2})?(?![a-z_ ]*off)/i.exec(text)
    if (found) return found[1] === undefined ? 0 : Number(found[1].replace('−', '-').replace(/\s/g, ''))
    if (/\b(mez|cet)\b/i.test(text)) return 1
    for (const [zone, offset_h] of ZONES)
      if (new RegExp(`[(\\s]${zone}[)\\s,]`).test(`${text} `)) return offset_h
  }
  return null
}
