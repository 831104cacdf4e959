import {
  DEMO_READINGS,
  type Estimated,
  type BenchReadings,
  readReadings,
  writeReadings,
} from '#model/panels/readings'
import { stop, saysInvented } from '#model/basis/words'
import type { CoatingEstimate } from '#studies/estimate-coating.ts'
import { answered, studies } from '../answered.ts'
import { textOf, type Options } from '../options.ts'
import { inventedParts } from '../invented-parts.ts'
import { note, type Result, type Table } from '../output.ts'
import { lightBoxTable } from './coating-light-box.ts'
import { pairedTable, warmPlateTable } from './coating-methods.ts'
import { boardTable } from './coating-board.ts'
import { weatherOf } from '../weather-source.ts'
import type { Command } from './command.ts'

export const coating: Command = {
  summary:
    'reflectance and emittance from field notes, a light box, a warm plate or boards in the sun; what a test board should read (one of them)',
  options: {
    readings: { type: 'string', help: 'field notes (.json); the wanted next reading goes to standard error' },
    example: { type: 'boolean', help: 'print invented field notes to start from' },
    'box-sample': { type: 'string', help: 'light box: meter readings of the sample, with commas' },
    'box-reference': { type: 'string', help: 'light box: meter readings of the reference, with commas' },
    'box-dark': { type: 'string', help: 'light box: reading with the lamp off (default 0)' },
    'box-known': { type: 'string', help: 'light box: reflectance of the reference (default 0.98)' },
    'box-wall': { type: 'string', help: 'light box: reflectance of the wall (default 0.95)' },
    'box-port': { type: 'string', help: 'light box: share of the wall the sample takes (default 0.01)' },
    'box-holes': { type: 'string', help: 'light box: share all other holes take (default 0.03)' },
    'box-known-sd': {
      type: 'string',
      help: 'light box: how well it is known, one standard deviation (default 0.01)',
    },
    'plate-tape': {
      type: 'string',
      help: 'warm plate: °C shown on the tape, thermometer set to 1, with commas',
    },
    'plate-sample': { type: 'string', help: 'warm plate: °C shown on the sample' },
    'plate-foil': { type: 'string', help: 'warm plate: °C shown on crumpled foil' },
    'tape-known': { type: 'string', help: 'warm plate: emittance of the tape (default 0.95)' },
    'tape-known-sd': { type: 'string', help: 'warm plate: how well it is known (default 0.01)' },
    'boards-black': { type: 'string', help: 'boards in the sun: °C of the black one, a number a moment' },
    'boards-white': { type: 'string', help: 'boards in the sun: °C of the white one' },
    'boards-sample': { type: 'string', help: 'boards in the sun: °C of the sample' },
    'black-known': { type: 'string', help: 'boards in the sun: absorptance of the black one (default 0.95)' },
    'black-known-sd': { type: 'string', help: 'boards in the sun: how well it is known (default 0.01)' },
    'white-known': { type: 'string', help: 'boards in the sun: absorptance of the white one' },
    'white-known-sd': { type: 'string', help: 'boards in the sun: how well it is known (default 0.01)' },
    board: { type: 'boolean', help: 'test board: predict it for --hour of --weather or for a typed-in hour' },
    hour: { type: 'string', help: 'test board: hour of the weather record, 0 first' },
    air: { type: 'string', help: 'test board: air temperature, °C' },
    dew: { type: 'string', help: 'test board: dew point, °C' },
    wind: { type: 'string', help: 'test board: wind at the board, m/s (default 1)' },
    sun: { type: 'string', help: 'test board: irradiance on the board, W/m² (default 900)' },
    shade: { type: 'string', help: 'test board: irradiance in open shade, W/m² (default 60)' },
    cloud: { type: 'string', help: 'test board: opaque cloud, 0…1 (default 0)' },
  },
  run(options) {
    if (options.values['example'] === true)
      return {
        body: { kind: 'text', text: writeReadings(DEMO_READINGS) },
        invented: ['the example readings'],
      }
    return resultOf(options)
  },
}

function resultOf(options: Options): Result {
  if (options.values['board'] === true) {
    const weather = options.values['weather'] === undefined ? undefined : weatherOf(options)
    return {
      body: { kind: 'table', table: boardTable(options, weather) },
      invented: inventedParts(options, weather),
    }
  }
  if (options.values['box-sample'] !== undefined)
    return { body: { kind: 'table', table: lightBoxTable(options) }, invented: [] }
  if (options.values['plate-tape'] !== undefined)
    return { body: { kind: 'table', table: warmPlateTable(options) }, invented: [] }
  if (options.values['boards-sample'] !== undefined)
    return { body: { kind: 'table', table: pairedTable(options) }, invented: [] }
  const file = options.values['readings']
  if (typeof file === 'string') {
    const readings = readReadings(textOf(file), file)
    return {
      body: { kind: 'table', table: readingsTable(readings) },
      invented: saysInvented(readings.basis) ? ['readings'] : [],
    }
  }
  throw stop(
    'coating-nothing-asked',
    'The coating subcommand was not given anything to do.',
    'Give --readings FILE, --box-sample with --box-reference, --plate-tape, --boards-sample, --board, or --example.',
  )
}

function readingsTable(readings: BenchReadings): Table {
  const estimate = answered(studies.estimateCoating({ readings }))
  const { next } = estimate
  note(
    `next: ${next.what} It would take the doubt in the heat from ${next.doubtNow_Wm2.toFixed(0)} to ${next.doubtThen_Wm2.toFixed(0)} W/m².`,
  )
  const rows = estimateRows(estimate)
  return {
    of: rows.map(([of]) => of),
    quantity: rows.map(([, quantity]) => quantity),
    value: rows.map(([, , e]) => e.value),
    low95: rows.map(([, , e]) => e.low),
    high95: rows.map(([, , e]) => e.high),
    decidedByReadings_frac: rows.map(([, , e]) => e.decided_frac),
  }
}

function estimateRows(estimate: CoatingEstimate): [string, string, Estimated][] {
  return [
    ...estimate.samples.flatMap((s): [string, string, Estimated][] => [
      [s.name, 'solarReflectance_frac', s.solarReflectance],
      [s.name, 'emittance_frac', s.emittance],
    ]),
    ...estimate.pairs.flatMap((p): [string, string, Estimated][] => [
      [`${p.first} − ${p.second}`, 'solarReflectance_frac', p.solarReflectance],
      [`${p.first} − ${p.second}`, 'emittance_frac', p.emittance],
    ]),
    ...estimate.winds.map((w): [string, string, Estimated] => [
      `wind, ${w.wind}`,
      'coefficient_Wm2K',
      w.coefficient_Wm2K,
    ]),
  ]
}
