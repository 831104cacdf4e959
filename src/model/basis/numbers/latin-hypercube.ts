/** A source of uniform numbers in 0…1. */
export type Uniform = () => number

/**
 * Reproducible uniform numbers.
 * Source: Marsaglia 2003, Xorshift RNGs, J. Stat. Softw. 8(14), the 32-bit triple (13, 17, 5).
 */
export function seededUniform(seed: number): Uniform {
  let state = (seed | 0) === 0 ? 0x9e3779b9 | 0 : seed | 0
  return () => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    return (state >>> 0) / 4294967296
  }
}

/**
 * Latin hypercube: `draws` points in the unit cube of `dimensions`, each dimension cut into equal slices of which
 * every one holds exactly one point.
 * @returns draws × dimensions, row by row
 * Source: McKay, Beckman & Conover 1979, Technometrics 21, 239–245.
 */
export function latinHypercube(draws: number, dimensions: number, uniform: Uniform): Float64Array {
  const points = new Float64Array(draws * dimensions)
  const order = new Uint32Array(draws)
  for (let d = 0; d < dimensions; d++) {
    shuffle(order, uniform)
    for (let i = 0; i < draws; i++) points[i * dimensions + d] = (order[i]! + uniform()) / draws
  }
  return points
}

/** Writes 0, 1, 2 … in a random order. */
function shuffle(order: Uint32Array, uniform: Uniform): void {
  for (let i = 0; i < order.length; i++) order[i] = i
  for (let i = order.length - 1; i > 0; i--) {
    const j = Math.floor(uniform() * (i + 1))
    const kept = order[i]!
    order[i] = order[j]!
    order[j] = kept
  }
}

/**
 * A Latin hypercube of `slices` × `each` points of which every `each` in turn are one of their own, so that the first of
 * them are spread as evenly as all.
 * @returns (slices · each) × dimensions, row by row
 * Source: Qian 2012, J. Am. Stat. Assoc. 107, 393–399 (sliced Latin hypercube designs; from memory).
 */
export function slicedHypercube(
  slices: number,
  each: number,
  dimensions: number,
  uniform: Uniform,
): Float64Array {
  const draws = slices * each
  const points = new Float64Array(draws * dimensions)
  const [shares, places] = [new Uint32Array(slices), new Uint32Array(each)]
  const levels = new Uint32Array(draws)
  for (let d = 0; d < dimensions; d++) {
    for (let place = 0; place < each; place++) {
      shuffle(shares, uniform)
      levels.set(shares, place * slices)
    }
    for (let slice = 0; slice < slices; slice++) {
      shuffle(places, uniform)
      for (let i = 0; i < each; i++) {
        const level = places[i]! * slices + levels[places[i]! * slices + slice]!
        points[(slice * each + i) * dimensions + d] = (level + uniform()) / draws
      }
    }
  }
  return points
}

/** Spearman's rank correlation of two equally long columns, −1…1 (ties take their mean rank). */
export function rankCorrelation(a: readonly number[], b: readonly number[]): number {
  const ra = ranks(a)
  const rb = ranks(b)
  const mean = (a.length - 1) / 2
  let ab = 0
  let aa = 0
  let bb = 0
  for (let i = 0; i < a.length; i++) {
    const x = ra[i]! - mean
    const y = rb[i]! - mean
    ab += x * y
    aa += x * x
    bb += y * y
  }
  return aa === 0 || bb === 0 ? 0 : ab / Math.sqrt(aa * bb)
}

function ranks(values: readonly number[]): Float64Array {
  const order = values.map((_, i) => i).sort((i, j) => values[i]! - values[j]!)
  const out = new Float64Array(values.length)
  for (let from = 0; from < order.length;) {
    let to = from
    while (to + 1 < order.length && values[order[to + 1]!] === values[order[from]!]) to++
    for (let k = from; k <= to; k++) out[order[k]!] = (from + to) / 2
    from = to + 1
  }
  return out
}
