import { bareResistanceOf_m2KW, isResistance, type Construction } from './layer.ts'
import { eigenSymmetric, solveTridiagonal } from '#model/basis/numbers'

/** Thickest cell that layers are cut into, m, and fewest cells of a layer. */
const CELL_M = 0.005
const LEAST_CELLS = 2
/** Angular frequency of a day, 1/s. */
const DAY_1S = (2 * Math.PI) / 86_400
/** The inner face is also followed at so many times a day: leaps of sun, windows and gains from hour to hour. */
const QUICKER = 8
/** A shape function that is this nearly a combination of those before it is left out, share of its length. */
const DEPENDENT = 1e-6

/**
 * One square metre of a construction, reduced to a few modes that decay independently:
 *
 *   dz_k/dt = −λ_k z_k + b_k u + c_k w,   T at the inner face's cell = Σ b_k z_k,  at the outer face's = Σ c_k z_k
 *
 * u is the heat rate that the inner film would carry into a face at 0 °C, w the heat in at the outer face, W/m².
 * Σ e_k z_k is the heat held above 0 °C, J/m².
 */
export interface Modes {
  readonly count: number
  readonly decay_1s: Float64Array
  readonly inner: Float64Array
  readonly outer: Float64Array
  /** Shape at the depth of pipes; all 0 without pipes. */
  readonly pipe: Float64Array
  readonly held: Float64Array
  /** Mean temperature of the innermost layer with mass = Σ innermost_k z_k. */
  readonly innermost: Float64Array
  /** Conductance from the air and radiant temperatures to the middle of the first cell, W/m²K. */
  readonly innerConductance_Wm2K: number
  /** Resistance from the middle of the last cell to the outer face, m²K/W. */
  readonly outerResistance_m2KW: number
}

export interface ModesOptions {
  /** Convection and radiation inside together, W/m²K. */
  readonly innerFilm_Wm2K: number
  /** Mean conductance of the outside film, W/m²K; null where no heat passes (furniture, partitions). */
  readonly outerFilm_Wm2K: number | null
  /** Depth of pipes from the inner face, m; null without. */
  readonly pipeDepth_m: number | null
}

/** The layers cut into cells: capacities, resistances between their middles and to the faces. */
interface Cells {
  readonly capacity_Jm2K: Float64Array
  /** From the inner face to cell 0, between cells, from the last to the outer face: one more than cells. */
  readonly resistance_m2KW: Float64Array
  readonly middle_m: Float64Array
  /** Cells of the innermost layer with mass. */
  readonly innermost: number
}

/**
 * Ritz functions of a construction: the uniform temperature, the steady response, and the response to a temperature
 * inside that swings once a day (real and imaginary part), to heat at the outer face that fades over a day and at the inner
 * face that fades over an eighth of one; with pipes also their steady and daily response. The steady
 * U-value, the mass and the 24 h response of ISO 13786 are exact by construction, and the network stays passive.
 * Source: Ritz–Galerkin projection; passivity under congruence: Odabasioglu, Celik & Pileggi 1998, IEEE Trans. CAD 17
 * (from memory).
 * @param construction layers from the inside out, at least one with mass
 * @throws RangeError for a layer that is not above 0, or when no layer has mass
 */
export function modesOf(construction: Construction, options: ModesOptions): Modes {
  bareResistanceOf_m2KW(construction)
  const cells = cellsOf(construction)
  const { capacity_Jm2K: C, resistance_m2KW: R } = cells
  const n = C.length
  if (n === 0) throw new RangeError('a construction needs a layer with mass')
  const inner_Wm2K = 1 / (1 / options.innerFilm_Wm2K + R[0]!)
  const { diagonal, beside } = conductances(R, inner_Wm2K)
  const basis = orthonormal(shapes(cells, diagonal, beside, options), C)
  const reduced = projected(basis, inner_Wm2K, beside)
  const { values, vectors } = eigenSymmetric(reduced)
  const shape = (cell: number): Float64Array =>
    Float64Array.from(values, (_, k) =>
      basis.reduce((sum, v, i) => sum + v[cell]! * vectors[i * basis.length + k]!, 0),
    )
  const heat = (cells: number): Float64Array =>
    Float64Array.from(values, (_, k) => {
      let sum = 0
      for (let j = 0; j < cells; j++)
        for (let i = 0; i < basis.length; i++) sum += C[j]! * basis[i]![j]! * vectors[i * basis.length + k]!
      return sum
    })
  const innermost_Jm2K = C.subarray(0, cells.innermost).reduce((sum, each) => sum + each, 0)
  return {
    count: basis.length,
    decay_1s: values,
    inner: shape(0),
    outer: shape(n - 1),
    pipe:
      options.pipeDepth_m === null
        ? new Float64Array(basis.length)
        : shape(cellAt(cells, options.pipeDepth_m)),
    held: heat(n),
    innermost: heat(cells.innermost).map((each) => each / innermost_Jm2K),
    innerConductance_Wm2K: inner_Wm2K,
    outerResistance_m2KW: R[n]!,
  }
}

function cellsOf(construction: Construction): Cells {
  const capacity: number[] = []
  const resistance: number[] = []
  const middle: number[] = []
  let innermost = 0
  let pending_m2KW = 0
  let depth_m = 0
  for (const part of construction) {
    if (isResistance(part)) {
      pending_m2KW += part.resistance_m2KW
      continue
    }
    const count = Math.max(LEAST_CELLS, Math.ceil(part.thickness_m / CELL_M - 1e-9))
    const cell_m = part.thickness_m / count
    const half_m2KW = cell_m / part.conductivity_WmK / 2
    for (let k = 0; k < count; k++) {
      resistance.push(pending_m2KW + half_m2KW)
      pending_m2KW = half_m2KW
      capacity.push(part.density_kgm3 * part.specificHeat_JkgK * cell_m)
      middle.push(depth_m + (k + 0.5) * cell_m)
    }
    depth_m += part.thickness_m
    innermost ||= count
  }
  resistance.push(pending_m2KW)
  return {
    capacity_Jm2K: Float64Array.from(capacity),
    resistance_m2KW: Float64Array.from(resistance),
    middle_m: Float64Array.from(middle),
    innermost,
  }
}

function cellAt({ middle_m }: Cells, depth_m: number): number {
  let best = 0
  for (let j = 1; j < middle_m.length; j++)
    if (Math.abs(middle_m[j]! - depth_m) < Math.abs(middle_m[best]! - depth_m)) best = j
  return best
}

/** The conductance matrix: the inner film at the first cell, nothing at the outer end. */
function conductances(R: Float64Array, inner_Wm2K: number) {
  const n = R.length - 1
  const diagonal = new Float64Array(n)
  const beside = new Float64Array(Math.max(0, n - 1))
  diagonal[0] = inner_Wm2K
  for (let j = 1; j < n; j++) {
    const g = 1 / R[j]!
    diagonal[j - 1]! += g
    diagonal[j]! += g
    beside[j - 1] = -g
  }
  return { diagonal, beside }
}

function shapes(
  cells: Cells,
  diagonal: Float64Array,
  beside: Float64Array,
  { outerFilm_Wm2K, pipeDepth_m }: ModesOptions,
): Float64Array[] {
  const { capacity_Jm2K: C, resistance_m2KW: R } = cells
  const n = C.length
  const still = new Float64Array(n)
  const swinging = C.map((capacity) => capacity * DAY_1S)
  const closed = Float64Array.from(diagonal)
  if (outerFilm_Wm2K !== null) closed[n - 1]! += 1 / (1 / outerFilm_Wm2K + R[n]!)
  const unit = (cell: number) => Float64Array.from({ length: n }, (_, j) => (j === cell ? 1 : 0))
  const daily = solveTridiagonal(closed, swinging, beside, unit(0))
  const found: Float64Array[] = [new Float64Array(n).fill(1)]
  if (outerFilm_Wm2K !== null) found.push(solveTridiagonal(closed, still, beside, unit(0)).re)
  found.push(daily.re, daily.im)
  if (outerFilm_Wm2K !== null) {
    const quick = closed.map((value, j) => value + swinging[j]!)
    const quickest = closed.map((value, j) => value + QUICKER * swinging[j]!)
    found.push(solveTridiagonal(quick, still, beside, unit(n - 1)).re)
    found.push(solveTridiagonal(quickest, still, beside, unit(0)).re)
  }
  if (pipeDepth_m !== null) {
    const at = unit(cellAt(cells, pipeDepth_m))
    const quick = closed.map((value, j) => value + swinging[j]!)
    found.push(solveTridiagonal(closed, still, beside, at).re, solveTridiagonal(quick, still, beside, at).re)
  }
  return found
}

/** Gram and Schmidt in the product xᵀ C y, done twice; what adds nothing is dropped. */
function orthonormal(shapes: readonly Float64Array[], C: Float64Array): Float64Array[] {
  const dot = (x: Float64Array, y: Float64Array) => {
    let sum = 0
    for (let j = 0; j < C.length; j++) sum += x[j]! * C[j]! * y[j]!
    return sum
  }
  const basis: Float64Array[] = []
  for (const shape of shapes) {
    if (basis.length === C.length) break
    const length = Math.sqrt(dot(shape, shape))
    const x = Float64Array.from(shape)
    for (let pass = 0; pass < 2; pass++)
      for (const v of basis) {
        const along = dot(v, x)
        for (let j = 0; j < x.length; j++) x[j]! -= along * v[j]!
      }
    const left = Math.sqrt(dot(x, x))
    if (left > DEPENDENT * length) basis.push(x.map((value) => value / left))
  }
  return basis
}

/**
 * v' K v as what the inner film carries and what flows between cells. Written with differences, a uniform temperature
 * has no flow between cells to the last bit, however well a thin layer conducts: so no heat is lost in the modes.
 */
function projected(basis: readonly Float64Array[], inner_Wm2K: number, beside: Float64Array): Float64Array {
  const m = basis.length
  const reduced = new Float64Array(m * m)
  for (let k = 0; k < m; k++) {
    const v = basis[k]!
    for (let i = 0; i <= k; i++) {
      const u = basis[i]!
      let sum = inner_Wm2K * u[0]! * v[0]!
      for (let j = 0; j < beside.length; j++) sum -= beside[j]! * (u[j + 1]! - u[j]!) * (v[j + 1]! - v[j]!)
      reduced[i * m + k] = reduced[k * m + i] = sum
    }
  }
  return reduced
}
