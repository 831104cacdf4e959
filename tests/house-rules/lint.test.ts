import { ESLint } from 'eslint'
import { expect, test } from 'vitest'
import { ROOMS } from '../../eslint.config.js'
import { ROOT } from './source-files.ts'

/* Each rule of the house is proved by code that breaks it. */

const eslint = new ESLint({ cwd: ROOT })

async function complaintsAbout(path: string, code: string): Promise<string[]> {
  const [result] = await eslint.lintText(`${code}\n`, { filePath: `${ROOT}${path}` })
  return result!.messages
    .filter(({ ruleId }) => ruleId === 'no-restricted-imports' || ruleId === 'no-restricted-syntax')
    .map(({ message }) => message)
}

const importing = (from: string): string => `import { x } from '${from}'\nexport const y = x`

test.each(ROOMS.slice(0, -1))(
  '%s may not import the room after it, nor the order of the stages',
  async (room) => {
    const later = ROOMS[ROOMS.indexOf(room) + 1]!
    for (const from of [`#model/${later}/x.ts`, '#model/answer.ts'])
      expect(await complaintsAbout(`src/model/${room}/a.ts`, importing(from)), from).not.toEqual([])
  },
)

test.each(ROOMS.slice(1))('%s may import the room before it and the problems', async (room) => {
  const earlier = ROOMS[ROOMS.indexOf(room) - 1]!
  for (const from of [`#model/${earlier}/x.ts`, '#model/problem.ts', './x.ts'])
    expect(await complaintsAbout(`src/model/${room}/a.ts`, importing(from)), from).toEqual([])
})

test.each([
  ['the last room from a subfolder', 'src/model/weather/time/a.ts', '#model/sheet/parts.ts'],
  ['another room by a relative path', 'src/model/sky/a.ts', '../air/blackbody.ts'],
  ['the worker from a room', 'src/model/air/a.ts', '#live/engine.ts'],
  ['pages from a room', 'src/model/air/a.ts', '#ui/chart/ink.ts'],
  ['studies from a room', 'src/model/air/a.ts', '#studies/range.ts'],
  ['the worker from above the rooms', 'src/model/a.ts', '#live/engine.ts'],
  ['Svelte from a room', 'src/model/air/a.ts', 'svelte'],
  ['a part of Svelte from a room', 'src/model/air/a.ts', 'svelte/reactivity'],
  ['SvelteKit from a room', 'src/model/air/a.ts', '$app/environment'],
  ['its settings from a room', 'src/model/air/a.ts', '$env/static/public'],
  ['Node from a room', 'src/model/air/a.ts', 'node:fs'],
  ['the worker from a study', 'src/studies/a.ts', '#live/engine.ts'],
  ['Svelte from a study', 'src/studies/a.ts', 'svelte'],
  ['Node from a study', 'src/studies/a.ts', 'node:fs'],
  ['the shell from a study', 'src/studies/a.ts', '../shell/samples.ts'],
  ['pages from the worker', 'src/live/a.ts', '#ui/chart/ink.ts'],
  ['the shell from the worker', 'src/live/a.ts', '../shell/samples.ts'],
  ['the shell from a component', 'src/ui/chart/a.ts', '../../shell/samples.ts'],
  ['the shell from a page', 'src/routes/a.ts', '../shell/samples.ts'],
  ['the worker from the shell', 'src/shell/a.ts', '#live/engine.ts'],
  ['pages from the shell', 'src/shell/commands/a.ts', '#ui/chart/ink.ts'],
])('no import of %s', async (_what, path, from) => {
  expect(await complaintsAbout(path, importing(from))).not.toEqual([])
})

test('the model imports nothing late', async () => {
  const late = `export const y = () => import('#model/basis/units')`
  expect(await complaintsAbout('src/model/air/a.ts', late)).not.toEqual([])
})
