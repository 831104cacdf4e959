import type { Construction } from './layer.ts'
import { layerOf, type MaterialId } from './materials.ts'

/** An ordinary way to build a wall or a roof, from the inside out. Thicknesses: common practice, no source. */
export interface Build {
  readonly label: string
  readonly layers: Construction
  /** Sunlight sent back by its outer face as it weathers, until it is painted otherwise, 0…1. */
  readonly reflectance_frac: number
}

/** Solar reflectance of outer faces, weathered: common practice, no source. */
const FACE_frac = {
  softwood: 0.4,
  sheetSteel: 0.3,
  brick: 0.35,
  plaster: 0.5,
  concreteBlock: 0.35,
  concrete: 0.35,
  stone: 0.35,
  earth: 0.3,
  felt: 0.1,
  tile: 0.3,
} as const satisfies Partial<Record<MaterialId, number>>

/** m²K/W of an unventilated air layer of 25 mm or more, heat flowing level: ISO 6946:2017, table 8. */
const CAVITY = { resistance_m2KW: 0.18 }
/** The same under a roof, heat flowing up. */
const LOFT = { resistance_m2KW: 0.16 }

type LayerGiven = readonly [MaterialId, number] | { readonly resistance_m2KW: number }

function faceOf(outer: LayerGiven): number {
  const faces: Readonly<Partial<Record<MaterialId, number>>> = FACE_frac
  const face_frac = 'resistance_m2KW' in outer ? undefined : faces[outer[0]]
  if (face_frac === undefined) throw new RangeError('the outer layer of a build has a face')
  return face_frac
}

const build = (label: string, ...parts: readonly LayerGiven[]): Build => ({
  label,
  layers: parts.map((part) => ('resistance_m2KW' in part ? part : layerOf(part[0], part[1]))),
  reflectance_frac: faceOf(parts.at(-1)!),
})

export const WALL_BUILDS = {
  boards: build('Single boards', ['softwood', 0.022]),
  sheet: build('Steel sheet', ['sheetSteel', 0.001]),
  foamPanel: build(
    'Sheet, 60 mm foam, sheet',
    ['sheetSteel', 0.0006],
    ['hardFoam', 0.06],
    ['sheetSteel', 0.0006],
  ),
  lightFrame: build(
    'Timber frame, 90 mm wool',
    ['plasterboard', 0.0125],
    ['mineralWool', 0.09],
    ['strandBoard', 0.012],
    ['softwood', 0.02],
  ),
  thickFrame: build(
    'Timber frame, 200 mm wool',
    ['plasterboard', 0.0125],
    ['mineralWool', 0.2],
    ['strandBoard', 0.012],
    ['softwood', 0.02],
  ),
  logs: build('Solid timber, 120 mm', ['softwood', 0.12]),
  straw: build('Straw bale, plastered', ['plaster', 0.03], ['straw', 0.36], ['plaster', 0.03]),
  brick: build('Solid brick, 220 mm', ['plaster', 0.013], ['brick', 0.22]),
  cavityBrick: build('Cavity brick', ['plaster', 0.013], ['innerBrick', 0.105], CAVITY, ['brick', 0.105]),
  filledCavity: build(
    'Cavity brick, 75 mm wool',
    ['plaster', 0.013],
    ['innerBrick', 0.105],
    ['mineralWool', 0.075],
    ['brick', 0.105],
  ),
  clayBlock: build('Hollow clay block, 300 mm', ['plaster', 0.015], ['hollowBlock', 0.3], ['plaster', 0.02]),
  aerated: build('Aerated concrete, 250 mm', ['plaster', 0.01], ['aerated', 0.25], ['plaster', 0.015]),
  concreteBlock: build('Hollow concrete block, 190 mm', ['concreteBlock', 0.19], ['plaster', 0.015]),
  concreteOut: build('Concrete, 100 mm foam outside', ['concrete', 0.15], ['foam', 0.1], ['plaster', 0.01]),
  concreteIn: build(
    'Concrete, 80 mm foam inside',
    ['plasterboard', 0.0125],
    ['foam', 0.08],
    ['concrete', 0.15],
  ),
  stone: build('Stone, 450 mm', ['plaster', 0.02], ['stone', 0.45]),
  adobe: build('Adobe or rammed earth, 350 mm', ['earth', 0.35]),
} as const satisfies Record<string, Build>

export const ROOF_BUILDS = {
  sheet: build('Steel sheet', ['sheetSteel', 0.0008]),
  lining: build('Sheet over a board lining', ['softwood', 0.018], LOFT, ['sheetSteel', 0.0008]),
  linedSheet: build('Steel sheet with 30 mm foam', ['hardFoam', 0.03], ['sheetSteel', 0.0008]),
  felt: build('Boards and felt', ['softwood', 0.02], ['felt', 0.004]),
  tile: build('Ceiling board under tiles', ['plasterboard', 0.0125], LOFT, ['tile', 0.015]),
  foamPanel: build(
    'Sheet, 80 mm foam, sheet',
    ['sheetSteel', 0.0006],
    ['hardFoam', 0.08],
    ['sheetSteel', 0.0006],
  ),
  wool100: build(
    'Ceiling, 100 mm wool, sheet or tiles',
    ['plasterboard', 0.0125],
    ['mineralWool', 0.1],
    ['strandBoard', 0.012],
    ['sheetSteel', 0.0008],
  ),
  wool250: build(
    'Ceiling, 250 mm wool, sheet or tiles',
    ['plasterboard', 0.0125],
    ['mineralWool', 0.25],
    ['strandBoard', 0.018],
    ['tile', 0.015],
  ),
  concrete: build('Bare concrete slab, 150 mm', ['concrete', 0.15], ['felt', 0.004]),
  concreteOut: build(
    'Concrete slab, 120 mm foam on top',
    ['plaster', 0.01],
    ['concrete', 0.15],
    ['foam', 0.12],
    ['felt', 0.004],
  ),
  earthOnTimber: build('Earth on timber', ['softwood', 0.025], ['earth', 0.25]),
} as const satisfies Record<string, Build>
