/**
 * `npm run -s soak [-- N [seed]]`: seeded random scenarios in the sample climates. Each must simulate a year without
 * NaN or runaway and with closed books; some are sized, repeated with a fresh memory, or asked whether more area, a
 * better coating, a better kept tank or a lower limit ever hurts. Closes with `N scenarios, K failures`.
 */
import fc from 'fast-check'
import type { Scenario } from '#model/design/scenario'
import { createStudies } from '#studies/index.ts'
import { sampleNames, sampleWeather } from '../../src/shell/samples.ts'
import { randomScenario } from '../rooms/design/scenario/random-scenario.ts'
import type { Comparisons } from './compared.ts'
import { complaints, type Complaint } from './complaints.ts'

const USUAL_SCENARIOS = 5000
const USUAL_SEED = 20261125
/** Worst things shown one by one; the rest is only counted. */
const SHOWN = 20

const count = Number(process.argv[2] ?? USUAL_SCENARIOS)
const seed = Number(process.argv[3] ?? USUAL_SEED)
if (!Number.isInteger(count) || count < 1 || !Number.isInteger(seed)) {
  console.error('Usage: npm run -s soak -- [number of scenarios] [seed], both whole numbers.')
  process.exit(2)
}

const climates = sampleNames().map((name) => ({ name, weather: sampleWeather(name) }))
const scenarios: readonly Scenario[] = fc.sample(randomScenario, { numRuns: count, seed })
const studies = createStudies()
const found: Complaint[] = []
const comparisons: Comparisons = { made: 0 }
let failures = 0
const started = Date.now()
scenarios.forEach((scenario, i) => {
  const climate = climates[i % climates.length]!
  const heard = complaints(studies, scenario, climate, i, comparisons)
  if (heard.length > 0) failures++
  found.push(...heard)
  if ((i + 1) % 250 === 0) {
    const minutes = (Date.now() - started) / 60_000
    console.error(`${i + 1} of ${count}, ${failures} failures, ${minutes.toFixed(1)} min`)
  }
})
for (const { index, climate, what } of found.slice(0, SHOWN))
  console.log(`scenario ${index} in ${climate}: ${what}`)
if (found.length > SHOWN) console.log(`… and ${found.length - SHOWN} more`)
console.log(`${comparisons.made} comparisons with one that should be no worse`)
console.log(`${count} scenarios, ${failures} failures`)
process.exitCode = failures > 0 ? 1 : 0
