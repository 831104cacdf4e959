import fc from 'fast-check'
import ts from 'typescript'
import { describe, expect, test } from 'vitest'
import { hoursModule } from '../../src/shell/wasm/hours-module.ts'

/*
 * Label: second implementation. Pieces of text translated to WebAssembly against the same text run as it is, bit for bit, also for
 * what is no number, infinite or −0.
 */
const GIVEN = ['a', 'b', 'c']
const KEPT = ['x', 'y']
const COUNTS = ['n']
const WHOLE = ['m']
const ENTRIES = 8
const HEAD_AT = 64
const NUMBERS_AT = 128
const ROW_AT = 256
const FLAGS_AT = 512

const CALLED =
  'function half(x) { if (x > 1) { return FACTOR * x } const k = (x * 4) | 0; return TABLE[k & 7] + (k >> 1) }'
const TABLE = Float64Array.from({ length: ENTRIES }, (_, i) => Math.sqrt(i))
const FACTOR = 0.5

interface Given {
  readonly numbers: readonly number[]
  readonly n: number
  readonly m: number
  readonly row: readonly number[]
  readonly flags: readonly number[]
}

/** A function of its own: it reads and writes numbers by their places. */
const APART = new Map([
  [
    'swap',
    '{ const a = numbers[3]!; let n = numbers[5]! | 0; n += m; row[0] = numbers[4]!; numbers[4] = a; numbers[5] = n }',
  ],
])

const ASKED = { Math: { cbrt: Math.cbrt, exp: Math.exp, log: Math.log, pow: Math.pow } }

function translated(text: string): (given: Given) => Float64Array {
  const file = ts.createSourceFile('called.ts', CALLED, ts.ScriptTarget.Latest, true)
  const { body } = file.statements[0] as ts.FunctionDeclaration
  const bytes = hoursModule({
    text,
    apart: APART,
    constants: new Map([['STEP', 2]]),
    called: [{ name: 'half', takes: ['x'], body: body!, constants: new Map([['FACTOR', FACTOR]]) }],
    tables: new Map([['TABLE', 0]]),
    headAt: HEAD_AT,
    whole: WHOLE,
    columns: new Map([
      ['row', 'f64'],
      ['flags', 'u8'],
    ]),
    lengths: ['row'],
    numbersAt: NUMBERS_AT,
    given: GIVEN,
    kept: KEPT,
    counts: COUNTS,
    within: ['w'],
    flags: ['f'],
  })
  return ({ numbers, n, m, row, flags }) => {
    const { exports } = new WebAssembly.Instance(new WebAssembly.Module(bytes), ASKED)
    const { memory, run } = exports as { memory: WebAssembly.Memory; run: () => void }
    new Float64Array(memory.buffer).set(TABLE)
    new Int32Array(memory.buffer).set([m, ROW_AT, FLAGS_AT, row.length], HEAD_AT / 4)
    new Float64Array(memory.buffer).set([...numbers, n], NUMBERS_AT / 8)
    new Float64Array(memory.buffer).set(row, ROW_AT / 8)
    new Uint8Array(memory.buffer).set(flags, FLAGS_AT)
    run()
    const found = (at: number, count: number) => new Float64Array(memory.buffer, at, count)
    return Float64Array.of(...found(NUMBERS_AT + 8 * GIVEN.length, 3), ...found(ROW_AT, ENTRIES))
  }
}

function asItIs(text: string): (given: Given) => Float64Array {
  const names = [...GIVEN, ...KEPT, ...COUNTS, ...WHOLE, 'row', 'flags', 'STEP', 'TABLE', 'FACTOR']
  const run = new Function(
    ...names,
    `${CALLED}; let w = 0, f = false; ${text}; return [x, y, n, ...row]`,
  ) as (...values: unknown[]) => number[]
  return ({ numbers, n, m, row, flags }) =>
    Float64Array.from(run(...numbers, n, m, Float64Array.from(row), Uint8Array.from(flags), 2, TABLE, FACTOR))
}

const number = fc.oneof(
  { weight: 5, arbitrary: fc.double({ min: -3, max: 3 }) },
  { weight: 1, arbitrary: fc.constantFrom(0, -0, NaN, Infinity, -Infinity, 1) },
)
const given = fc.record({
  numbers: fc.array(number, { minLength: 5, maxLength: 5 }),
  n: fc.integer({ min: 0, max: 5 }),
  m: fc.integer({ min: 1, max: 4 }),
  row: fc.array(number, { minLength: ENTRIES, maxLength: ENTRIES }),
  flags: fc.array(fc.constantFrom(0, 1), { minLength: ENTRIES, maxLength: ENTRIES }),
})

const PIECES: readonly (readonly [string, string])[] = [
  ['sums, products and signs', '{ x = a + b * -c - (a - b) / c; y = -a * STEP - 0.5 }'],
  [
    'comparisons and choices',
    '{ x = a < b ? b : c > 0 ? a : 1; y = a !== b && (b >= c || !(a <= c)) ? a * b : -b }',
  ],
  [
    'functions of one instruction',
    '{ x = Math.min(a, b, c, a * b) + Math.abs(c); y = Math.max(a, Math.floor(b)) * Math.sqrt(c) }',
  ],
  [
    'functions that are asked for from outside',
    '{ x = Math.cbrt(a) + Math.exp(b) * Math.log(c); y = Math.pow(Math.abs(a), b) }',
  ],
  ['a function called, with its table', '{ x = half(a < 0 ? -a : a > 0 ? a : 0.3); y = 1 - half(0.7) }'],
  [
    'whole numbers begun as such, and others',
    '{ let sum = 0; let count = 0; for (let i = 0; i < m; i++) { sum += row[i]; count += STEP } x = sum / m; y = count; n = count + n % m }',
  ],
  ['a number begun whole and divided', '{ let share = 1; if (n > 2) share /= m; x = share * a }'],
  [
    'entries of arrays, their places added and taken off',
    '{ for (let i = STEP; i < row.length; i += STEP) { row[i - 2 + 1] = row[i] * a; row[i] += row[i - 1] } x = row[n + 1] }',
  ],
  ['flags', '{ f = flags[n] === 1; x = f ? 1 : 0; f = !f && flags[n + 1] === 0; if (f) y = 2 ; else y = a }'],
  [
    'blocks left by name',
    '{ part: { x = 1; if (a > 0) break part; x = 2; inner: { if (b > 0) break part; break inner } x = 3 } }',
  ],
  [
    'loops left and gone on with',
    '{ let k = 0; for (;;) { k++; if (k > 6) break; if (flags[k] === 0) continue; x += row[k] } while (n > 0 && k > 2) { n--; k -= 1 } y = k }',
  ],
  ['several given one number', '{ x = y = w = a; w = w * 2; y += w }'],
  ['names that hide others', '{ const z = a; { const a = z * 2; { const a = b; x = a } y = a } x += a }'],
  ['loops over two', '{ let g = 0; for (let i = 0, j = 7; i < j; i++, j--) g += row[i] * row[j]; y = g }'],
]

test('a part of its own changes numbers in their places, and entries of arrays', () => {
  const found = translated('{ numbers[3] = a; swap(); x = numbers[4]!; y = row[0]!; n = numbers[5]! | 0 }')
  const row = Array.from({ length: ENTRIES }, (_, i) => i)
  const flags = row.map(() => 0)
  const [x, y, n] = found({ numbers: [7, 8, 9, 1, 2], n: 3, m: 4, row, flags })
  expect([x, y, n]).toEqual([7, 2, 7])
})

describe('text translated is text as it is', () => {
  test.each(PIECES)('%s', (_, text) => {
    const found = translated(text)
    const wanted = asItIs(text)
    fc.assert(
      fc.property(given, (values) => {
        expect(Array.from(found(values))).toEqual(Array.from(wanted(values)))
      }),
      { numRuns: 100 },
    )
  })

  test.each([
    ['{ x = unknown }', /no part says what unknown is/],
    ['{ row = a }', /row cannot be changed/],
    ['{ flags[n] = 1 }', /not for writing/],
    ['{ x = a ** b }', /no part may/],
    ['{ n = a }', /whole number is given one that is not/],
    ['{ do { n-- } while (n > 0) }', /no part may hold/],
    ['{ x = a[0] }', /is no array/],
    ['{ break away }', /no block named away/],
  ])('refused: %s', (text, why) => {
    expect(() => translated(text)).toThrow(why)
  })
})
