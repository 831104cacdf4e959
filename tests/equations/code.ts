import ts from 'typescript'
import { sourceFiles, type SourceFile } from '../house-rules/source-files.ts'

/** A function, class or constant at the top level of a file of the model. */
export interface Declared {
  readonly name: string
  /** From src/model. */
  readonly file: string
  readonly line: number
  readonly numbers: ReadonlySet<number>
  /** Its comments. */
  readonly comment: string
  /** Other names it uses. */
  readonly uses: ReadonlySet<string>
}

export function declarationsOf({ path, text }: SourceFile): Declared[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true)
  return source.statements.flatMap((statement) =>
    namesOf(statement).map((name) => ({
      name,
      file: path.slice('src/model/'.length),
      line: source.getLineAndCharacterOfPosition(statement.getStart()).line + 1,
      numbers: new Set(numbersIn(statement)),
      comment: (statement.getFullText().match(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g) ?? []).join(' '),
      uses: new Set(identifiersIn(statement)),
    })),
  )
}

function namesOf(statement: ts.Statement): string[] {
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.flatMap(({ name }) =>
      ts.isIdentifier(name) ? [name.text] : [],
    )
  if ((ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement)) && statement.name)
    return [statement.name.text]
  return []
}

function numbersIn(node: ts.Node): number[] {
  const found: number[] = []
  const visit = (one: ts.Node): void => {
    if (ts.isNumericLiteral(one)) found.push(Number(one.text.replaceAll('_', '')))
    ts.forEachChild(one, visit)
  }
  visit(node)
  return found
}

export function identifiersIn(node: ts.Node): string[] {
  const found: string[] = []
  const visit = (one: ts.Node): void => {
    if (ts.isIdentifier(one)) found.push(one.text)
    ts.forEachChild(one, visit)
  }
  visit(node)
  return found
}

export function modelDeclarations(): Declared[] {
  return sourceFiles('src/model', ['.ts'])
    .filter(({ path }) => !path.endsWith('index.ts') && !path.endsWith('.d.ts'))
    .flatMap(declarationsOf)
}
