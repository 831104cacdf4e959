/**
 * A small seeded source of random numbers, so that an invented year is the same on every machine. Never for
 * secrets.
 */
export type RandomSource = () => number

/**
 * Uniform numbers in [0, 1) from a 32-bit seed.
 * Source: a counter through a 32-bit avalanche mixer (the public-domain "mulberry32" step), from memory; tested
 * for mean, spread and lag correlation only, which is all an invented climate asks.
 */
export function seededRandom(seed: number): RandomSource {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}

/** Standard normal deviate from two uniform ones (Box & Muller 1958). */
export function gaussian(random: RandomSource): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()))
  return radius * Math.cos(2 * Math.PI * random())
}

/**
 * First-order autoregressive series of unit variance: x_i = ρ x_(i−1) + √(1−ρ²) ε_i.
 * @param persistence_frac lag-1 correlation ρ, 0 ≤ ρ < 1
 * @returns                one value a step, standard normal in the long run
 */
export function persistentSeries(
  random: RandomSource,
  steps: number,
  persistence_frac: number,
): Float64Array {
  if (!(persistence_frac >= 0 && persistence_frac < 1)) {
    throw new RangeError(`persistentSeries: persistence_frac is ${persistence_frac}, must be in [0, 1)`)
  }
  const series = new Float64Array(steps)
  const fresh = Math.sqrt(1 - persistence_frac * persistence_frac)
  let value = gaussian(random)
  for (let step = 0; step < steps; step += 1) {
    series[step] = value
    value = persistence_frac * value + fresh * gaussian(random)
  }
  return series
}
