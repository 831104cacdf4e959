import { plainWords } from '#model/outdoors/intake'

/** What a logger file can say of a built panel. */
export const LOG_QUANTITIES = [
  'panelIn',
  'panelOut',
  'flow',
  'pumpRun',
  'air',
  'plate',
  'store',
  'room',
] as const
export type LogQuantity = (typeof LOG_QUANTITIES)[number]

/** Names for people. */
export const LOG_LABELS: Readonly<Record<LogQuantity, string>> = {
  panelIn: 'Fluid into the panel',
  panelOut: 'Fluid out of the panel',
  flow: 'Flow',
  pumpRun: 'Pump running',
  air: 'Air beside the panel',
  plate: 'Plate of the panel',
  store: 'Store',
  room: 'Room',
}

const PANEL = String.raw`(panel|collector|radiator|roof|kollektor|plate)`
const IN = String.raw`(in|inlet|inflow|entering|supply|vorlauf)`
const OUT = String.raw`(out|outlet|outflow|leaving|return|rucklauf|ruecklauf)`
const TAIL = String.raw`( temp(erature)?)?( c| k| f)?$`

/** Words of each quantity, in the order they are tried; blanks between words, lower case, accents off. */
const WORDS: readonly (readonly [LogQuantity, RegExp])[] = [
  ['pumpRun', /(^| )(pump|pumpe|running|run)( |$)/],
  ['flow', /(^| )(flow|flow rate|flowrate|durchfluss|debit|caudal|lmin|lpm)( |$)/],
  ['room', /(^| )(room|indoor|inside|raum|shed|interior)( |$)/],
  ['store', /(^| )(store|tank|buffer|cistern|speicher|storage)( |$)/],
  ['panelIn', new RegExp(`(^| )${PANEL}( .*)? ${IN}( |$)|(^| )(to|into) ${PANEL}( |$)|^(t )?${IN}${TAIL}`)],
  ['panelOut', new RegExp(`(^| )${PANEL}( .*)? ${OUT}( |$)|(^| )from ${PANEL}( |$)|^(t )?${OUT}${TAIL}`)],
  ['plate', /(^| )(plate|absorber|panel surface)( |$)/],
  ['air', /(^| )(air|ambient|outdoor|outside|aussen|exterior|tair|tamb)( |$)/],
]

/** The quantity a logger header means, or null. */
export function logQuantity(header: string): LogQuantity | null {
  const text = plainWords(header)
  return WORDS.find(([, words]) => words.test(text))?.[0] ?? null
}

/** Litres a second in one unit of flow, by what the header or unit line says. */
const FLOW_UNITS: readonly (readonly [RegExp, number])[] = [
  [/m(illi)?l(it(re|er)s?)? ?(\/|per) ?min|mlpm|(cc|cm(3|³|\^3)) ?(\/|per) ?min/i, 1e-3 / 60],
  [/m(illi)?l(it(re|er)s?)? ?(\/|per) ?h|(cc|cm(3|³|\^3)) ?(\/|per) ?h/i, 1e-3 / 3600],
  [/m(illi)?l(it(re|er)s?)? ?(\/|per) ?s|(cc|cm(3|³|\^3)) ?(\/|per) ?s/i, 1e-3],
  [/dm(3|³|\^3) ?(\/|per) ?h/i, 1 / 3600],
  [/imp(erial|\.)? ?gal(lons?)? ?(\/|per) ?min|igpm/i, 4.54609 / 60],
  [/l(it(re|er)s?)? ?(\/|per) ?min|lmin|lpm/i, 1 / 60],
  [/l(it(re|er)s?)? ?(\/|per) ?h|lph/i, 1 / 3600],
  [/m(3|³|\^3) ?\/ ?h|m3h/i, 1000 / 3600],
  [/gpm|gal(lons?)? ?(\/|per) ?min/i, 3.785411784 / 60],
  [/l(it(re|er)s?)? ?\/ ?s/i, 1],
]

/**
 * Kilograms a second in one unit of a flow column, or null when no unit is named.
 * @param density_kgm3  of the fluid
 */
export function flowUnit_kgs(header: string, unitText: string, density_kgm3: number): number | null {
  const text = `${header} ${unitText}`
  if (/kg ?\/ ?s|_kgs$|kgs/i.test(text)) return 1
  const unit = FLOW_UNITS.find(([words]) => words.test(text))
  return unit === undefined ? null : (unit[1] * density_kgm3) / 1000
}

/** Units of flow a person can choose where the header names none. */
export const FLOW_UNIT_NAMES = ['mL/min', 'L/min', 'L/h', 'L/s', 'm3/h', 'gpm', 'kg/s'] as const
export type FlowUnitName = (typeof FLOW_UNIT_NAMES)[number]
