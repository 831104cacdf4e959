import { ESLint } from 'eslint'
import { expect, test } from 'vitest'
import { ROOMS, TYPED_RULES } from '../../eslint.config.js'
import { ROOT } from './source-files.ts'

/* Each rule of the house is proved by code that breaks it. */

/** For code of files that do not exist, which no types can be had of. */
const eslint = new ESLint({
  cwd: ROOT,
  overrideConfig: {
    languageOptions: { parserOptions: { projectService: false } },
    rules: Object.fromEntries(Object.keys(TYPED_RULES).map((rule) => [rule, 'off'])),
  },
})

async function complaintsAbout(path: string, code: string): Promise<string[]> {
  const [result] = await eslint.lintText(`${code}\n`, { filePath: `${ROOT}${path}` })
  return result!.messages
    .filter(({ ruleId }) => ruleId === 'no-restricted-imports' || ruleId === 'no-restricted-syntax')
    .map(({ message }) => message)
}

const importing = (from: string): string => `import { x } from '${from}'\nexport const y = x`

test.each(ROOMS)('%s may import the doors of the rooms before it, and of no other', async (room) => {
  for (const [i, other] of ROOMS.entries()) {
    const found = await complaintsAbout(`src/model/${room}/a.ts`, importing(`#model/${other}`))
    if (i < ROOMS.indexOf(room)) expect(found, other).toEqual([])
    else expect(found, other).not.toEqual([])
  }
})

test.each([
  ['a room past its door', 'src/model/outdoors/sky/a.ts', '#model/outdoors/air/blackbody.ts'],
  ['a door by its file', 'src/model/outdoors/sky/a.ts', '#model/outdoors/air/index.ts'],
  ['another room by a relative path', 'src/model/outdoors/sky/a.ts', '../air/blackbody.ts'],
  ['another room from a subfolder', 'src/model/outdoors/intake/clock/a.ts', '../../air/index.ts'],
  ['a later room from a subfolder', 'src/model/outdoors/intake/clock/a.ts', '#model/outdoors/sky'],
  ['the inside of a room', 'src/model/outdoors/sky/a.ts', '#inside/model/outdoors/air/blackbody.ts'],
  ['the worker from a room', 'src/model/outdoors/air/a.ts', '#live/engine.ts'],
  ['pages from a room', 'src/model/outdoors/air/a.ts', '#ui/chart/ink.ts'],
  ['studies from a room', 'src/model/outdoors/air/a.ts', '#studies/stages.ts'],
  ['Svelte from a room', 'src/model/outdoors/air/a.ts', 'svelte'],
  ['a part of Svelte from a room', 'src/model/outdoors/air/a.ts', 'svelte/reactivity'],
  ['SvelteKit from a room', 'src/model/outdoors/air/a.ts', '$app/environment'],
  ['its settings from a room', 'src/model/outdoors/air/a.ts', '$env/static/public'],
  ['Node from a room', 'src/model/outdoors/air/a.ts', 'node:fs'],
  ['the worker from a study', 'src/studies/a.ts', '#live/engine.ts'],
  ['Svelte from a study', 'src/studies/a.ts', 'svelte'],
  ['Node from a study', 'src/studies/a.ts', 'node:fs'],
  ['the shell from a study', 'src/studies/a.ts', '../shell/samples.ts'],
  ['a room past its door from a study', 'src/studies/a.ts', '#model/outdoors/air/blackbody.ts'],
  ['pages from the worker', 'src/live/a.ts', '#ui/chart/ink.ts'],
  ['the shell from the worker', 'src/live/a.ts', '../shell/samples.ts'],
  ['a room past its door from the worker', 'src/live/a.ts', '#model/outdoors/air/blackbody.ts'],
  ['the shell from a component', 'src/ui/chart/a.ts', '../../shell/samples.ts'],
  ['the inside of a room from a component', 'src/ui/chart/a.ts', '#inside/model/outdoors/air/wind.ts'],
  ['the shell from a page', 'src/routes/a.ts', '../shell/samples.ts'],
  ['the worker from the shell', 'src/shell/a.ts', '#live/engine.ts'],
  ['pages from the shell', 'src/shell/commands/a.ts', '#ui/chart/ink.ts'],
  ['the inside of a room from the shell', 'src/shell/a.ts', '#inside/model/outdoors/air/wind.ts'],
  ['the worker from the library', 'src/library.ts', '#live/engine.ts'],
])('no import of %s', async (_what, path, from) => {
  expect(await complaintsAbout(path, importing(from))).not.toEqual([])
})

test.each([
  ['src/live/a.ts', '#model/building/year', 'simulateYear'],
  ['src/shell/a.ts', '#model/outdoors/sky', 'skyHours'],
  ['src/ui/weather/a.ts', '#model/outdoors/climate', 'stressWeather'],
])('no stage is called from %s', async (path, from, name) => {
  const code = `import { ${name} } from '${from}'\nexport const y = ${name}`
  expect(await complaintsAbout(path, code)).not.toEqual([])
  expect(await complaintsAbout(path, code.replaceAll(name, 'localHour'))).toEqual([])
})

test('the model imports nothing late', async () => {
  const late = `export const y = () => import('#model/basis/units')`
  expect(await complaintsAbout('src/model/outdoors/air/a.ts', late)).not.toEqual([])
})

/** Code that breaks each rule, put in the place of a file of the project. */
const UNTYPED: Record<keyof typeof TYPED_RULES, string> = {
  '@typescript-eslint/await-thenable': 'export const y = async (x: number) => await x',
  '@typescript-eslint/no-floating-promises': 'export function y(x: Promise<number>) { x.then(Number) }',
  '@typescript-eslint/no-misused-promises': 'export const y = (x: Promise<boolean>) => (x ? 1 : 2)',
  '@typescript-eslint/no-unnecessary-type-assertion': 'export const y = (x: number) => x as number',
  '@typescript-eslint/only-throw-error': `export const y = () => { throw 'no' }`,
  '@typescript-eslint/prefer-promise-reject-errors': `export const y = Promise.reject('no')`,
  '@typescript-eslint/restrict-plus-operands':
    'export const y = (x: number, z: object) => x + (z as unknown as string[])',
  '@typescript-eslint/switch-exhaustiveness-check': `export function y(x: 'a' | 'b') { switch (x) { case 'a': return 1 } return 2 }`,
}

test.each(Object.entries(UNTYPED))('%s holds in the source', async (rule, code) => {
  const typed = new ESLint({ cwd: ROOT })
  const [result] = await typed.lintText(`${code}\n`, { filePath: `${ROOT}src/live/latest-wins.ts` })
  expect(result!.messages.map(({ ruleId }) => ruleId)).toContain(rule)
})
