import { describe, expect, test } from 'vitest'
import { readLinkHash, readPlacedText } from '#live/design-link.ts'
import { readReadings } from '#model/panels/readings'
import { readSampleCsv } from '#model/outdoors/climate'
import { readRecipe } from '#model/panels/paint'
import { openLog } from '#model/handover/as-built'
import { ProblemError, problemSentence } from '#model/basis/words'
import { readScenarioFile } from '#model/design/scenario'
import { readMappingFile, openWeather } from '#model/outdoors/intake'
import { fewDays } from '../rooms/handover/as-built/panel.ts'

/**
 * Files made to hurt, through every door a text comes in by. What must hold: the door answers within the time, opens
 * the file or refuses it with sentences short enough to read, and leaves the language's own prototypes as they were.
 */
const DOORS: Readonly<Record<string, (text: string) => unknown>> = {
  'scenario file': (text) => readScenarioFile(text, 'hostile'),
  'kept design': (text) => readPlacedText(text),
  link: (text) => readLinkHash(`#climate=x&${text}`),
  'mapping file': (text) => readMappingFile(text, 'hostile'),
  'field notes': (text) => readReadings(text, 'hostile'),
  recipe: (text) => readRecipe(text, 'hostile'),
  'weather file': (text) => {
    const { problems } = openWeather(text, { file: 'hostile' })
    if (problems.some(({ severity }) => severity === 'error')) throw new ProblemError(problems)
  },
  'logger file': (text) =>
    openLog(text, fewDays('hot-desert', 180, 10), { file: 'hostile', fluidDensity_kgm3: 1000 }),
  'sample climate': (text) => readSampleCsv(text, 'hostile'),
}

const DEEP = 200_000
const LONG = 5_000_000
const MANY = 200_000
const nested = (open: string, close: string) => open.repeat(DEEP) + '1' + close.repeat(DEEP)
const list = (count: number, item: (i: number) => string) => Array.from({ length: count }, (_, i) => item(i))

const HOSTILE: Readonly<Record<string, string>> = {
  'lists in lists': nested('[', ']'),
  'objects in objects': nested('{"a":', '}'),
  'lists in a field': `{"room":{"length_m":${nested('[', ']')}}}`,
  'lists as version': `{"duskbankScenario":${nested('[', ']')}}`,
  'lists in notes': `{"duskbankReadings":${nested('[', ']')},"samples":${nested('[', ']')}}`,
  'lists in a recipe': `{"duskbankRecipe":1,"name":${nested('[', ']')}}`,
  'lists in a mapping': `{"version":1,"columns":[${nested('[', ']')}]}`,
  'lists in a kept design': `{"climate":${nested('[', ']')},"scenario":{"room":${nested('[', ']')}}}`,
  'one endless word': 'x'.repeat(LONG),
  'one endless JSON text': JSON.stringify('x'.repeat(LONG)),
  'an endless name': `{"job":{"name":"${'x'.repeat(LONG)}"}}`,
  'an endless field name': `{"room":{"${'x'.repeat(LONG)}":1}}`,
  'an endless group name': `{"${'x'.repeat(LONG)}":{}}`,
  'an endless number': `{"room":{"length_m":${'9'.repeat(LONG)}}}`,
  'an endless version': `{"duskbankScenario":"${'x'.repeat(LONG)}"}`,
  'very many groups': `{${list(MANY, (i) => `"g${i}":{}`).join()}}`,
  'very many fields': `{"room":{${list(MANY, (i) => `"f${i}":1`).join()}}}`,
  'very many link fields': list(20_000, (i) => `room.f${i}=1`).join('&'),
  'very many columns': `${list(MANY, (i) => `c${i}`).join()}\n${list(MANY, String).join()}\n`.repeat(3),
  'very many empty lines': '\n'.repeat(2_000_000),
  'an open quote': `time,temperature\n"${'a,'.repeat(LONG / 4)}`,
  'quotes without end': '"'.repeat(LONG / 4),
  'zero bytes': '\0'.repeat(100_000),
  'half a surrogate': `{"job":{"name":"${'\ud800'.repeat(60)}"}}`,
  '__proto__ as group': '{"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}}}',
  '__proto__ as field': '{"room":{"__proto__":{"polluted":1},"constructor":1,"toString":2}}',
  '__proto__ as value': '{"job":{"name":{"__proto__":{"polluted":1}}}}',
  '__proto__ in notes':
    '{"duskbankReadings":1,"__proto__":{"polluted":1},"samples":[{"__proto__":{"polluted":1}}]}',
  '__proto__ in a recipe':
    '{"duskbankRecipe":1,"__proto__":{"polluted":1},"binder":{"__proto__":{"polluted":1}}}',
  '__proto__ in a mapping': '{"version":1,"__proto__":{"polluted":1},"site":{"__proto__":{"polluted":1}}}',
  '__proto__ in a link': '__proto__.polluted=1&constructor.prototype=1&room.__proto__=1&__proto__=1',
  '__proto__ as header': '__proto__,constructor,toString\n2019-01-01 00:00,1,2\n2019-01-01 01:00,1,2\n',
}

/** Long enough for a machine that does much else; a door that hangs takes minutes. */
const PATIENCE_MS = 20_000
/** What a message box can show. */
const MOST_SENTENCES = 60
const LONGEST_SENTENCE = 1_000

describe.each(Object.entries(DOORS))('%s', (_, door) => {
  test.each(Object.entries(HOSTILE))('%s', (_, text) => {
    const began = performance.now()
    try {
      door(text)
    } catch (reason) {
      if (!(reason instanceof ProblemError)) throw reason
      expect(reason.problems.length).toBeGreaterThan(0)
      expect(reason.problems.length, 'sentences').toBeLessThanOrEqual(MOST_SENTENCES)
      for (const problem of reason.problems)
        expect(problemSentence(problem).length, problem.code).toBeLessThan(LONGEST_SENTENCE)
    }
    expect(performance.now() - began).toBeLessThan(PATIENCE_MS)
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined()
    expect(Object.keys(Object.prototype)).toEqual([])
  })
})
