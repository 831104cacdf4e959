import type { Entry } from './collect.ts'

/** Checks named of one equation; the rest are counted. */
const NAMED = 2

const cell = (text: string): string => text.replaceAll('|', '\\|')

function checkText({ checks, wider, tests }: Entry): string {
  if (checks.length > 0) return someOf(checks)
  const parts = [
    ...(tests.length > 0 ? [`tests: ${someOf(tests.map((path) => `\`${path}\``))}`] : []),
    ...(wider.length > 0 ? [`as part of: ${someOf(wider)}`] : []),
  ]
  return `none of its own; ${parts.join('; ')}`
}

function someOf(all: readonly string[]): string {
  const more = all.length - NAMED
  return `${all.slice(0, NAMED).join('; ')}${more > 0 ? `; and ${more} more` : ''}`
}

/** Each file once, with the names in it. */
function placeText({ at }: Entry): string {
  const files = [...new Set(at.map(({ file }) => file))]
  return files
    .map((file) => {
      const names = at.filter((one) => one.file === file).map(({ name }) => name)
      return `\`${file}\` ${names.join(', ')}`
    })
    .join('; ')
}

/** The index as the file that is kept beside the model: without line numbers, which move with every edit. */
export function indexText(entries: readonly Entry[]): string {
  const parts = [...new Set(entries.map(({ part }) => part))]
  const head = `# Equations

Equation → where in the code → source → checks; \`npm run -s equations -- WORDS\` prints the lines too. Written by
\`npm run -s equations -- --write\` from the physics on paper (\`src/model/README.md\`), the code, \`tests/equations/places.ts\`
and the evidence (\`tests/evidence/checks\`); a test compares it byte for byte.
`
  const tables = parts.map((part) => {
    const rows = entries
      .filter((entry) => entry.part === part)
      .map((entry) =>
        [`\`${entry.equation}\``, placeText(entry), entry.source, checkText(entry)].map(cell).join(' | '),
      )
    return `## ${part}\n\n| equation | code | source | checks |\n| --- | --- | --- | --- |\n${rows.map((row) => `| ${row} |`).join('\n')}\n`
  })
  return [head, ...tables].join('\n')
}

/** The same for a terminal, each place with its line. */
export function printed(entry: Entry): string {
  const places = entry.at.map(({ file, name, line }) => `src/model/${file}:${line} ${name}`)
  return `${entry.part}: ${entry.equation}\n  code    ${places.join('\n          ')}\n  source  ${entry.source}\n  checks  ${checkText(entry)}`
}
