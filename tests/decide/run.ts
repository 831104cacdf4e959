/**
 * `npm run -s decide-table [-- jobs | CLIMATE …]`: the first way, or the nearest, of every sample climate and four buildings;
 * or the three jobs, argued. Ends with exit code 1 where one has no way, or a job disagrees.
 */
import { wordingText } from '#model/basis/words'
import { defaultScenario, PRESETS, withPreset } from '#model/design/scenario'
import type { Decision } from '#studies/decide.ts'
import { decideShared } from '../../src/shell/decide-shared.ts'
import { sampleNames, sampleWeather } from '../../src/shell/samples.ts'
import { JOBS } from './jobs.ts'

const BUILDINGS = ['shed', 'workshop', 'bedroom', 'smallHouse'] as const
const words = process.argv.slice(2)

process.exitCode = words[0] === 'jobs' ? await jobs() : await table(words)

/** A line for each climate and building. */
async function table(chosen: readonly string[]): Promise<number> {
  let missing = 0
  console.log(
    'climate | building | way | what | panels m² | hours over | first cost | kWh a year | water m³ | s',
  )
  for (const climate of chosen.length > 0 ? chosen : sampleNames())
    for (const building of BUILDINGS) {
      const preset = PRESETS.find(({ id }) => id === building)!
      const scenario = withPreset(defaultScenario(), preset)
      const start_ms = performance.now()
      const { result } = await decideShared({ scenario, weather: sampleWeather(climate) }, () => {})
      const seconds = (performance.now() - start_ms) / 1000
      const way = result.ways[0]
      if (way === undefined || (way.kind === 'nearest' && result.changes.length === 0)) missing++
      console.log(`${climate} | ${building} | ${cells(result)} | ${seconds.toFixed(1)}`)
    }
  console.log(`without a way or a change that is enough: ${missing}`)
  return missing > 0 ? 1 : 0
}

function cells({ ways, changes }: Decision): string {
  const way = ways[0]
  if (way === undefined) return 'none'
  const one = way.combination
  const change = changes[0] === undefined ? '' : ` (${wordingText(changes[0].wording, 'si')})`
  return [
    way.kind,
    `${one.names.join(' + ') || 'nothing'}${change}`,
    one.panelArea_m2.toFixed(1),
    Math.round(one.hoursOver_h),
    Math.round(one.firstCost),
    Math.round(one.electric_J / 3.6e6),
    one.water_m3.toFixed(1),
  ].join(' | ')
}

/** The three jobs with the engineer's answer, the tool's, and why the others lost. */
async function jobs(): Promise<number> {
  let disagree = 0
  for (const job of JOBS.filter(({ id }) => words[1] === undefined || words[1] === id)) {
    const question = { scenario: job.scenario, weather: sampleWeather(job.climate) }
    const { result } = await decideShared(question, () => {})
    const first = result.ways[0]!
    const same = job.agrees(first.combination)
    if (!same) disagree++
    console.log(`\n${job.name} (invented; climate ${job.climate})`)
    console.log(`engineer: ${job.engineer}, because ${job.because}`)
    console.log(`tool:     ${cells(result)} – ${same ? 'the same kind' : 'ANOTHER KIND'}`)
    for (const way of result.ways)
      console.log(
        `  ${way.kind}: ${way.combination.names.join(' + ') || 'nothing'}, ${Math.round(way.combination.totalCost)} over the years. ${wordingText(way.why, 'si')}`,
      )
    for (const { combination, why } of result.others)
      console.log(`  lost: ${combination.names.join(' + ') || 'nothing'}. ${wordingText(why, 'si')}`)
  }
  return disagree > 0 ? 1 : 0
}
