export { DWELLING_kPa, type FloorLoad, floorLoad, fullTank_kg } from './floor-load.ts'
export { storeModel } from './model.ts'
export type { DeliveryKind, StoreModel, StoreSpec } from './spec.ts'
export { type TankShape, isTank, tankShape } from './tank.ts'
