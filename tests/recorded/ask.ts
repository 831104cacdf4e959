import { DEMO_READINGS, type BenchReadings } from '#model/panels/readings'
import { DEMO_RECIPE } from '#model/panels/paint'
import type { Fault } from '#model/handover/as-built'
import type { DesignAnswer } from '#model/design/assembly'
import { type Scenario, hold } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import { createStudies, finish } from '#studies/index.ts'

/* What the recorded answers ask the program: the one file here that knows how it is asked. */

const studies = createStudies()

export function design(scenario: Scenario, weather: WeatherRecord): DesignAnswer {
  return finish(studies.size({ scenario, weather })).result
}

/** The scenario with an area of its own. */
export function withOwnArea(scenario: Scenario, area_m2: number): Scenario {
  return hold(scenario, { area_m2 })
}

export function range(scenario: Scenario, weather: WeatherRecord): unknown {
  const { sizing } = design(scenario, weather)
  return finish(studies.range({ scenario, weather, sizing, draws: 8 })).result
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
  const around = { area_m2, flow_kgsm2: sizing.flow_kgsm2, storeVolume_m3 }
  return finish(studies.map({ scenario, weather, kind: 'store', around, axes })).result
}

/** Two plans by two covers. */
export function comparison(scenario: Scenario, name: string, weather: WeatherRecord): unknown {
  const axes = {
    climates: [{ name, weather }],
    plans: ['allDay', 'nightOnly'],
    coatings: ['own'],
    covers: ['bare', 'film'],
    cuts: [],
  } as const
  return finish(studies.compare({ scenario, axes })).result
}

/** A logger file with a known fault, opened and judged. */
export function asBuilt(scenario: Scenario, weather: WeatherRecord, fault: Fault, area_m2: number): unknown {
  const wanted = { scenario, weather, fault, firstDay: 180, days: 10, seed: 1, area_m2 }
  const text = finish(studies.practiceLog(wanted)).result
  const file = 'practice.csv'
  const { result } = finish(studies.checkAsBuilt({ scenario, weather, area_m2, file, text })).result
  return { ...result, inspections: result.inspections.length }
}

/** Field notes with every surface temperature moved by so much, K. */
export function readings(warmer_K: number): unknown {
  const notes = moved(DEMO_READINGS, warmer_K) as BenchReadings
  return { ...finish(studies.estimateCoating({ readings: notes })).result, warnings: [] }
}

function moved(value: unknown, by_K: number, name = ''): unknown {
  if (typeof value === 'number')
    return name.startsWith('surface') && name.endsWith('_C') ? value + by_K : value
  if (Array.isArray(value)) return value.map((part) => moved(part, by_K, name))
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, moved(part, by_K, key)]))
}

export function paint(area_m2: number, coats: number): unknown {
  return finish(studies.mixPaint({ recipe: DEMO_RECIPE, job: { area_m2, coats } })).result
}

export function sheet(scenario: Scenario, weather: WeatherRecord): unknown {
  return finish(studies.sheet({ answer: design(scenario, weather) })).result
}
