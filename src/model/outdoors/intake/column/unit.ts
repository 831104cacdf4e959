import type { Quantity, Unit } from './quantity.ts'

/** inside = value × factor + offset, in °C, %, Pa, kg/kg, m/s, deg, W/m² or a fraction. */
export interface Conversion {
  readonly factor: number
  readonly offset: number
}

const same: Conversion = { factor: 1, offset: 0 }
const times = (factor: number): Conversion => ({ factor, offset: 0 })

/**
 * From a file's unit to ours. Energies per row become the mean power over the row's step.
 * Exact by definition of the units; 1 mmHg = 133.322 Pa, 1 inHg = 3386.39 Pa, 1 langley = 41 840 J/m² (NIST SP 811, appendix B).
 * @param step_h length of the period a row covers, h
 */
export function conversion(quantity: Quantity, unit: Unit, step_h = 1): Conversion {
  if (quantity === 'relativeHumidity') return unit === 'frac' ? times(100) : same
  if (quantity === 'opaqueCloud' || quantity === 'totalCloud') return cloudConversion(unit)
  return SCALES[unit] ?? energyConversion(unit, step_h) ?? same
}

const SCALES: Partial<Record<Unit, Conversion>> = {
  K: { factor: 1, offset: -273.15 },
  F: { factor: 5 / 9, offset: -160 / 9 },
  hPa: times(100),
  kPa: times(1000),
  mmHg: times(133.322),
  inHg: times(3386.39),
  'km/h': times(1 / 3.6),
  mph: times(0.44704),
  kn: times(1852 / 3600),
  'g/kg': times(0.001),
  'Ly/day': times(41_840 / 86_400),
  'cal/cm2min': times(41_840 / 60),
}

function cloudConversion(unit: Unit): Conversion {
  if (unit === 'tenths') return times(0.1)
  if (unit === 'oktas') return times(0.125)
  return unit === '%' ? times(0.01) : same
}

function energyConversion(unit: Unit, step_h: number): Conversion | undefined {
  if (unit === 'Wh/m2') return times(1 / step_h)
  if (unit === 'kJ/m2') return times(1 / (3.6 * step_h))
  if (unit === 'J/cm2') return times(10 / (3.6 * step_h))
  if (unit === 'J/m2') return times(1 / (3600 * step_h))
  if (unit === 'Ly') return times(41_840 / (3600 * step_h))
  return unit === 'MJ/m2' ? times(1 / (0.0036 * step_h)) : undefined
}

/** How a unit is written in headers, lower case without blanks, → the unit we know. */
const SPELLINGS: Readonly<Record<string, Unit>> = {
  c: 'C', '°c': 'C', 'ºc': 'C', degc: 'C', celsius: 'C', 'deg.c': 'C', '℃': 'C', degreecelsius: 'C', degreescelsius: 'C',
  k: 'K', kelvin: 'K', '°k': 'K', degk: 'K', '°c.': 'C', '도': 'C',
  f: 'F', '°f': 'F', degf: 'F', fahrenheit: 'F',
  '%': '%', percent: '%', pct: '%', frac: 'frac', fraction: 'frac', '0-1': 'frac', '0..1': 'frac', '-': 'frac', '1': 'frac',
  pa: 'Pa', hpa: 'hPa', mbar: 'hPa', mb: 'hPa', mbars: 'hPa', millibar: 'hPa', millibars: 'hPa', hectopascal: 'hPa', hectopascals: 'hPa', 'inchesofmercury': 'inHg', kpa: 'kPa', mmhg: 'mmHg', inhg: 'inHg',
  'm/s': 'm/s', ms: 'm/s', 'ms-1': 'm/s', 'm.s-1': 'm/s', mps: 'm/s', 'm/sec': 'm/s', 'meters/second': 'm/s', 'metres/second': 'm/s', 'meter/s': 'm/s', 'metre/s': 'm/s', 'ms**-1': 'm/s', 'ms⁻¹': 'm/s',
  'km/h': 'km/h', kmh: 'km/h', kph: 'km/h', mph: 'mph', mi_h: 'mph', kn: 'kn', kt: 'kn', kts: 'kn', knots: 'kn',
  'w/m2': 'W/m2', 'w/m^2': 'W/m2', 'w/m²': 'W/m2', wm2: 'W/m2', 'wm-2': 'W/m2', 'w.m-2': 'W/m2', 'wm⁻²': 'W/m2',
  'wh/m2': 'Wh/m2', 'wh/m^2': 'Wh/m2', 'wh/m²': 'Wh/m2', whm2: 'Wh/m2',
  'kj/m2': 'kJ/m2', 'kj/m^2': 'kJ/m2', 'kj/m²': 'kJ/m2', 'j/cm2': 'J/cm2', 'j/cm^2': 'J/cm2', 'j/cm²': 'J/cm2',
  'mj/m2': 'MJ/m2', 'mj/m^2': 'MJ/m2', 'mj/m²': 'MJ/m2', 'mj/hr': 'MJ/m2', 'mj/m2/h': 'MJ/m2', 'mjm-2': 'MJ/m2', 'kjm-2': 'kJ/m2',
  'j/m2': 'J/m2', 'j/m^2': 'J/m2', 'j/m²': 'J/m2', 'jm-2': 'J/m2', 'jm**-2': 'J/m2', 'wm**-2': 'W/m2', 'w/㎡': 'W/m2', 'mj/㎡': 'MJ/m2', 'watts/m^2': 'W/m2', 'watts/m2': 'W/m2',
  'ly/day': 'Ly/day', ly: 'Ly', langley: 'Ly', langleys: 'Ly', 'cal/cm2': 'Ly',
  'kg/kg': 'kg/kg', 'kgkg-1': 'kg/kg', 'kgkg**-1': 'kg/kg', 'g/kg': 'g/kg', 'gkg-1': 'g/kg',
  deg: 'deg', '°': 'deg', degree: 'deg', degrees: 'deg', tenths: 'tenths', tenth: 'tenths', '1/10': 'tenths', '10분위': 'tenths', '10分比': 'tenths', '10分量': 'tenths',
  octants: 'oktas', oktas: 'oktas', okta: 'oktas', octas: 'oktas', '1/8': 'oktas', eighths: 'oktas', s: 's', sec: 's',
} // prettier-ignore

/** The unit a header's bracket or unit line means, or null when it is not one we know. */
export function unitFromText(text: string): Unit | null {
  const key = text.toLowerCase().replace(/\s+/g, '')
  return Object.hasOwn(SPELLINGS, key) ? SPELLINGS[key]! : null
}
