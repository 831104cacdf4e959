/**
 * What can be asked of Duskbank: one file a question, the same for page, command line, tests and users of the library.
 */
import { Stages } from './stages.ts'
import { board } from './board.ts'
import { checkAsBuilt } from './check-as-built.ts'
import { compare } from './compare.ts'
import { decide } from './decide.ts'
import { drawHours } from './decide-sure.ts'
import { estimateCoating } from './estimate-coating.ts'
import { expected } from './expected.ts'
import { follow } from './follow.ts'
import { idealLoads } from './ideal-loads.ts'
import { map } from './map.ts'
import { mixPaint } from './mix-paint.ts'
import { panelNight } from './panel-night.ts'
import { plate } from './plate.ts'
import { practiceLog } from './practice-log.ts'
import { drawAreas, range } from './range.ts'
import { readWeather } from './read-weather.ts'
import { sheet } from './sheet.ts'
import { judge, size } from './size.ts'
import { sizeNear } from './size-near.ts'
import { sky } from './sky.ts'
import { trials } from './trials.ts'
import { waySheet } from './way-sheet.ts'
import { wayYear } from './way-year.ts'
import { year } from './year.ts'

export { finish, type Asked, type Reply, type Step, type Study } from './study.ts'

const VERBS = {
  board,
  checkAsBuilt,
  compare,
  decide,
  drawAreas,
  drawHours,
  estimateCoating,
  expected,
  follow,
  idealLoads,
  judge,
  map,
  mixPaint,
  panelNight,
  plate,
  practiceLog,
  range,
  readWeather,
  sheet,
  size,
  sizeNear,
  sky,
  trials,
  waySheet,
  year,
} as const

export type Verb = keyof typeof VERBS
export const VERB_NAMES = Object.keys(VERBS) as readonly Verb[]

/** Every question, each remembering the stages of those before it. */
export type Studies = {
  readonly [V in Verb]: (q: Parameters<(typeof VERBS)[V]>[1]) => ReturnType<(typeof VERBS)[V]>
}

/** What a question is asked with, and what it comes to. */
export type RequestOf<V extends Verb> = Parameters<(typeof VERBS)[V]>[1]
export type ResultOf<V extends Verb> =
  ReturnType<Studies[V]> extends Generator<unknown, infer R>
    ? R extends { readonly result: infer T }
      ? T
      : never
    : never

/** The questions, over stages of their own: nothing is shared between two of these, and nothing is kept on disk. */
export function createStudies(stages = new Stages(wayYear)): Studies {
  const bound = Object.entries(VERBS).map(([name, verb]) => [
    name,
    (q: never) => (verb as (stages: Stages, q: never) => unknown)(stages, q),
  ])
  return Object.fromEntries(bound) as Studies
}
