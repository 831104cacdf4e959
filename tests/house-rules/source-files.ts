import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const ROOT = fileURLToPath(new URL('../../', import.meta.url))

export interface SourceFile {
  /** From the root, with forward slashes. */
  readonly path: string
  readonly text: string
  readonly lines: number
}

/** Files that a script makes of others; a test holds each equal to what the script makes now. Nobody reads them to change them. */
export const MADE = ['src/model/building/year/flat/hours.ts', 'src/model/building/year/flat/hours-wasm.ts']

/** All files under a folder with one of these endings. */
export function sourceFiles(folder: string, endings: readonly string[]): SourceFile[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .filter((path) => endings.some((ending) => path.endsWith(ending)))
    .sort()
    .map((path) => {
      const text = readFileSync(join(ROOT, path), 'utf8')
      return { path, text, lines: text.split('\n').length - 1 }
    })
}

const IMPORTS =
  /(?:^|\n)\s*(?:import|export)\s[^'"]*?from\s*['"]([^'"]+)['"]|import\s*\(\s*['"]([^'"]+)['"]\s*\)|(?:^|\n)\s*import\s*['"]([^'"]+)['"]/g

/** What a file imports, as written. Text in comments does not look like an import at a line's start. */
export function importsOf(text: string): string[] {
  return [...text.matchAll(IMPORTS)].map((found) => (found[1] ?? found[2] ?? found[3])!)
}

/** The file an import leads to, from the root; null for a package. */
export function targetOf(from: string, specifier: string): string | null {
  const alias = /^#(model|studies|live|ui|inside)\/(.+)$/.exec(specifier)
  if (alias?.[1] === 'inside') return `src/${alias[2]}`
  if (alias !== null) return `src/${alias[1]}/${alias[2]}${/\.\w+$/.test(alias[2]!) ? '' : '/index.ts'}`
  if (!specifier.startsWith('.')) return null
  const folder = from.slice(0, from.lastIndexOf('/'))
  return new URL(specifier, `file:///${folder}/`).pathname.slice(1)
}
