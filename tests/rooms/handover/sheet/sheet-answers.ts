import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { Stages } from '#studies/stages.ts'
import { readSampleCsv } from '#model/outdoors/climate'
import type { DesignAnswer } from '#model/design/assembly'
import { withField, defaultScenario, type Scenario } from '#model/design/scenario'

const FILE = fileURLToPath(new URL('../../../../climate-samples/continental.csv', import.meta.url))

/** The invented continental sample: part of the repository, so its absence is an error. */
export const sampleWeather = () => {
  if (!existsSync(FILE)) throw new Error(`${FILE} is missing: run src/shell/make-climates.ts`)
  return readSampleCsv(readFileSync(FILE, 'utf8'), 'continental.csv')
}

export const stages = new Stages()
const weather = sampleWeather()

/** A scenario of the user's own area with some fields set, as typed. */
export function ownScenario(area_m2: number, fields: Readonly<Record<string, string>> = {}): Scenario {
  const typed = {
    'panel.moduleLength_m': '2',
    'target.autoArea': 'false',
    'target.area_m2': String(area_m2),
    ...fields,
  }
  return Object.entries(typed).reduce(
    (scenario, [path, text]) => withField(scenario, path, text),
    defaultScenario(),
  )
}

export function answerFor(area_m2: number, fields: Readonly<Record<string, string>> = {}): DesignAnswer {
  return stages.answer(ownScenario(area_m2, fields), weather)
}
