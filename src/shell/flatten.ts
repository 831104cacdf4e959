import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import ts from 'typescript'

/** A part: a function over the one set of numbers, the file it is in, and its place there. */
interface Part {
  readonly file: ts.SourceFile
  readonly node: ts.FunctionDeclaration
}

/** Files of parts read: functions by name, constants by name, and the kinds of numbers with their names in order. */
export interface Parts {
  readonly functions: ReadonlyMap<string, Part>
  readonly constants: ReadonlyMap<string, number>
  /** Functions that are called as they are, and where they come from. */
  readonly called: ReadonlyMap<string, string>
  readonly kinds: ReadonlyMap<string, readonly string[]>
  /** Types of those that are arrays. */
  readonly arrays: ReadonlyMap<string, string>
}

const parsed = (path: string): ts.SourceFile =>
  ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true)

/** Reads the parts in a folder (files that end in `-part.ts`, `numbers.ts` and `within.ts`), and the constants they import. */
export async function readParts(folder: string): Promise<Parts> {
  const functions = new Map<string, Part>()
  const constants = new Map<string, number>()
  const called = new Map<string, string>()
  const files = readdirSync(folder).filter((name) => name.endsWith('-part.ts'))
  for (const file of files.map((name) => parsed(join(folder, name)))) {
    for (const statement of file.statements) {
      if (ts.isFunctionDeclaration(statement)) functions.set(statement.name!.text, { file, node: statement })
      if (ts.isVariableStatement(statement)) noteConstants(statement, file, constants)
      if (ts.isImportDeclaration(statement)) await importConstants(statement, file, constants, called)
    }
  }
  const numbers = ['numbers.ts', 'within.ts'].map((name) => parsed(join(folder, name)))
  const kinds = new Map(numbers.flatMap((file) => [...readKinds(file)]))
  return { functions, constants, called, kinds, arrays: new Map(numbers.flatMap(readArrays)) }
}

function note(constants: Map<string, number>, name: string, value: number, file: string): void {
  const before = constants.get(name)
  if (before !== undefined && before !== value)
    throw new Error(`${file}: ${name} is ${value} here and ${before} in another part`)
  constants.set(name, value)
}

function noteConstants(
  { declarationList }: ts.VariableStatement,
  file: ts.SourceFile,
  constants: Map<string, number>,
): void {
  for (const { name, initializer } of declarationList.declarations)
    note(constants, name.getText(file), Number(initializer!.getText(file)), file.fileName)
}

async function importConstants(
  { importClause, moduleSpecifier }: ts.ImportDeclaration,
  file: ts.SourceFile,
  constants: Map<string, number>,
  called: Map<string, string>,
): Promise<void> {
  const named = importClause?.namedBindings
  if (importClause?.isTypeOnly === true || named === undefined || !ts.isNamedImports(named)) return
  const from = (moduleSpecifier as ts.StringLiteral).text
  if (from.endsWith('-part.ts')) return
  const values = (await import(from.startsWith('.') ? join(dirname(file.fileName), from) : from)) as Record<
    string,
    unknown
  >
  for (const { name } of named.elements) {
    const value = values[name.text]
    if (typeof value === 'number') note(constants, name.text, value, file.fileName)
    else called.set(name.text, from)
  }
}

function readKinds(file: ts.SourceFile): Map<string, string[]> {
  const kinds = new Map<string, string[]>()
  for (const statement of file.statements)
    if (ts.isInterfaceDeclaration(statement))
      kinds.set(
        statement.name.text,
        statement.members.map((member) => member.name!.getText(file)),
      )
  return kinds
}

function readArrays(file: ts.SourceFile): [string, string][] {
  return file.statements
    .filter(ts.isInterfaceDeclaration)
    .flatMap(({ members }) => members.filter(ts.isPropertySignature))
    .map(({ name, type }): [string, string] => [name.getText(file), type!.getText(file)])
    .filter(([, type]) => type.endsWith('Array'))
}

/** The body of a part with those it calls in their places, its numbers as local variables. @throws Error where a part is written as none can be */
export function inlined(
  name: string,
  parts: Parts,
  numbers: ReadonlySet<string>,
  apart: ReadonlySet<string>,
): string {
  const part = parts.functions.get(name)
  if (part === undefined) throw new Error(`no part is named ${name}`)
  const { file, node } = part
  let returns = false
  const edits: { from: number; to: number; text: string }[] = []
  const replace = (of: ts.Node, text: string): void => {
    edits.push({ from: of.getStart(file), to: of.end, text })
  }
  const look = (of: ts.Node): void => {
    if (isOfNumbers(of)) return replace(of, of.name.text)
    if (ts.isReturnStatement(of)) {
      returns = true
      return replace(of, `break ${name}`)
    }
    if (ts.isExpressionStatement(of) && ts.isCallExpression(of.expression)) {
      const called = of.expression.expression.getText(file)
      return replace(of, apart.has(called) ? callOf(called) : inlined(called, parts, numbers, apart))
    }
    if (ts.isVariableDeclaration(of) && of.initializer?.getText(file) === 's') {
      return renamed(of.name as ts.ObjectBindingPattern)
    }
    if (ts.isVariableDeclaration(of) && numbers.has(of.name.getText(file)))
      throw new Error(
        `${file.fileName}: ${name} has a variable named as one of the numbers: ${of.name.getText(file)}`,
      )
    ts.forEachChild(of, look)
  }
  const renamed = ({ elements, parent }: ts.ObjectBindingPattern): void => {
    for (const { name: own, propertyName } of elements)
      if (propertyName === undefined && assigned(part, parts).has(own.getText(file)))
        throw new Error(
          `${file.fileName}: ${name} reads ${own.getText(file)} once and changes it: give it another name`,
        )
    const aliases = elements.filter(({ propertyName }) => propertyName !== undefined)
    const kept = aliases.map((e) => `${e.name.getText(file)} = ${e.propertyName!.getText(file)}`)
    const list = parent.parent
    const keyword = (list as ts.VariableDeclarationList).flags & ts.NodeFlags.Let ? 'let' : 'const'
    replace(list.parent, kept.length > 0 ? `${keyword} ${kept.join(', ')}` : '')
  }
  look(node.body!)
  const start = node.body!.getStart(file)
  let text = file.text.slice(start, node.body!.end)
  for (const { from, to, text: by } of edits.toSorted((a, b) => b.from - a.from))
    text = text.slice(0, from - start) + by + text.slice(to - start)
  text = text.replace('{', `{ ${markOf(name)}`)
  return returns ? `${name}: ${text}` : text
}

/** Says whose lines a block is: read by people, and by the bench's profile. */
export const markOf = (name: string): string => `// ${name}\n`

/** Stands for the call of a part that stays a function of its own. */
export const callOf = (name: string): string => `{ call_${name} }`

function isOfNumbers(node: ts.Node): node is ts.PropertyAccessExpression {
  return (
    ts.isPropertyAccessExpression(node) && ts.isIdentifier(node.expression) && node.expression.text === 's'
  )
}

/** Numbers that a part, or one it calls, sets. */
function assigned({ file, node }: Part, parts: Parts): Set<string> {
  const found = new Set<string>()
  const look = (of: ts.Node): void => {
    const target =
      ts.isBinaryExpression(of) &&
      of.operatorToken.kind >= ts.SyntaxKind.FirstAssignment &&
      of.operatorToken.kind <= ts.SyntaxKind.LastAssignment
        ? of.left
        : ts.isPostfixUnaryExpression(of)
          ? of.operand
          : null
    if (target !== null && isOfNumbers(target)) found.add(target.name.text)
    const called = ts.isCallExpression(of) ? parts.functions.get(of.expression.getText(file)) : undefined
    if (called !== undefined) for (const name of assigned(called, parts)) found.add(name)
    ts.forEachChild(of, look)
  }
  look(node.body!)
  return found
}
