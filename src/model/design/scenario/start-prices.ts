import { fieldAt } from './schema.ts'

/** Choices beside the prices, not prices. */
const NO_PRICES = ['prices.budget_each', 'prices.years_y']

/** True where a price is still the invented one that its box begins with. */
export function isStartPrice(path: string, value: unknown): boolean {
  if (!path.startsWith('prices.') || NO_PRICES.includes(path)) return false
  return fieldAt(path)?.field.default === value
}
