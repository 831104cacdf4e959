import ts from 'typescript'
import { identifiersIn } from './code.ts'

/** One row of the list from which a check is made, and what it fills in. */
export interface Row {
  /** Names used by the row. */
  readonly names: readonly string[]
  /** Parameters with their literal where the row has one, else null. */
  readonly filled: ReadonlyMap<string, string | null>
}

const ALONE: readonly Row[] = [{ names: [], filled: new Map() }]

/** The rows from which the nearest `.map` or `.flatMap` around an entry makes it; one empty row where there is none. */
export function rowsAround(entry: ts.Node): readonly Row[] {
  for (let node = entry.parent; node !== undefined; node = node.parent) {
    if (!ts.isArrowFunction(node) || !ts.isCallExpression(node.parent)) continue
    const call = node.parent.expression
    if (!ts.isPropertyAccessExpression(call) || !/^(map|flatMap)$/.test(call.name.text)) continue
    const list = listOf(call.expression)
    const parameter = node.parameters[0]?.name
    if (list === null || parameter === undefined) return ALONE
    return list.elements.map((row) => rowOf(row, parameter))
  }
  return ALONE
}

/** The list itself, written here or in a constant of the file. */
function listOf(expression: ts.Expression): ts.ArrayLiteralExpression | null {
  const bare = unwrapped(expression)
  if (ts.isArrayLiteralExpression(bare)) return bare
  if (!ts.isIdentifier(bare)) return null
  for (const statement of bare.getSourceFile().statements)
    if (ts.isVariableStatement(statement))
      for (const { name, initializer } of statement.declarationList.declarations)
        if (name.getText() === bare.text && initializer) return listOf(initializer)
  return null
}

function unwrapped(expression: ts.Expression): ts.Expression {
  return ts.isParenthesizedExpression(expression) ||
    ts.isAsExpression(expression) ||
    ts.isSatisfiesExpression(expression)
    ? unwrapped(expression.expression)
    : expression
}

function rowOf(row: ts.Expression, parameter: ts.BindingName): Row {
  const filled = new Map<string, string | null>()
  const bare = unwrapped(row)
  if (ts.isIdentifier(parameter)) filled.set(parameter.text, literal(bare))
  else if (ts.isArrayBindingPattern(parameter) && ts.isArrayLiteralExpression(bare))
    parameter.elements.forEach((element, i) => {
      if (ts.isBindingElement(element)) filled.set(element.name.getText(), literal(bare.elements[i]))
    })
  else
    for (const element of parameter.elements)
      if (ts.isBindingElement(element)) filled.set(element.name.getText(), null)
  return { names: identifiersIn(row), filled }
}

function literal(node: ts.Node | undefined): string | null {
  if (node === undefined) return null
  return ts.isStringLiteral(node) || ts.isNumericLiteral(node) ? node.text : null
}
