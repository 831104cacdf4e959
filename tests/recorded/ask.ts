import { Spine } from '#model/answer.ts'
import { DEMO_READINGS } from '#model/bench/demo-readings.ts'
import { estimateCoatings } from '#model/bench/estimate.ts'
import { nextReading } from '#model/bench/next-reading.ts'
import type { BenchReadings } from '#model/bench/reading.ts'
import { batchQuantities } from '#model/coating/batch.ts'
import { DEMO_JOB, DEMO_RECIPE } from '#model/coating/batch-recipe.ts'
import { asBuiltCheck } from '#model/comparison/as-built-check.ts'
import type { Fault } from '#model/comparison/as-built-hypotheses.ts'
import { asBuiltInputs } from '#model/comparison/as-built-inputs.ts'
import { inventedLogFile } from '#model/comparison/as-built-invented.ts'
import { openLog } from '#model/comparison/as-built-open.ts'
import { comparisonCases } from '#model/comparison/cases.ts'
import { comparisonRun } from '#model/comparison/run.ts'
import { LOOP_TEMP_C } from '#model/loop/duty.ts'
import { fluidProperties } from '#model/loop/fluid.ts'
import type { DesignAnswer } from '#model/scenario/design-answer.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import { mapTaskOf } from '#model/scenario/map-task.ts'
import { builderSheet } from '#model/sheet/builder-sheet.ts'
import { designMap } from '#model/sizing/design-map.ts'
import type { WeatherRecord } from '#model/weather/record.ts'

/* What the recorded answers ask the program: the one file here that knows how it is asked. */

const spine = new Spine()

/** Runs a generator to its end. */
function finished<Step, Result>(run: Generator<Step, Result>): Result {
  for (;;) {
    const step = run.next()
    if (step.done === true) return step.value
  }
}

export function design(scenario: Scenario, weather: WeatherRecord): DesignAnswer {
  return spine.answer(scenario, weather)
}

/** The scenario with an area of its own. */
export function withOwnArea(scenario: Scenario, area_m2: number): Scenario {
  return { ...scenario, target: { ...scenario.target, autoArea: false, area_m2 } }
}

export function range(scenario: Scenario, weather: WeatherRecord): unknown {
  return finished(spine.uncertainty(scenario, weather, design(scenario, weather).sizing, 8))
}

/** Five areas by five tanks around the sized design. */
export function map(scenario: Scenario, weather: WeatherRecord): unknown {
  const { area_m2, storeVolume_m3, sizing } = design(scenario, weather)
  const shares = [0.25, 0.5, 1, 1.5, 2]
  const middle_m2 = Math.max(1, area_m2)
  const axes = {
    kind: 'store',
    area_m2: shares.map((share) => share * middle_m2),
    other: shares.map((share) => share * Math.max(storeVolume_m3, 0.1)),
  } as const
  const held = { flow_kgsm2: sizing.flow_kgsm2, storeVolume_m3 }
  return finished(designMap(mapTaskOf(spine.prepare(scenario, weather), held), axes))
}

/** Two plans by two covers. */
export function comparison(scenario: Scenario, name: string, weather: WeatherRecord): unknown {
  const cases = comparisonCases(scenario, {
    climates: [{ name, weather }],
    plans: ['allDay', 'nightOnly'],
    coatings: ['own'],
    covers: ['bare', 'film'],
    cuts: [],
  })
  return finished(comparisonRun(cases, (one) => spine.answer(one.scenario, one.weather)))
}

/** A logger file with a known fault, opened and judged. */
export function asBuilt(scenario: Scenario, weather: WeatherRecord, fault: Fault, area_m2: number): unknown {
  const { fluid, glycol_frac } = scenario.loop
  const fluidDensity_kgm3 = fluidProperties(fluid, glycol_frac, LOOP_TEMP_C).density_kgm3
  const wanted = { fault, firstDay: 180, days: 10, seed: 1, area_m2, fluidDensity_kgm3 }
  const text = inventedLogFile(scenario, weather, wanted)
  const opened = openLog(text, weather, { file: 'practice.csv', fluidDensity_kgm3 })
  const result = asBuiltCheck(asBuiltInputs(scenario, opened.weather, opened.log, area_m2))
  return { ...result, inspections: result.inspections.length }
}

/** Field notes with every surface temperature moved by so much, K. */
export function readings(warmer_K: number): unknown {
  const notes = moved(DEMO_READINGS, warmer_K) as BenchReadings
  const estimate = estimateCoatings(notes)
  const { samples, pairs, winds, residuals, scatter_frac } = estimate
  return { samples, pairs, winds, residuals, scatter_frac, next: nextReading(notes, estimate) }
}

function moved(value: unknown, by_K: number, name = ''): unknown {
  if (typeof value === 'number')
    return name.startsWith('surface') && name.endsWith('_C') ? value + by_K : value
  if (Array.isArray(value)) return value.map((part) => moved(part, by_K, name))
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, moved(part, by_K, key)]))
}

export function paint(area_m2: number, coats: number): unknown {
  return batchQuantities(DEMO_RECIPE, { ...DEMO_JOB, area_m2, coats })
}

export function sheet(scenario: Scenario, weather: WeatherRecord): unknown {
  return builderSheet(design(scenario, weather))
}
