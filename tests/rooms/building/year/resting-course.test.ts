import { describe, expect, test } from 'vitest'
import { designOf } from '#model/design/assembly'
import { defaultScenario, withField } from '#model/design/scenario'
import { simulateYear, type YearInputs } from '#model/building/year'
import { YearKernel } from '#inside/model/building/year/kernel.ts'
import { Stages } from '#studies/stages.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'

/*
 * Label: second implementation. The course of the resting plate, shared by all designs, against a plate that is stepped by itself
 * through every step: the same kernel without `begin`.
 */

const HOURS = 24 * 40
const FIRST = 24 * 190

function inputsOf(fields: Readonly<Record<string, string>>, climate: string, volume_m3: number): YearInputs {
  let scenario = defaultScenario()
  for (const [field, value] of Object.entries(fields)) scenario = withField(scenario, field, value)
  const prepared = new Stages().prepare(scenario, sampleWeather(climate))
  return designOf(prepared, { area_m2: 12, storeVolume_m3: volume_m3, flow_kgsm2: 0.01 }).inputs
}

/** The days asked of a kernel that starts with the room at 22 °C. */
function days(inputs: YearInputs, shared: boolean) {
  const kernel = new YearKernel(inputs, 900)
  kernel.setRoom(22, new Float64Array(kernel.room.masses.length))
  const start_C = inputs.room.outdoor_C[FIRST]!
  kernel.plate_C = start_C
  if (shared) kernel.plate!.begin(start_C, FIRST)
  const before_J = kernel.stored_J()
  const [store_C, plate_C, room_C] = [0, 0, 0].map(() => new Float64Array(HOURS)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ]
  let run_h = 0
  for (let h = 0; h < HOURS; h++) {
    kernel.hour(FIRST + h)
    run_h += kernel.books.run_s / 3600
    store_C[h] = kernel.temp_C[kernel.nodes.sink]!
    plate_C[h] = kernel.plate_C
    room_C[h] = kernel.books.room_C(3600)
  }
  return { run_h, store_C, plate_C, room_C, ledger: kernel.books.ledger(before_J, kernel.stored_J()) }
}

const CASES: readonly [string, string, Readonly<Record<string, string>>, number][] = [
  ['bare plate, mixed tank', 'continental', { 'cover.kind': 'bare' }, 1],
  ['film, layered tank', 'humid-subtropical', { 'cover.kind': 'film', 'store.kind': 'layered' }, 1],
  ['bare plate, slab', 'hot-desert', { 'cover.kind': 'bare', 'store.kind': 'slab' }, 0],
]

describe.each(CASES)('%s', (_, climate, fields, volume_m3) => {
  const inputs = inputsOf(fields, climate, volume_m3)
  const [own, shared] = [days(inputs, false), days(inputs, true)]
  const most = (a: Float64Array, b: Float64Array) =>
    a.reduce((top, value, h) => Math.max(top, Math.abs(value - b[h]!)), 0)

  test('runs at night and rests in between', () => {
    expect(shared.run_h).toBeGreaterThan(20)
    expect(shared.run_h).toBeLessThan(0.8 * HOURS)
  })
  test('the plate is where its own steps bring it to 1e-8 K, store and room to 1e-10 K', () => {
    expect(most(own.plate_C, shared.plate_C)).toBeLessThan(1e-8)
    expect(most(own.store_C, shared.store_C)).toBeLessThan(1e-10)
    expect(most(own.room_C, shared.room_C)).toBeLessThan(1e-10)
  })
  test('the ledger closes to rounding where the course is joined again', () => {
    expect(Math.abs(shared.ledger.residual_J / shared.ledger.throughput_J)).toBeLessThan(1e-12)
  })
})

test('what was asked before changes nothing: a second design after another has the answer it has alone', () => {
  const fields = { 'cover.kind': 'bare' }
  const year = (inputs: YearInputs) => simulateYear(inputs, { span: [4700, 5000] })
  const inputs = inputsOf(fields, 'continental', 1)
  const other = { ...inputs, plant: { ...inputs.plant!, loop: { ...inputs.plant!.loop, area_m2: 3 } } }
  year(other)
  const after = year(inputs)
  const alone = year(inputsOf(fields, 'continental', 1))
  expect(after.room_C).toEqual(alone.room_C)
  expect(after.plate_C).toEqual(alone.plate_C)
  expect(after.ledger).toEqual(alone.ledger)
})
