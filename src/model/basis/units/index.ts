export { KELVIN_OFFSET, type UnitSystem, displayUnit, fromDisplay, heatUnit, toDisplay } from './convert.ts'
export { formatFixed, formatNumber, formatQuantity } from './format.ts'
export { UNIT_SYMBOLS, type Unit, isUnit } from './suffix.ts'
