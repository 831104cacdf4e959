import { afterEach, describe, expect, test, vi } from 'vitest'
import { inTypeScript } from '#model/building/year/flat'
import { simulateYear } from '#model/building/year'
import { designOf } from '#model/design/assembly'
import { withField } from '#model/design/scenario'
import { FlatYear } from '#inside/model/building/year/flat/flat-year.ts'
import { hoursForm, useForm } from '#inside/model/building/year/flat/hours-form.ts'
import type { HoursForm } from '#inside/model/building/year/flat/run-setting.ts'
import { WasmColumns } from '#inside/model/building/year/flat/wasm-memory.ts'
import { inWebAssembly } from '#inside/model/building/year/flat/wasm-run.ts'
import { YearKernel } from '#inside/model/building/year/kernel.ts'
import { makeCase } from '../../../speed/made.ts'

const { inputs, stages, scenario, record } = makeCase()
const underFilm = designOf(stages.prepare(withField(scenario, 'cover.kind', 'film'), record), {
  area_m2: 10,
  storeVolume_m3: 1,
  flow_kgsm2: 0.01,
}).inputs
const HOURS = 24 * 9
const FROM = 4000

/** Three runs of one room, with a plant of bare panels, without, and with a film over them, hour by hour in turn; what the hours came to. */
function inTurn(form: HoursForm): Float64Array[] {
  const runs = [inputs, { ...inputs, plant: null }, underFilm].map((own) => {
    const kernel = new YearKernel(own, 900)
    kernel.setRoom(
      22,
      own.room.rowsOf(900).innerMean.map(() => 0),
    )
    kernel.plate_C = 22
    kernel.plate?.begin(22, FROM)
    const room_C = new Float64Array(own.room.hours).fill(NaN)
    return { year: new FlatYear(form, kernel, own, FROM, room_C), room_C, kernel }
  })
  for (let hour = FROM; hour < FROM + HOURS; hour++) for (const { year } of runs) year.hour(hour)
  return runs.flatMap(({ room_C, kernel }) => [room_C, Float64Array.from(kernel.temp_C)])
}

describe('the hours in WebAssembly', () => {
  const expected = inTurn(inTypeScript)

  test.each([
    ['a memory that keeps every column', undefined],
    ['a memory that holds the columns of no two runs', 1],
  ])('runs in turn are those of TypeScript to the last bit, in %s', (_, most_bytes) => {
    const found = inTurn(inWebAssembly(most_bytes)!)
    expect(found.map(({ buffer }) => Buffer.from(buffer))).toEqual(
      expected.map(({ buffer }) => Buffer.from(buffer)),
    )
  })
})

describe('where there is no WebAssembly', () => {
  const before = hoursForm()
  afterEach(() => {
    vi.unstubAllGlobals()
    useForm(before)
  })

  test.each([
    ['an old browser', undefined],
    [
      'a policy that forbids it',
      {
        Module: class {
          constructor() {
            throw new EvalError('refused')
          }
        },
      },
    ],
  ])('%s: no form, and no error', (_, WebAssembly) => {
    vi.stubGlobal('WebAssembly', WebAssembly)
    expect(inWebAssembly()).toBeNull()
  })

  test('a year without any form is the modular kernel’s', () => {
    useForm(null)
    const options = { lean: true, books: false, span: [FROM, FROM + HOURS] } as const
    expect(simulateYear(inputs, options).room_C).toEqual(
      simulateYear(inputs, { ...options, modular: true }).room_C,
    )
  })
})

describe('columns in a memory', () => {
  const made = (most_bytes: number) => new WasmColumns(new WebAssembly.Memory({ initial: 1 }), most_bytes)
  const a = Float64Array.of(1, 2, 3)
  const b = Uint8Array.of(4, 5, 6)
  const growing = Float64Array.of(7, 8, 9, 10)

  test('each is copied once, behind the room kept free, and keeps its place', () => {
    const columns = made(1e6)
    const places = columns.hold([a, b, growing], growing, 4000)
    expect(places).toEqual([4000, 4024, 4032])
    expect([...columns.numbers.subarray(500, 503)]).toEqual([1, 2, 3])
    columns.numbers[500] = -1
    expect(columns.hold([a, b, growing], growing, 4000)).toEqual(places)
    expect(columns.numbers[500]).toBe(-1)
    expect([...new Uint8Array(columns.numbers.buffer, 4024, 3)]).toEqual([4, 5, 6])
  })

  test('one that grows is copied as far as it is known, and on from there', () => {
    const columns = made(1e6)
    columns.hold([growing], growing, 8)
    columns.fill(growing, 2)
    expect([...columns.numbers.subarray(1, 5)]).toEqual([7, 8, 0, 0])
    columns.numbers[1] = -1
    columns.fill(growing, 3)
    columns.fill(growing, 1)
    expect([...columns.numbers.subarray(1, 5)]).toEqual([-1, 8, 9, 0])
  })

  test('too many are given up at once; what is asked for then is copied anew', () => {
    const columns = made(64)
    columns.hold([a], growing, 8)
    const { generation } = columns
    expect(columns.hold([a, growing], growing, 8)).toEqual([8, 32])
    expect(columns.generation).toBe(generation)
    expect(columns.hold([Float64Array.of(11)], growing, 8)).toEqual([8])
    expect(columns.generation).toBe(generation + 1)
    expect(columns.numbers[1]).toBe(11)
  })

  test('the memory grows under them', () => {
    const columns = made(1e7)
    columns.hold([a], growing, 8)
    const large = new Float64Array(100_000).fill(12)
    expect(columns.hold([large], growing, 8)).toEqual([32])
    expect(columns.numbers[1]).toBe(1)
    expect(columns.numbers[4 + 99_999]).toBe(12)
  })
})
