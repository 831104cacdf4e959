import ts from 'typescript'
import { identifiersIn, type Code } from './code.ts'
import { rowsAround, type Row } from './rows.ts'

/** A check of the evidence and the declarations its value is worked out with. */
export interface Reaching {
  /** What is compared, as the check has it. */
  readonly quantity: string
  /** Declarations of the model that it names, by id, by way of any functions of the evidence. */
  readonly names: ReadonlySet<string>
}

/**
 * Every check of tests/evidence/checks: an object with a `quantity`. One that is made from the rows of a list (`.map`,
 * `.flatMap`) is one check for each row, with that row's names and words.
 */
export function checksOf(code: Code): Reaching[] {
  return [...code.declared.values()]
    .filter(({ file }) => file.startsWith('tests/evidence/checks/'))
    .flatMap(({ file, node }) => {
      const names = code.namesIn(file)
      return entriesIn(node).flatMap((entry) =>
        rowsAround(entry).map((row) => ({
          quantity: worded(entry, row),
          names: reached(
            code,
            [...namesAt(entry, row), ...row.names].flatMap((one) => names.get(one) ?? []),
          ),
        })),
      )
    })
}

function entriesIn(node: ts.Node): ts.ObjectLiteralExpression[] {
  const found: ts.ObjectLiteralExpression[] = []
  const visit = (one: ts.Node): void => {
    if (isEntry(one)) found.push(one)
    ts.forEachChild(one, visit)
  }
  visit(node)
  return found
}

/** Names in the entry, and in the function it is made in but for its other entries; not the parameters that a row fills. */
function namesAt(entry: ts.Node, row: Row): string[] {
  const around = functionAround(entry)
  const beside = around === null ? [] : identifiersIn(around, (node) => isEntry(node))
  return [...identifiersIn(entry), ...beside].filter((name) => !row.filled.has(name))
}

function functionAround(entry: ts.Node): ts.Node | null {
  let found: ts.Node | null = null
  for (let node = entry.parent; node !== undefined; node = node.parent)
    if (ts.isArrowFunction(node) || ts.isFunctionDeclaration(node)) found = node
  return found
}

function isEntry(node: ts.Node): node is ts.ObjectLiteralExpression {
  return ts.isObjectLiteralExpression(node) && propertyOf(node, 'quantity') !== undefined
}

function propertyOf(entry: ts.ObjectLiteralExpression, name: string): ts.Node | undefined {
  return entry.properties.find((one) => one.name?.getText() === name)
}

function worded(entry: ts.ObjectLiteralExpression, row: Row): string {
  const property = propertyOf(entry, 'quantity')!
  const text = ts.isPropertyAssignment(property) ? property.initializer.getText() : property.getText()
  return text
    .replace(/^['`"]|['`"]$/g, '')
    .replace(/\$\{([^}]*)\}/g, (_, name: string) => row.filled.get(name.trim()) ?? '…')
    .replace(/\s+/g, ' ')
}

/** Declarations of the model among these and among those that functions of the evidence lead to. */
function reached(code: Code, start: readonly string[]): ReadonlySet<string> {
  const seen = new Set<string>()
  const open = [...start]
  while (open.length > 0) {
    const id = open.pop()!
    if (seen.has(id)) continue
    seen.add(id)
    if (id.startsWith('tests/')) open.push(...(code.declared.get(id)?.uses ?? []))
  }
  return new Set([...seen].filter((id) => id.startsWith('src/model/')))
}

/** By declaration of the model, the files of tests/rooms that import it. */
export function testsOf(code: Code): Map<string, string[]> {
  const found = new Map<string, string[]>()
  for (const path of code.paths().filter((one) => /^tests\/rooms\/.*\.test\.ts$/.test(one)))
    for (const id of new Set(code.namesIn(path).values())) found.set(id, [...(found.get(id) ?? []), path])
  return found
}
