/**
 * Writes `static/licences.txt`: the packages whose code ends up in the built app, each with its licence text.
 * Run by `npx tsx src/shell/list-licences.ts` after a change of dependencies; a test holds it to what the pages import.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const ROOT = fileURLToPath(new URL('../../', import.meta.url))
export const LICENCES_FILE = `${ROOT}static/licences.txt`

/** Rooms whose code a browser gets. */
const SHIPPED_ROOMS = ['src/model', 'src/live', 'src/ui', 'src/routes']
/** Imported by no line of ours, yet the frame the pages are in. */
const FRAME = ['@sveltejs/kit', 'svelte']
/** What the framework's browser part itself is made of; its other dependencies are the compiler's. */
const SHIPPED_BY: Readonly<Record<string, readonly string[]>> = {
  svelte: ['clsx', 'esm-env'],
  '@sveltejs/kit': ['devalue', 'esm-env'],
}

interface Manifest {
  readonly version: string
  readonly license?: string
  readonly dependencies?: Readonly<Record<string, string>>
}

const manifestOf = (folder: string) => JSON.parse(readFileSync(`${folder}/package.json`, 'utf8')) as Manifest

/** Names of the packages that the shipped rooms import. */
function importedPackages(): string[] {
  const known = Object.keys(manifestOf(ROOT).dependencies ?? {})
  const texts = SHIPPED_ROOMS.flatMap((room) =>
    readdirSync(ROOT + room, { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(ts|svelte)$/.test(file))
      .map((file) => readFileSync(`${ROOT}${room}/${file}`, 'utf8')),
  )
  const imports = (name: string) => new RegExp(`(from|import) ?\\(?'${name}['/]`)
  return known.filter((name) => texts.some((text) => imports(name).test(text)))
}

/** Every shipped package with what it needs in turn, by name. */
export function shippedPackages(): readonly string[] {
  const found = new Set<string>()
  const waiting = [...FRAME, ...importedPackages()]
  for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
    if (found.has(name)) continue
    found.add(name)
    const { dependencies = {} } = manifestOf(`${ROOT}node_modules/${name}`)
    waiting.push(...(SHIPPED_BY[name] ?? Object.keys(dependencies)))
  }
  return [...found].sort()
}

function licenceOf(name: string): string {
  const folder = `${ROOT}node_modules/${name}`
  const { version, license } = manifestOf(folder)
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry))
  const text = file ? readFileSync(`${folder}/${file}`, 'utf8').trim() : ''
  return `${name} ${version}: ${license ?? 'see its text'}\n\n${text || 'The package carries no licence text of its own.'}\n`
}

/** The text of the file. */
export function licencesText(): string {
  const rule = `\n${'-'.repeat(72)}\n\n`
  const intro =
    'Duskbank is under the MIT licence. Its built pages contain code of these packages, under their own licences:\n'
  return [intro, ...shippedPackages().map(licenceOf)].join(rule)
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(LICENCES_FILE, licencesText())
