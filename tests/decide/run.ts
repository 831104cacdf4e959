/**
 * `npm run -s decide-table [-- jobs | check CLIMATE/BUILDING … | CLIMATE …]`: the first way, or the nearest, of every sample
 * climate and four buildings, with the seconds it took and those of all cores together; or the three jobs, argued; or whole
 * searches against simulating everything. Ends with exit code 1 where one has no way, a job disagrees, or a search is beaten.
 */
import { wordingText } from '#model/basis/words'
import { defaultScenario, PRESETS, withPreset } from '#model/design/scenario'
import type { Decision } from '#studies/decide.ts'
import type { Combination } from '#studies/decide-trial.ts'
import { createStudies, finish } from '#studies/index.ts'
import { decideShared } from '../../src/shell/decide-shared.ts'
import { sampleNames, sampleWeather } from '../../src/shell/samples.ts'
import { cpu_s } from '../speed/measure.ts'
import { JOBS } from './jobs.ts'

const BUILDINGS = ['shed', 'workshop', 'bedroom', 'smallHouse'] as const
/** As the goal is stated: on two. */
const CORES = 2
const words = process.argv.slice(2)

process.exitCode =
  words[0] === 'jobs' ? await jobs() : words[0] === 'check' ? check(words.slice(1)) : await table(words)

function questionOf(climate: string, building: string) {
  const preset = PRESETS.find(({ id }) => id === building)!
  return { scenario: withPreset(defaultScenario(), preset), weather: sampleWeather(climate) }
}

/** Whole searches against simulating every combination, with all panels sized as built: some 35 CPU seconds each. */
function check(pairs: readonly string[]): number {
  let beaten = 0
  for (const pair of pairs) {
    const [climate, building] = pair.split('/') as [string, string]
    const question = { ...questionOf(climate, building), winters: false }
    const start_ms = performance.now()
    const search = finish(createStudies().decide(question)).result
    const everything = finish(createStudies().decide({ ...question, skips: false })).result
    const known = new Set(search.front.map(merits))
    const missing = everything.front.filter((one) => !known.has(merits(one)))
    const same = said(search) === said(everything)
    if (missing.length > 0 || !same) beaten++
    console.log(
      `${pair}: ${((performance.now() - start_ms) / 1000).toFixed(0)} s; ${search.combinations.length} of ${everything.combinations.length} simulated; front ${known.size}, of everything ${everything.front.length}, missing ${missing.length}; ways ${same ? 'the same' : 'DIFFER'}`,
    )
    for (const one of missing) console.log(`  missing: ${one.names.join(' + ')} (${merits(one)})`)
  }
  return beaten > 0 ? 1 : 0
}

/** Cost, tenths of a kelvin over, kWh and tenths of a cubic metre. A declaration: it is called before this line is reached. */
function merits({ totalCost, miss, electric_J, water_m3 }: Combination): string {
  return [totalCost, 10 * Math.max(0, miss), electric_J / 3.6e6, 10 * water_m3].map(Math.round).join(' ')
}

/** What is printed of the ways. */
function said({ ways }: Decision): string {
  return JSON.stringify(
    ways.map(({ kind, also, combination, why }) => [
      kind,
      also,
      combination.names,
      merits(combination),
      wordingText(why, 'si'),
    ]),
  )
}

/** A line for each climate and building. */
async function table(chosen: readonly string[]): Promise<number> {
  let missing = 0
  console.log(
    'climate | building | way | what | panels m² | hours over | first cost | kWh a year | water m³ | looked at, sized or run | CPU s | s',
  )
  for (const climate of chosen.length > 0 ? chosen : sampleNames())
    for (const building of BUILDINGS) {
      const question = questionOf(climate, building)
      const [start_ms, start_s] = [performance.now(), cpu_s()]
      const { result } = await decideShared(question, () => {}, CORES)
      const seconds = `${(cpu_s() - start_s).toFixed(1)} | ${((performance.now() - start_ms) / 1000).toFixed(1)}`
      const found = `${result.looked}, ${result.combinations.length}`
      const way = result.ways[0]
      if (way === undefined || (way.kind === 'nearest' && result.changes.length === 0)) missing++
      console.log(`${climate} | ${building} | ${cells(result)} | ${found} | ${seconds}`)
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
