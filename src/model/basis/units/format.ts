import { displayUnit, toDisplay, type UnitSystem } from './convert.ts'
import type { Unit } from './suffix.ts'

/**
 * A number as text with so many significant digits, a point for the decimals, no exponent between 1e-6 and 1e9,
 * and a true minus sign. No locale. Not finite: an en dash.
 */
export function formatNumber(value: number, digits = 3): string {
  if (!Number.isFinite(value)) return '–'
  const rounded = Number(value.toPrecision(digits))
  if (rounded === 0) return '0'
  const size = Math.abs(rounded)
  if (size >= 1e9 || size < 1e-6) return rounded.toExponential(digits - 1).replace('-', '−')
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(size)))
  return withTrueMinus(trimZeros(rounded.toFixed(Math.min(decimals, 12))))
}

/** A number with so many decimals, zeros kept, true minus sign. Not finite: an en dash. */
export function formatFixed(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return '–'
  const text = value.toFixed(decimals)
  return withTrueMinus(Number(text) === 0 ? text.replace('-', '') : text)
}

/** Temperatures have a fixed place (0.1), everything else significant digits. */
const TEMPERATURE_DECIMALS = 1

/** A quantity as text with its unit: temperatures to 0.1, everything else to `digits` significant digits. */
export function formatQuantity(
  value: number,
  unit: Unit,
  system: UnitSystem,
  { digits = 3, largest = Infinity }: { digits?: number; largest?: number } = {},
): string {
  const display = displayUnit(unit, system, largest)
  const shown = toDisplay(value, display)
  const text =
    unit === 'C' || unit === 'K' ? formatFixed(shown, TEMPERATURE_DECIMALS) : formatNumber(shown, digits)
  if (display.symbol === '') return text
  return display.symbol === '°' ? `${text}°` : `${text} ${display.symbol}`
}

function trimZeros(text: string): string {
  return text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text
}

function withTrueMinus(text: string): string {
  return text.replace('-', '−')
}
