import { readFileSync } from 'node:fs'
import { inflateRawSync } from 'node:zlib'
import { describe, expect, test } from 'vitest'
import { PLACES, packSample, readSampleCsv, unpackSample } from '#model/outdoors/climate'

const FOLDER = new URL('../../../../climate-samples/', import.meta.url)
const shipped = (file: string) => readFileSync(new URL(file, FOLDER))

describe('a sample packed for the page', () => {
  test.each(PLACES.map(({ id }) => [id]))('%s: the table’s own digits, in at most 60 kB', (id) => {
    const packed = shipped(`${id}.bin`)
    expect(packed.length).toBeLessThan(60_000)
    const fromTable = readSampleCsv(shipped(`${id}.csv`).toString('utf8'), `${id}.csv`)
    expect(unpackSample(inflateRawSync(packed), `${id}.csv`)).toEqual(fromTable)
  })

  const record = readSampleCsv(shipped('continental.csv').toString('utf8'), 'continental.csv')

  test('a value that does not fit is refused when it is packed', () => {
    const pressure_Pa = record.pressure_Pa.slice()
    pressure_Pa[17] = 3e5
    expect(() => packSample({ ...record, pressure_Pa }, 'x')).toThrow(/pressure_Pa is 300000 in hour 17/)
    expect(() => packSample({ ...record, hours: 24 }, 'x')).toThrow(/hours is 24/)
  })

  test('bytes cut short are refused when they are read', () => {
    const bytes = packSample(record, 'x')
    expect(() => unpackSample(bytes.subarray(0, -1), 'short.csv')).toThrow(/short\.csv has \d+ bytes/)
  })
})
