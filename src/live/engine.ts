import { ProblemError, type Problem } from '#model/basis/words'
import type { WeatherRecord } from '#model/outdoors/weather'
import type { Verb } from '#studies/index.ts'
import type { Input, Output, Reply, Request } from '#live/messages.ts'

interface Waiting {
  readonly resolve: (output: never) => void
  readonly reject: (reason: ProblemError) => void
  readonly onProgress: (share: number, soFar?: never) => void
}

/**
 * Seconds awake without a word after which a worker counts as dead: a browser short of memory may end one without
 * telling. The longest study says how far it is every few seconds.
 */
const SILENCE_S = 120

/** Thrown to whoever waits when `stop()` ends the worker. */
export class Stopped extends Error {
  override readonly name = 'Stopped'
}

/**
 * One worker and the questions it owes an answer to. Started at the first question, started again after a
 * crash or a stop; the weather is sent again only when it changed or the worker is new.
 */
export class Engine {
  #worker: Worker | null = null
  #weather: WeatherRecord | null = null
  #nextId = 1
  #silent_s = 0
  #watch: ReturnType<typeof setInterval> | undefined
  readonly #waiting = new Map<number, Waiting>()

  run<V extends Verb>(
    verb: V,
    input: Input<V>,
    weather: WeatherRecord,
    onProgress: (share: number, soFar?: Output<V>) => void = () => {},
  ): Promise<Output<V>> {
    const worker = this.#started()
    if (this.#weather !== weather) {
      this.#post(worker, { kind: 'weather', record: weather })
      this.#weather = weather
    }
    const id = this.#nextId++
    return new Promise<Output<V>>((resolve, reject) => {
      this.#watchOver()
      this.#waiting.set(id, { resolve, reject, onProgress })
      this.#post(worker, { kind: 'ask', id, verb, input })
    })
  }

  /** Ends the worker at once, whatever it is doing. Everyone waiting gets `Stopped`. */
  stop(): void {
    this.#worker?.terminate()
    this.#worker = null
    this.#weather = null
    const waiting = [...this.#waiting.values()]
    this.#waiting.clear()
    for (const { reject } of waiting) reject(new Stopped() as unknown as ProblemError)
  }

  #started(): Worker {
    if (this.#worker) return this.#worker
    const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
    worker.onmessage = (event: MessageEvent<Reply>) => this.#hear(event.data)
    worker.onerror = (event) => {
      event.preventDefault()
      if (this.#worker === worker) this.#crashed(event.message)
    }
    worker.addEventListener('messageerror', () => {
      if (this.#worker === worker) this.#crashed('its answer was damaged')
    })
    this.#worker = worker
    return worker
  }

  #post(worker: Worker, request: Request): void {
    worker.postMessage(request)
  }

  /** Counts ticks, not the clock: a machine that sleeps for a day has not waited a day. */
  #watchOver(): void {
    this.#silent_s = 0
    this.#watch ??= setInterval(() => {
      if (this.#waiting.size === 0) return this.#rest()
      this.#silent_s += 1
      if (this.#silent_s > SILENCE_S) this.#crashed(`no word for ${SILENCE_S} s`)
    }, 1000)
  }

  #rest(): void {
    clearInterval(this.#watch)
    this.#watch = undefined
  }

  #hear(reply: Reply): void {
    this.#silent_s = 0
    const waiting = this.#waiting.get(reply.id)
    if (!waiting) return
    if (reply.kind === 'progress') return waiting.onProgress(reply.share, reply.soFar as never)
    this.#waiting.delete(reply.id)
    if (reply.kind === 'done') waiting.resolve(reply.output as never)
    else waiting.reject(new ProblemError(reply.problems))
  }

  #crashed(message: string): void {
    this.#worker?.terminate()
    this.#worker = null
    this.#weather = null
    const waiting = [...this.#waiting.values()]
    this.#waiting.clear()
    for (const { reject } of waiting) reject(new ProblemError([crash(message)]))
  }
}

function crash(message: string): Problem {
  return {
    code: 'engine-crashed',
    severity: 'error',
    message: `The calculation stopped unexpectedly${message ? ` (${message})` : ''}.`,
    remedy: 'It starts afresh with your next change; undo the last one if it happens again.',
    place: {},
  }
}
