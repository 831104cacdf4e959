import { readFileSync } from 'node:fs'
import { gzipSync, inflateRawSync } from 'node:zlib'
import { readSampleCsv, unpackSample } from '#model/outdoors/climate'
import { median, timed_s } from './measure.ts'
import type { Row } from './table.ts'

const FOLDER = new URL('../../climate-samples/', import.meta.url)
const RUNS = 9

/** A sample climate for the page: its bytes on the way, and its reading against that of the table with the same digits. */
export function sampleClimate(): Row[] {
  const packed = readFileSync(new URL('continental.bin', FOLDER))
  const table = readFileSync(new URL('continental.csv', FOLDER))
  const packed_s = timed_s(() => unpackSample(inflateRawSync(packed), 'continental'), RUNS)
  const table_s = timed_s(() => readSampleCsv(table.toString('utf8'), 'continental.csv'), RUNS)
  return [
    {
      name: 'sample climate, bytes of the packed file / of the compressed table',
      reach: '≤ 0.5',
      unit: '×',
      values: [packed.length / gzipSync(table, { level: 9 }).length],
      met: (value) => value <= 0.5,
    },
    {
      name: 'sample climate, packed / table, reading',
      reach: '≤ 0.15',
      unit: '×',
      values: packed_s.map((value) => value / median(table_s)),
      met: (value) => value <= 0.15,
    },
  ]
}
