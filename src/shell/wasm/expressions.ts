import ts from 'typescript'
import { F64, I32, I32_OF_F64, type Kind, OP } from './bytes.ts'
import type { Code } from './code.ts'
import type { Column, Names } from './names.ts'
import { ADDITIVE, COMPARISONS, ENTRY, joint, MATH, OPERATORS } from './operators.ts'

const K = ts.SyntaxKind

/** Writes the expressions of a part's text, in the order and with the rounding of the language it is written in. */
export class Expressions {
  private readonly code: Code
  private readonly names: Names

  constructor(code: Code, names: Names) {
    this.code = code
    this.names = names
  }

  /** What an expression is: whole, or not; `whole` for a number that may be taken for either. */
  kindOf(node: ts.Expression): Kind | 'whole' {
    if (ts.isParenthesizedExpression(node) || ts.isNonNullExpression(node))
      return this.kindOf(node.expression)
    const value = this.valueOf(node)
    if (value !== null) return Number.isInteger(value) && !Object.is(value, -0) ? 'whole' : F64
    if (ts.isIdentifier(node)) return this.variable(node).kind
    if (ts.isPropertyAccessExpression(node)) return I32
    if (ts.isElementAccessExpression(node)) return ENTRY[this.column(node).entries].kind
    if (ts.isCallExpression(node)) return F64
    if (ts.isConditionalExpression(node))
      return joint(this.kindOf(node.whenTrue), this.kindOf(node.whenFalse))
    if (ts.isPrefixUnaryExpression(node))
      return node.operator === K.MinusToken ? this.kindOf(node.operand) : I32
    if (!ts.isBinaryExpression(node)) return I32
    const { kind } = node.operatorToken
    if (kind === K.BarToken || !OPERATORS.has(kind)) return I32
    return kind === K.SlashToken ? F64 : joint(this.kindOf(node.left), this.kindOf(node.right))
  }

  /** Its value where that is known beforehand. */
  private valueOf(node: ts.Expression): number | null {
    if (ts.isNumericLiteral(node)) return Number(node.text)
    if (ts.isParenthesizedExpression(node)) return this.valueOf(node.expression)
    if (ts.isIdentifier(node)) {
      const meaning = this.names.of(node.text)
      return meaning.is === 'constant' ? meaning.value : null
    }
    if (ts.isPrefixUnaryExpression(node) && node.operator === K.MinusToken) {
      const of = this.valueOf(node.operand)
      return of === null ? null : -of
    }
    if (!ts.isBinaryExpression(node)) return null
    const left = this.valueOf(node.left)
    const right = left === null ? null : this.valueOf(node.right)
    if (left === null || right === null) return null
    const { kind } = node.operatorToken
    if (kind === K.PlusToken) return left + right
    if (kind === K.MinusToken) return left - right
    if (kind === K.AsteriskToken) return left * right
    return kind === K.SlashToken ? left / right : null
  }

  private variable(node: ts.Identifier) {
    const meaning = this.names.of(node.text)
    if (meaning.is !== 'variable') throw new Error(`${node.text} is no number`)
    return meaning.local
  }

  private column({ expression }: ts.ElementAccessExpression | ts.PropertyAccessExpression): Column {
    const meaning = this.names.of(expression.getText())
    if (meaning.is !== 'column') throw new Error(`${expression.getText()} is no array`)
    return meaning.column
  }

  /** Leaves the value of an expression, as the kind that is wanted. */
  write(node: ts.Expression, wanted: Kind): void {
    const { code } = this
    if (ts.isParenthesizedExpression(node) || ts.isNonNullExpression(node))
      return this.write(node.expression, wanted)
    const value = this.valueOf(node)
    if (value !== null) return wanted === F64 ? code.f64(value) : code.i32(value)
    if (ts.isConditionalExpression(node)) return this.choice(node, wanted)
    const found = this.kindOf(node)
    const kind = found === 'whole' ? wanted : found
    this.plain(node, kind)
    this.convert(kind, wanted)
  }

  /** Makes one kind of what is on the stack into another. */
  convert(from: Kind, to: Kind): void {
    if (from === to) return
    if (to === F64) this.code.emit(OP.f64OfI32)
    else this.code.emit(...I32_OF_F64)
  }

  private plain(node: ts.Expression, kind: Kind): void {
    const { code } = this
    if (ts.isIdentifier(node)) return code.of(OP.localGet, this.variable(node))
    if (ts.isElementAccessExpression(node)) return this.load(node)
    if (ts.isPropertyAccessExpression(node)) return code.of(OP.localGet, this.column(node).length!)
    if (ts.isCallExpression(node)) return this.call(node)
    if (node.kind === K.TrueKeyword || node.kind === K.FalseKeyword)
      return code.i32(node.kind === K.TrueKeyword ? 1 : 0)
    if (ts.isPrefixUnaryExpression(node)) return this.prefixed(node, kind)
    if (ts.isBinaryExpression(node)) return this.binary(node, kind)
    throw new Error(`no part may hold ${node.getText()}`)
  }

  private prefixed({ operator, operand }: ts.PrefixUnaryExpression, kind: Kind): void {
    const { code } = this
    if (operator === K.ExclamationToken) {
      this.write(operand, I32)
      code.emit(OP.i32Eqz)
    } else if (kind === F64) {
      this.write(operand, F64)
      code.emit(OP.f64Neg)
    } else {
      code.i32(0)
      this.write(operand, I32)
      code.emit(OP.i32Sub)
    }
  }

  private binary({ left, operatorToken, right }: ts.BinaryExpression, kind: Kind): void {
    const { code } = this
    const operator = operatorToken.kind
    if (operator === K.AmpersandAmpersandToken || operator === K.BarBarToken) {
      this.write(left, I32)
      code.open(OP.if, I32)
      if (operator === K.AmpersandAmpersandToken) this.write(right, I32)
      else code.i32(1)
      code.emit(OP.else)
      if (operator === K.AmpersandAmpersandToken) code.i32(0)
      else this.write(right, I32)
      return code.close()
    }
    if (operator === K.BarToken && this.valueOf(right) === 0) return this.write(left, I32)
    const compares = COMPARISONS.get(operator)
    const asked = compares === undefined ? kind : joint(this.kindOf(left), this.kindOf(right))
    const operands = asked === F64 ? F64 : I32
    this.write(left, operands)
    this.write(right, operands)
    this.operate(operator, operands)
  }

  /** The operator on the two values on the stack. */
  operate(operator: ts.SyntaxKind, kind: Kind): void {
    const op = (OPERATORS.get(operator) ?? COMPARISONS.get(operator))?.[kind === F64 ? 1 : 0]
    if (op === undefined || op === null) throw new Error(`no part may use ${ts.tokenToString(operator)} here`)
    this.code.emit(op)
  }

  private choice({ condition, whenTrue, whenFalse }: ts.ConditionalExpression, wanted: Kind): void {
    const { code } = this
    if (this.isCheap(whenTrue) && this.isCheap(whenFalse)) {
      this.write(whenTrue, wanted)
      this.write(whenFalse, wanted)
      this.write(condition, I32)
      return code.emit(OP.select)
    }
    this.write(condition, I32)
    code.open(OP.if, wanted)
    this.write(whenTrue, wanted)
    code.emit(OP.else)
    this.write(whenFalse, wanted)
    code.close()
  }

  private isCheap(node: ts.Expression): boolean {
    return ts.isIdentifier(node) || this.valueOf(node) !== null
  }

  private call(node: ts.CallExpression): void {
    const { code } = this
    const name = node.expression.getText()
    const op = MATH[name]
    node.arguments.forEach((each, i) => {
      this.write(each, F64)
      if (op !== undefined && i > 0) code.emit(op)
    })
    if (op === undefined) this.perform(node)
    else if (node.arguments.length === 1) code.emit(op)
  }

  /** The call itself, of a function whose arguments are on the stack. */
  perform({ expression }: ts.CallExpression): void {
    const name = expression.getText()
    const meaning = this.names.of(name)
    if (meaning.is !== 'function') throw new Error(`${name} cannot be called`)
    this.code.emit(OP.call, meaning.index)
  }

  private load(node: ts.ElementAccessExpression): void {
    const { load, log2 } = ENTRY[this.column(node).entries]
    const offset = this.address(node)
    this.code.memory(load, log2, offset)
  }

  /** Leaves the address of an entry. @returns how many bytes it is past that */
  address(node: ts.ElementAccessExpression): number {
    const { code } = this
    const column = this.column(node)
    const { log2 } = ENTRY[column.entries]
    const terms: [ts.Expression, 1 | -1][] = []
    let steps = 0
    const split = (of: ts.Expression, sign: 1 | -1): void => {
      const value = this.valueOf(of)
      if (value !== null) steps += sign * value
      else if (ts.isParenthesizedExpression(of)) split(of.expression, sign)
      else if (ts.isBinaryExpression(of) && ADDITIVE.has(of.operatorToken.kind)) {
        split(of.left, sign)
        split(of.right, of.operatorToken.kind === K.PlusToken ? sign : (-sign as 1 | -1))
      } else terms.push([of, sign])
    }
    split(node.argumentExpression, 1)
    terms.forEach(([term, sign], i) => {
      if (i === 0 && sign < 0) throw new Error(`${node.getText()}: write what is added first`)
      this.write(term, I32)
      if (i > 0) code.emit(sign > 0 ? OP.i32Add : OP.i32Sub)
    })
    if (terms.length > 0 && log2 > 0) {
      code.i32(log2)
      code.emit(OP.i32Shl)
    }
    this.base(column, terms.length > 0)
    const offset = column.offset + steps * 2 ** log2
    if (offset >= 0) return offset
    code.i32(offset)
    code.emit(OP.i32Add)
    return 0
  }

  private base({ pointer }: Column, isAdded: boolean): void {
    const { code } = this
    if (pointer !== null) {
      code.of(OP.localGet, pointer)
      if (isAdded) code.emit(OP.i32Add)
    } else if (!isAdded) code.i32(0)
  }

  /** Stores what is on the stack, the address below it. */
  store(node: ts.ElementAccessExpression, offset: number): void {
    const { store, log2 } = ENTRY[this.column(node).entries]
    if (store === null) throw new Error(`${node.getText()} is not for writing`)
    this.code.memory(store, log2, offset)
  }
}
