import { isResistance, type Construction, modesOf } from '#model/building/construction'
import type { ModesOptions } from '#inside/model/building/construction/modes.ts'
import { meanShares } from '#inside/model/building/room/rows.ts'

const HOURS = 14 * 24
const MINUTE_S = 60
const QUARTER_S = 900

/**
 * Largest difference of the first cell's hourly mean between modes (quarter hours) and finite volumes of 5 mm (implicit
 * minutes), over a fortnight in which room and sol-air temperature change every hour, K. The first days are not judged.
 */
export function finiteVolumeWall(wall: Construction, options: ModesOptions, phase: number): number {
  const inside = (h: number) => 24 + 3 * Math.sin((2 * Math.PI * (h + phase)) / 24) + (h % 7 === 0 ? 2 : 0)
  const outside = (h: number) => 22 + 18 * Math.max(-0.5, Math.sin((2 * Math.PI * (h + phase - 6)) / 24))
  const film = options.outerFilm_Wm2K!
  const fine = cellsOf(wall)
  const ours = modesOf(wall, options)
  const far = 1 / (1 / film + ours.outerResistance_m2KW)
  const steps = Array.from(ours.decay_1s, (decay) => ({
    ...meanShares(decay, QUARTER_S),
    left: Math.exp(-decay * QUARTER_S),
  }))
  const all = (of: (k: number) => number) => steps.reduce((sum, _, k) => sum + of(k), 0)
  const bb = all((k) => steps[k]!.m2_s * ours.inner[k]! ** 2)
  const cb = all((k) => steps[k]!.m2_s * ours.inner[k]! * ours.outer[k]!)
  const cc = all((k) => steps[k]!.m2_s * ours.outer[k]! ** 2)
  const z = Float64Array.from(ours.held, (e) => e * 23)
  const T = new Float64Array(fine.capacity.length).fill(23)
  let worst = 0
  for (let h = 0; h < HOURS; h++) {
    let mean = 0
    for (let q = 0; q < 4; q++) {
      const u = ours.innerConductance_Wm2K * inside(h)
      const sc = all((k) => steps[k]!.m1 * ours.outer[k]! * z[k]!)
      const w = (far * (outside(h) - sc - cb * u)) / (1 + far * cc)
      mean += (all((k) => steps[k]!.m1 * ours.inner[k]! * z[k]!) + bb * u + cb * w) / 4
      for (let k = 0; k < z.length; k++)
        z[k] = steps[k]!.left * z[k]! + steps[k]!.m1 * QUARTER_S * (ours.inner[k]! * u + ours.outer[k]! * w)
    }
    let want = 0
    for (let m = 0; m < 60; m++) {
      implicitMinute(fine, T, options.innerFilm_Wm2K, film, inside(h), outside(h))
      want += T[0]! / 60
    }
    if (h > 48) worst = Math.max(worst, Math.abs(mean - want))
  }
  return worst
}

interface Cells {
  readonly capacity: readonly number[]
  /** Conductance to the next cell; resistance of the first and last half cell. */
  readonly beside: readonly number[]
  readonly first: number
  readonly last: number
}

function cellsOf(wall: Construction): Cells {
  const capacity: number[] = []
  const gaps: number[] = []
  let pending = 0
  for (const part of wall) {
    if (isResistance(part)) {
      pending += part.resistance_m2KW
      continue
    }
    const n = Math.max(2, Math.ceil(part.thickness_m / 0.005))
    const half = part.thickness_m / n / part.conductivity_WmK / 2
    for (let k = 0; k < n; k++) {
      gaps.push(pending + half)
      pending = half
      capacity.push((part.density_kgm3 * part.specificHeat_JkgK * part.thickness_m) / n)
    }
  }
  const [first, ...between] = gaps
  return { capacity, beside: between.map((gap) => 1 / gap), first: first!, last: pending }
}

/** One implicit minute by the sweep of Thomas. */
function implicitMinute(
  { capacity, beside, first, last }: Cells,
  T: Float64Array,
  inner: number,
  outer: number,
  inside_C: number,
  outside_C: number,
): void {
  const n = T.length
  const [gi, go] = [1 / (1 / inner + first), 1 / (1 / outer + last)]
  const upper = new Float64Array(n)
  const right = new Float64Array(n)
  for (let j = 0; j < n; j++) {
    const left = j === 0 ? gi : beside[j - 1]!
    const next = j === n - 1 ? go : beside[j]!
    const C = capacity[j]! / MINUTE_S
    const source = (j === 0 ? gi * inside_C : 0) + (j === n - 1 ? go * outside_C : 0) + C * T[j]!
    const under = j === 0 ? 0 : beside[j - 1]!
    const pivot = C + left + next - under * (j === 0 ? 0 : upper[j - 1]!)
    upper[j] = j === n - 1 ? 0 : beside[j]! / pivot
    right[j] = (source + under * (j === 0 ? 0 : right[j - 1]!)) / pivot
  }
  for (let j = n - 1; j >= 0; j--) T[j] = right[j]! + (j === n - 1 ? 0 : upper[j]! * T[j + 1]!)
}
