/** One line of CSV (RFC 4180): cells with a comma, quote or line break are in quotes. */
export const csvLine = (cells: readonly (string | number)[]): string =>
  cells
    .map((cell) => String(cell))
    .map((cell) => (/[",\n\r]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell))
    .join(',')

/** Cells of CSV text, quotes undone (RFC 4180); a quote left open ends with the text. */
export function csvCells(text: string): string[][] {
  const lines: string[][] = []
  let cells: string[] = []
  let cell = ''
  let quoted = false
  const endLine = () => {
    lines.push([...cells, cell])
    cells = []
    cell = ''
  }
  for (let i = 0; i < text.length; i++) {
    const c = text[i]!
    if (quoted) {
      if (c !== '"') cell += c
      else if (text[i + 1] === '"') {
        cell += '"'
        i++
      } else quoted = false
    } else if (c === '"') quoted = true
    else if (c === ',') {
      cells.push(cell)
      cell = ''
    } else if (c === '\n') endLine()
    else if (c !== '\r') cell += c
  }
  if (cell !== '' || cells.length > 0) endLine()
  return lines
}
