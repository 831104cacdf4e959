import {
  QUANTITIES,
  givesTime,
  type Quantity,
  type Unit,
  type ColumnGuess,
  type ColumnMapping,
  type Stamp,
  previewRows,
  type PreviewColumn,
  type TableMapping,
} from '#model/outdoors/intake'

/** Units of a mapping as people write them. */
const UNIT_WORDS: Partial<Record<Unit, string>> = {
  C: '°C',
  F: '°F',
  frac: 'share, 0 to 1',
  'W/m2': 'W/m²',
  'Wh/m2': 'Wh/m² a row',
  'kJ/m2': 'kJ/m² a row',
  'J/cm2': 'J/cm² a row',
  'MJ/m2': 'MJ/m² a row',
  kn: 'knots',
  deg: '°',
  stamp: 'as written',
  count: 'number',
  '': 'none',
}

export function unitWords(unit: Unit): string {
  return UNIT_WORDS[unit] ?? unit
}

const BASIS_WORDS: Readonly<Record<ColumnMapping['basis'], string>> = {
  layout: 'a data set we know',
  header: 'by its header',
  physics: 'by its values',
  user: 'you said so',
  none: 'nothing fits',
}

/** How sure the guess is and what it rests on. */
export function sureness({ basis, confidence, quantity }: ColumnMapping): string {
  if (basis === 'user') return BASIS_WORDS.user
  if (quantity === 'ignore') return basis === 'none' ? BASIS_WORDS.none : 'left out'
  const word = confidence >= 0.9 ? 'sure' : confidence >= 0.6 ? 'likely' : 'a guess'
  return `${word} (${Math.round(confidence * 100)} %), ${BASIS_WORDS[basis]}`
}

/** What a select of quantities offers: first what the column could well be, then everything. */
export function offered(column: ColumnMapping): {
  readonly likely: readonly ColumnGuess[]
  readonly all: readonly Quantity[]
} {
  const likely = column.alternatives.filter(({ quantity }) => quantity !== column.quantity)
  return { likely, all: Object.keys(QUANTITIES) as Quantity[] }
}

/** The unit a column takes when its quantity is changed: the one guessed for it, else the usual one. */
export function unitFor(column: ColumnMapping, quantity: Quantity): Unit {
  return (
    column.alternatives.find((guess) => guess.quantity === quantity)?.unit ?? QUANTITIES[quantity].units[0]
  )
}

/** Unit the values are read into, by quantity. */
export function insideUnit(quantity: Quantity): string {
  if (quantity === 'airTemp' || quantity === 'dewPoint') return '°C'
  if (quantity === 'relativeHumidity') return '%'
  if (quantity === 'pressure') return 'Pa'
  if (quantity === 'windSpeed') return 'm/s'
  if (quantity === 'opaqueCloud' || quantity === 'totalCloud') return 'of the sky'
  return QUANTITIES[quantity].units[0] === 'W/m2' ? 'W/m²' : '°'
}

/** The first values as they are read, in words; empty for columns of time and unused ones. */
export function readWords({ column, inside }: PreviewColumn): string {
  if (inside === null) return givesTime(column.quantity) ? 'gives the time' : ''
  const values = inside.map((value) =>
    Number.isNaN(value) ? 'missing' : String(Number(value.toPrecision(5))),
  )
  return `${values.join(' · ')} ${insideUnit(column.quantity)}`
}

/** Rows shown of the beginning of a file: a night and a day of an hourly one, so that sunlight is not all zeros. */
const SHOWN_ROWS = [0, 9, 13]

/** The rows of the mapping table: one a column, with a few of its first values. */
export function columnsOf(head: string, mapping: TableMapping): readonly PreviewColumn[] {
  const few = <T>(values: readonly T[]): T[] => values.filter((_, row) => SHOWN_ROWS.includes(row))
  return previewRows(head, mapping, SHOWN_ROWS.at(-1)! + 1).map(({ column, printed, inside }) => ({
    column,
    printed: few(printed),
    inside: inside && few(inside),
  }))
}

export const STAMP_WORDS: Readonly<Record<Stamp, string>> = {
  ending: 'the end of its period',
  beginning: 'the beginning of its period',
  centred: 'the middle of its period',
  instant: 'a moment',
}
