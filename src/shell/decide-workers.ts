/** Workers of a search over combinations: each a share of it, then guessed panels that are to be sized. */
import { setImmediate } from 'node:timers/promises'
import type { Worker } from 'node:worker_threads'
import type { Decision, Deciding } from '#studies/decide.ts'
import type { OtherCores } from '#studies/decide-refine.ts'
import type { Combination } from '#studies/decide-trial.ts'
import type { Reply } from '#studies/index.ts'
import { typescriptWorker } from './typescript-worker.ts'

const WORKER = new URL('./decide-worker.ts', import.meta.url)

/** One is being sized, one waits, so that the worker need not. */
const AT_ONCE = 2

type Message =
  | { readonly share: number }
  | { readonly reply: Reply<Decision> }
  | { readonly id: number; readonly sized: Combination }

/** A worker, at its share from the beginning. */
export class DecideWorker {
  readonly reply: Promise<Reply<Decision>>
  /** How many it was given and has not sized yet. */
  owes = 0
  onSized: (id: number, sized: Combination) => void = () => {}
  onError: (reason: unknown) => void = () => {}
  private readonly worker: Worker

  constructor(question: Deciding, onShare: (share: number) => void) {
    this.worker = typescriptWorker(WORKER, question)
    this.reply = new Promise((resolve, reject) => {
      this.worker.on('message', (said: Message) => {
        if ('share' in said) onShare(said.share)
        else if ('reply' in said) resolve(said.reply)
        else {
          this.owes--
          this.onSized(said.id, said.sized)
        }
      })
      this.worker.on('error', (reason) => {
        reject(reason)
        this.onError(reason)
      })
    })
  }

  size(id: number, rough: Combination): void {
    this.owes++
    this.worker.postMessage({ id, rough })
  }

  end(): void {
    void this.worker.terminate()
  }
}

/** Workers whose shares are done, as they size what is offered to them. */
export class WorkersAsOthers implements OtherCores {
  private readonly given: Combination[] = []
  private readonly found = new Map<Combination, Combination>()
  private readonly workers: readonly DecideWorker[]
  private failed: { readonly reason: unknown } | null = null
  private onHeard: () => void = () => {}
  /** Nothing that waits is left to this thread. */
  private idle = false

  constructor(workers: readonly DecideWorker[]) {
    this.workers = workers
    for (const worker of workers) {
      worker.onSized = (id, sized) => {
        this.found.set(this.given[id]!, sized)
        this.onHeard()
      }
      worker.onError = (reason) => {
        this.failed = { reason }
        this.onHeard()
      }
    }
  }

  /** The first is left to this thread. */
  offer(waiting: readonly Combination[]): void {
    const free = waiting.slice(1).filter((rough) => !this.took(rough))
    for (let owed = 0; owed < AT_ONCE; owed++)
      for (const worker of this.workers) {
        const rough = worker.owes <= owed ? free.shift() : undefined
        if (rough !== undefined) worker.size(this.given.push(rough) - 1, rough)
      }
    this.idle = waiting.every((rough) => this.took(rough))
  }

  /** Until what the workers have said is heard: where this thread has nothing to do, until they say something. @throws what went wrong in one */
  async heard(): Promise<void> {
    const before = this.found.size
    await setImmediate()
    if (this.idle && this.found.size === before && this.failed === null)
      await new Promise<void>((resolve) => (this.onHeard = resolve))
    if (this.failed !== null) throw this.failed.reason
  }

  took(rough: Combination): boolean {
    return this.given.includes(rough)
  }

  sized(rough: Combination): Combination | undefined {
    return this.found.get(rough)
  }
}
