/**
 * Writes the invented sample climates, each as a table and packed for the page, and their index into `climate-samples/`. The generator is seeded, so an
 * unchanged generator gives unchanged files.
 */
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { deflateRawSync } from 'node:zlib'
import {
  inventClimate,
  packSample,
  PLACES,
  readSampleCsv,
  sampleEntry,
  type SampleEntry,
  writeSampleCsv,
} from '#model/outdoors/climate'

const folder = fileURLToPath(new URL('../../climate-samples/', import.meta.url))
const entries: SampleEntry[] = []
for (const place of PLACES) {
  const record = inventClimate(place)
  const entry = sampleEntry(place, record)
  const description = `${place.type}. ${place.description}`
  const csv = writeSampleCsv(record, description)
  const packed = deflateRawSync(packSample(readSampleCsv(csv, entry.file), description), { level: 9 })
  writeFileSync(`${folder}${entry.file}`, csv)
  writeFileSync(`${folder}${entry.id}.bin`, packed)
  entries.push(entry)
  console.log(
    `${entry.file}  ${Math.round(csv.length / 1000)} kB, packed ${Math.round(packed.length / 1000)} kB  ${place.site.name}`,
  )
}
writeFileSync(`${folder}index.json`, `${JSON.stringify(entries, null, 2)}\n`)
