import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { ROOT } from '../house-rules/source-files.ts'

test('the example in the README runs as it is written', () => {
  const readme = readFileSync(`${ROOT}README.md`, 'utf8')
  const code = /```ts\n([^]*?)```/.exec(readme)![1]!
  const run = spawnSync('node', ['--import', 'tsx', '--input-type=module', '--eval', code], {
    cwd: ROOT,
    encoding: 'utf8',
  })
  expect(run.stderr).toBe('')
  expect(run.stdout).toMatch(/^(met|floor|notNeeded|own): \d+\.\d m², \d+ remarks\n$/)
})
