import type { Entry } from './collect.ts'

/** Checks named of one equation; the rest are counted. */
const NAMED = 2

const cell = (text: string): string => text.replaceAll('|', '\\|')

function placeText({ at }: Entry): string {
  return at === null ? 'the files of its part' : `\`${at.file}\` ${at.name}`
}

function sourceText({ at, sources, ofPart }: Entry): string {
  if (at === null) return 'see the part'
  if (sources.length === 0) return 'common practice or own derivation: see the part'
  return `${ofPart ? 'of the part: ' : ''}${sources.join('; ')}`
}

function checkText({ at, checks }: Entry): string {
  if (at === null) return 'by what it is part of'
  if (checks.length === 0) return 'none of its own yet'
  const more = checks.length - NAMED
  return `${checks.slice(0, NAMED).join('; ')}${more > 0 ? `; and ${more} more` : ''}`
}

/** The index as the file that is kept beside the model. */
export function indexText(entries: readonly Entry[]): string {
  const parts = [...new Set(entries.map(({ part }) => part))]
  const head = `# Equations

Equation → where in the code → source → checks. Written by \`npm run -s equations -- --write\` from the physics on paper
(\`src/model/README.md\`), the code and the evidence (\`tests/evidence/checks\`); a test compares it byte for byte.
`
  const tables = parts.map((part) => {
    const rows = entries
      .filter((entry) => entry.part === part)
      .map((entry) =>
        [`\`${entry.equation}\``, placeText(entry), sourceText(entry), checkText(entry)]
          .map(cell)
          .join(' | '),
      )
    return `## ${part}\n\n| equation | code | source | checks |\n| --- | --- | --- | --- |\n${rows.map((row) => `| ${row} |`).join('\n')}\n`
  })
  return [head, ...tables].join('\n')
}

/** The same for a terminal: four lines an equation, with the line in the file. */
export function printed(entry: Entry): string {
  const line = entry.at === null ? '' : `:${entry.at.line}`
  return `${entry.part}: ${entry.equation}\n  code    ${placeText(entry).replaceAll('`', '')}${line}\n  source  ${sourceText(entry)}\n  checks  ${checkText(entry)}`
}
