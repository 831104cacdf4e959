import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { LatestWins } from '#live/latest-wins.ts'
import type { Input, Reply, Request } from '#live/messages.ts'
import { defaultScenario } from '#model/design/scenario'
import type { WeatherRecord } from '#model/outdoors/weather'

/** A worker that notes what it is sent and answers only when the test says so. */
class FakeWorker extends EventTarget {
  static started: FakeWorker[] = []
  onmessage: ((event: { data: Reply }) => void) | null = null
  onerror: ((event: { message: string; preventDefault: () => void }) => void) | null = null
  readonly sent: Request[] = []
  ended = false
  constructor() {
    super()
    FakeWorker.started.push(this)
  }
  postMessage(request: Request): void {
    this.sent.push(request)
  }
  terminate(): void {
    this.ended = true
  }
  get tasks() {
    return this.sent.filter((request) => request.kind === 'ask')
  }
}

const summer = { site: { name: 'summer' } } as unknown as WeatherRecord
const winter = { site: { name: 'winter' } } as unknown as WeatherRecord
const named = (name: string): Input<'size'> => ({
  scenario: { ...defaultScenario(), job: { name, note: '', way: [] } },
})
const settle = () => new Promise((resolve) => setTimeout(resolve, 0))

function listening() {
  const taken: string[] = []
  const failed: string[] = []
  let rests = 0
  const run = new LatestWins('size', {
    take: (_, question) => taken.push(question.input.scenario.job.name),
    fail: (reason) => failed.push(String(reason)),
    rest: () => (rests += 1),
  })
  return { run, taken, failed, rests: () => rests }
}

beforeEach(() => {
  FakeWorker.started = []
  vi.stubGlobal('Worker', FakeWorker)
})
afterEach(() => {
  vi.unstubAllGlobals()
})

async function reply(worker: FakeWorker, task: number): Promise<void> {
  const { id } = worker.tasks[task]!
  worker.onmessage!({ data: { kind: 'done', id, output: {} as never } })
  await settle()
}

describe('questions that follow a slider', () => {
  test('while one is with the worker only the newest of the rest is asked', async () => {
    const { run, taken, rests } = listening()
    for (const name of ['first', 'between', 'newest']) run.ask({ input: named(name), weather: summer })
    const worker = FakeWorker.started[0]!
    await reply(worker, 0)
    await reply(worker, 1)
    expect(taken).toEqual(['first', 'newest'])
    expect(worker.tasks.map((task) => (task.input as Input<'size'>).scenario.job.name)).toEqual([
      'first',
      'newest',
    ])
    expect(rests()).toBe(1)
  })

  test('the weather is sent once and again only when it changes', async () => {
    const { run } = listening()
    run.ask({ input: named('a'), weather: summer })
    const worker = FakeWorker.started[0]!
    await reply(worker, 0)
    run.ask({ input: named('b'), weather: summer })
    await reply(worker, 1)
    run.ask({ input: named('c'), weather: winter })
    expect(worker.sent.map(({ kind }) => kind)).toEqual(['weather', 'ask', 'ask', 'weather', 'ask'])
  })

  test('an answer in weather that has changed since is dropped as stale', async () => {
    const { run, taken } = listening()
    run.ask({ input: named('in summer'), weather: summer })
    run.ask({ input: named('in winter'), weather: winter })
    const worker = FakeWorker.started[0]!
    await reply(worker, 0)
    await reply(worker, 1)
    expect(taken).toEqual(['in winter'])
  })

  test('a reply with an id nobody waits for is dropped', async () => {
    const { run, taken } = listening()
    run.ask({ input: named('a'), weather: summer })
    FakeWorker.started[0]!.onmessage!({ data: { kind: 'done', id: 999, output: {} as never } })
    await settle()
    expect(taken).toEqual([])
  })

  test('after a crash the next question starts a new worker, with the weather', async () => {
    const { run, taken, failed } = listening()
    run.ask({ input: named('crashes'), weather: summer })
    FakeWorker.started[0]!.onerror!({ message: 'out of memory', preventDefault: () => {} })
    await settle()
    expect(failed[0]).toContain('stopped unexpectedly (out of memory)')
    expect(FakeWorker.started[0]!.ended).toBe(true)
    run.ask({ input: named('works'), weather: summer })
    const second = FakeWorker.started[1]!
    expect(second.sent[0]!.kind).toBe('weather')
    await reply(second, 0)
    expect(taken).toEqual(['works'])
  })
})
