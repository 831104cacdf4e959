import type { Layer } from './layer.ts'

/** A building material: design values. */
export interface Material {
  readonly name: string
  readonly conductivity_WmK: number
  readonly density_kgm3: number
  readonly specificHeat_JkgK: number
}

const material = (
  name: string,
  conductivity_WmK: number,
  density_kgm3: number,
  specificHeat_JkgK: number,
): Material => ({ name, conductivity_WmK, density_kgm3, specificHeat_JkgK })

/**
 * Design values of ISO 10456:2007 / EN 12524 (softwood, steel, glass read in a public copy of EN 12524; the others from
 * memory); earth: DIN 4108-4 loam 1600–1800 (from memory); straw, hemp: makers' data sheets (from memory).
 */
export const MATERIALS = {
  plasterboard: material('Plasterboard', 0.25, 900, 1000),
  plaster: material('Lime or cement plaster', 0.8, 1800, 1000),
  softwood: material('Softwood boards', 0.13, 500, 1600),
  strandBoard: material('Strand board or plywood', 0.13, 650, 1700),
  woodFibre: material('Wood fibre board', 0.045, 160, 2100),
  mineralWool: material('Mineral wool', 0.037, 30, 1030),
  foam: material('Polystyrene foam', 0.035, 20, 1450),
  hardFoam: material('Polyurethane foam', 0.025, 32, 1400),
  cellulose: material('Cellulose fibre', 0.04, 50, 1600),
  straw: material('Straw bale', 0.055, 110, 1800),
  brick: material('Brick, outer leaf', 0.77, 1700, 1000),
  innerBrick: material('Brick, inner leaf', 0.56, 1600, 1000),
  hollowBlock: material('Hollow clay block', 0.3, 900, 1000),
  aerated: material('Aerated concrete', 0.14, 500, 1000),
  concreteBlock: material('Hollow concrete block', 0.9, 1300, 1000),
  concrete: material('Concrete', 2, 2400, 1000),
  screed: material('Screed', 1.2, 2000, 1000),
  stone: material('Stone, limestone', 1.7, 2200, 1000),
  earth: material('Earth, adobe', 0.8, 1700, 1000),
  sheetSteel: material('Steel sheet', 50, 7800, 450),
  tile: material('Clay tile', 1, 2000, 800),
  felt: material('Bitumen felt', 0.23, 1100, 1000),
  soil: material('Soil', 1.5, 2000, 1000),
} as const satisfies Record<string, Material>
export type MaterialId = keyof typeof MATERIALS

/** A layer of a material. @throws RangeError for a thickness that is not above 0 */
export function layerOf(id: MaterialId, thickness_m: number): Layer {
  if (!(thickness_m > 0)) throw new RangeError(`thickness of ${id} must be above 0, got ${thickness_m}`)
  const { name, ...values } = MATERIALS[id]
  return { thickness_m, ...values, material: name }
}
