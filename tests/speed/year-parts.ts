import { execFileSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { FLAT_FILE } from '../../src/shell/make-flat.ts'
import type { Sampled } from './sampled-lines.ts'
import { plain } from './plain-ts-hooks.mjs'

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url))
const FLAT = fileURLToPath(new URL('../../src/model/building/year/flat/', import.meta.url))

/** What the parts of the flat year are about, by the file they are in. */
const SUBJECTS: Readonly<Record<string, string>> = {
  'room-part.ts': 'room',
  'window-part.ts': 'room',
  'pipes-part.ts': 'room',
  'plate-part.ts': 'plate',
  'face-part.ts': 'plate’s face (tangent)',
  'tangent-part.ts': 'plate’s face (tangent)',
  'film-part.ts': 'plate’s face (tangent)',
  'water-part.ts': 'plate',
  'loop-part.ts': 'loop and pump',
  'pump-part.ts': 'loop and pump',
  'share-part.ts': 'loop and pump',
  'delivery-part.ts': 'tank and delivery',
  'layers-part.ts': 'layers',
  'mass-part.ts': 'tank and delivery',
  'hours-part.ts': 'hours, steps and sums',
}
/** Functions and parts that are mostly an exponential. */
const EXPONENTIALS = new Set(['decay', 'meanStep'])
const EXPONENTIAL = 'exponentials'
const HANDED = 'numbers handed between functions'

/** Share of a year's time by part, as lines to be printed; sampled in a process of its own. */
export function yearParts(): Readonly<Record<'own' | 'shared', readonly string[]>> {
  const folder = mkdtempSync(join(tmpdir(), 'duskbank-parts-'))
  try {
    const found = join(folder, 'samples.json')
    execFileSync(process.execPath, ['--import', here('plain-ts.mjs'), here('year-sampled.ts'), found], {
      stdio: ['ignore', 'ignore', 'pipe'],
    })
    const { own, shared } = JSON.parse(readFileSync(found, 'utf8')) as Record<'own' | 'shared', Sampled>
    const subjects = subjectsByLine()
    return { own: [inParts(own, subjects)], shared: [inParts(shared, subjects)] }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

function inParts({ lines, outside }: Sampled, subjects: readonly string[]): string {
  const samples = new Map<string, number>()
  let all = outside
  for (const [file, name, line, count] of lines) {
    const flat = file.endsWith('/flat/hours.ts')
    const subject = EXPONENTIALS.has(name)
      ? EXPONENTIAL
      : flat
        ? subjects[line - 1]!
        : file.includes('/building/year/')
          ? 'the run around them'
          : 'other'
    samples.set(subject, (samples.get(subject) ?? 0) + count)
    all += count
  }
  if (outside > 0) samples.set('garbage and compiling', outside)
  const shares = [...samples]
    .toSorted(([, a], [, b]) => b - a)
    .map(([subject, count]) => `${subject} ${Math.round((100 * count) / all)} %`)
  return `profile by part, of the same parts in TypeScript (${all} samples by line in this run): ${shares.join(', ')}`
}

/**
 * The subject of each line of the made file as it runs: that of the innermost part around it, by the mark at its beginning. Lines
 * before its functions are those of `decay`, which V8 counts by their own numbers where it has put that function in another.
 */
function subjectsByLine(): string[] {
  const owners = subjectsOfParts()
  const text = plain(readFileSync(FLAT_FILE, 'utf8'))
  const open: string[] = []
  let outside = EXPONENTIAL
  return text.split('\n').map((line) => {
    if (/^(?:export )?function /.test(line)) outside = HANDED
    const mark = /\{ \/\/ (to )?(\w+)$/.exec(line)
    const before = open.at(-1) ?? outside
    const opens = line.split('{').length - 1
    const closes = line.split('}').length - 1
    for (let i = 0; i < closes; i++) open.pop()
    for (let i = 0; i < opens; i++) {
      const own = i === opens - 1 && mark !== null
      open.push(own ? (mark[1] === undefined ? owners.get(mark[2]!)! : HANDED) : (open.at(-1) ?? outside))
    }
    return mark === null ? before : open.at(-1)!
  })
}

function subjectsOfParts(): Map<string, string> {
  const parts = readdirSync(FLAT).filter((name) => name.endsWith('-part.ts'))
  return new Map(
    parts.flatMap((file) =>
      [...readFileSync(join(FLAT, file), 'utf8').matchAll(/^export function (\w+)/gm)].map(
        ([, name]) => [name!, EXPONENTIALS.has(name!) ? EXPONENTIAL : SUBJECTS[file]!] as const,
      ),
    ),
  )
}
