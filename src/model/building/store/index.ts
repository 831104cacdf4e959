export { type FloorLoad, floorLoad } from './floor-load.ts'
export { storeModel } from './model.ts'
export type { DeliveryKind, StoreModel, StoreSpec } from './spec.ts'
export { type TankShape, isTank, tankShape } from './tank.ts'
