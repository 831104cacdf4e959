import { HEADER_WORDS, plainWords } from './header-words.ts'
import type { Quantity, Unit } from './quantity.ts'
import { unitFromText } from './unit.ts'

/** What a header says: the quantities its words fit, the likeliest first, and the unit if it names one. */
export interface HeaderReading {
  readonly quantities: readonly Quantity[]
  readonly unit: Unit | null
}

/** Endings of names such as `airTemp_C`: the last word, when it is a unit that stands on its own. */
const UNIT_ENDINGS = new Set([
  'C',
  'K',
  'F',
  'Pa',
  'hPa',
  'kPa',
  'mbar',
  'ms',
  'kmh',
  'mph',
  'kn',
  'Wm2',
  'pct',
  'percent',
  'frac',
  'deg',
  'degC',
  'degF',
])

/** Reads a header and the unit line under it. */
export function readHeader(header: string, unitText: string): HeaderReading {
  const ending = /_([A-Za-z0-9]+)$/.exec(header)?.[1] ?? ''
  const named = UNIT_ENDINGS.has(ending)
  const bracket = /[([{]([^)\]}]*)[)\]}]\s*$/.exec(header)?.[1] ?? /,\s*([^,]+)$/.exec(header)?.[1] ?? ''
  const unit =
    unitFromText(unitText.replace(/^[([{]|[)\]}]$/g, '')) ??
    unitFromText(bracket) ??
    (named ? unitFromText(ending) : null)
  const text = plainWords(named ? header.slice(0, -ending.length - 1) : header)
  if (text === '') return { quantities: [], unit }
  const fits = HEADER_WORDS.filter(({ words, not }) => words.test(text) && !(not?.test(text) ?? false))
  return { quantities: fits.map(({ quantity }) => quantity), unit }
}
