import Papa from 'papaparse/papaparse.js'
import type { Separator } from '../mapping.ts'

const COMMENT = /^ *(#|!|%(?![\t,;|])|\/\/)/

/** True for a line that is a remark. */
export function isComment(line: string): boolean {
  return COMMENT.test(line)
}

/** Cuts text of whole lines into trimmed fields; one array a line, `['']` for a blank one. */
export function splitLines(text: string, separator: Separator): string[][] {
  if (separator === 'blanks') return text.split('\n').map(splitBlanks)
  const rows = Papa.parse(text, { delimiter: separator, newline: '\n', skipEmptyLines: false }).data
  for (const row of rows) {
    for (let i = 0; i < row.length; i += 1) row[i] = row[i]!.trim()
  }
  return rows
}

function splitBlanks(line: string): string[] {
  return line.trim().split(/\s+/)
}

/** One line as fields. */
export function splitLine(line: string, separator: Separator): string[] {
  return splitLines(line, separator)[0] ?? ['']
}

/** Line ends of any system as `\n`, byte-order mark taken off. */
export function plainLines(text: string): string {
  const bare = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text
  return bare.includes('\r') ? bare.replace(/\r\n?/g, '\n') : bare
}
