import ts from 'typescript'
import { sourceFiles, targetOf, type SourceFile } from '../house-rules/source-files.ts'

/** A function, class or constant at the top level of a file. */
export interface Declared {
  /** `file#name`, the file from the root. */
  readonly id: string
  readonly file: string
  readonly name: string
  readonly node: ts.Node
  /** Those declarations, by id, whose names it uses. */
  readonly uses: ReadonlySet<string>
}

/** Files read and what their names lead to: of the file itself, or by its imports, through doors to where they are declared. */
export class Code {
  readonly declared = new Map<string, Declared>()
  private readonly files = new Map<string, ts.SourceFile>()

  constructor(folders: readonly string[]) {
    const read = folders.flatMap((folder) => sourceFiles(folder, ['.ts']))
    for (const { path, text } of read) this.files.set(path, parsed({ path, text }))
    for (const [path, source] of this.files) {
      const named = this.namesIn(path)
      for (const statement of source.statements)
        for (const name of namesOf(statement))
          this.declared.set(`${path}#${name}`, {
            id: `${path}#${name}`,
            file: path,
            name,
            node: statement,
            uses: new Set(identifiersIn(statement).flatMap((one) => named.get(one) ?? [])),
          })
    }
  }

  paths(): string[] {
    return [...this.files.keys()]
  }

  /** Every name that a file declares or imports, with the id of its declaration; names from packages are left out. */
  namesIn(path: string): Map<string, string> {
    const names = new Map<string, string>()
    for (const statement of this.files.get(path)?.statements ?? []) {
      for (const name of namesOf(statement)) names.set(name, `${path}#${name}`)
      if (!ts.isImportDeclaration(statement)) continue
      const bindings = statement.importClause?.namedBindings
      if (bindings === undefined || !ts.isNamedImports(bindings)) continue
      for (const { name, propertyName } of bindings.elements) {
        const id = this.exported(path, statement.moduleSpecifier, (propertyName ?? name).text)
        if (id !== null) names.set(name.text, id)
      }
    }
    return names
  }

  private exported(from: string, specifier: ts.Expression, name: string): string | null {
    const path = ts.isStringLiteral(specifier) ? targetOf(from, specifier.text) : null
    const source = path === null ? undefined : this.files.get(path)
    for (const statement of source?.statements ?? []) {
      if (namesOf(statement).includes(name)) return `${path!}#${name}`
      if (!ts.isExportDeclaration(statement) || !statement.exportClause) continue
      if (!ts.isNamedExports(statement.exportClause) || !statement.moduleSpecifier) continue
      const found = statement.exportClause.elements.find((one) => one.name.text === name)
      if (found)
        return this.exported(path!, statement.moduleSpecifier, (found.propertyName ?? found.name).text)
    }
    return null
  }
}

export function parsed({ path, text }: Pick<SourceFile, 'path' | 'text'>): ts.SourceFile {
  return ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true)
}

export function namesOf(statement: ts.Node): string[] {
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.flatMap(({ name }) =>
      ts.isIdentifier(name) ? [name.text] : [],
    )
  if ((ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement)) && statement.name)
    return [statement.name.text]
  return []
}

/** The comment right before a declaration. */
export function commentOf(node: ts.Node): string {
  const before = node.getFullText().slice(0, node.getStart() - node.getFullStart())
  return before.match(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g)?.at(-1) ?? ''
}

export function numbersIn(node: ts.Node): number[] {
  const found: number[] = []
  const visit = (one: ts.Node): void => {
    if (ts.isNumericLiteral(one)) found.push(Number(one.text.replaceAll('_', '')))
    ts.forEachChild(one, visit)
  }
  visit(node)
  return found
}

/** Names that are used as values: not those of properties, nor of types, nor any in a part that is left out. */
export function identifiersIn(node: ts.Node, leftOut: (part: ts.Node) => boolean = () => false): string[] {
  const found: string[] = []
  const visit = (one: ts.Node): void => {
    if (ts.isTypeNode(one) || leftOut(one)) return
    if (ts.isIdentifier(one) && !isProperty(one)) found.push(one.text)
    ts.forEachChild(one, visit)
  }
  visit(node)
  return found
}

function isProperty(name: ts.Identifier): boolean {
  const { parent } = name
  if (ts.isPropertyAccessExpression(parent)) return parent.name === name
  return (ts.isPropertyAssignment(parent) || ts.isMethodDeclaration(parent)) && parent.name === name
}
