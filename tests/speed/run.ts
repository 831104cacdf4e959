import { inBrowser } from './browser-lines.ts'
import { sampleClimate } from './climate-lines.ts'
import { search } from './decide-lines.ts'
import { growth, memory } from './growth-lines.ts'
import { makeCase } from './made.ts'
import { designMap } from './map-lines.ts'
import { nearSizing } from './near-lines.ts'
import { placeYears } from './place-lines.ts'
import { ranges } from './range-lines.ts'
import { sizing } from './sizing-lines.ts'
import { soak } from './soak-lines.ts'
import { starting } from './start-lines.ts'
import { printTable, type Line } from './table.ts'
import { againstC } from './twin-lines.ts'
import { yearRows, againstOdex, overThreeNodes, reduction } from './year-lines.ts'

/**
 * The bench: `npm run -s bench`, or `npm run -s bench -- year map` for some of its parts; `tests` times the unit tests as well. Times
 * are CPU times but for the page's, so that other work on the machine does not count.
 */
const PARTS: Readonly<Record<string, () => readonly Line[] | Promise<readonly Line[]>>> = {
  year: () => {
    const made = makeCase()
    return [...againstC(made), ...yearRows(made), overThreeNodes(made), againstOdex(made), reduction(made)]
  },
  sizing: () => [...nearSizing(), ...sizing(makeCase())],
  range: () => ranges(makeCase()),
  map: () => designMap(makeCase()),
  decide: () => search(),
  growth: () => growth(makeCase()),
  memory: () => memory(makeCase()),
  climates: sampleClimate,
  place: placeYears,
  soak,
  start: () => starting(chosen.includes('tests')),
  browser: inBrowser,
}

const chosen = process.argv.slice(2)
const unknown = chosen.filter((word) => !(word in PARTS) && word !== 'tests')
if (unknown.length > 0) {
  console.error(
    `Usage: npm run -s bench -- [${Object.keys(PARTS).join('|')}|tests …], not ${unknown.join(' ')}.`,
  )
  process.exit(2)
}
const parts = chosen.filter((word) => word !== 'tests')
const lines: Line[] = []
const took_s = new Map<string, number>()
for (const [name, measured] of Object.entries(PARTS)) {
  if (parts.length > 0 && !parts.includes(name)) continue
  console.error(`… ${name}`)
  const start = performance.now()
  lines.push(...(await measured()))
  took_s.set(name, (performance.now() - start) / 1e3)
}
await printTable(lines)
const parts_s = [...took_s].map(([name, s]) => `${name} ${s.toFixed(0)} s`).join(', ')
console.log(`taken by the parts: ${parts_s}; all ${(performance.now() / 6e4).toFixed(1)} min`)
