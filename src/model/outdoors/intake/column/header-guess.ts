import { HEADER_WORDS, plainWords } from './header-words.ts'
import type { Quantity, Unit } from './quantity.ts'
import { unitFromText } from './unit.ts'

/** What a header says: the quantities its words fit, the likeliest first, and the unit if it names one. */
export interface HeaderReading {
  readonly quantities: readonly Quantity[]
  readonly unit: Unit | null
  /** Its words name something else than the quantity they look like (a gust, a soil, a battery): not to be guessed from values. */
  readonly vetoed: boolean
}

/** Endings of names such as `airTemp_C`: the last word, when it is a unit by itself. */
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
export function readHeader(header: string, unitText: string, endingIsUnit = true): HeaderReading {
  const ending = /_([A-Za-z0-9]+)$/.exec(header)?.[1] ?? ''
  const named = endingIsUnit && UNIT_ENDINGS.has(ending)
  const bracket = /[([{]([^)\]}]*)[)\]}]\s*$/.exec(header)?.[1] ?? /,\s*([^,]+)$/.exec(header)?.[1] ?? ''
  const unit =
    unitFromText(unitText.replace(/^[([{]|[)\]}]$/g, '')) ??
    unitFromText(bracket) ??
    (named ? unitFromText(ending) : null)
  const text = plainWords(named ? header.slice(0, -ending.length - 1) : header)
  if (text === '') return { quantities: [], unit, vetoed: false }
  const touched = HEADER_WORDS.filter(({ words }) => words.test(text))
  const fits = touched.filter(({ not }) => !(not?.test(text) ?? false))
  return {
    quantities: fits.map(({ quantity }) => quantity),
    unit,
    vetoed: fits[0]?.quantity === 'ignore' || (fits.length === 0 && touched.length > 0),
  }
}

/**
 * All headers of a table. `_F` ends a name as a unit only where temperatures alone carry it: in a table where wind and
 * pressure end so too, it means "filled".
 */
export function readHeaders(
  headers: readonly { readonly header: string; readonly unitText: string }[],
): HeaderReading[] {
  const filled = headers.some(({ header }) => /^(ws|wind|pa|p|sw|lw|vpd|rh|co2|g|h|le)\w*_F$/i.test(header))
  return headers.map(({ header, unitText }) =>
    readHeader(header, unitText, !(filled && header.endsWith('_F'))),
  )
}
