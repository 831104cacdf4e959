/**
 * Values at some places read from those at knots: piecewise cubics whose slope at a knot is that of the parabola through it and
 * its two neighbours (at an end, the parabola through the last piece and the slope beside it). Straight where there are two knots.
 * @param knots  rising, at least one
 * @param at     places, within the knots
 * Source: de Boor 2001, A Practical Guide to Splines, ch. IV (piecewise cubic Bessel interpolation; from memory).
 */
export function interpolateParabolic(
  knots: readonly number[],
  values: readonly number[],
  at: readonly number[],
): Float64Array {
  if (knots.length === 1) return new Float64Array(at.length).fill(values[0]!)
  const slopes = slopesAt(knots, values)
  return Float64Array.from(at, (x) => {
    const piece = Math.max(
      0,
      knots.findLastIndex((knot, i) => i < knots.length - 1 && knot <= x),
    )
    const length = knots[piece + 1]! - knots[piece]!
    const u = (x - knots[piece]!) / length
    const v = 1 - u
    const ends = values[piece]! * (1 + 2 * u) * v * v + values[piece + 1]! * (3 - 2 * u) * u * u
    return ends + length * (slopes[piece]! * u * v * v - slopes[piece + 1]! * v * u * u)
  })
}

function slopesAt(knots: readonly number[], values: readonly number[]): number[] {
  const last = knots.length - 1
  const lengths = knots.slice(1).map((knot, i) => knot - knots[i]!)
  const rises = lengths.map((length, i) => (values[i + 1]! - values[i]!) / length)
  const inner = rises
    .slice(1)
    .map((rise, i) => (lengths[i + 1]! * rises[i]! + lengths[i]! * rise) / (lengths[i]! + lengths[i + 1]!))
  if (last === 1) return [rises[0]!, rises[0]!]
  return [2 * rises[0]! - inner[0]!, ...inner, 2 * rises[last - 1]! - inner.at(-1)!]
}
