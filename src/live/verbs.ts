import type { Stages } from '#studies/stages.ts'
import type { Scenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'
import { follow } from '#studies/follow.ts'
import type { RequestOf, ResultOf, Verb } from '#studies/index.ts'
import { drawAreas, range } from '#studies/range.ts'
import { judge, size } from '#studies/size.ts'
import { sizeNear } from '#studies/size-near.ts'
import type { Study } from '#studies/study.ts'
import type { Input, Output } from '#live/messages.ts'
import { paced } from '#live/paced.ts'

type Asking<V extends Verb> = (stages: Stages, q: RequestOf<V>) => Study<ResultOf<V>, ResultOf<V>>

/** How each study is had: what only one page needs is loaded when it is first asked for. */
const VERBS: { readonly [V in Verb]: () => Promise<Asking<V>> } = {
  size: async () => size,
  judge: async () => judge,
  follow: async () => follow,
  sizeNear: async () => sizeNear,
  trials: async () => (await import('#studies/trials.ts')).trials,
  drawAreas: async () => drawAreas,
  range: async () => range,
  map: async () => (await import('#studies/map.ts')).map,
  compare: async () => (await import('#studies/compare.ts')).compare,
  decide: async () => (await import('#studies/decide.ts')).decide,
  drawHours: async () => (await import('#studies/decide-sure.ts')).drawHours,
  idealLoads: async () => (await import('#studies/ideal-loads.ts')).idealLoads,
  sky: async () => (await import('#studies/sky.ts')).sky,
  plate: async () => (await import('#studies/plate.ts')).plate,
  panelNight: async () => (await import('#studies/panel-night.ts')).panelNight,
  board: async () => (await import('#studies/board.ts')).board,
  sheet: async () => (await import('#studies/sheet.ts')).sheet,
  mixPaint: async () => (await import('#studies/mix-paint.ts')).mixPaint,
  expected: async () => (await import('#studies/expected.ts')).expected,
  estimateCoating: async () => (await import('#studies/estimate-coating.ts')).estimateCoating,
  checkAsBuilt: async () => (await import('#studies/check-as-built.ts')).checkAsBuilt,
  waySheet: async () => (await import('#studies/way-sheet.ts')).waySheet,
  year: async () => (await import('#studies/year.ts')).year,
  readWeather: async () => (await import('#studies/read-weather.ts')).readWeather,
  practiceLog: async () => (await import('#studies/practice-log.ts')).practiceLog,
}

/** Studies of one description, which the first page asks for: what a way needs is loaded once it has one. */
const SIMPLE: ReadonlySet<Verb> = new Set(['size', 'judge', 'follow', 'sizeNear', 'drawAreas', 'range'])

const hasNoWay = (input: { readonly scenario?: Scenario }): boolean => input.scenario?.job.way.length === 0

/** Answers a page's question in a worker: the study of that name, in stretches, without what no page shows. */
export async function answerTo<V extends Verb>(
  stages: Stages,
  verb: V,
  input: Input<V>,
  weather: WeatherRecord,
  progress: (share: number, soFar?: Output<V>) => void = () => {},
): Promise<Output<V>> {
  if (stages.wayYear === null && !(SIMPLE.has(verb) && hasNoWay(input)))
    stages.wayYear = (await import('#studies/way-year.ts')).wayYear
  const study = (await VERBS[verb]())(stages, { ...input, weather } as unknown as RequestOf<V>)
  const { result } = await paced(study, ({ share, soFar }) => progress(share, soFar as Output<V> | undefined))
  return forPage(verb, result) as Output<V>
}

function forPage<V extends Verb>(verb: V, result: ResultOf<V>): unknown {
  if (verb !== 'size' && verb !== 'judge') return result
  const shown: { panel?: unknown } = { ...(result as object) }
  delete shown.panel
  return shown
}
