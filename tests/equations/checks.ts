import ts from 'typescript'
import { sourceFiles } from '../house-rules/source-files.ts'
import { identifiersIn } from './code.ts'

/** A check of the evidence and the names its value is worked out with. */
export interface Reaching {
  /** What is compared, as the check's file has it. */
  readonly quantity: string
  readonly reaches: ReadonlySet<string>
}

/** Every entry of tests/evidence/checks with all names it reaches, by way of the functions of its own file. */
export function checksOf(): Reaching[] {
  return sourceFiles('tests/evidence/checks', ['.ts']).flatMap(({ path, text }) => {
    const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true)
    const local = new Map<string, readonly string[]>()
    const entries: ts.ObjectLiteralExpression[] = []
    const visit = (node: ts.Node): void => {
      if (ts.isFunctionDeclaration(node) && node.name) local.set(node.name.text, identifiersIn(node))
      if (ts.isVariableDeclaration(node) && ts.isIdentifier(node.name))
        local.set(node.name.text, identifiersIn(node))
      if (ts.isObjectLiteralExpression(node) && propertyOf(node, 'quantity')) entries.push(node)
      ts.forEachChild(node, visit)
    }
    visit(source)
    return entries.map((entry) => ({
      quantity: worded(propertyOf(entry, 'quantity')!),
      reaches: reachedFrom(identifiersIn(entry), local),
    }))
  })
}

function propertyOf(entry: ts.ObjectLiteralExpression, name: string): ts.Node | undefined {
  return entry.properties.find((one) => one.name?.getText() === name)
}

function worded(property: ts.Node): string {
  const text = ts.isPropertyAssignment(property) ? property.initializer.getText() : property.getText()
  return text
    .replace(/^['`"]|['`"]$/g, '')
    .replace(/\$\{[^}]*\}/g, '…')
    .replace(/\s+/g, ' ')
}

function reachedFrom(
  start: readonly string[],
  local: ReadonlyMap<string, readonly string[]>,
): ReadonlySet<string> {
  const reached = new Set<string>()
  const open = [...start]
  while (open.length > 0) {
    const name = open.pop()!
    if (reached.has(name)) continue
    reached.add(name)
    open.push(...(local.get(name) ?? []))
  }
  return reached
}
