export { constructionOf, describedAs } from './described.ts'
export { type Construction, checkConstruction, isResistance } from './layer.ts'
export { type Build, ROOF_BUILDS, WALL_BUILDS } from './library.ts'
export { type Modes, modesOf } from './modes.ts'
