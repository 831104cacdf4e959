import fc from 'fast-check'
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { ProblemError, type Problem, wordingText } from '#model/basis/words'
import {
  differences,
  FILE_MARK,
  readScenarioFile,
  withField,
  writeScenarioFile,
  defaultScenario,
  fieldAt,
  fieldsOf,
  GROUPS,
  SCENARIO_VERSION,
} from '#model/design/scenario'
import { parseScenario } from '#inside/model/design/scenario/parse.ts'
import { fieldPaths } from '#inside/model/design/scenario/schema.ts'
import { UNIT_SYSTEMS } from '#inside/model/basis/units/convert.ts'
import { randomScenario } from './random-scenario.ts'

const errorsOf = (problems: readonly Problem[]): readonly Problem[] =>
  problems.filter((problem) => problem.severity === 'error')

/** The problems of what was refused; fails when it was not, or when something else than a ProblemError came. */
function refusal(action: () => unknown): readonly Problem[] {
  try {
    action()
  } catch (error) {
    expect(error).toBeInstanceOf(ProblemError)
    return (error as ProblemError).problems
  }
  throw new Error('nothing was refused')
}

describe('the defaults', () => {
  test('are a scenario without an error, every value inside its usual span', () => {
    const { scenario, problems } = parseScenario({})
    expect(scenario).toEqual(defaultScenario())
    expect(problems).toEqual([])
  })

  test.each(fieldPaths())('%s: default and usual span lie inside its range', (path) => {
    const { field } = fieldAt(path)!
    if (field.type === 'number') {
      const [low, high] = field.usual
      expect([field.min <= low, low < high, high <= field.max, field.step > 0]).toEqual([
        true,
        true,
        true,
        true,
      ])
      expect(field.default).toBeGreaterThanOrEqual(field.min)
      expect(field.default).toBeLessThanOrEqual(field.max)
    }
    if (field.type === 'choice') expect(field.options).toContain(field.default)
    expect(field.label).not.toBe('')
    for (const system of UNIT_SYSTEMS) expect(wordingText(field.help, system)).toMatch(/[.!?]$/)
  })
})

describe('round trips', () => {
  test('random scenarios come back from a file as they went in, whole or short', () => {
    fc.assert(
      fc.property(randomScenario, fc.boolean(), (scenario, short) => {
        const read = readScenarioFile(writeScenarioFile(scenario, short), 'mine.json')
        expect(read.scenario).toEqual(JSON.parse(JSON.stringify(scenario)))
        expect(errorsOf(read.warnings)).toEqual([])
      }),
      { numRuns: 200, seed: 3 },
    )
  })

  test('every field set from the text of its own value is what it was', () => {
    fc.assert(
      fc.property(randomScenario, fc.constantFrom(...fieldPaths()), (scenario, path) => {
        const { group, name } = fieldAt(path)!
        const value = (scenario[group] as unknown as Record<string, unknown>)[name]
        expect(withField(scenario, path, String(value))).toEqual(scenario)
      }),
      { numRuns: 500, seed: 4 },
    )
  })

  test('a short file holds only what differs', () => {
    const scenario = withField(defaultScenario(), 'panel.tilt_deg', '12')
    expect(JSON.parse(writeScenarioFile(scenario, true))).toEqual({
      [FILE_MARK]: SCENARIO_VERSION,
      panel: { tilt_deg: 12 },
    })
    expect(differences(defaultScenario())).toEqual({})
  })

  test('setting one field leaves the scenario it was set in alone', () => {
    const before = defaultScenario()
    const kept = JSON.stringify(before)
    withField(before, 'panel.tilt_deg', '33')
    expect(JSON.stringify(before)).toBe(kept)
  })
})

describe('versions', () => {
  const VERSION_1 = new URL('version-1.json', import.meta.url)

  test('the kept file of version 1 opens, with its values', () => {
    const { scenario, warnings } = readScenarioFile(readFileSync(VERSION_1, 'utf8'), 'version-1.json')
    expect(errorsOf(warnings)).toEqual([])
    expect(scenario.job.name).toBe('Invented shed of version 1')
    expect([scenario.panel.tilt_deg, scenario.cover.kind, scenario.store.layers]).toEqual([12, 'film', 6])
  })

  test('version 1 wrote 0 where nobody gave a price: that is the start value; since then 0 is a price', () => {
    const prices = { panel_perm2: 0, store_perm3: 500, roofPaint_perm2: 0 }
    const old = parseScenario({ [FILE_MARK]: 1, prices }).scenario!
    expect([old.prices.panel_perm2, old.prices.store_perm3, old.prices.roofPaint_perm2]).toEqual([
      120, 500, 0,
    ])
    expect(parseScenario({ [FILE_MARK]: 2, prices }).scenario!.prices.panel_perm2).toBe(0)
  })

  test('a file without a version is read as today’s', () => {
    expect(parseScenario({ panel: { tilt_deg: 9 } }).scenario?.panel.tilt_deg).toBe(9)
  })

  test.each([SCENARIO_VERSION + 1, 99])('version %i is refused as newer, and says so', (version) => {
    const { scenario, problems } = parseScenario({ [FILE_MARK]: version, panel: { tilt_deg: 9 } }, 'new.json')
    expect(scenario).toBeNull()
    expect(problems).toHaveLength(1)
    expect(problems[0]!.code).toBe('scenario-newer')
    expect(problems[0]!.message).toContain(`version ${version}`)
    expect(problems[0]!.place.file).toBe('new.json')
  })

  test.each([0, -1, 1.5, NaN, '1', null, true, {}])('version %j is no version', (version) => {
    const { scenario, problems } = parseScenario({ [FILE_MARK]: version })
    expect(scenario).toBeNull()
    expect(problems[0]!.code).toBe('scenario-version')
  })
})

describe('what is refused, with its field', () => {
  test.each([
    ['panel.tilt', 'panel.tilt_deg'],
    ['room.windowfront_m2', 'room.windowFront_m2'],
    ['coating.Emittance', 'coating.windowEmittance_frac'],
    ['store.volume', 'store.volume_m3'],
  ])('the unknown field %s: did you mean %s?', (path, suggestion) => {
    const [problem] = refusal(() => withField(defaultScenario(), path, '1'))
    expect(problem!.place.field).toBe(path)
    expect(problem!.remedy).toContain(suggestion)
  })

  test.each([
    '',
    '.',
    'panel',
    'panel.',
    '.tilt_deg',
    'panel.tilt_deg.x',
    'zz.qq',
    '__proto__.tilt_deg',
    'panel.__proto__',
    'constructor.name',
    'panel.toString',
    'panel.hasOwnProperty',
  ])('the path “%s” is no field', (path) => {
    const [problem] = refusal(() => withField(defaultScenario(), path, '1'))
    expect(problem!.code).toBe('scenario-unknown-field')
    expect(problem!.place.field).toBe(path)
  })

  test.each([[null], [[]], ['text'], [7], [true], [undefined], [() => 1]])('%j is no scenario', (value) => {
    expect(parseScenario(value).problems[0]!.code).toBe('scenario-not-an-object')
  })

  test('a group that is no group', () => {
    for (const given of [null, 3, 'x', [1, 2], true]) {
      const { scenario, problems } = parseScenario({ panel: given })
      expect(scenario).toBeNull()
      expect(problems[0]!.place.field).toBe('panel')
    }
  })

  test('all that is wrong is said at once', () => {
    const { problems } = parseScenario(
      { panel: { tilt_deg: 95, azimut: 1 }, room: { length_m: 'long' }, pannel: {} },
      'f.json',
    )
    expect(problems.map((problem) => problem.place.field)).toEqual([
      'panel.tilt_deg',
      'panel.azimut',
      'room.length_m',
      'pannel',
    ])
    for (const problem of problems) expect(problem.place.file).toBe('f.json')
  })

  test.each(['', '{', 'null', '[]', 'panel: 3', '{"panel": {"tilt_deg": 3}} trailing', '\u0000', '"\ud800"'])(
    'the file text %j',
    (text) => {
      for (const problem of refusal(() => readScenarioFile(text, 'bad.json')))
        expect(problem.place.file).toBe('bad.json')
    },
  )

  test('a key that reaches for the prototype is an unknown name and reaches nothing', () => {
    for (const key of ['__proto__', 'constructor', 'prototype', 'toString']) {
      const whole = refusal(() => readScenarioFile(`{"${key}": {"polluted": 1}}`, 'p.json'))
      expect(whole[0]!.place.field).toBe(key)
      const inside = refusal(() => readScenarioFile(`{"panel": {"${key}": {"polluted": 1}}}`, 'p.json'))
      expect(inside[0]!.place.field).toBe(`panel.${key}`)
    }
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined()
    expect(Object.keys(Object.prototype)).toEqual([])
  })
})

describe('contradictions and odd values', () => {
  const CONTRADICTIONS: readonly (readonly [field: string, given: object])[] = [
    ['loop.tubeInnerDiameter_m', { loop: { tubeInnerDiameter_m: 0.012 } }],
    ['loop.tubeSpacing_m', { loop: { tubeSpacing_m: 0.011 } }],
    ['cover.windowTransmittance_frac', { cover: { windowTransmittance_frac: 0.95, reflectance_frac: 0.1 } }],
    ['plan.stopDifference_K', { plan: { stopDifference_K: 3 } }],
    ['plan.lowestStore_C', { plan: { lowestStore_C: 22 } }],
    ['plan.freeze', { plan: { freeze: 'glycol' } }],
    ['loop.fluid', { loop: { fluid: 'air' } }],
  ]
  test.each(CONTRADICTIONS)('%s is named when it contradicts another field', (field, given) => {
    const { scenario, problems } = parseScenario(given)
    expect(scenario).toBeNull()
    expect(errorsOf(problems).map((problem) => problem.place.field)).toContain(field)
    for (const problem of errorsOf(problems)) expect(problem.remedy).not.toBe('')
  })

  test('a value that is possible but unusual is read, with a warning that names it', () => {
    const { scenario, problems } = parseScenario({ room: { wallU_Wm2K: 5.5 }, target: { maxArea_m2: 500 } })
    expect(scenario).not.toBeNull()
    expect(problems.map((problem) => problem.place.field)).toEqual(['room.wallU_Wm2K', 'target.maxArea_m2'])
    expect(problems.every((problem) => problem.severity === 'warning')).toBe(true)
  })
})

test('the number of fields in the file equals the number of fields there are', () => {
  const written = JSON.parse(writeScenarioFile(defaultScenario())) as Record<string, object>
  for (const group of GROUPS) expect(Object.keys(written[group]!)).toEqual(Object.keys(fieldsOf(group)))
})
