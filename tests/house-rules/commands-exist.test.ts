import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { COMMANDS } from '../../src/shell/commands/all.ts'
import { helpText } from '../../src/shell/commands/help.ts'
import { COMMON_OPTIONS } from '../../src/shell/options.ts'
import { ROOT, sourceFiles } from './source-files.ts'

/* No text sends a person to a command, an option or a page that does not exist. */

const { scripts } = JSON.parse(readFileSync(`${ROOT}package.json`, 'utf8')) as {
  scripts: Record<string, string>
}
const pages = ['README.md', 'DEVELOPERS.md'].map((path) => ({
  path,
  text: readFileSync(ROOT + path, 'utf8'),
}))
const texts = [
  ...pages,
  ...sourceFiles('src', ['.ts', '.svelte', '.md']),
  ...sourceFiles('tests', ['.ts', '.md']),
]

test('every script that a text names is in package.json', () => {
  const missing = texts.flatMap(({ path, text }) =>
    [...text.matchAll(/npm run (?:-s )?([a-z][a-z-]*)/g)]
      .map(([, name]) => name!)
      .filter((name) => !Object.hasOwn(scripts, name))
      .map((name) => `${path}: npm run ${name}`),
  )
  expect(missing).toEqual([])
})

describe('the help', () => {
  const known = new Set([
    ...Object.keys(COMMON_OPTIONS),
    ...Object.values(COMMANDS).flatMap(({ options }) => Object.keys(options)),
    'help',
  ])
  const readers = [
    { path: 'the help text', text: helpText(COMMANDS) },
    ...sourceFiles('src/shell', ['.ts']),
    pages[0]!,
  ]

  test('names only options that exist', () => {
    const missing = readers.flatMap(({ path, text }) =>
      [...text.matchAll(/(?<![\w-])--([a-z][a-zA-Z-]*)/g)]
        .map(([, name]) => name!)
        .filter((name) => !known.has(name))
        .map((name) => `${path}: --${name}`),
    )
    expect(missing).toEqual([])
  })

  test('sends nobody to a subcommand that does not exist', () => {
    const missing = [...helpText(COMMANDS).matchAll(/with (\w+) --/g)].filter(
      ([, name]) => !Object.hasOwn(COMMANDS, name!),
    )
    expect(missing).toEqual([])
  })
})

test('every page that a link of the app names is a page', () => {
  const wanted = sourceFiles('src', ['.svelte']).flatMap(({ path, text }) =>
    [...text.matchAll(/href="\{base\}\/([a-z]*)\/?[#"?]/g)].map(([, name]) => ({ path, name: name! })),
  )
  const routes = new Set(sourceFiles('src/routes', ['.svelte']).map(({ path }) => path.split('/')[2]!))
  expect(wanted.filter(({ name }) => name !== '' && !routes.has(name))).toEqual([])
})
