import { LOG_LABELS, logQuantity, type LogQuantity } from './columns.ts'
import { stop } from '#model/basis/words'
import type { FoundTable } from '#model/outdoors/intake'

/** Which column a quantity is read from, by number; null: from none. Quantities that are left out go by their headers. */
export type LogColumns = Partial<Readonly<Record<LogQuantity, number | null>>>

/** Column numbers by quantity: the user's, else the first header whose words fit. */
export function takenColumns(found: FoundTable, file: string, columns: LogColumns): Map<LogQuantity, number> {
  const given = Object.entries(columns) as [LogQuantity, number | null][]
  const chosen = given.filter((entry): entry is [LogQuantity, number] => entry[1] !== null)
  checkChosen(chosen, found, file)
  const taken = new Map<LogQuantity, number>(chosen)
  const left = given.filter(([, index]) => index === null).map(([quantity]) => quantity)
  found.headers.forEach((header, index) => {
    const quantity = logQuantity(header)
    if (
      quantity !== null &&
      !left.includes(quantity) &&
      !taken.has(quantity) &&
      ![...taken.values()].includes(index)
    ) {
      taken.set(quantity, index)
    }
  })
  for (const needed of ['panelIn', 'panelOut'] as const) {
    if (taken.has(needed)) continue
    throw stop(
      'as-built-column-missing',
      `No column of the logger file is called anything like “${LOG_LABELS[needed]}” (it has ${found.headers.join(', ')}).`,
      'Choose which column it is, or rename it.',
      { file, line: found.shape.headerLine ?? 1 },
    )
  }
  return taken
}

/** Chosen columns must be there, and each serve one quantity. */
function checkChosen(
  chosen: readonly (readonly [LogQuantity, number])[],
  found: FoundTable,
  file: string,
): void {
  chosen.forEach(([quantity, index], i) => {
    const label = LOG_LABELS[quantity]
    if (found.headers[index] === undefined)
      throw stop(
        'as-built-no-such-column',
        `Column ${index + 1} was chosen for “${label}”, and the file has ${found.headers.length}.`,
        'Choose one of the columns of this file.',
        { file },
      )
    const other = chosen.slice(0, i).find(([, taken]) => taken === index)
    if (other !== undefined)
      throw stop(
        'as-built-column-twice',
        `The column “${found.headers[index]}” was chosen for “${LOG_LABELS[other[0]]}” and for “${label}”.`,
        'Choose a column of its own for each.',
        { file, column: found.headers[index] },
      )
  })
}
