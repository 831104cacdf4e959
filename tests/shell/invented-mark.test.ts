import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import Papa from 'papaparse/papaparse.js'
import { describe, expect, test } from 'vitest'
import { COMMANDS } from '../../src/shell/commands/all.ts'
import { duskbank, readNamed, scratchFolder } from './run-shell.ts'

/* Every subcommand says when its result rests on invented data: one line on standard error, `invented` and
 * `inventedData` in JSON and in CSV. A subcommand without words here fails the first test. */

const CLIMATE = ['--weather', 'continental']
const FIXED = ['--set', 'target.autoArea=false', '--set', 'target.area_m2=8']

/** How each subcommand is asked for something that rests on invented data. */
const ASKED: Readonly<Record<string, readonly string[]>> = {
  sky: CLIMATE,
  panel: CLIMATE,
  year: [...CLIMATE, ...FIXED],
  // A place where little is needed: the search is short.
  decide: ['--weather', 'mild-ocean-coast'],
  size: [...CLIMATE, ...FIXED, '--draws', '0'],
  map: [...CLIMATE, ...FIXED, '--over', 'flow', '--areas', '4,8', '--others', '0.006,0.012'],
  sheet: [...CLIMATE, ...FIXED],
  compare: [...CLIMATE, ...FIXED, '--plans', 'nightOnly'],
  coating: ['--board', '--air', '24', '--dew', '9'],
  batch: ['--area', '6'],
  asbuilt: [...CLIMATE, '--area', '8'],
}
/** Results of one set of named values (two columns in CSV); the others are tables. */
const RECORDS = ['size', 'sheet', 'asbuilt']
const MARK = /^Invented data, nothing measured: .+\.$/m

/** Subcommands that hand on open data alone. */
const OPEN_DATA = ['place', 'weather']

test('every subcommand is asked here, but for what hands on open data', () => {
  expect([...Object.keys(ASKED), ...OPEN_DATA].toSorted()).toEqual(Object.keys(COMMANDS).toSorted())
})

test('monthly climate is open data and carries no mark; a year made from it does', async () => {
  const months = await duskbank('place', 'Kraków', '--format', 'json')
  expect(months.err).not.toMatch(MARK)
  expect((JSON.parse(months.out) as { invented: boolean }).invented).toBe(false)
  const year = await duskbank('year', '--town', 'Kraków', ...FIXED, '--format', 'json')
  expect(year.err).toMatch(MARK)
  expect(year.err).toMatch(/not from measured hours/)
  expect((JSON.parse(year.out) as { inventedData: string }).inventedData).toMatch(/monthly climate/)
})

describe.each(Object.keys(ASKED))('%s', (name) => {
  test('marks its invented data on standard error, in JSON and in CSV', async () => {
    const words = [
      name,
      ...(ASKED[name] ?? []),
      ...(name === 'asbuilt' ? ['--log', await practiceLog()] : []),
    ]
    const json = await duskbank(...words, '--format', 'json')
    expect(json.code, json.err).toBe(0)
    expect(json.err).toMatch(MARK)
    const found = JSON.parse(json.out) as { invented?: unknown; inventedData?: unknown }
    expect(found.invented).toBe(true)
    expect(String(found.inventedData)).not.toBe('')
    const { out } = await duskbank(...words)
    if (RECORDS.includes(name)) expect(readNamed(out)['invented']).toBe('true')
    else {
      const [head, ...rows] = Papa.parse(out.trimEnd(), { delimiter: ',', newline: '\n' }).data
      const mark = head!.indexOf('invented')
      expect(new Set(rows.map((row) => row[mark]))).toEqual(new Set(['true']))
    }
  })
})

test('a practice log and the files to start from say so in their text', async () => {
  expect(readFileSync(await practiceLog(), 'utf8')).toMatch(/^# Invented/)
  for (const name of ['batch', 'coating']) {
    const { out, err } = await duskbank(name, '--example')
    expect(out).toMatch(/"basis": "Invented/)
    expect(err).toMatch(MARK)
  }
})

test('what was measured and described by the user carries no mark', async () => {
  const folder = scratchFolder()
  const recipe = join(folder, 'mine.json')
  const { out } = await duskbank('batch', '--example')
  writeFileSync(recipe, out.replace(/"basis": "[^"]*"/, '"basis": "My own."'))
  const own = await duskbank('batch', '--area', '6', '--recipe', recipe, '--format', 'json')
  expect(own.err).not.toMatch(MARK)
  expect((JSON.parse(own.out) as { invented: boolean }).invented).toBe(false)
})

let log: Promise<string> | null = null
/** An invented logger file of a fortnight, made once. */
function practiceLog(): Promise<string> {
  log ??= (async () => {
    const file = join(scratchFolder(), 'practice.csv')
    await duskbank(
      'asbuilt',
      ...CLIMATE,
      '--area',
      '8',
      '--rehearse',
      'sound',
      '--first-day',
      '180',
      '--out',
      file,
    )
    return file
  })()
  return log
}
