import ts from 'typescript'
import { describe, expect, test } from 'vitest'
import { sourceFiles, targetOf, type SourceFile } from './source-files.ts'

const ENDINGS = ['.ts', '.svelte']
const SRC = sourceFiles('src', ENDINGS)

/** Read by a framework or started by name, so that no import of ours leads there. */
const STARTED =
  /^src\/(routes\/|service-worker\.ts|shell\/(serve|duskbank|make-climates|first-answer(-plugin)?)\.ts|live\/.*worker\.ts)/

const parsed = ({ path, text }: SourceFile) =>
  ts.createSourceFile(
    path,
    path.endsWith('.svelte')
      ? [...text.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map(([, script]) => script).join('\n')
      : text,
    ts.ScriptTarget.Latest,
    true,
  )

/** Names each file is asked for; '*' where all of it is. */
function takenFrom(files: readonly SourceFile[]): ReadonlyMap<string, ReadonlySet<string>> {
  const taken = new Map<string, Set<string>>()
  for (const file of files.filter(({ path }) => !isDoor(path))) {
    const take = (specifier: ts.Node | undefined, names: readonly string[]) => {
      if (!specifier || !ts.isStringLiteralLike(specifier)) return
      const to = targetOf(file.path, specifier.text.replace(/\?.*$/, ''))
      if (to !== null) taken.set(to, new Set([...(taken.get(to) ?? []), ...names]))
    }
    const visit = (node: ts.Node): void => {
      if (ts.isImportDeclaration(node)) take(node.moduleSpecifier, importedNames(node))
      else if (ts.isExportDeclaration(node)) take(node.moduleSpecifier, ['*'])
      else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
        take(node.argument.literal, ['*'])
      else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
        take(node.arguments[0], ['*'])
      ts.forEachChild(node, visit)
    }
    visit(parsed(file))
  }
  for (const door of SRC.filter(({ path }) => isDoor(path)))
    for (const [, list, from] of door.text.matchAll(/export (?:type )?\{([^}]*)\} from '([^']+)'/g)) {
      const to = targetOf(door.path, from!)!
      const handedOn = list!.split(',').map((one) => one.trim().replace(/^type /, ''))
      const asked = handedOn.filter(
        (name) => taken.get(door.path)?.has(name) || taken.get(door.path)?.has('*'),
      )
      taken.set(to, new Set([...(taken.get(to) ?? []), ...asked]))
    }
  return taken
}

/** A room's door only hands on: what it names is used when somebody asks the door for it. */
const isDoor = (path: string): boolean => /^src\/model\/.*\/index\.ts$/.test(path)

function importedNames({ importClause }: ts.ImportDeclaration): readonly string[] {
  const bindings = importClause?.namedBindings
  if (bindings === undefined) return ['default']
  if (ts.isNamespaceImport(bindings)) return ['*']
  return bindings.elements.map(({ name, propertyName }) => (propertyName ?? name).text)
}

interface Exported {
  readonly name: string
  /** Types are the words of a signature: exported with it though nobody spells them out. */
  readonly isType: boolean
}

function exportsOf(file: SourceFile): readonly Exported[] {
  return parsed(file).statements.flatMap((statement) => {
    const modifiers = ts.canHaveModifiers(statement) ? ts.getModifiers(statement) : undefined
    if (!modifiers?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)) return []
    const isType = ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement)
    if (ts.isVariableStatement(statement))
      return statement.declarationList.declarations.flatMap(({ name }) =>
        ts.isIdentifier(name) ? [{ name: name.text, isType }] : [],
      )
    const { name } = statement as ts.Statement & { name?: ts.Identifier }
    return name ? [{ name: name.text, isType }] : []
  })
}

/** Values of src that none of these files asks for, and that their own file uses no second time. */
function unused(files: readonly SourceFile[]): readonly string[] {
  const taken = takenFrom(files)
  return SRC.filter(({ path }) => path.endsWith('.ts') && !STARTED.test(path)).flatMap((file) => {
    const names = taken.get(file.path) ?? new Set<string>()
    if (names.has('*')) return []
    const usedHere = (name: string) => file.text.split(new RegExp(`(?<![\\w$])${name}(?![\\w$])`)).length > 2
    const dead = exportsOf(file).filter(({ name, isType }) => !isType && !names.has(name) && !usedHere(name))
    return dead.map(({ name }) => `${file.path}: ${name}`)
  })
}

/** Used by tests alone, each with the reason it stays. */
const FOR_TESTS: Readonly<Record<string, string>> = {
  'src/model/panels/plate/balance.ts: equilibriumTemperature_C':
    'the full solution the hour’s reduction is held against',
  'src/model/panels/loop/plate.ts: removalFactor': 'the textbook form the loop’s exponential is held against',
  'src/model/outdoors/sun/clear-sky.ts: haurwitzGlobal_Wm2':
    'a second clear sky, which the first is held against',
  'src/model/outdoors/air/moist-air.ts: saturationSlope_PaK':
    'the derivative by which the saturation curve is seen to be smooth',
  'src/model/outdoors/air/convection.ts: forcedConvection_Wm2K':
    'each author’s line by its slope, which the published coefficients are held against',
  'src/model/panels/readings/light-box.ts: sphereMultiplier':
    'the published sphere the box’s correction is held against',
  'src/model/panels/readings/light-box.ts: expectedRatio': 'the way back, for round trips of the correction',
  'src/model/panels/notebook/hiding.ts: filmReflectance_frac':
    'the way back, for round trips of the thickness',
  'src/model/panels/paint/batch.ts: dryThicknessOfSpread': 'the way back, for round trips of the quantities',
  'src/model/design/sizing/map-axes.ts: valueOn': 'the way back, for round trips along an axis',
  'src/model/design/target/comfort.ts: adaptiveLower_C':
    'the half of the standards that limits cold; no target judges it',
  'src/model/design/target/comfort.ts: adaptiveApplies': 'the range the standards cover; no page says it',
}

describe('what src exports', () => {
  test('is found, and so is who asks for it', () => {
    expect(SRC.flatMap(exportsOf).length).toBeGreaterThan(500)
    expect(takenFrom(SRC).size).toBeGreaterThan(200)
  })

  test('is used by src itself, or stays for the tests with a reason', () => {
    const testsOnly = unused(SRC)
    expect(testsOnly.filter((entry) => !Object.hasOwn(FOR_TESTS, entry))).toEqual([])
    expect(
      Object.keys(FOR_TESTS).filter((entry) => !testsOnly.includes(entry)),
      'reasons no longer needed',
    ).toEqual([])
  })
})
