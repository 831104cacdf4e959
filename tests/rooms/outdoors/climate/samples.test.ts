/**
 * The shipped sample climates against what their places ask for. The targets are our own, so these are checks of
 * the generator, not of any climate on earth; where a figure comes from outside, the test says so.
 */
import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import {
  inventClimate,
  PLACES,
  readSampleCsv,
  writeSampleCsv,
  sampleEntry,
  type SampleEntry,
} from '#model/outdoors/climate'

const FOLDER = new URL('../../../../climate-samples/', import.meta.url)
const shipped = (file: string) => readFileSync(new URL(file, FOLDER), 'utf8')
const index = JSON.parse(shipped('index.json')) as SampleEntry[]

describe('the shipped files are what the seeded generator makes', () => {
  test.each(PLACES.map((place) => [place.id, place] as const))('%s, byte for byte', (id, place) => {
    const again = writeSampleCsv(inventClimate(place), `${place.type}. ${place.description}`)
    expect(again === shipped(`${id}.csv`), `${id}.csv differs: run the climates script`).toBe(true)
  })

  test('the index lists every file, with means of the file itself to the rounding of 0.1 K', () => {
    expect(
      readdirSync(FOLDER)
        .filter((name) => name.endsWith('.csv'))
        .sort(),
    ).toEqual(index.map((entry) => entry.file).sort())
    expect(index).toEqual(PLACES.map((place) => sampleEntry(place, inventClimate(place))))
    for (const [place, entry] of PLACES.map((place, at) => [place, index[at]!] as const)) {
      const fromFile = sampleEntry(place, readSampleCsv(shipped(entry.file), entry.file))
      expect(Math.abs(fromFile.annualMean_C - entry.annualMean_C)).toBeLessThan(0.11)
    }
  })
})

describe('what ships', () => {
  test('the ten climate types that were asked for, and more', () => {
    const asked = [
      'hot desert',
      'high dry plateau',
      'Mediterranean coast',
      'semi-arid, south of the equator',
      'humid subtropical',
      'wet tropics',
      'tropical savanna',
      'mild ocean coast',
      'continental',
      'cold continental',
    ]
    expect(index.map((entry) => entry.type)).toEqual(expect.arrayContaining(asked))
  })

  test.each(index.map((entry) => [entry.file]))('%s says it is invented and stays under 550 kB', (file) => {
    const text = shipped(file)
    expect(text.split('\n')[0]).toContain('INVENTED PLACE')
    expect(text).toContain('seeded generator')
    expect(Buffer.byteLength(text)).toBeLessThan(550_000)
    expect(readSampleCsv(text, file).basis).toContain('No such place was measured')
  })

  test('no file has a longwave column, which would win over the sky model', () => {
    for (const { file } of index) {
      expect(readSampleCsv(shipped(file), file).skyLongwave_Wm2).toBeUndefined()
    }
  })
})
