import { formatNumber } from '#model/basis/units'
import type { ShownQuantity } from '#ui/words/quantity.ts'

/**
 * A quantity the unit suffixes do not have (a part of a recipe, a share in percent): shown = value × factor.
 */
export function ownQuantity(
  symbol: string,
  factor: number,
): Pick<ShownQuantity, 'symbol' | 'toSi' | 'rounded' | 'text'> {
  return {
    symbol,
    toSi: (shown) => shown / factor,
    rounded: (si) => Number((si * factor).toPrecision(4)),
    text: (si, digits = 3) => `${formatNumber(si * factor, digits)}${symbol && ` ${symbol}`}`,
  }
}

/** A share shown in percent. */
export const PERCENT = ownQuantity('%', 100)
