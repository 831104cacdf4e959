import { FAULTS, FLOW_UNIT_NAMES, LOG_QUANTITIES } from '#model/handover/as-built'
import { stop, saysInvented } from '#model/basis/words'
import { writeScenarioFile } from '#model/design/scenario'
import { STAMPS, type Stamp } from '#model/outdoors/intake'
import type { AsBuiltReport } from '#studies/check-as-built.ts'
import { answered, studies } from '../answered.ts'
import { inventedParts } from '../invented-parts.ts'
import { textOf, type Options } from '../options.ts'
import { note, type Result, type Table } from '../output.ts'
import { stampOfHour } from '../stamps.ts'
import { weatherOf } from '../weather-source.ts'
import { rehearsed } from './asbuilt-rehearsal.ts'
import type { Command } from './command.ts'
import { numberOption } from '../number-option.ts'
import { chosenOf } from './asbuilt-columns.ts'

export const asbuilt: Command = {
  summary:
    'the finished panel against its prediction: heat against the promise, the likeliest faults and what to inspect',
  options: {
    log: {
      type: 'string',
      help: 'logger file: time, panel in, panel out, and flow, pump, air, store, room if any',
    },
    area: { type: 'string', help: 'panel area as built, m²' },
    stamp: {
      type: 'string',
      help: `what a row's time is of its period: ${STAMPS.join(', ')} (default instant)`,
    },
    columns: {
      type: 'string',
      help: `columns by number, 1 first, in place of their headers: panelIn=2,flow=5; 0 for none (${LOG_QUANTITIES.join(', ')})`,
    },
    'flow-unit': { type: 'string', help: `unit of the flow column: ${FLOW_UNIT_NAMES.join(', ')}` },
    hours: { type: 'boolean', help: 'print the judged hours instead of the summary' },
    'as-found': {
      type: 'boolean',
      help: 'print the scenario with the panel as it was found, to size again with',
    },
    rehearse: {
      type: 'string',
      help: `print an invented logger file with a fault in it, from --weather: sound, ${FAULTS.slice(1).join(', ')}`,
    },
    'first-day': { type: 'string', help: 'rehearsal: first day of the weather record, 0 first (default 0)' },
    days: { type: 'string', help: 'rehearsal: number of days (default 14)' },
    seed: { type: 'string', help: 'rehearsal: whole number that fixes its errors (default 1)' },
  },
  run(options) {
    const weather = weatherOf(options)
    const area_m2 = numberOption(options, 'area', [0.1, 10000])
    if (options.values['rehearse'] !== undefined) {
      const text = rehearsed(options, weather, area_m2)
      return {
        body: { kind: 'text', text },
        invented: ['the logger file', ...inventedParts(options, weather)],
      }
    }
    const file = options.values['log']
    if (typeof file !== 'string') throw stop('no-log', 'No logger file is given.', 'Add --log FILE.')
    const stamp = stampOf(options.values['stamp'])
    const { scenario } = options
    const report = answered(
      studies.checkAsBuilt({
        scenario,
        weather,
        area_m2,
        file,
        text: textOf(file),
        ...(stamp && { stamp }),
        ...chosenOf(options.values['columns'], options.values['flow-unit']),
      }),
    )
    note(`columns: ${report.columns.map((c) => `${c.header} = ${c.quantity}`).join(', ')}`)
    if (report.unused.length > 0) note(`not used: ${report.unused.join(', ')}`)
    for (const { what, why, test } of report.result.inspections)
      note(`inspect: ${what} ${why}${test === '' ? '' : ` Test: ${test}`}`)
    const invented = [
      ...(saysInvented(report.basis) ? [`logger file ${file}`] : []),
      ...inventedParts(options, weather),
    ]
    return { body: bodyOf(report, options), invented }
  },
}

/** The summary, or what is asked for in its place. */
function bodyOf(report: AsBuiltReport, { values }: Options): Result['body'] {
  if (values['as-found'] === true) return { kind: 'text', text: writeScenarioFile(report.asFound) }
  if (values['hours'] === true) return { kind: 'table', table: hoursTable(report) }
  return { kind: 'record', record: summary(report) }
}

function stampOf(given: unknown): Stamp | null {
  if (given === undefined) return null
  const found = STAMPS.find((stamp) => stamp === given)
  if (found !== undefined) return found
  throw stop('bad-stamp', `--stamp ${String(given)} is not known.`, `Use ${STAMPS.join(', ')}.`)
}

function summary({ result, house, overLimit }: AsBuiltReport) {
  const { departure, belief, remaining } = result
  const beliefs = FAULTS.map((fault) => [`belief_${fault}_frac`, belief[fault]])
  return {
    judged_h: result.hours.length,
    fault: result.fault,
    faults: result.faults,
    heatVerdict: result.shortfall.verdict,
    heatShare_frac: result.shortfall.share_frac,
    heatShareLow_frac: result.shortfall.low_frac,
    heatShareHigh_frac: result.shortfall.share_frac === null ? null : result.shortfall.high_frac,
    leftOfPromise_frac: remaining?.share_frac ?? null,
    panelToAdd_m2: remaining?.add_m2 ?? null,
    hoursOverDesigned_h: overLimit?.designed_h ?? null,
    hoursOverAsFound_h: overLimit?.asFound_h ?? null,
    ...(Object.fromEntries(beliefs) as Record<string, number>),
    outletBias_K: result.outlet.bias,
    outletSpread_K: result.outlet.spread,
    outletExplainedBias_K: result.outletExplained.bias,
    outletExplainedSpread_K: result.outletExplained.spread,
    measuredHeat_W: result.heat.measuredMean,
    predictedHeat_W: result.heat.predictedMean,
    flowShare_frac: Math.exp(departure.flowLog + departure.meterLog),
    dead_frac: departure.dead_frac,
    airy_frac: departure.airy_frac,
    bondShare_frac: Math.exp(departure.bondLog),
    back_Wm2K: departure.back_Wm2K,
    torn_frac: departure.torn_frac,
    sensorOffset_K: departure.offset_K,
    clockAhead_h: departure.clock_h,
    mixing_frac: departure.mixing_frac,
    leakEachDay_frac: departure.leak_1d,
    windShare_frac: Math.exp(departure.windLog),
    soil_frac: departure.soil_frac,
    veil_frac: departure.veil_frac,
    shade_frac: departure.shade_frac,
    shadeFrom_h: result.shadeFrom,
    storeBias_K: house.store?.bias ?? null,
    storeSpread_K: house.store?.spread ?? null,
    roomBias_K: house.room?.bias ?? null,
    roomSpread_K: house.room?.spread ?? null,
    inspect: result.inspections.map((inspection) => inspection.code),
  }
}

function hoursTable({ result, clock, panelIn_C }: AsBuiltReport): Table {
  return {
    time_local: result.hours.map((hour) => stampOfHour(clock, hour)),
    panelIn_C,
    measuredOut_C: result.measuredOut_C,
    predictedOut_C: result.predictedOut_C,
    explainedOut_C: result.explainedOut_C,
    measuredHeat_W: result.measuredHeat_W,
    predictedHeat_W: result.predictedHeat_W,
  }
}
