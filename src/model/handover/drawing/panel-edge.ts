import type { PlantFacts } from './facts.ts'

/** Flange of the edge profile over plate and back sheet, its metal, a back sheet, and both walls of a header, m (common practice, no source). */
export const FLANGE_m = 0.02
export const EDGE_WALL_m = 0.002
export const BACK_SHEET_m = 0.001
const HEADER_WALLS_m = 0.0024
/** Between a header’s tube and the end of the module, m (common practice, no source). */
export const HEADER_IN_m = 0.02
/** Bends of soft copper tube: radius to its middle over its outside (common practice of lever benders, no source). */
const BEND = 3.5

type Build = PlantFacts['build']

/** Outside of a header, m. */
export const headerOuter_m = ({ header_m }: Build): number => header_m + HEADER_WALLS_m

/** Plate, passages or headers, foam and back sheet between the flanges of the edge profile, m. */
export function edgeInside_m(build: Build): number {
  const { plate_m, passageOuter_m, foam_m } = build
  const behind_m = Math.max(passageOuter_m + (Number.isFinite(foam_m) ? foam_m : 0), headerOuter_m(build))
  return plate_m + behind_m + BACK_SHEET_m
}

/** How a passage that touches the plate comes into the middle of a header that touches it too: an S of two equal bends. */
export interface Crank {
  /** From the middle of the passage down to that of the header, m. */
  readonly offset_m: number
  /** Along the passage, m. */
  readonly length_m: number
  /** Of each bend, to the middle of the tube, m. */
  readonly radius_m: number
}

/** null for air, where passages fill the whole plate, and where a header is no wider than a passage. */
export function crankOf({ liquid, build }: Pick<PlantFacts, 'liquid' | 'build'>): Crank | null {
  const offset_m = (headerOuter_m(build) - build.passageOuter_m) / 2
  if (!liquid || build.spacing_m === null || offset_m < 1e-3) return null
  // two arcs can go down by twice their diameter at most
  const radius_m = Math.max(BEND * build.passageOuter_m, offset_m / 2)
  return { offset_m, radius_m, length_m: Math.sqrt(offset_m * (4 * radius_m - offset_m)) }
}
