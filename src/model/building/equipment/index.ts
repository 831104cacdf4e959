export { type AirConditionerSpec, airConditionerPower_W, availableCooling_W } from './air-conditioner.ts'
export { type EvaporativeSpec, type Supply, evaporativeSupply } from './evaporative.ts'
export { wetBulb_C } from './wet-bulb.ts'
