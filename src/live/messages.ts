import type { RequestOf, ResultOf, Verb } from '#studies/index.ts'
import type { DesignAnswer } from '#model/design/assembly'
import type { Problem } from '#model/basis/words'
import type { WeatherRecord } from '#model/outdoors/weather'

/** What crosses to the page: the answer without the panel's coefficient columns, which no page shows. */
export type LiveAnswer = Omit<DesignAnswer, 'panel'>

type ForPage<Result> = Result extends DesignAnswer ? LiveAnswer : Result

/** A question as a page asks it: the weather is sent once and kept by the worker. */
export type Input<V extends Verb> = Omit<RequestOf<V>, 'weather'>
/** What comes back of it. */
export type Output<V extends Verb> = ForPage<ResultOf<V>>

/** What the page asks of a worker. Every question runs in the weather that was sent last. */
export type Request =
  | { readonly kind: 'weather'; readonly record: WeatherRecord }
  | {
      readonly kind: 'ask'
      readonly id: number
      readonly verb: Verb
      readonly input: Input<Verb>
    }

/** What a worker says back. `id` is the request's; a reply whose id nobody waits for is dropped. */
export type Reply =
  | { readonly kind: 'done'; readonly id: number; readonly output: Output<Verb> }
  | {
      readonly kind: 'progress'
      readonly id: number
      readonly share: number
      /** What there is of the output already, of questions that can show it as it grows. */
      readonly soFar?: Output<Verb>
    }
  | { readonly kind: 'failed'; readonly id: number; readonly problems: readonly Problem[] }
