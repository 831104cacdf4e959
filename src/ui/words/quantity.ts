import {
  displayUnit,
  fromDisplay,
  toDisplay,
  type UnitSystem,
  formatFixed,
  formatNumber,
  formatQuantity,
  type Unit,
} from '#model/basis/units'

/** How one quantity is shown and typed on the page, in the chosen unit system. */
export interface ShownQuantity {
  /** Unit as people write it; empty for a plain number. */
  readonly symbol: string
  readonly toShown: (si: number) => number
  readonly toSi: (shown: number) => number
  /** The shown number without the tails of conversion, for boxes: four significant digits. */
  readonly rounded: (si: number) => number
  /** The shown number with so many decimals, for tables. */
  readonly fixed: (si: number, decimals: number) => string
  /** The shown number without its unit, for the first factors of `5 × 4 m`. */
  readonly bare: (si: number, digits?: number) => string
  /** The number with its unit. */
  readonly text: (si: number, digits?: number) => string
}

/**
 * @param unit suffix of the quantity as in `units/suffix.ts`
 * @param largest largest value it can take, SI: short lengths are shown in mm or inches
 */
export function shownQuantity(unit: string, system: UnitSystem, largest = Infinity): ShownQuantity {
  const known = unit as Unit
  const display = displayUnit(known, system, largest)
  return {
    symbol: display.symbol,
    toShown: (si) => toDisplay(si, display),
    toSi: (shown) => fromDisplay(shown, display),
    rounded: (si) => Number(toDisplay(si, display).toPrecision(4)),
    fixed: (si, decimals) => formatFixed(toDisplay(si, display), decimals),
    bare: (si, digits = 3) => formatNumber(toDisplay(si, display), digits),
    text: (si, digits = 3) => formatQuantity(si, known, system, { digits, largest }),
  }
}
