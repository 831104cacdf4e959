/* What can be held of a row by reading: it says where its value is from, its code is called in src, its second model is its own. */
import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { evidenceKind } from './check.ts'
import { CHECKS } from './checks/all.ts'

const HERE = fileURLToPath(new URL('.', import.meta.url))
const SRC = fileURLToPath(new URL('../../src/', import.meta.url))
const read = (folder: string, pattern: RegExp) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => pattern.test(file))
    .map((file) => ({ file, text: readFileSync(folder + file, 'utf8') }))

/** Code of src without comments, imports and names that are only handed on. */
const used = read(SRC, /\.(?:ts|svelte)$/)
  .map(({ text }) =>
    text
      .replace(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g, '')
      .replace(/^(?:im|ex)port (?:type )?\{[^}]*\} from [^\n]*$/gm, ''),
  )
  .join('\n')

/** Functions that a file of checks takes from src. */
function takenFromSrc(text: string): string[] {
  return [...text.matchAll(/^import \{([^}]*)\} from '#(?:inside\/)?model[^']*'/gm)].flatMap((match) =>
    match[1]!
      .split(',')
      .map((name) => name.trim())
      .filter((name) => /^[a-z]/.test(name) && !name.startsWith('type ')),
  )
}

/** Taken by checks that `untabled.ts` leaves out of the table: kept as unit tests. */
const UNTABLED = ['forcedConvection_Wm2K', 'haurwitzGlobal_Wm2', 'removalFactor', 'sphereMultiplier']
/** Set the question or read what is described: layers of a wall, the modes that are judged. What they work out is their own. */
const READ_ONLY = ['envelope-cases.ts', 'iso13786.ts', 'modes-daily.ts']

describe('rows of the table', () => {
  test('a row from outside says where in its source, from which file, or that it is from memory', () => {
    const vague = CHECKS.filter(
      (check) =>
        evidenceKind(check) === 'outside' && !check.where && !check.needs && check.fromMemory !== true,
    )
    expect(vague.map(({ quantity }) => quantity)).toEqual([])
  })
  test('a choice that was made on a row’s data says how it was kept from judging itself', () => {
    for (const { choice, quantity } of CHECKS)
      if (choice !== undefined) expect(choice, quantity).toMatch(/left out|other|not chosen/)
  })
  test.each(read(`${HERE}checks/`, /\.ts$/).map(({ file, text }) => [file, takenFromSrc(text)] as const))(
    '%s: what it calls is called in src too',
    (_file, names) => {
      const calls = (name: string) => used.match(new RegExp(`\\b${name}\\b`, 'g'))?.length ?? 0
      // Once is its own definition.
      expect(names.filter((name) => calls(name) < 2 && !UNTABLED.includes(name))).toEqual([])
    },
  )
  test('second models take no code from src; the cases beside them set the question', () => {
    const taking = read(`${HERE}models/`, /\.ts$/)
      .filter(
        ({ file, text }) =>
          !/-(?:case|year|ask)\.ts$/.test(file) && /from '#/.test(text) && !READ_ONLY.includes(file),
      )
      .map(({ file }) => file)
    expect(taking).toEqual([])
  })
})
