import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { readSampleCsv } from '#model/outdoors/climate'
import { openWeather } from '#model/outdoors/intake'
import { splitLine } from '#inside/model/outdoors/intake/table/split.ts'

/** A file as a browser's picker hands it over. */
export interface PickedFile {
  readonly name: string
  readonly mimeType: string
  readonly buffer: Buffer
}

export const picked = (name: string, text: string | Buffer): PickedFile => ({
  name,
  mimeType: 'text/plain',
  buffer: Buffer.from(text),
})

const SAMPLES = new URL('../../climate-samples/', import.meta.url)
export const sampleName = 'continental'
export const sample = readSampleCsv(readFileSync(new URL(`${sampleName}.csv`, SAMPLES), 'utf8'), sampleName)

const two = (value: number) => String(value).padStart(2, '0')
const comma = (value: number, decimals: number) => value.toFixed(decimals).replace('.', ',')

/** The sample as a German spreadsheet would save it: other headers and units, semicolons, decimal commas, no place. */
export function resavedSample(): string {
  const rows = Array.from({ length: sample.hours }, (_, h) => {
    const at = new Date(Date.UTC(2019, 0, 1, h))
    return [
      `${two(at.getUTCDate())}.${two(at.getUTCMonth() + 1)}.${at.getUTCFullYear()} ${two(at.getUTCHours())}:00`,
      comma(sample.airTemp_C[h]!, 1),
      comma(sample.dewPoint_C[h]!, 1),
      comma(sample.pressure_Pa[h]! / 100, 1),
      comma(sample.wind_ms[h]! * 3.6, 2),
      comma(sample.globalHorizontal_Wm2[h]!, 0),
    ].join(';')
  })
  const header =
    'Zeit;Lufttemperatur [°C];Taupunkt [°C];Luftdruck [hPa];Windgeschwindigkeit [km/h];Globalstrahlung [W/m²]'
  return `\uFEFF${[header, ...rows].join('\r\n')}\r\n`
}

const DATA = new URL('../../../shared/data/', import.meta.url)
/** Files of public data sets beside the repository; none are committed. */
export const DATA_FILES = [
  'typical-year-36N-80W.csv',
  'typical-year-45N-8E.csv',
  'half-hourly-41N-109W-2017.csv',
  'surfrad-slv16001.dat',
  'ship-tropical-atlantic.txt',
  'alpine-winter-47N-9E.txt',
].filter((name) => existsSync(new URL(name, DATA)))

/** Latitude, longitude and height of the one file that names no place, from the list of the data's sources. */
export const PLACES: Readonly<Record<string, readonly [number, number, number]>> = {
  'alpine-winter-47N-9E.txt': [47.05, 8.72, 1200],
}

export const dataFile = (name: string): PickedFile => picked(name, readFileSync(new URL(name, DATA)))

/** A data file without its header, and what its known layout says of it. */
export function strippedFile(name: string): {
  readonly file: PickedFile
  readonly quantities: readonly string[]
} {
  const text = readFileSync(new URL(name, DATA), 'utf8')
  const { table, columns } = openWeather(text, { file: name }).mapping!
  const rows = text
    .split(/\r?\n/)
    .slice(table.firstDataLine - 1)
    .filter((line) => splitLine(line, table.separator).length === columns.length)
  return {
    file: picked(`stripped-${name}`, rows.join('\n')),
    quantities: columns.map(({ quantity }) => quantity),
  }
}

/** Writes an invented year of one-minute rows, about 60 MB; gives its size in bytes. */
export function writeMinuteYear(path: string): number {
  const header =
    'time,air temperature (C),relative humidity (%),wind speed (m/s),global irradiance (W/m2),pressure (hPa)'
  const lines = [`${header},panel (C),tank (C),remark`]
  for (let minute = 0; minute < 525_600; minute += 1) {
    const stamp = new Date(Date.UTC(2019, 0, 1, 0, minute)).toISOString().slice(0, 19)
    const sun = Math.max(0, Math.sin(((minute % 1440) / 1440 - 0.25) * 2 * Math.PI))
    const numbers = [
      15 + 8 * sun,
      60 - 20 * sun,
      2 + (minute % 11) / 10,
      800 * sun,
      1013 + (minute % 13) / 10,
    ]
    const others = [14 + 9 * sun, 16 + (minute % 3) / 10].map((value) => value.toFixed(14))
    lines.push([stamp, ...numbers.map((value) => value.toFixed(4)), ...others, 'an invented row'].join(','))
  }
  writeFileSync(path, lines.join('\n'))
  return statSync(path).size
}
