/* The same request through the command line and through the worker gives the same reply, for every verb: each
 * subcommand is run, what it asked is asked of the worker's own message handler, and the subcommand run again on the
 * worker's replies must print the same bytes. A question without words on the command line is asked of its studies. */
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, expect, test, vi } from 'vitest'
import type { Reply, Request } from '#live/messages.ts'
import type { OpeningReply, OpeningRequest } from '#live/weather-opening.ts'
import { defaultScenario } from '#model/design/scenario'
import { DEMO_READINGS, writeReadings } from '#model/panels/readings'
import { createStudies, finish, VERB_NAMES, type RequestOf, type Study, type Verb } from '#studies/index.ts'
import { COMMANDS } from '../../src/shell/commands/all.ts'
import { readOptions } from '../../src/shell/options.ts'
import { renderResult, type Result } from '../../src/shell/output.ts'
import { sampleWeather } from '../../src/shell/samples.ts'
import { scratchFolder } from '../shell/run-shell.ts'
import { SHELL_VERBS } from './shell-verbs.ts'

interface Asked {
  readonly verb: Verb
  readonly request: Readonly<Record<string, unknown>>
  readonly result: unknown
}

/** What the running subcommand asked, and the replies it is given in place of its own. */
const shell = vi.hoisted(() => ({
  asked: [] as unknown[],
  replies: null as unknown[] | null,
}))

vi.mock('../../src/shell/answered.ts', () => {
  const own = createStudies()
  const begun = new WeakMap<object, Omit<Asked, 'result'>>()
  const studies = Object.fromEntries(
    VERB_NAMES.map((verb) => [
      verb,
      (request: never) => {
        const study = (own[verb] as (q: never) => Study<unknown>)(request)
        begun.set(study, { verb, request })
        return study
      },
    ]),
  )
  const answered = (study: Study<unknown>): unknown => {
    if (shell.replies !== null) return shell.replies.shift()
    const { result } = finish(study)
    shell.asked.push({ ...begun.get(study)!, result })
    return result
  }
  return { studies, answered }
})

function printed(words: readonly string[]): string {
  const [name, ...rest] = words
  const command = COMMANDS[name!]!
  // `decide` of everything is shared over the cores; what is asked here is not
  const result = command.run(readOptions([...rest, '--format', 'json'], command.options)) as Result
  return renderResult(result, 'json')
}

const heard = new Map<number, (reply: Reply) => void>()
let toWorker: (request: Request) => void
let opened: (reply: OpeningReply) => void
let toOpening: (request: OpeningRequest) => void

beforeAll(async () => {
  const scope = globalThis as unknown as {
    postMessage: (reply: Reply | OpeningReply) => void
    onmessage: (event: { data: unknown }) => void
  }
  scope.postMessage = (reply) =>
    'id' in reply ? heard.get(reply.id)?.(structuredClone(reply)) : opened(structuredClone(reply))
  scope.onmessage = () => {}
  await import('#live/worker.ts')
  const work = scope.onmessage
  toWorker = (request) => work({ data: structuredClone(request) })
  await import('#live/weather-worker.ts')
  const open = scope.onmessage
  toOpening = (request) => open({ data: request })
})

let lastId = 0
function throughWorker({ verb, request }: Omit<Asked, 'result'>): Promise<unknown> {
  const { weather = sampleWeather('continental'), ...input } = request
  const id = ++lastId
  return new Promise((resolve, reject) => {
    heard.set(id, (reply) => {
      if (reply.kind === 'done') resolve(reply.output)
      if (reply.kind === 'progress') expect(reply.share >= 0 && reply.share <= 1).toBe(true)
      if (reply.kind === 'failed') reject(new Error(reply.problems.map(({ message }) => message).join(' ')))
    })
    toWorker({ kind: 'weather', record: weather as never })
    toWorker({ kind: 'ask', id, verb, input: input as never })
  })
}

/** What crosses to a page: no answer of the worker has the panel's own columns, which no page shows. */
function asPage({ verb, result }: Asked): unknown {
  if (verb !== 'size' && verb !== 'judge') return result
  const { panel, ...rest } = result as { panel?: unknown }
  expect(panel).toBeDefined()
  return rest
}

const folder = scratchFolder()
function withFiles(words: readonly string[]): readonly string[] {
  return words.map((word) => (['NOTES', 'LOG', 'TABLE'].includes(word) ? join(folder, word) : word))
}

/** The year of a sample as a table of a station. */
function stationTable(): string {
  const { airTemp_C, dewPoint_C, globalHorizontal_Wm2, wind_ms } = sampleWeather('continental')
  const rows = Array.from({ length: 24 * 365 }, (_, h) => {
    const time = new Date(Date.UTC(2023, 0, 1, h)).toISOString().slice(0, 16).replace('T', ' ')
    const cells = [airTemp_C[h]!, dewPoint_C[h]!, globalHorizontal_Wm2[h]!, wind_ms[h]!]
    return [time, ...cells.map((value) => value.toFixed(1))].join(',')
  })
  return ['time,air temperature (°C),dew point (°C),global radiation (W/m²),wind speed (m/s)', ...rows].join(
    '\n',
  )
}

const commands = Object.entries(SHELL_VERBS).flatMap(([verb, how]) =>
  'words' in how ? [[verb as Verb, how.words] as const] : [],
)

beforeAll(() => {
  writeFileSync(join(folder, 'NOTES'), writeReadings(DEMO_READINGS))
  writeFileSync(join(folder, 'TABLE'), stationTable())
  const log = SHELL_VERBS.practiceLog
  if (!('words' in log)) throw new Error('the practice log is asked by a subcommand')
  writeFileSync(join(folder, 'LOG'), printed(log.words))
})

test.each(commands)('%s: command line and worker give the same reply', async (verb, words) => {
  shell.asked = []
  const first = printed(withFiles(words))
  const asked = shell.asked as Asked[]
  expect(asked.map((one) => one.verb)).toContain(verb)
  const replies = []
  for (const one of asked) {
    const reply = await throughWorker(one)
    expect(reply).toEqual(structuredClone(asPage(one)))
    replies.push(reply)
  }
  shell.replies = replies
  try {
    expect(printed(withFiles(words))).toBe(first)
  } finally {
    shell.replies = null
  }
})

const unworded = Object.entries(SHELL_VERBS).flatMap(([verb, how]) =>
  'input' in how ? [[verb as Verb, how.input] as const] : [],
)

test.each(unworded)('%s: the studies and the worker give the same reply', async (verb, input) => {
  const studies = createStudies()
  const asked = { scenario: defaultScenario(), weather: sampleWeather('continental') }
  const { sizing } = finish(studies.size(asked)).result
  const request = { ...input(sizing), weather: asked.weather }
  const ask = studies[verb] as (q: RequestOf<Verb>) => Study<unknown>
  const { result } = finish(ask(structuredClone(request) as unknown as RequestOf<Verb>))
  const whole = { verb, request: request as unknown as Asked['request'], result }
  expect(await throughWorker(whole)).toEqual(structuredClone(asPage(whole)))
})

test('a weather file opened by the page is read as the command line reads it', async () => {
  const text = stationTable()
  const options = { file: 'TABLE' }
  const reply = await new Promise<OpeningReply>((resolve) => {
    opened = (said) => said.kind !== 'progress' && resolve(said)
    toOpening({ file: new File([text], options.file), options })
  })
  const { result } = finish(createStudies().readWeather({ text, ...options }))
  expect(reply).toMatchObject({ kind: 'done', result: { opened: structuredClone(result) } })
})

test('every verb is compared', () => {
  expect(Object.keys(SHELL_VERBS).toSorted()).toEqual(VERB_NAMES.toSorted())
})
