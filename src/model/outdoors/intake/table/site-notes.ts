import type { Site } from '#model/outdoors/weather'
import { splitLine } from './split.ts'

const NUMBER = String.raw`([-+]?\d+(?:\.\d+)?)`
const gap = (upTo: number): string => String.raw`[^\d\-+\n]{0,${upTo}}`
const LATITUDE = new RegExp(String.raw`\blat(?:itude)?(?:_deg)?\b${gap(40)}${NUMBER}\s*°?\s*([NS])?\b`, 'i')
const LONGITUDE = new RegExp(
  String.raw`\blon(?:g|gitude)?(?:_deg)?\b${gap(40)}${NUMBER}\s*°?\s*([EWO])?\b`,
  'i',
)
const ALTITUDE = new RegExp(
  String.raw`\b(?:elev(?:ation)?|alt(?:itude)?|h(?:ö|oe)he)(?:_m)?\b${gap(30)}${NUMBER}`,
  'i',
)
const OFFSET = new RegExp(
  String.raw`\b(?:utc ?offset(?:_h)?|time ?zone|utcOffset_h|tz)\b[^\d\-+\n]{0,20}${NUMBER}`,
  'i',
)
const NAME = /\b(?:station|site|name|location|place|ort)\s*[:=]\s*([^\n;,]+)/i

/** What the lines above a table say about the place. Numbers outside their range are passed over. */
export function siteNotes(preamble: readonly string[]): Partial<Site> {
  const text = preamble.join('\n')
  const zipped = namesOverValues(preamble)
  const read = (pattern: RegExp, name: RegExp, within: number): number | undefined => {
    const found = pattern.exec(text)
    const value =
      zippedValue(zipped, name) ??
      (found === null ? NaN : Number(found[1]) * (/[SW]/i.test(found[2] ?? '') ? -1 : 1))
    return Math.abs(value) <= within ? value : undefined
  }
  const offset = zippedValue(zipped, /^utc_offset_seconds$/)
  const name = NAME.exec(text)?.[1]?.trim()
  const site = {
    name: name === '' ? undefined : name,
    latitude_deg: read(LATITUDE, /^lat(itude)?$/i, 90),
    longitude_deg: read(LONGITUDE, /^lon(g|gitude)?$/i, 180),
    altitude_m: read(ALTITUDE, /^(elev(ation)?|alt(itude)?)$/i, 9000),
    utcOffset_h: offset === undefined ? read(OFFSET, /^(time ?zone|tz|utc ?offset)$/i, 14) : offset / 3600,
  }
  return Object.fromEntries(Object.entries(site).filter(([, value]) => value !== undefined))
}

/** Pairs of a line of names and the line of values under it. */
function namesOverValues(lines: readonly string[]): ReadonlyMap<string, string> {
  const pairs = new Map<string, string>()
  for (let i = 0; i + 1 < lines.length; i += 1) {
    if (!/\blat/i.test(lines[i]!)) continue
    for (const separator of [',', ';', '\t'] as const) {
      const names = splitLine(lines[i]!, separator)
      const values = splitLine(lines[i + 1]!, separator)
      if (
        names.length > 1 &&
        names.length === values.length &&
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

/** The file's clock minus UTC as header or preamble name it: "time(UTC)", "UTC+1", "GMT"; null when they do not. */
export function namedClock_h(texts: readonly string[]): number | null {
  for (const text of texts) {
    const found = /(?:^|[^a-z])(?:utc|gmt)\s*([+-−]\s*\d{1,2})?(?![a-z_ ]*off)/i.exec(text)
    if (found) return found[1] === undefined ? 0 : Number(found[1].replace('−', '-').replace(/\s/g, ''))
    if (/\b(mez|cet)\b/i.test(text)) return 1
  }
  return null
}
