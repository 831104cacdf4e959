import { asBuiltCheck, type AsBuiltResult } from '#model/comparison/as-built-check.ts'
import { asBuiltInputs } from '#model/comparison/as-built-inputs.ts'
import { openLog, type OpenedLog } from '#model/comparison/as-built-open.ts'
import { saysInvented } from '#model/units/invented.ts'
import { problemSentence, stop } from '#model/problem.ts'
import { textOf } from '../options.ts'
import { inventedParts } from '../invented-parts.ts'
import { note, type Table } from '../output.ts'
import { stampsOf } from '../stamps.ts'
import { weatherOf } from '../weather-source.ts'
import { rehearsed } from './asbuilt-rehearsal.ts'
import type { Command } from './command.ts'
import { fluidDensity_kgm3 } from './fluid-density.ts'
import { numberOption } from './number-option.ts'

export const asbuilt: Command = {
  summary: 'the finished panel against its prediction: bias, spread, the likeliest fault and what to inspect',
  options: {
    log: {
      type: 'string',
      help: 'logger file: time, panel in, panel out, and flow, pump, air, store, room if any',
    },
    area: { type: 'string', help: 'panel area as built, m²' },
    hours: { type: 'boolean', help: 'print the judged hours instead of the summary' },
    rehearse: {
      type: 'string',
      help: 'print an invented logger file with sound, lowFlow, dirty or shading in it, from --weather',
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
    const opened = openLog(textOf(file), weather, { file, fluidDensity_kgm3: fluidDensity_kgm3(options) })
    for (const warning of opened.warnings) note(`warning: ${problemSentence(warning)}`)
    note(`columns: ${opened.columns.map((c) => `${c.header} = ${c.quantity}`).join(', ')}`)
    if (opened.unused.length > 0) note(`not used: ${opened.unused.join(', ')}`)
    const result = asBuiltCheck(asBuiltInputs(options.scenario, opened.weather, opened.log, area_m2))
    for (const { what, why } of result.inspections) note(`inspect: ${what} ${why}`)
    const invented = [
      ...(saysInvented(opened.log.basis) ? [`logger file ${file}`] : []),
      ...inventedParts(options, weather),
    ]
    return options.values['hours'] === true
      ? { body: { kind: 'table', table: hoursTable(opened, result) }, invented }
      : { body: { kind: 'record', record: summary(result) }, invented }
  },
}

function summary(result: AsBuiltResult) {
  const { departure, belief } = result
  return {
    judged_h: result.hours.length,
    fault: result.fault,
    beliefNone_frac: belief.none,
    beliefLowFlow_frac: belief.lowFlow,
    beliefDirty_frac: belief.dirty,
    beliefShading_frac: belief.shading,
    outletBias_K: result.outlet.bias,
    outletSpread_K: result.outlet.spread,
    outletExplainedBias_K: result.outletExplained.bias,
    outletExplainedSpread_K: result.outletExplained.spread,
    measuredHeat_W: result.heat.measuredMean,
    predictedHeat_W: result.heat.predictedMean,
    flowShare_frac: Math.exp(departure.flowLog),
    windShare_frac: Math.exp(departure.windLog),
    soil_frac: departure.soil_frac,
    veil_frac: departure.veil_frac,
    shade_frac: departure.shade_frac,
    shadeFrom_h: result.shadeFrom,
    inspect: result.inspections.map((inspection) => inspection.code),
  }
}

function hoursTable(opened: OpenedLog, result: AsBuiltResult): Table {
  const stamps = stampsOf(opened.weather)
  return {
    time_local: result.hours.map((hour) => stamps[hour]!),
    panelIn_C: result.hours.map((hour) => opened.log.panelIn_C[hour]!),
    measuredOut_C: result.measuredOut_C,
    predictedOut_C: result.predictedOut_C,
    explainedOut_C: result.explainedOut_C,
    measuredHeat_W: result.measuredHeat_W,
    predictedHeat_W: result.predictedHeat_W,
  }
}
