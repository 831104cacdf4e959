/* The same request through the command line and through the worker gives the same reply, for every verb: each
 * subcommand is run, what it asked is asked of the worker's own message handler, and the subcommand run again on the
 * worker's replies must print the same bytes. */
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, expect, test, vi } from 'vitest'
import type { Reply, Request } from '#live/messages.ts'
import { DEMO_READINGS, writeReadings } from '#model/panels/readings'
import { createStudies, finish, VERB_NAMES, type Study, type Verb } from '#studies/index.ts'
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

beforeAll(async () => {
  const scope = globalThis as unknown as {
    postMessage: (reply: Reply) => void
    onmessage: (event: { data: Request }) => void
  }
  scope.postMessage = (reply) => heard.get(reply.id)?.(structuredClone(reply))
  scope.onmessage = () => {}
  await import('#live/worker.ts')
  toWorker = (request) => scope.onmessage({ data: structuredClone(request) })
})

let lastId = 0
function throughWorker({ verb, request }: Asked): Promise<unknown> {
  const { weather = sampleWeather('continental'), ...input } = request
  const id = ++lastId
  return new Promise((resolve, reject) => {
    heard.set(id, (reply) => {
      if (reply.kind === 'done') resolve(reply.output)
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
  return words.map((word) => (word === 'NOTES' || word === 'LOG' ? join(folder, word) : word))
}

const reached = new Set<Verb>()
const commands = Object.entries(SHELL_VERBS).flatMap(([verb, how]) =>
  'words' in how ? [[verb as Verb, how.words] as const] : [],
)

beforeAll(() => {
  writeFileSync(join(folder, 'NOTES'), writeReadings(DEMO_READINGS))
  const log = SHELL_VERBS.practiceLog
  if (!('words' in log)) throw new Error('the practice log is asked by a subcommand')
  writeFileSync(join(folder, 'LOG'), printed(log.words))
})

test.each(commands)(
  '%s: command line and worker give the same reply',
  { timeout: 240_000 },
  async (verb, words) => {
    shell.asked = []
    const first = printed(withFiles(words))
    const asked = shell.asked as Asked[]
    expect(asked.map((one) => one.verb)).toContain(verb)
    const replies = []
    for (const one of asked) {
      reached.add(one.verb)
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
  },
)

test('a verb without a subcommand says why, and no subcommand asks it', () => {
  const without = VERB_NAMES.filter((verb) => 'why' in SHELL_VERBS[verb])
  expect(without.filter((verb) => reached.has(verb))).toEqual([])
  expect(reached.size + without.length).toBe(VERB_NAMES.length)
})
