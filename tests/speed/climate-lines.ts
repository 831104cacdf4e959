import { readFileSync } from 'node:fs'
import { inflateRawSync } from 'node:zlib'
import { readSampleCsv, unpackSample } from '#model/outdoors/climate'
import { sampleNames } from '../../src/shell/samples.ts'
import type { WeatherRecord } from '#model/outdoors/weather'
import { timed_s } from './measure.ts'
import type { Row } from './table.ts'

const FOLDER = new URL('../../climate-samples/', import.meta.url)
const RUNS = 9

/** Bytes on the way and milliseconds to read of the largest packed climate, and its columns against the table with the same digits. */
export function sampleClimate(): Row[] {
  const packed = readFileSync(new URL('continental.bin', FOLDER))
  const table = readFileSync(new URL('continental.csv', FOLDER)).toString('utf8')
  const read = (): WeatherRecord => unpackSample(inflateRawSync(packed), 'continental')
  const sizes_kB = sampleNames().map((name) => readFileSync(new URL(`${name}.bin`, FOLDER)).length / 1e3)
  const [a, b] = [read(), readSampleCsv(table, 'continental.csv')]
  const columns = Object.entries(a).filter(([, column]) => column instanceof Float64Array)
  const other = new Map<string, unknown>(Object.entries(b))
  const differing = columns.reduce((sum, [name, column]) => {
    const same = other.get(name) as Float64Array
    return sum + (column as Float64Array).filter((value, i) => !Object.is(value, same[i])).length
  }, 0)
  return [
    {
      name: 'sample climates as sent, the largest of twelve',
      goal: '≤ 60',
      unit: 'kB',
      values: [Math.max(...sizes_kB)],
      met: (kB) => kB <= 60,
      why: 'The hours of one climate compress less.',
      work: read,
    },
    {
      name: 'sample climate, inflated and read',
      goal: '≤ 8',
      unit: 'ms',
      values: timed_s(read, RUNS).map((s) => 1e3 * s),
      met: (ms) => ms <= 8,
      why: 'Its columns are undone one by one.',
      work: read,
    },
    {
      name: `its values unlike those of the table of the same digits, of ${columns.length} columns`,
      goal: '0',
      unit: '',
      values: [differing],
      met: (count) => count === 0,
      why: 'Packed and printed climate are rounded differently.',
      work: read,
    },
  ]
}
