/**
 * Unit suffixes: how a number says its unit in its own name (`airTemp_C`, `slope_Wm2K`), in scenario fields and in
 * files. Everything inside is SI (temperatures in °C, energy in J); `symbol` is the unit as people write it.
 */
export const UNIT_SYMBOLS = {
  // plain numbers
  frac: '',
  count: '',
  each: 'each',
  // temperature
  C: '°C',
  K: 'K',
  Kh: 'K·h',
  // geometry
  deg: '°',
  m: 'm',
  m2: 'm²',
  m3: 'm³',
  // time
  h: 'h',
  s: 's',
  months: 'months',
  y: 'y',
  '1h': '1/h',
  '1hms': '1/h per m/s',
  '1y': '1/y',
  // heat
  J: 'J',
  W: 'W',
  Wm2: 'W/m²',
  WK: 'W/K',
  WmK: 'W/m·K',
  Wm2K: 'W/m²·K',
  m2KW: 'm²·K/W',
  JK: 'J/K',
  Jm2K: 'J/m²·K',
  JkgK: 'J/kg·K',
  // matter and motion
  kg: 'kg',
  kgm2: 'kg/m²',
  kgm3: 'kg/m³',
  kgs: 'kg/s',
  kgsm2: 'kg/s·m²',
  kgh: 'kg/h',
  ms: 'm/s',
  Pa: 'Pa',
  // prices, in the user's own currency
  perm: 'per m',
  perm2: 'per m²',
  perm3: 'per m³',
  perkWh: 'per kWh',
  perkW: 'per kW',
  perm3h: 'per m³/h',
} as const

/** A unit suffix. */
export type Unit = keyof typeof UNIT_SYMBOLS

/** True when the text is one of the suffixes of the table. */
export function isUnit(text: string): text is Unit {
  return Object.hasOwn(UNIT_SYMBOLS, text)
}
