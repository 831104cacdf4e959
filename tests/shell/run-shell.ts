import { execFile } from 'node:child_process'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('../../', import.meta.url))

/** What one run of the command line left behind. */
export interface ShellRun {
  readonly code: number
  readonly out: string
  readonly err: string
}

/** Runs the command line as a user would (`npm run -s duskbank -- …`), in a process of its own. */
export function duskbank(...words: readonly string[]): Promise<ShellRun> {
  const command = ['--import', 'tsx', 'src/shell/duskbank.ts', ...words]
  return new Promise((done) => {
    execFile(process.execPath, command, { cwd: ROOT, maxBuffer: 1e8 }, (error, out, err) => {
      const code = error === null ? 0 : typeof error.code === 'number' ? error.code : -1
      done({ code, out, err })
    })
  })
}

/** A folder for the files of one test. */
export function scratchFolder(): string {
  return mkdtempSync(join(tmpdir(), 'duskbank-'))
}

/** A table of the command line, by column. */
export function readCsv(text: string): Readonly<Record<string, string[]>> {
  const [head = '', ...rows] = text.trimEnd().split('\n')
  const cells = rows.map((row) => row.split(','))
  return Object.fromEntries(head.split(',').map((name, i) => [name, cells.map((row) => row[i] ?? '')]))
}

/** A two-column result (name, value) as an object; quotes taken off. */
export function readNamed(text: string): Readonly<Record<string, string>> {
  const rows = text.trimEnd().split('\n').slice(1)
  return Object.fromEntries(
    rows.map((row) => {
      const at = row.indexOf(',')
      return [row.slice(0, at), row.slice(at + 1).replace(/^"|"$/g, '')]
    }),
  )
}
