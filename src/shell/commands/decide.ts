import { J_PER_KWH } from '#model/basis/hours'
import { stop } from '#model/basis/words'
import { KEPT_FOR, TRIED, type KeptFor, type Tried } from '#studies/decide.ts'
import { answered, studies } from '../answered.ts'
import { inventedParts } from '../invented-parts.ts'
import { note, type Cell } from '../output.ts'
import { yearOf } from '../weather-source.ts'
import type { Command } from './command.ts'

const MOST_BUDGET = 1e9

function budgetOf(given: unknown): number | null {
  if (given === undefined) return null
  const budget = Number(given)
  if (String(given).trim() !== '' && budget >= 0 && budget <= MOST_BUDGET) return budget
  throw stop(
    'bad-budget',
    `--budget ${String(given)} is not an amount.`,
    'Give a number of your currency, 0 or more.',
  )
}

function keptForOf(given: unknown): KeptFor {
  const found = KEPT_FOR.find((word) => word === (given ?? 'awake'))
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

export const decide: Command = {
  summary: 'whether there should be panels at all: combinations of measures, the few ways worth naming first',
  options: {
    budget: { type: 'string', help: 'most that may be spent at first, in your currency' },
    for: { type: 'string', help: `what the room is kept cool for: ${KEPT_FOR.join(', ')} (default awake)` },
    only: {
      type: 'string',
      help: `measures and machines to try, comma-separated, of ${TRIED.join(', ')} (default all)`,
    },
    all: { type: 'boolean', help: 'every combination that no other beats, after the named ways' },
  },
  run(options) {
    const weather = yearOf(options)
    const budget = budgetOf(options.values['budget'])
    const keptFor = keptForOf(options.values['for'])
    const only = onlyOf(options.values['only'])
    let tenths = 0
    const decision = answered(
      studies.decide({ scenario: options.scenario, weather, budget, keptFor, ...(only && { only }) }),
      ({ share }) => {
        if (Math.floor(share * 10) > tenths) note(`combinations: ${(tenths = Math.floor(share * 10)) * 10} %`)
      },
    )
    const others = options.values['all'] === true ? decision.front : []
    const rows = [
      ...decision.ways.map(({ kind, combination, why }, i) => ({
        way: kind,
        combination,
        why,
        heating_J: decision.heatingChange_J[i]!,
      })),
      ...others.map((combination) => ({ way: 'unbeaten', combination, why: '', heating_J: NaN })),
    ]
    const column = (pick: (row: (typeof rows)[number]) => Cell): Cell[] => rows.map(pick)
    const table = {
      way: column((row) => row.way),
      measures: column(({ combination }) => combination.names.join(' + ') || 'nothing'),
      panelArea_m2: column(({ combination }) => combination.panelArea_m2),
      hoursOver: column(({ combination }) => combination.hoursOver_h),
      peak_C: column(({ combination }) => combination.peak_C),
      firstCost: column(({ combination }) => combination.firstCost),
      yearlyCost: column(({ combination }) => combination.yearlyCost),
      electricity_kWh: column(({ combination }) => combination.electric_J / J_PER_KWH),
      water_m3: column(({ combination }) => combination.water_m3),
      mostHumid_frac: column(({ combination }) => combination.mostHumid_frac),
      heatingChange_kWh: column((row) => row.heating_J / J_PER_KWH),
      meets: column(({ combination }) => combination.meets),
      why: column((row) => row.why),
    }
    return { body: { kind: 'table', table }, invented: inventedParts(options, weather) }
  },
}
