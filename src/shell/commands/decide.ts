import { J_PER_KWH } from '#model/basis/hours'
import { problemSentence, stop, wordingText } from '#model/basis/words'
import { MEASURES } from '#model/design/measures'
import {
  isTaken,
  withField,
  withUsualTarget,
  type Scenario,
  type WayPart,
  wayText,
} from '#model/design/scenario'
import { KEPT_FOR, USUAL_TARGETS, type KeptFor } from '#model/design/target'
import type { Combination } from '#studies/decide-trial.ts'
import { TRIED, type Deciding, type Decision, type Tried } from '#studies/decide.ts'
import type { WinterLine } from '#studies/decide-winter.ts'
import { answered, studies } from '../answered.ts'
import { decideShared } from '../decide-shared.ts'
import { inventedParts } from '../invented-parts.ts'
import type { Options } from '../options.ts'
import { note, type Cell, type Result, type Table } from '../output.ts'
import { yearOf } from '../weather-source.ts'
import type { Command } from './command.ts'

const MOST_BUDGET = 1e9

function budgetOf(given: unknown, before: number): number {
  if (given === undefined) return before
  const budget = Number(given)
  if (String(given).trim() !== '' && budget >= 0 && budget <= MOST_BUDGET) return budget
  throw stop(
    'bad-budget',
    `--budget ${String(given)} is not an amount.`,
    'Give a number of your currency, 0 or more.',
  )
}

function keptForOf(given: unknown): KeptFor {
  const found = KEPT_FOR.find((word) => word === given)
  if (found !== undefined) return found
  throw stop('bad-for', `--for ${String(given)} is not known.`, `Use ${KEPT_FOR.join(', ')}.`)
}

function onlyOf(given: unknown): readonly Tried[] | null {
  if (given === undefined) return null
  return String(given)
    .split(',')
    .map((word) => {
      const found = TRIED.find((one) => one === word.trim())
      if (found !== undefined) return found
      throw stop('bad-only', `--only ${word.trim()} is not known.`, `Use ${TRIED.join(', ')}.`)
    })
}

/** The description with `--for` and `--budget`; what `--set` or a file says is kept. */
function askedOf({ scenario, values }: Options): Scenario {
  const prices = { ...scenario.prices, budget_each: budgetOf(values['budget'], scenario.prices.budget_each) }
  const given = values['for']
  if (given === undefined) return { ...scenario, prices }
  const keptFor = keptForOf(given)
  if (values['scenario'] !== undefined) {
    note(`Kept cool for ${keptFor}; limit, hours and humidity are those of the file.`)
    return { ...scenario, prices, target: { ...scenario.target, keptFor } }
  }
  const usual = withUsualTarget({ ...scenario, prices }, keptFor)
  const asked = ((values['set'] ?? []) as string[])
    .filter((setting) => setting.startsWith('target.'))
    .reduce((s, setting) => {
      const at = setting.indexOf('=')
      return withField(s, setting.slice(0, at), setting.slice(at + 1))
    }, usual)
  const { limit_C, allowedHours_h, occupiedFrom_h, occupiedUntil_h, mostHumid_frac } = asked.target
  note(
    `Kept cool for ${keptFor}: ${allowedHours_h} h over ${limit_C} °C allowed, counted ${occupiedFrom_h === occupiedUntil_h ? 'all day' : `from ${occupiedFrom_h} to ${occupiedUntil_h} h`}, humidity up to ${mostHumid_frac} (usual: ${USUAL_TARGETS[keptFor].source}). Change it with --set target.…`,
  )
  return asked
}

interface Row {
  readonly way: string
  readonly combination: Combination
  readonly why: string
  readonly winter: WinterLine | undefined
}

function rowsOf(decision: Decision, all: boolean, taken: readonly WayPart[]): readonly Row[] {
  const changes = decision.changes.map(({ wording }) => wordingText(wording, 'si'))
  const change = changes.length === 0 ? '' : ` Enough by itself: ${changes.join(' Or: ')}`
  const unbeaten = all ? decision.front : []
  return [
    ...decision.ways.map(({ kind, also, combination, why }, i) => ({
      way: [kind, ...also, ...(isTaken(combination, taken) ? ['(taken)'] : [])].join(' '),
      combination,
      why: `${wordingText(why, 'si')}${kind === 'nearest' ? change : ''}`,
      winter: decision.winter[i],
    })),
    ...decision.others.map(({ combination, why }) => ({
      way: 'lost',
      combination,
      why: wordingText(why, 'si'),
      winter: undefined,
    })),
    ...unbeaten.map((combination) => ({ way: 'unbeaten', combination, why: '', winter: undefined })),
  ]
}

function waysTable(decision: Decision, all: boolean, taken: readonly WayPart[]): Table {
  const rows = rowsOf(decision, all, taken)
  const column = (pick: (row: Row) => Cell): Cell[] => rows.map(pick)
  return {
    way: column((row) => row.way),
    measures: column(({ combination }) => combination.names.join(' + ') || 'nothing'),
    panelArea_m2: column(({ combination }) => combination.panelArea_m2),
    store_m3: column(({ combination }) => combination.storeVolume_m3),
    hoursOver: column(({ combination }) => combination.hoursOver_h),
    peak_C: column(({ combination }) => combination.peak_C),
    firstCost: column(({ combination }) => combination.firstCost),
    yearlyCost: column(({ combination }) => combination.yearlyCost),
    electricity_kWh: column(({ combination }) => combination.electric_J / J_PER_KWH),
    water_m3: column(({ combination }) => combination.water_m3),
    mostHumid_frac: column(({ combination }) => combination.mostHumid_frac),
    heatingChange_kWh: column(({ winter }) => (winter?.heatingChange_J ?? NaN) / J_PER_KWH),
    mouldMonths: column(({ winter }) => winter?.mouldMonths ?? NaN),
    meets: column(({ combination }) => combination.meets),
    why: column((row) => row.why),
  }
}

function winterTable({ measureWinter }: Decision): Table {
  const names = new Map(MEASURES.map(({ id, name }) => [id, name]))
  const column = (pick: (line: (typeof measureWinter)[number]) => Cell): Cell[] => measureWinter.map(pick)
  return {
    measure: column(({ id }) => names.get(id)!),
    heatingChange_kWh: column(({ heatingChange_J }) => heatingChange_J / J_PER_KWH),
    heating_kWh: column(({ heating_J }) => heating_J / J_PER_KWH),
    mouldMonthsBefore: column((line) => line.mouldMonthsBefore),
    mouldMonths: column((line) => line.mouldMonths),
    wetPaneMonthsBefore: column((line) => line.wetPaneMonthsBefore),
    wetPaneMonths: column((line) => line.wetPaneMonths),
  }
}

export const decide: Command = {
  summary: 'whether there should be panels at all: combinations of measures, the few ways worth naming first',
  options: {
    budget: { type: 'string', help: 'most that may be spent at first, in your currency' },
    for: {
      type: 'string',
      help: `what the room is kept cool for: ${KEPT_FOR.join(', ')}; sets limit, hours and humidity usual for it`,
    },
    only: {
      type: 'string',
      help: `measures and machines to try, comma-separated, of ${TRIED.join(', ')} (default all)`,
    },
    all: { type: 'boolean', help: 'every combination that no other beats, after the named ways' },
    winter: { type: 'boolean', help: 'instead: what each measure does to heating and mould in winter' },
  },
  run(options) {
    const weather = yearOf(options)
    const scenario = askedOf(options)
    if (scenario.job.way.length > 0)
      note(
        `The search starts from the room as it is; the way taken (${wayText(scenario)}) is left out of it, and marked as taken where it is among the ways.`,
      )
    const question: Deciding = { scenario, weather }
    const only = onlyOf(options.values['only'])
    const found = (decision: Decision): Result => {
      const all = options.values['all'] === true
      const table =
        options.values['winter'] === true ? winterTable(decision) : waysTable(decision, all, scenario.job.way)
      return { body: { kind: 'table', table }, invented: inventedParts(options, weather) }
    }
    // a few combinations are looked at sooner than other cores have started
    return only === null
      ? onAllCores(question).then(found)
      : found(answered(studies.decide({ ...question, only })))
  },
}

async function onAllCores(question: Deciding): Promise<Decision> {
  let tenths = 0
  const { result, remarks } = await decideShared(question, (share) => {
    if (Math.floor(share * 10) > tenths) note(`combinations: ${(tenths = Math.floor(share * 10)) * 10} %`)
  })
  for (const remark of remarks) note(`warning: ${problemSentence(remark)}`)
  return result
}
