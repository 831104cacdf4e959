import { readFileSync } from 'node:fs'
import { ProblemError } from '#model/basis/words'
import { parseScenario } from '#inside/model/design/scenario/parse.ts'
import { PRESETS, withPreset, defaultScenario, type Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import { sampleNames, sampleWeather } from '../../src/shell/samples.ts'
import { asBuilt, comparison, design, map, paint, range, readings, sheet, withOwnArea } from './ask.ts'

export interface RecordedCase {
  readonly name: string
  readonly answer: () => unknown
}

const CLIMATES = sampleNames()
const records = new Map<string, WeatherRecord>()

function weatherOf(name: string): WeatherRecord {
  const known = records.get(name) ?? sampleWeather(name)
  records.set(name, known)
  return known
}

const presets = PRESETS.map((preset) => withPreset(defaultScenario(), preset))
const climateAt = (i: number): string => CLIMATES[i % CLIMATES.length]!
const presetAt = (i: number): Scenario => presets[i % presets.length]!

/** 60 sized: every preset in every sample climate. */
const sized: RecordedCase[] = presets.flatMap((scenario, p) =>
  CLIMATES.map((climate) => ({
    name: `sized/${PRESETS[p]!.id}/${climate}`,
    answer: () => design(scenario, weatherOf(climate)),
  })),
)

/** The answer, or the code of the range check that refuses to give one. */
function refusedOr(answer: () => unknown): unknown {
  try {
    return answer()
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error
    return { refused: error.problems.map(({ code }) => ({ code })) }
  }
}

/** 100 random scenarios, kept in a file so that a new field does not change the others. */
function randomCases(): RecordedCase[] {
  const kept = JSON.parse(readFileSync(new URL('scenarios.json', import.meta.url), 'utf8')) as unknown[]
  return kept.map((given, i) => ({
    name: `random/${i}`,
    answer: () => {
      const { scenario, problems } = parseScenario(given)
      if (scenario === null) throw new Error(problems.map(({ message }) => message).join('\n'))
      const area_m2 = Math.max(0.5, Math.min(scenario.target.area_m2, 200))
      return refusedOr(() => design(withOwnArea(scenario, area_m2), weatherOf(climateAt(i))))
    },
  }))
}

const FAULTS = ['none', 'lowFlow', 'dirty', 'shading'] as const
const numbered = <T>(count: number, make: (i: number) => T): T[] =>
  Array.from({ length: count }, (_, i) => make(i))

/** 40 of the other questions. */
const others: RecordedCase[] = [
  ...numbered(8, (i) => ({
    name: `range/${i}`,
    answer: () => range(presetAt(i), weatherOf(climateAt(i))),
  })),
  ...numbered(6, (i) => ({ name: `map/${i}`, answer: () => map(presetAt(i), weatherOf(climateAt(i + 2))) })),
  ...numbered(4, (i) => ({
    name: `comparison/${i}`,
    answer: () => comparison(presetAt(i), climateAt(i + 5), weatherOf(climateAt(i + 5))),
  })),
  ...numbered(8, (i) => ({
    name: `as-built/${FAULTS[i % FAULTS.length]}/${i}`,
    answer: () => asBuilt(presetAt(i), weatherOf(climateAt(i)), FAULTS[i % FAULTS.length]!, 8 + 4 * i),
  })),
  ...numbered(4, (i) => ({ name: `readings/${i}`, answer: () => readings(0.5 * i - 0.75) })),
  ...numbered(4, (i) => ({ name: `paint/${i}`, answer: () => paint(3 + 5 * i, 1 + i) })),
  ...numbered(6, (i) => ({
    name: `sheet/${i}`,
    answer: () => sheet(presetAt(i), weatherOf(climateAt(2 * i))),
  })),
]

/** The 200 questions, in the order of the file. */
export const RECORDED_CASES: readonly RecordedCase[] = [...sized, ...randomCases(), ...others]
