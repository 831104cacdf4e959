import ts from 'typescript'
import { F64, I32, NOTHING, OP } from './bytes.ts'
import type { Code, Local } from './code.ts'
import { Expressions } from './expressions.ts'
import type { Names } from './names.ts'

const K = ts.SyntaxKind
/** Operators that change what they are given to. */
const CHANGES: ReadonlyMap<ts.SyntaxKind, ts.SyntaxKind> = new Map([
  [K.PlusEqualsToken, K.PlusToken],
  [K.MinusEqualsToken, K.MinusToken],
  [K.AsteriskEqualsToken, K.AsteriskToken],
  [K.SlashEqualsToken, K.SlashToken],
])
/** Frames that `break` and `continue` without a name leave. */
const LEAVE = '(break)'
const AGAIN = '(continue)'

/** Writes the statements of a part's text. */
export class Statements {
  private readonly code: Code
  private readonly names: Names
  private readonly expressions: Expressions
  private readonly gives: boolean

  /** @param gives  whether `return` gives a number */
  constructor(code: Code, names: Names, gives: boolean) {
    this.code = code
    this.names = names
    this.expressions = new Expressions(code, names)
    this.gives = gives
  }

  write(node: ts.Statement): void {
    const { code, names } = this
    if (ts.isBlock(node)) return names.inside(() => node.statements.forEach((each) => this.write(each)))
    if (ts.isEmptyStatement(node)) return
    if (ts.isVariableStatement(node)) return this.declare(node.declarationList)
    if (ts.isExpressionStatement(node)) return this.change(node.expression)
    if (ts.isIfStatement(node)) return this.if(node)
    if (ts.isForStatement(node)) return names.inside(() => this.for(node))
    if (ts.isWhileStatement(node)) return this.loop(node.expression, node.statement, null)
    if (ts.isBreakStatement(node)) return code.branch(OP.br, node.label?.text ?? LEAVE)
    if (ts.isContinueStatement(node)) return code.branch(OP.br, AGAIN)
    if (ts.isLabeledStatement(node)) {
      code.open(OP.block, NOTHING, node.label.text)
      this.write(node.statement)
      return code.close()
    }
    if (ts.isReturnStatement(node) && this.gives) {
      this.expressions.write(node.expression!, F64)
      return code.emit(OP.return)
    }
    throw new Error(`no part may hold ${node.getText()}`)
  }

  private declare({ declarations }: ts.VariableDeclarationList): void {
    for (const declaration of declarations) {
      const { name, initializer } = declaration
      const local = this.names.variable(this.expressions.kindOf(initializer!), declaration)
      this.expressions.write(initializer!, local.kind)
      // Only now: its first value may name what it hides.
      this.names.name(name.getText(), local)
      this.code.of(OP.localSet, local)
    }
  }

  private if({ expression, thenStatement, elseStatement }: ts.IfStatement): void {
    const { code } = this
    this.expressions.write(expression, I32)
    code.open(OP.if, NOTHING)
    this.write(thenStatement)
    if (elseStatement !== undefined) {
      code.emit(OP.else)
      this.write(elseStatement)
    }
    code.close()
  }

  private for({ initializer, condition, statement, incrementor }: ts.ForStatement): void {
    if (initializer !== undefined) {
      if (ts.isVariableDeclarationList(initializer)) this.declare(initializer)
      else this.change(initializer)
    }
    this.loop(condition ?? null, statement, incrementor ?? null)
  }

  private loop(condition: ts.Expression | null, body: ts.Statement, after: ts.Expression | null): void {
    const { code } = this
    code.open(OP.block, NOTHING, LEAVE)
    code.open(OP.loop, NOTHING)
    if (condition !== null) {
      this.expressions.write(condition, I32)
      code.emit(OP.i32Eqz)
      code.branch(OP.brIf, LEAVE)
    }
    code.open(OP.block, NOTHING, AGAIN)
    this.write(body)
    code.close()
    if (after !== null) this.change(after)
    code.emit(OP.br, 0)
    code.close()
    code.close()
  }

  /** An expression for what it changes. */
  private change(node: ts.Expression): void {
    const { code } = this
    if (ts.isPostfixUnaryExpression(node)) {
      const local = this.target(node.operand)
      code.of(OP.localGet, local)
      if (local.kind === F64) code.f64(1)
      else code.i32(1)
      this.expressions.operate(node.operator === K.PlusPlusToken ? K.PlusToken : K.MinusToken, local.kind)
      return code.of(OP.localSet, local)
    }
    if (ts.isCallExpression(node)) return this.expressions.perform(node)
    if (!ts.isBinaryExpression(node)) throw new Error(`${node.getText()} changes nothing`)
    if (node.operatorToken.kind === K.CommaToken) {
      this.change(node.left)
      return this.change(node.right)
    }
    if (ts.isElementAccessExpression(node.left)) return this.put(node.left, node)
    const local = this.target(node.left)
    this.value(node, local)
    code.of(OP.localSet, local)
  }

  private target(node: ts.Expression): Local {
    const meaning = this.names.of(node.getText())
    if (meaning.is !== 'variable') throw new Error(`${node.getText()} cannot be changed`)
    return meaning.local
  }

  /** Leaves what a variable is given. */
  private value({ left, operatorToken, right }: ts.BinaryExpression, local: Local): void {
    const { code, expressions } = this
    if (operatorToken.kind === K.EqualsToken) {
      if (ts.isBinaryExpression(right) && right.operatorToken.kind === K.EqualsToken) {
        const inner = this.target(right.left)
        this.value(right, inner)
        code.of(OP.localTee, inner)
        this.names.given(local, inner.kind)
        return expressions.convert(inner.kind, local.kind)
      }
      this.names.given(local, expressions.kindOf(right))
      return expressions.write(right, local.kind)
    }
    const operator = operatorOf(operatorToken)
    this.names.given(local, operator === K.SlashToken ? F64 : expressions.kindOf(right))
    expressions.write(left, local.kind)
    expressions.write(right, local.kind)
    // A variable just found not to be whole is gone through once more.
    if (!this.names.changed) expressions.operate(operator, local.kind)
  }

  /** An entry of an array is given a number. */
  private put(to: ts.ElementAccessExpression, { operatorToken, right }: ts.BinaryExpression): void {
    const { expressions } = this
    const offset = expressions.address(to)
    if (operatorToken.kind === K.EqualsToken) expressions.write(right, F64)
    else {
      expressions.write(to, F64)
      expressions.write(right, F64)
      expressions.operate(operatorOf(operatorToken), F64)
    }
    expressions.store(to, offset)
  }
}

/** @throws Error for an operator that is none of these */
function operatorOf({ kind }: ts.BinaryOperatorToken): ts.SyntaxKind {
  const found = CHANGES.get(kind)
  if (found === undefined) throw new Error(`no part may use ${ts.tokenToString(kind)}`)
  return found
}
