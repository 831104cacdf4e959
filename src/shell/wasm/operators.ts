import ts from 'typescript'
import { F64, I32, type Kind, OP } from './bytes.ts'

const K = ts.SyntaxKind

/** Instructions of an operator for whole numbers and for others; null where it has none. */
export const OPERATORS: ReadonlyMap<ts.SyntaxKind, readonly [i32: number | null, f64: number | null]> =
  new Map([
    [K.PlusToken, [OP.i32Add, OP.f64Add]],
    [K.MinusToken, [OP.i32Sub, OP.f64Sub]],
    [K.AsteriskToken, [OP.i32Mul, OP.f64Mul]],
    [K.SlashToken, [null, OP.f64Div]],
    [K.PercentToken, [OP.i32Rem, null]],
    [K.AmpersandToken, [OP.i32And, null]],
    [K.GreaterThanGreaterThanToken, [OP.i32Shr, null]],
  ])
/** Those of a comparison, which leaves 1 or 0. */
export const COMPARISONS: ReadonlyMap<ts.SyntaxKind, readonly [i32: number, f64: number]> = new Map([
  [K.LessThanToken, [OP.i32Lt, OP.f64Lt]],
  [K.GreaterThanToken, [OP.i32Gt, OP.f64Gt]],
  [K.LessThanEqualsToken, [OP.i32Le, OP.f64Le]],
  [K.GreaterThanEqualsToken, [OP.i32Ge, OP.f64Ge]],
  [K.EqualsEqualsEqualsToken, [OP.i32Eq, OP.f64Eq]],
  [K.ExclamationEqualsEqualsToken, [OP.i32Ne, OP.f64Ne]],
])
/** Functions of the language that are one instruction; those of two numbers of more in turn. */
export const MATH: Readonly<Record<string, number>> = {
  'Math.sqrt': OP.f64Sqrt,
  'Math.abs': OP.f64Abs,
  'Math.floor': OP.f64Floor,
  'Math.min': OP.f64Min,
  'Math.max': OP.f64Max,
}
/** Functions of the language that are none, in a text: they are asked for from outside. */
export function askedOf(texts: readonly string[]): string[] {
  const named = texts.flatMap((text) => text.match(/\bMath\.\w+/g) ?? [])
  return [...new Set(named)].filter((name) => MATH[name] === undefined).toSorted()
}
/** Entries of arrays: what they are, how they are read and written, log 2 of their bytes. */
export const ENTRY = {
  f64: { kind: F64, load: OP.f64Load, store: OP.f64Store, log2: 3 },
  i32: { kind: I32, load: OP.i32Load, store: OP.i32Store, log2: 2 },
  u8: { kind: I32, load: OP.i32Load8, store: null, log2: 0 },
} as const

export const ADDITIVE = new Set([K.PlusToken, K.MinusToken])

/** What two numbers are together. */
export function joint(a: Kind | 'whole', b: Kind | 'whole'): Kind | 'whole' {
  if (a === F64 || b === F64) return F64
  return a === 'whole' && b === 'whole' ? 'whole' : I32
}
