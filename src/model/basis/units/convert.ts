import { UNIT_SYMBOLS, type Unit } from './suffix.ts'

/** Unit systems for display. Inside the model everything is SI. */
export const UNIT_SYSTEMS = ['si', 'us'] as const
export type UnitSystem = (typeof UNIT_SYSTEMS)[number]

/** How a quantity is shown: shown = value × factor + offset. */
export interface DisplayUnit {
  readonly symbol: string
  readonly factor: number
  readonly offset: number
}

// Exact by definition: international yard and pound agreement 1959; NIST SP 811, appendix B.
const FOOT_M = 0.3048
const INCH_M = 0.0254
const FOOT2_M2 = FOOT_M * FOOT_M
const GALLON_M3 = 231 * INCH_M ** 3
const POUND_KG = 0.45359237
const MILE_HOUR_MS = 5280 * (FOOT_M / 3600)
/** British thermal unit, International Table, J. */
const BTU_J = 1055.05585262
const BTU_HOUR_W = BTU_J / 3600
const FAHRENHEIT_K = 5 / 9
/** Foot of water at 4 °C (conventional), Pa. NIST SP 811, appendix B.8. */
const FOOT_WATER_PA = 2989.067

/** SI display where the everyday unit is not the suffix itself. */
const METRIC: Partial<Record<Unit, DisplayUnit>> = {
  J: { symbol: 'kWh', factor: 1 / 3.6e6, offset: 0 },
}

function times(symbol: string, factor: number): DisplayUnit {
  return { symbol, factor, offset: 0 }
}

/** US customary display; a suffix that is not here is shown as in SI. */
const CUSTOMARY: Partial<Record<Unit, DisplayUnit>> = {
  J: METRIC.J!,
  C: { symbol: '°F', factor: 1 / FAHRENHEIT_K, offset: 32 },
  K: times('°F', 1 / FAHRENHEIT_K),
  Kh: times('°F·h', 1 / FAHRENHEIT_K),
  m: times('ft', 1 / FOOT_M),
  m2: times('ft²', 1 / FOOT2_M2),
  m3: times('gal', 1 / GALLON_M3),
  '1hms': times('1/h per mph', MILE_HOUR_MS),
  Wm2: times('Btu/h·ft²', FOOT2_M2 / BTU_HOUR_W),
  WK: times('Btu/h·°F', FAHRENHEIT_K / BTU_HOUR_W),
  WmK: times('Btu/h·ft·°F', (FOOT_M * FAHRENHEIT_K) / BTU_HOUR_W),
  Wm2K: times('Btu/h·ft²·°F', (FOOT2_M2 * FAHRENHEIT_K) / BTU_HOUR_W),
  m2KW: times('h·ft²·°F/Btu', BTU_HOUR_W / (FOOT2_M2 * FAHRENHEIT_K)),
  JK: times('Btu/°F', FAHRENHEIT_K / BTU_J),
  Jm2K: times('Btu/ft²·°F', (FOOT2_M2 * FAHRENHEIT_K) / BTU_J),
  JkgK: times('Btu/lb·°F', (POUND_KG * FAHRENHEIT_K) / BTU_J),
  kg: times('lb', 1 / POUND_KG),
  kgm2: times('lb/ft²', FOOT2_M2 / POUND_KG),
  kgm3: times('lb/ft³', FOOT_M ** 3 / POUND_KG),
  kgs: times('lb/min', 60 / POUND_KG),
  kgsm2: times('lb/min·ft²', (60 * FOOT2_M2) / POUND_KG),
  kgh: times('lb/h', 1 / POUND_KG),
  ms: times('mph', 1 / MILE_HOUR_MS),
  Pa: times('ft water', 1 / FOOT_WATER_PA),
  perm: times('per ft', FOOT_M),
  perm2: times('per ft²', FOOT2_M2),
  perm3: times('per gal', GALLON_M3),
  perm3h: times('per cfm', FOOT_M ** 3 * 60),
}

/** Lengths that never exceed this are shown in mm or inches. */
const SMALL_LENGTH_M = 0.5

/**
 * The unit a quantity is shown in.
 * @param largest  the largest value it can take (in SI); lengths up to 0.5 m are shown in mm or in
 */
export function displayUnit(unit: Unit, system: UnitSystem, largest = Infinity): DisplayUnit {
  if (unit === 'm' && largest <= SMALL_LENGTH_M) {
    return system === 'us' ? times('in', 1 / INCH_M) : times('mm', 1000)
  }
  const table = system === 'us' ? CUSTOMARY : METRIC
  return table[unit] ?? times(UNIT_SYMBOLS[unit], 1)
}

/** Heat as coolers are rated by it: W, or Btu/h; electricity stays in W. */
export function heatUnit(system: UnitSystem): DisplayUnit {
  return system === 'us' ? times('Btu/h', 1 / BTU_HOUR_W) : displayUnit('W', system)
}

/** Shown number from an SI value. */
export function toDisplay(value: number, display: DisplayUnit): number {
  return value * display.factor + display.offset
}

/** SI value from a shown number: the inverse of `toDisplay`. */
export function fromDisplay(shown: number, display: DisplayUnit): number {
  return (shown - display.offset) / display.factor
}

/** 0 °C in K, exact by definition of the Celsius scale. */
export const KELVIN_OFFSET = 273.15
