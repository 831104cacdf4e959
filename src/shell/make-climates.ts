/**
 * Writes the invented sample climates and their index into `climate-samples/`. The generator is seeded, so an
 * unchanged generator gives unchanged files.
 */
import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { inventClimate, PLACES, writeSampleCsv, sampleEntry, type SampleEntry } from '#model/outdoors/climate'

const folder = fileURLToPath(new URL('../../climate-samples/', import.meta.url))
const entries: SampleEntry[] = []
for (const place of PLACES) {
  const record = inventClimate(place)
  const entry = sampleEntry(place, record)
  const csv = writeSampleCsv(record, `${place.type}. ${place.description}`)
  writeFileSync(`${folder}${entry.file}`, csv)
  entries.push(entry)
  console.log(`${entry.file}  ${Math.round(csv.length / 1000)} kB  ${place.site.name}`)
}
writeFileSync(`${folder}index.json`, `${JSON.stringify(entries, null, 2)}\n`)
