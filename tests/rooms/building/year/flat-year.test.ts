import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { afterEach, describe, expect, test } from 'vitest'
import { designOf } from '#model/design/assembly'
import { defaultScenario, type Scenario, withField } from '#model/design/scenario'
import { simulateYear, type YearInputs, type YearResult } from '#model/building/year'
import { inTypeScript } from '#model/building/year/flat'
import { isFlat } from '#inside/model/building/year/flat/flat-year.ts'
import { hoursForm, useForm } from '#inside/model/building/year/flat/hours-form.ts'
import { Stages } from '#studies/stages.ts'
import { flatFiles } from '../../../../src/shell/make-flat.ts'
import { sampleNames, sampleWeather } from '../../../../src/shell/samples.ts'
import { between, randomScenario } from '../../design/scenario/random-scenario.ts'

/*
 * Label: second implementation. The flat year against the modular kernel, the reference: the same physics, each written by itself, on
 * random scenarios of the kinds the flat year takes, bare and under a film, in all sample climates; room, plant and ledger, and the search's lean years.
 * And the two forms the flat year has, WebAssembly and TypeScript, against each other, bit for bit.
 */
const SAME_K = 1e-12
const SAME_SHARE = 1e-9
const SEED = 20_262
const PER_CLIMATE = 2
const LEAN = { lean: true, books: false, span: [4000, 5000] } as const

const climates = sampleNames()
const seen = new Set<string>()

/** Stores with each delivery they may have; a slab has its own pipes. */
const KINDS = [
  ...['mixed', 'layered', 'building'].flatMap((store) =>
    ['surface', 'ceiling', 'floorPipes', 'roofPipes'].map((delivery) => [store, delivery] as const),
  ),
  ['slab', 'surface'] as const,
]

const design = fc.record({
  scenario: randomScenario,
  area_m2: between(0, 60),
  storeVolume_m3: fc.oneof(between(0.001, 0.1), between(0.1, 10)),
  flow_kgsm2: between(0.001, 0.05),
})

/** The covers of the cases, in turn. */
const COVERS = ['bare', 'film', 'film, level'] as const
type Cover = (typeof COVERS)[number]

/** A scenario made one of panels so covered, a store and a delivery; only where there is no tank may air go round the loop. */
function ofKind(scenario: Scenario, cover: Cover, store: string, delivery: string): Scenario {
  let made = cover === 'film, level' ? withField(scenario, 'panel.tilt_deg', '0') : scenario
  const [kind] = cover.split(',')
  const fields = { 'cover.kind': kind!, 'store.kind': store, 'store.deliveryKind': delivery }
  for (const [field, value] of Object.entries(fields)) made = withField(made, field, value)
  const hasTank = store === 'mixed' || store === 'layered'
  return scenario.loop.fluid === 'air' && hasTank ? withField(made, 'loop.fluid', 'water') : made
}

const draws = fc
  .sample(design, { seed: SEED, numRuns: PER_CLIMATE * climates.length })
  .map((draw, k) => ({ ...draw, kind: KINDS[k % KINDS.length]! }))

function inputsOf(
  { scenario, kind, ...candidate }: (typeof draws)[number],
  cover: Cover,
  climate: string,
): YearInputs {
  const prepared = new Stages().prepare(ofKind(scenario, cover, ...kind), sampleWeather(climate))
  return designOf(prepared, candidate).inputs
}

/** Most that two columns are apart; infinite where one has a number and the other has none. */
function apart(a: Float64Array, b: Float64Array): number {
  return a.reduce((most, value, h) => {
    if (Number.isNaN(value) && Number.isNaN(b[h]!)) return most
    const between = Math.abs(value - b[h]!)
    return Number.isNaN(between) ? Infinity : Math.max(most, between)
  }, 0)
}

function columnsOf(year: YearResult): [string, Float64Array][] {
  return Object.entries(year).filter(
    (entry): entry is [string, Float64Array] => entry[1] instanceof Float64Array,
  )
}

const wasm = hoursForm()!
afterEach(() => useForm(wasm))

/** A year in the other form. */
function inOtherForm<T>(year: () => T): T {
  useForm(inTypeScript)
  const found = year()
  useForm(wasm)
  return found
}

/** All numbers of a year as they are kept, to the last bit. */
const bitsOf = ({ ledger, ...year }: YearResult): [string, number | Buffer][] =>
  [...Object.entries(year), ...Object.entries(ledger)].map(([name, value]) => [
    name,
    value instanceof Float64Array ? Buffer.from(value.buffer) : (value as number),
  ])

/** A year of the flat year beside the modular kernel's, whole and as the search runs it, and in the other form. */
function compare(inputs: YearInputs): void {
  expect(isFlat(inputs)).toBe(true)
  const flat = simulateYear(inputs)
  const modular = simulateYear(inputs, { modular: true })
  see(inputs, modular)
  for (const [name, column] of columnsOf(flat))
    expect(apart(column, modular[name as 'room_C']), name).toBeLessThanOrEqual(scaleOf(name) * SAME_K)
  for (const name of ['freezeRisk_h', 'dewHeld_h', 'vented_h', 'condensate_kg'] as const)
    expect(flat[name], name).toBe(modular[name])
  for (const [name, value] of Object.entries(flat.ledger))
    expect(
      Math.abs(value - modular.ledger[name as 'stored_J']) / modular.ledger.throughput_J,
      name,
    ).toBeLessThanOrEqual(SAME_SHARE)
  const lean = simulateYear(inputs, LEAN)
  const leanModular = simulateYear(inputs, { ...LEAN, modular: true })
  expect(apart(lean.room_C, leanModular.room_C)).toBeLessThanOrEqual(SAME_K)
  expect(bitsOf(inOtherForm(() => simulateYear(inputs)))).toEqual(bitsOf(flat))
  expect(bitsOf(inOtherForm(() => simulateYear(inputs, LEAN)))).toEqual(bitsOf(lean))
}

describe.each(climates)('%s', (climate) => {
  const mine = draws.filter((_, k) => k % climates.length === climates.indexOf(climate))

  const coverOf = (k: number): Cover => COVERS[(climates.indexOf(climate) + 2 * k) % COVERS.length]!

  test.each(mine.map((draw, k) => [coverOf(k), ...draw.kind, draw] as const))(
    '%s, %s, %s',
    (cover, _store, _delivery, draw) => {
      const inputs = inputsOf(draw, cover, climate)
      expect(inputs.plant!.panel.gap === null).toBe(cover === 'bare')
      compare(inputs)
    },
  )
})

/** A loop without a tank that runs all summer, return water blended in, and one of air. */
test.each([
  ['slab', 'surface', 'water'],
  ['building', 'ceiling', 'water'],
  ['building', 'surface', 'air'],
])('the default scenario without a tank: %s, %s, %s', (store, delivery, fluid) => {
  const scenario = withField(ofKind(defaultScenario(), 'bare', store, delivery), 'loop.fluid', fluid)
  const prepared = new Stages().prepare(scenario, sampleWeather('continental'))
  compare(designOf(prepared, { area_m2: 12, storeVolume_m3: 0, flow_kgsm2: 0.008 }).inputs)
})

/** Watts come of temperatures by conductances of hundreds of W/K. */
const scaleOf = (name: string): number => (name.endsWith('_W') ? 1000 : 1)

/** Notes which branches a year went through. */
function see({ plant }: YearInputs, year: YearResult): void {
  if (year.vented_h > 0) seen.add('vents')
  if (year.freezeRisk_h > 0) seen.add('frost')
  if (year.dewHeld_h > 0) seen.add('dew')
  if (year.pumpRun_frac.some((share) => (share * 4) % 1 > 0.01 && (share * 4) % 1 < 0.99)) seen.add('share')
  if (plant !== null && plant.allowed.includes(0)) seen.add('plan')
  if (plant?.store.lossTo === 'outside') seen.add('tank outdoors')
  if (plant?.store.port === 'pipes' && year.delivered_W.some((heat_W) => heat_W > 0)) seen.add('pipes')
  const gap = plant?.panel.gap ?? null
  if (gap !== null && year.water_kgm2.some((water_kgm2) => water_kgm2 > 0))
    seen.add(gap.sine === 0 ? 'wet film, level' : 'wet film, tilted')
  if (plant?.store.layerCapacity_JK.length !== 0) return
  if (year.pumpRun_frac.some((share) => share > 0)) seen.add(`${plant.store.port} without a tank`)
  if (year.dewHeld_h > 0) seen.add('return water blended in')
}

test('the draws cover every branch: vents, frost, dew, hours without the loop, shares of a step, a tank outdoors, pipes, wet films, each port without a tank, return water blended in', () => {
  expect([...seen].toSorted()).toEqual([
    'air without a tank',
    'ceiling without a tank',
    'dew',
    'frost',
    'pipes',
    'pipes without a tank',
    'plan',
    'return water blended in',
    'share',
    'tank outdoors',
    'vents',
    'wet film, level',
    'wet film, tilted',
  ])
})

test('`hours.ts` and `hours-wasm.ts` are what `npm run -s flat` makes of the parts', async () => {
  const made = await flatFiles()
  expect(made.size).toBe(2)
  for (const [path, text] of made) expect(readFileSync(path, 'utf8') === text, path).toBe(true)
})
