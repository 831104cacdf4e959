import type { Unit } from '#model/basis/units'

/**
 * Units beyond the suffixes of `units/suffix.ts`, for what is bought or given by a unit of its own: volume flow (value
 * in m³/s) of a liquid or of air, the head of a pump or fan (value in Pa), what small vessels and pipes hold (value in
 * m³), the load of wind on an area (value in Pa), what a gauge or valve is set to (value in Pa), speed in a tube or duct (value in m/s), the bore a pipe must have (value in
 * m; given as the size it is sold in), the bore of a valve or fitting for it (value in m), the thermal resistance of insulation (value in
 * m²K/W), a pull on a fixing (value in N), heat as coolers are rated by it (value in W), the flow of a valve at 1 bar (value in
 * m³/s), a length as builders measure it (value in m), the outside of a soft tube (value in m), a dry coat
 * (value in m), a board or mat of insulation, sheet metal and a round duct as they are sold (values in m), the cross-section of a
 * wire (value in m²) and a short length to be kept on site (value in m).
 */
export const TRADE_UNITS = [
  'liquidFlow',
  'airFlow',
  'head',
  'fanPressure',
  'content',
  'load',
  'gauge',
  'flowSpeed',
  'pipeBore',
  'valveSize',
  'rValue',
  'force',
  'heat',
  'valveFlow',
  'span',
  'rough',
  'sectionModulus',
  'tubeOuter',
  'coatThickness',
  'board',
  'sheetMetal',
  'duct',
  'wire',
  'depth',
] as const
export type TradeUnit = (typeof TRADE_UNITS)[number]

/** A number in a text, unrounded, SI; whoever shows it rounds it and turns it into the reader's units. */
export interface Figure {
  readonly value: number
  readonly unit: Unit | TradeUnit
  /** Significant digits (temperatures have a fixed place and ignore it). */
  readonly digits: number
  /** Largest value such a quantity takes, SI: short lengths are shown in mm or inches. */
  readonly largest: number
}

/** A line of text with its numbers kept as numbers. */
export type Wording = readonly (string | Figure)[]

/** A text with or without numbers in it. */
export type Text = Wording | string

/** `figure(0.96, 'm3')`. Short lengths: `short(0.02)`. */
export function figure(value: number, unit: Figure['unit'], digits = 3): Figure {
  return { value, unit, digits, largest: Infinity }
}

/** A length under half a metre, shown in mm or inches; `length_m` in m. */
export function short(length_m: number, digits = 3): Figure {
  return { value: length_m, unit: 'm', digits, largest: 0.5 }
}

/** With a capital at its beginning. */
export function sentenceCase<T extends Text>(text: T): T
export function sentenceCase(text: Text): Text {
  if (typeof text === 'string') return text.slice(0, 1).toUpperCase() + text.slice(1)
  return text.map((part, i) => (i === 0 && typeof part === 'string' ? sentenceCase(part) : part))
}

/** Whole things. */
export function count(value: number): Figure {
  return { value, unit: 'count', digits: 6, largest: Infinity }
}

/** Template tag: words`Hold ${figure(0.96, 'm3')} of water`. Wordings and texts may be put in as they are. */
export function words(
  texts: TemplateStringsArray,
  ...values: readonly (Figure | Wording | string)[]
): Wording {
  const parts: (string | Figure)[] = []
  texts.forEach((text, i) => {
    if (text !== '') parts.push(text)
    const value = values[i]
    if (value === undefined) return
    if (Array.isArray(value)) parts.push(...(value as Wording))
    else parts.push(value as string | Figure)
  })
  return parts
}
