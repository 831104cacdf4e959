import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { ROOMS } from '../../eslint.config.js'
import { importsOf, ROOT, sourceFiles, targetOf, type SourceFile } from './source-files.ts'

/* The house: one-way flow through the rooms of src/model, in the order that the lint rules hold as well. */

/** Packages that rooms of the model may use. */
const PACKAGES = [
  'suncalc',
  'valibot',
  'papaparse',
  'fflate',
  'ml-levenberg-marquardt',
  'ml-matrix',
  'date-fns',
  'uqr',
]
/** The package an import comes from. */
const packageOf = (specifier: string): string =>
  specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/')

const model = sourceFiles('src/model', ['.ts']).filter((file) => !file.path.endsWith('.d.ts'))
const roomOf = (path: string): string => path.split('/').slice(2, 4).join('/')

/** Code without comments and quoted text. */
function withoutWords(text: string): string {
  return text
    .replace(/\/\*[^]*?\*\/|(?<!:)\/\/.*$/gm, '')
    .replace(/'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`/g, "''")
}

/** The platform's time zone database, read in one fixed locale. */
const ZONES = 'src/model/outdoors/place/zone.ts'
const IMPURE =
  /\b(Date\.now|new Date\(\)|Math\.random|console\.|document\.|window\.|localStorage|fetch\(|performance\.|toLocale\w*|Intl\.|setTimeout|process\.)/

/** What of a file reaches outside the model. */
function impurities(files: readonly SourceFile[]): string[] {
  return files.flatMap(({ path, text }) => {
    const code = path === ZONES ? withoutWords(text).replace('Intl.DateTimeFormat', '') : withoutWords(text)
    const packages = importsOf(text).filter(
      (one) => targetOf(path, one) === null && !PACKAGES.includes(packageOf(one)),
    )
    const found = IMPURE.exec(code)?.[0]
    return [...packages.map((one) => `${path} → ${one}`), ...(found ? [`${path}: ${found}`] : [])]
  })
}

/** Files that import themselves by a way round. A type alone is gone once the code runs, but still makes two files one subject. */
function circlesAmong(files: readonly SourceFile[]): string[] {
  const graph = new Map(
    files.map(({ path, text }) => [
      path,
      importsOf(text)
        .map((one) => targetOf(path, one))
        .filter((to) => to !== null),
    ]),
  )
  const done = new Set<string>()
  const circles: string[] = []
  const visit = (path: string, way: readonly string[]): void => {
    if (way.includes(path)) circles.push([...way.slice(way.indexOf(path)), path].join(' → '))
    if (done.has(path) || way.includes(path)) return
    for (const next of graph.get(path) ?? []) visit(next, [...way, path])
    done.add(path)
  }
  for (const path of graph.keys()) visit(path, [])
  return circles
}

/** Names that say nothing of what a file is about. */
const vagueAmong = (files: readonly { readonly path: string }[]): string[] =>
  files
    .filter(({ path }) => /\/(utils?|helpers?|common|misc|core)(\/|\.)/i.test(path))
    .map((file) => file.path)

describe('src/model', () => {
  test('every file is in a room that has its place in the order', () => {
    const homeless = model.filter(({ path }) => !ROOMS.includes(roomOf(path)))
    expect(homeless.map((file) => file.path)).toEqual([])
  })

  test('every room has a door, and a door only hands on', () => {
    const rooms = [...new Set(model.map(({ path }) => roomOf(path)))]
    const doors = rooms.map((room) => model.find(({ path }) => path === `src/model/${room}/index.ts`))
    expect(rooms.filter((_, i) => doors[i] === undefined)).toEqual([])
    for (const door of doors)
      expect(door!.text.replace(/export (type )?\{[^}]*\} from '\.[^']+'\s*/g, '')).toBe('')
  })

  test('the reader of imports sees the imports there are', () => {
    expect(
      importsOf("import a from 'x'\nexport { b } from \"./y.ts\"\nconst c = await import('z')\nimport 'w'"),
    ).toEqual(['x', './y.ts', 'z', 'w'])
  })

  test('is pure: no Svelte, no Node, no DOM, no clock, no locale, no random, no printing', () => {
    expect(impurities(model)).toEqual([])
  })

  test.each([
    ['a clock', 'export const now = Date.now()'],
    ['chance', 'export const chance = Math.random()'],
    ['the page', 'export const title = document.title'],
    ['printing', "console.log('x')"],
    ['a locale', 'export const text = (1).toLocaleString()'],
    ['Node', "import { readFileSync } from 'node:fs'\nexport const read = readFileSync"],
    ['Svelte', "import { onMount } from 'svelte'\nexport const mount = onMount"],
  ])('a planted file with %s is found', (_, text) => {
    const path = 'src/model/basis/units/planted.ts'
    expect(impurities([{ path, text, lines: 2 }]).join()).toContain(path)
    expect(impurities([{ path, text: `/* ${text.replaceAll('\n', ' ')} */`, lines: 1 }])).toEqual([])
  })
})

describe('the whole of src', () => {
  const all = sourceFiles('src', ['.ts', '.svelte'])

  test('no file imports itself by a way round', () => {
    expect(circlesAmong(all)).toEqual([])
  })

  test('a planted circle of two files is found', () => {
    const [a, b] = ['src/studies/size.ts', 'src/studies/sheet.ts'] as const
    const planted = [
      { path: a, text: "import { sheet } from './sheet.ts'", lines: 1 },
      { path: b, text: "import type { Size } from './size.ts'", lines: 1 },
    ]
    expect(circlesAmong(planted)).toEqual([`${a} → ${b} → ${a}`])
    expect(circlesAmong(planted.slice(0, 1))).toEqual([])
  })

  test('no file is called utils, helpers, common, misc or core', () => {
    expect(
      vagueAmong([...sourceFiles('src', ['.ts', '.svelte', '.md']), ...sourceFiles('tests', ['.ts'])]),
    ).toEqual([])
    expect(
      vagueAmong([{ path: 'src/model/basis/utils.ts' }, { path: 'src/model/basis/numbers.ts' }]),
    ).toEqual(['src/model/basis/utils.ts'])
  })

  test('every package that is imported is declared as a dependency', () => {
    const { dependencies } = JSON.parse(readFileSync(`${ROOT}package.json`, 'utf8')) as {
      dependencies: Record<string, string>
    }
    const known = ['$app', '$env', '$lib', '$service-worker', 'virtual:']
    const missing = new Set(
      all.flatMap(({ path, text }) =>
        importsOf(text)
          .filter((one) => targetOf(path, one) === null && !one.startsWith('node:') && !one.startsWith('#'))
          .filter((one) => !known.some((start) => one.startsWith(start)))
          .map(packageOf)
          .filter((name) => !Object.hasOwn(dependencies, name)),
      ),
    )
    expect([...missing]).toEqual([])
  })
})
