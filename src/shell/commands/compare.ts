import { J_PER_KWH } from '#model/basis/hours'
import {
  COATING_IDS,
  COVER_KINDS,
  PLAN_KINDS,
  type ComparisonRow,
  verdictList,
} from '#model/design/comparison'
import { stop } from '#model/basis/words'
import { LOAD_CUTS } from '#model/design/measures'
import { answered, studies } from '../answered.ts'
import { inventedClimates, inventedParts } from '../invented-parts.ts'
import { note, type Cell } from '../output.ts'
import { sampleNames, sampleWeather } from '../samples.ts'
import { yearOf } from '../weather-source.ts'
import type { Options } from '../options.ts'
import type { Command } from './command.ts'

/** A comma-separated option, each word one of the known ones. */
function words<T extends string>(
  options: Options,
  name: string,
  known: readonly T[],
  usual: readonly T[],
): readonly T[] {
  const given = options.values[name]
  if (typeof given !== 'string') return usual
  return given.split(',').map((word) => {
    const found = known.find((candidate) => candidate === word.trim())
    if (found !== undefined) return found
    throw stop('bad-word', `--${name} ${word.trim()} is not known.`, `Use ${known.join(', ')}.`)
  })
}

export const compare: Command = {
  summary: 'climates × running plans × coatings × covers side by side, sized for the same target',
  options: {
    climates: { type: 'string', help: 'sample climates, comma-separated; default: the one of --weather' },
    plans: {
      type: 'string',
      help: `running plans, comma-separated, of ${PLAN_KINDS.join(', ')} (default nightOnly,allDay)`,
    },
    coatings: {
      type: 'string',
      help: `coatings, comma-separated, of ${COATING_IDS.join(', ')} (default own)`,
    },
    covers: {
      type: 'string',
      help: `covers, comma-separated, of ${COVER_KINDS.join(', ')} (default: the scenario’s)`,
    },
    cuts: { type: 'boolean', help: 'set the load cuts and baselines beside the building as described' },
  },
  run(options) {
    const { scenario } = options
    const samples = words(options, 'climates', sampleNames(), [])
    const climates =
      samples.length > 0
        ? samples.map((name) => ({ name, weather: sampleWeather(name) }))
        : [{ name: String(options.values['weather']), weather: yearOf(options) }]
    const axes = {
      climates,
      plans: words(options, 'plans', PLAN_KINDS, ['nightOnly', 'allDay']),
      coatings: words(options, 'coatings', COATING_IDS, ['own']),
      covers: words(options, 'covers', COVER_KINDS, [scenario.cover.kind]),
      cuts: options.values['cuts'] === true ? LOAD_CUTS.map((cut) => cut.name) : [],
    }
    const comparison = answered(studies.compare({ scenario, axes }), ({ share, soFar }) => {
      const row = soFar?.rows.at(-1)
      if (row === undefined) return
      const count = Math.round(soFar!.rows.length / share)
      const { climate, plan, coating, cover, building } = row
      note(`case ${soFar!.rows.length} of ${count}: ${climate}, ${plan}, ${coating}, ${cover}, ${building}`)
    })
    for (const { about, sentences } of verdictList(comparison, 'si'))
      for (const sentence of sentences) note(`verdict (${about}): ${sentence}`)
    const { rows } = comparison
    return {
      body: { kind: 'table', table: columnsOf(rows) },
      invented: [...inventedClimates(climates.map(({ weather }) => weather)), ...inventedParts(options)],
    }
  },
}

function columnsOf(rows: readonly ComparisonRow[]): Record<string, Cell[]> {
  const column = (pick: (row: ComparisonRow) => Cell): Cell[] => rows.map(pick)
  return {
    climate: column((r) => r.climate),
    plan: column((r) => r.plan),
    coating: column((r) => r.coating),
    cover: column((r) => r.cover),
    building: column((r) => r.building),
    result: column((r) => r.kind),
    areaNeeded_m2: column((r) => r.area_m2),
    storeVolume_m3: column((r) => r.storeVolume_m3),
    flow_kgs: column((r) => r.flow_kgs),
    pumpPower_W: column((r) => r.pumpPower_W),
    pumpRun_h: column((r) => r.pumpRun_h),
    panelHeat_kWh: column((r) => r.panelHeat_J / J_PER_KWH),
    electric_kWh: column((r) => r.electric_J / J_PER_KWH),
    peak_C: column((r) => r.peak_C),
    hoursOver_h: column((r) => r.hoursOver_h),
    doNothingPeak_C: column((r) => r.doNothingPeak_C),
    doNothingHoursOver_h: column((r) => r.doNothingHoursOver_h),
    hotDaysHeld_count: column((r) => r.hotDaysHeld),
    hotDays_count: column((r) => r.hotDays),
  }
}
