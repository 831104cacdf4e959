/** Which places of the source are written twice: runs of lines that are equal, to the letter or in their shape. */

/** Two places that share a run of lines. */
export interface Pair {
  readonly lines: number
  readonly kind: 'text' | 'shape'
  readonly places: readonly [string, string]
}

interface Line {
  readonly file: string
  readonly number: number
  readonly text: string
  readonly shape: string
  readonly works: boolean
}

const KEYWORDS = new Set(
  'async await break case catch class const continue default do else export extends finally for from function get if implements import in instanceof interface let new null of readonly return set static super switch this throw true false try type typeof undefined void while yield'.split(
    ' ',
  ),
)

/** Names, texts and numbers become one letter each, so that what is left is how the line is built. */
function shapeOf(text: string): string {
  return text
    .replace(/'(?:[^'\\]|\\.)*'|"(?:[^"\\]|\\.)*"|`[^`]*`?/g, 's')
    .replace(/[\p{L}_$#][\p{L}\p{N}_$]*/gu, (word) => (KEYWORDS.has(word) || word === 's' ? word : 'x'))
    .replace(/\b\d[\w.]*/g, '0')
    .replace(/\bx(?: x)+\b/g, 'x')
}

/** A constant, or an entry of a table whose value is written out or made by one call of written-out values. */
const SAYS =
  /^(?:export )?(?:(?:const|let|static|readonly|x) )*[xs](?:: x)?(?: =|:) (?:[0s]|-0|x\([0s, -]*(?:\),?)?),?$/

/** A line that does something: calls, decides, returns. Entries of tables, members of types and styles only say. */
const works = (shape: string): boolean =>
  !SAYS.test(shape) &&
  /\b(?:if|else|for|while|switch|case|return|yield|throw|await|new|try|catch)\b|=>|\w\(|\{[#:@/]|\{\w|[^<>=!]=[^=]|[-+*/?] /.test(
    shape,
  )

/** Lines that count: no comments, imports, blanks or lone punctuation; white space folded. */
export function linesOf(file: string, source: string): Line[] {
  const blanked = (whole: string) => whole.replace(/[^\n]/g, '')
  const bare = source
    .replace(/\/\*[^]*?\*\/|<!--[^]*?-->/g, blanked)
    .replace(/(^|\s)\/\/ .*$/gm, '$1')
    .replace(/^\s*(?:import|export)\s(?:type\s)?[^'"=(]*?from\s*'[^']*'/gm, blanked)
  return bare.split('\n').flatMap((raw, i) => {
    const text = raw.trim().replace(/\s+/g, ' ')
    if (!/\w/.test(text) || text.startsWith('import ')) return []
    const shape = shapeOf(text)
    return [{ file, number: i + 1, text, shape, works: works(shape) }]
  })
}

/** Pairs of at least `least` lines in a row with the same text, or of the same shape where `working` of them do something. */
export function pairsIn(files: readonly (readonly Line[])[], least: number, working: number): Pair[] {
  const text = runs(files, least, ({ text }) => text, 0).map((run) => ({ ...run, kind: 'text' as const }))
  const known = new Set(text.map(({ places }) => places.join()))
  const shape = runs(files, least, ({ shape }) => shape, working)
    .map((run) => ({ ...run, kind: 'shape' as const }))
    .filter(({ places }) => !known.has(places.join()))
  return [...text, ...shape].toSorted((a, b) => b.lines - a.lines)
}

function runs(
  files: readonly (readonly Line[])[],
  least: number,
  of: (line: Line) => string,
  working: number,
): Omit<Pair, 'kind'>[] {
  const all = files.flat()
  const starts = new Map<string, number[]>()
  for (let at = 0; at + least <= all.length; at++) {
    if (all[at]!.file !== all[at + least - 1]!.file) continue
    const key = all
      .slice(at, at + least)
      .map(of)
      .join('\n')
    starts.set(key, [...(starts.get(key) ?? []), at])
  }
  const found: Omit<Pair, 'kind'>[] = []
  for (const places of starts.values())
    for (const [i, a] of places.entries())
      for (const b of places.slice(i + 1)) {
        const before = a > 0 && of(all[a - 1]!) === of(all[b - 1]!) && sameFiles(all, a, b, -1)
        if (before) continue
        let lines = least
        while (sameFiles(all, a, b, lines) && of(all[a + lines]!) === of(all[b + lines]!) && a + lines < b)
          lines++
        if (a + least > b) continue
        const doing = all.slice(a, a + lines).filter((line) => line.works).length
        if (doing < working) continue
        found.push({ lines, places: [placeOf(all, a, lines), placeOf(all, b, lines)] })
      }
  return found
}

const sameFiles = (all: readonly Line[], a: number, b: number, offset: number): boolean =>
  all[a + offset]?.file === all[a]!.file && all[b + offset]?.file === all[b]!.file

const placeOf = (all: readonly Line[], at: number, lines: number): string =>
  `${all[at]!.file}:${all[at]!.number}-${all[at + lines - 1]!.number}`
