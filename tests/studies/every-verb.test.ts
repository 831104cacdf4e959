/* The same question through the library (as shell and tests ask) and through the worker's answering gives the same
 * reply, for every verb; and what crosses to the page can be cloned. */
import { expect, test } from 'vitest'
import { Stages } from '#studies/stages.ts'
import { DEMO_READINGS } from '#model/panels/readings'
import { DEMO_RECIPE } from '#model/panels/paint'
import { defaultScenario } from '#model/design/scenario'
import { answerTo } from '#live/verbs.ts'
import type { Input } from '#live/messages.ts'
import { createStudies, finish, VERB_NAMES, type RequestOf, type Study, type Verb } from '#studies/index.ts'
import { sampleWeather } from '../../src/shell/samples.ts'

const weather = sampleWeather('continental')
const scenario = defaultScenario()
const studies = createStudies()
const answer = finish(studies.size({ scenario, weather })).result
const { sizing, area_m2, storeVolume_m3 } = answer
const around = { area_m2, storeVolume_m3, flow_kgsm2: sizing.flow_kgsm2 }
const log = { fault: 'dirty', firstDay: 180, days: 4, seed: 3, area_m2: 10 } as const
const text = finish(studies.practiceLog({ scenario, weather, ...log })).result
const axes = {
  climates: [{ name: 'here', weather }],
  plans: ['allDay'],
  coatings: ['own'],
  covers: ['bare', 'film'],
  cuts: [],
} as const
const hour = {
  airTemp_C: 25,
  dewPoint_C: 12,
  wind_ms: 1,
  sun_Wm2: 900,
  shade_Wm2: 60,
  skyLongwave_Wm2: null,
  cloud_frac: 0,
}

const QUESTIONS: { readonly [V in Verb]: Input<V> } = {
  size: { scenario },
  judge: { scenario, chosen: { area_m2: 5, storeVolume_m3: 0.3, flow_kgsm2: 0.01 } },
  follow: { scenario, near: sizing },
  trials: { scenarios: [scenario, { ...scenario, site: { ...scenario.site, albedo_frac: 0.5 } }] },
  range: { scenario, sizing, draws: 3 },
  drawAreas: { scenario, sizing, draws: 4, from: 1, to: 3 },
  expected: { scenario, built: around, draws: 2 },
  map: { scenario, kind: 'flow', around, axes: { kind: 'flow', area_m2: [4, 8], other: [0.006, 0.012] } },
  compare: { scenario, axes },
  decide: { scenario, only: ['paintRoof', 'nightFan', 'direct'] },
  idealLoads: { scenario, cool_C: 25, heat_C: 17 },
  sky: { scenario },
  plate: { scenario, plate_C: 20 },
  estimateCoating: { readings: DEMO_READINGS },
  board: { scenario, hour },
  mixPaint: { recipe: DEMO_RECIPE, job: { area_m2: 12 } },
  checkAsBuilt: { scenario, area_m2: 10, file: 'log.csv', text },
  practiceLog: { scenario, ...log },
  sheet: { answer },
}

test.each(VERB_NAMES)('%s: library and worker give the same reply, and it can be cloned', async (verb) => {
  const question = { ...QUESTIONS[verb], weather } as unknown as RequestOf<typeof verb>
  const ask = createStudies()[verb] as (q: RequestOf<Verb>) => Study<unknown>
  const asked = { ...(finish(ask(question)).result as object | null) } as Record<string, unknown>
  const shares: number[] = []
  const input = structuredClone(QUESTIONS[verb])
  const answered = await answerTo(new Stages(), verb, input, weather, (share) => shares.push(share))
  if (verb === 'size' || verb === 'judge') delete asked['panel']
  const whole =
    typeof answered === 'string' ? { ...(answered as unknown as object) } : { ...(answered as object) }
  expect(structuredClone(whole)).toEqual(asked)
  expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true)
})
