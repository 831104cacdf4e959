/** Kinds of value in a WebAssembly function, by their bytes: WebAssembly Core Specification 1.0, section 5.3. */
export const I32 = 0x7f
export const F64 = 0x7c
export type Kind = typeof I32 | typeof F64

/** Instructions that are used, by the names of the text format: the same, section 5.4. */
export const OP = {
  block: 0x02,
  loop: 0x03,
  if: 0x04,
  else: 0x05,
  end: 0x0b,
  br: 0x0c,
  brIf: 0x0d,
  return: 0x0f,
  call: 0x10,
  select: 0x1b,
  localGet: 0x20,
  localSet: 0x21,
  localTee: 0x22,
  i32Load: 0x28,
  f64Load: 0x2b,
  i32Load8: 0x2d,
  i32Store: 0x36,
  f64Store: 0x39,
  i32Const: 0x41,
  f64Const: 0x44,
  i32Eqz: 0x45,
  i32Eq: 0x46,
  i32Ne: 0x47,
  i32Lt: 0x48,
  i32Gt: 0x4a,
  i32Le: 0x4c,
  i32Ge: 0x4e,
  f64Eq: 0x61,
  f64Ne: 0x62,
  f64Lt: 0x63,
  f64Gt: 0x64,
  f64Le: 0x65,
  f64Ge: 0x66,
  i32Add: 0x6a,
  i32Sub: 0x6b,
  i32Mul: 0x6c,
  i32Rem: 0x6f,
  i32And: 0x71,
  i32Shl: 0x74,
  i32Shr: 0x75,
  f64Abs: 0x99,
  f64Neg: 0x9a,
  f64Floor: 0x9c,
  f64Sqrt: 0x9f,
  f64Add: 0xa0,
  f64Sub: 0xa1,
  f64Mul: 0xa2,
  f64Div: 0xa3,
  f64Min: 0xa4,
  f64Max: 0xa5,
  f64OfI32: 0xb7,
} as const
/** A block that leaves nothing. */
export const NOTHING = 0x40
/** Towards zero, 0 for what is no number: two bytes. */
export const I32_OF_F64 = [0xfc, 0x02] as const

/** A whole number ≥ 0 in groups of seven bits, the lowest first (LEB128). */
export function unsigned(value: number): number[] {
  const bytes: number[] = []
  let left = value
  do {
    const low = left & 0x7f
    left >>>= 7
    bytes.push(left > 0 ? low | 0x80 : low)
  } while (left > 0)
  return bytes
}

/** The same with a sign. */
export function signed(value: number): number[] {
  const bytes: number[] = []
  let left = value
  for (;;) {
    const low = left & 0x7f
    left >>= 7
    const isLast = (left === 0 && (low & 0x40) === 0) || (left === -1 && (low & 0x40) !== 0)
    bytes.push(isLast ? low : low | 0x80)
    if (isLast) return bytes
  }
}

/** A number as IEEE 754 writes it, lowest byte first. */
export const float = (value: number): number[] => [...new Uint8Array(new Float64Array([value]).buffer)]

const named = (name: string): number[] => listed([...name].map((letter) => [letter.charCodeAt(0)]))
const listed = (items: readonly (readonly number[])[]): number[] => [
  ...unsigned(items.length),
  ...items.flat(),
]
const section = (id: number, items: readonly (readonly number[])[]): number[] => {
  const content = listed(items)
  return [id, ...unsigned(content.length), ...content]
}

/** A function: what it takes and gives, and its body with its locals declared. */
export interface Body {
  readonly takes: readonly Kind[]
  readonly gives: readonly Kind[]
  readonly bytes: readonly number[]
}

/** A function that comes from outside: where it is looked up, its name there, what it takes and gives. */
export interface Imported extends Omit<Body, 'bytes'> {
  readonly from: string
  readonly name: string
}

/**
 * Puts functions and one memory together; the last function goes out as `run`, the memory as `memory`. Those from outside are counted
 * first. @param pages of 64 KiB at first
 */
export function moduleOf(
  imports: readonly Imported[],
  functions: readonly Body[],
  pages: number,
): Uint8Array<ArrayBuffer> {
  const last = imports.length + functions.length - 1
  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(
      1,
      [...imports, ...functions].map(({ takes, gives }) => [
        0x60,
        ...listed(takes.map((kind) => [kind])),
        ...listed(gives.map((kind) => [kind])),
      ]),
    ),
    ...section(
      2,
      imports.map(({ from, name }, i) => [...named(from), ...named(name), 0x00, ...unsigned(i)]),
    ),
    ...section(
      3,
      functions.map((_, i) => unsigned(imports.length + i)),
    ),
    ...section(5, [[0x00, ...unsigned(pages)]]),
    ...section(7, [
      [...named('memory'), 0x02, 0],
      [...named('run'), 0x00, ...unsigned(last)],
    ]),
    ...section(
      10,
      functions.map(({ bytes }) => [...unsigned(bytes.length), ...bytes]),
    ),
  ])
}
