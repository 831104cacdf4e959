/* The maker's three subcommands, run as a user runs them. Numbers are those of the library, checked elsewhere; here: that
 * they come out, with notes on standard error, and that slips end with one sentence and exit code 2. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const folder = mkdtempSync(join(tmpdir(), 'duskbank-maker-'))
function run(...words: string[]) {
  const done = spawnSync(process.execPath, ['--import', 'tsx', 'src/shell/duskbank.ts', ...words], {
    encoding: 'utf8',
  })
  return { out: done.stdout, notes: done.stderr, code: done.status }
}
function kept(name: string, text: string): string {
  const file = join(folder, name)
  writeFileSync(file, text)
  return file
}

describe('shell: coating, batch, asbuilt', () => {
  it('coating: example notes go back in and give reflectances with intervals and the next reading', () => {
    const notes = kept('notes.json', run('coating', '--example').out)
    const { out, notes: said, code } = run('coating', '--readings', notes)
    expect(code).toBe(0)
    expect(out).toContain('Pot A,solarReflectance_frac,0.9')
    expect(out).toContain('Pot A − Pot B')
    expect(said).toContain('next: Read')
  })

  it('coating: a board for a typed-in hour, and a light box', () => {
    const board = run('coating', '--board', '--air', '29', '--dew', '8')
    expect(board.out.split('\n')[0]).toBe(
      'coating,cover,light,surface_C,againstAir_K,low_C,high_C,wet,invented,inventedData',
    )
    const box = run('coating', '--box-sample', '900,902', '--box-reference', '980,981')
    expect(box.out).toContain('visible_frac,0.90')
    expect(box.notes).toContain('may not decide')
  })

  it('batch: weighs the example recipe and warns first', () => {
    const { out, notes, code } = run('batch', '--area', '12', '--format', 'json')
    expect(code).toBe(0)
    expect(JSON.parse(out).ingredient).toContain('Diatomite, coarse')
    expect(notes).toMatch(/^caution:/)
  })

  it('asbuilt: an invented log of half flow is named so', () => {
    const base = ['asbuilt', '--weather', 'semi-arid-south', '--area', '12']
    const log = kept('roof.csv', run(...base, '--rehearse', 'lowFlow', '--first-day', '10').out)
    const { out, notes, code } = run(...base, '--log', log)
    expect(code).toBe(0)
    expect(out).toContain('fault,lowFlow')
    expect(notes).toContain('bucket and a watch')
  })

  it.each([
    ['nothing asked', ['coating'], 'not given anything to do'],
    ['no area', ['batch'], '--area'],
    ['word for a number', ['batch', '--area', 'big'], '--area big'],
    ['no log', ['asbuilt', '--weather', 'semi-arid-south', '--area', '12'], '--log'],
    [
      'no such fault',
      ['asbuilt', '--weather', 'semi-arid-south', '--area', '12', '--rehearse', 'rust'],
      'rust',
    ],
    ['broken notes', ['coating', '--readings', kept('bad.json', '{')], 'bad.json'],
  ])('%s: one sentence, exit code 2', (_why, words, sentence) => {
    const { out, notes, code } = run(...words)
    expect(code).toBe(2)
    expect(out).toBe('')
    expect(notes).toContain(sentence)
  })
})
