/** Version 1 took the starting price where 0 was written; since then 0 is a price. */
const UNGIVEN_AT_0 = ['panel_perm2', 'store_perm3', 'pipe_perm', 'pump_each', 'energy_perkWh']

/** A file's groups without the prices that version 1 wrote as not given. */
export function withoutUngivenPrices(value: Record<string, unknown>): Record<string, unknown> {
  const { prices } = value
  if (typeof prices !== 'object' || prices === null || Array.isArray(prices)) return value
  const given = Object.entries(prices).filter(([name, price]) => price !== 0 || !UNGIVEN_AT_0.includes(name))
  return { ...value, prices: Object.fromEntries(given) }
}
