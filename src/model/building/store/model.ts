import { fluidProperties } from '#model/panels/loop'
import type { RoomPortKind } from '#model/building/room'
import { DELIVERY_KINDS, STORE_KINDS, type StoreModel, type StoreSpec } from './spec.ts'
import { tankShape } from './tank.ts'

/** Temperature at which the water's properties are taken, °C. */
export const STORE_TEMP_C = 15

/**
 * The store for the year loop. A tank is full of water (a glycol loop reaches it through a coil), layers are equal slices,
 * ends lose through top and bottom layer. Slab and building have no tank: no layers, no water. Volume 0 gives layers of
 * no capacity and no loss. Throws RangeError for values out of range.
 */
export function storeModel(spec: StoreSpec): StoreModel {
  checkStoreSpec(spec)
  const common = {
    kind: spec.kind,
    lossTo: spec.place,
    delivery_WK: spec.delivery_WK,
    deliveryPower_W: spec.deliveryPower_W,
    dewMargin_K: spec.dewMargin_K,
    port: portOf(spec),
  }
  if (spec.kind === 'slab' || spec.kind === 'building')
    return {
      ...common,
      drained: false,
      layerCapacity_JK: [],
      layerLoss_WK: [],
      betweenLayers_WK: 0,
      waterMass_kg: 0,
    }
  return { ...common, drained: spec.deliveryKind === 'drained', ...tankOf(spec) }
}

function portOf({ kind, deliveryKind }: StoreSpec): RoomPortKind {
  if (kind === 'slab') return 'pipes'
  if (deliveryKind === 'ceiling') return 'ceiling'
  return deliveryKind === 'floorPipes' || deliveryKind === 'roofPipes' ? 'pipes' : 'air'
}

function tankOf(spec: StoreSpec) {
  const water = fluidProperties('water', 0, STORE_TEMP_C)
  const shape = tankShape(spec.volume_m3)
  const layers = spec.kind === 'layered' ? spec.layers : 1
  const waterMass_kg = water.density_kgm3 * spec.volume_m3
  const skin_Wm2K = tankSkin_Wm2K(spec) * spec.fittingsFactor_frac
  const ends = (layer: number) => Number(layer === 0) + Number(layer === layers - 1)
  return {
    waterMass_kg,
    layerCapacity_JK: slices(layers, () => (waterMass_kg * water.specificHeat_JkgK) / layers),
    layerLoss_WK: slices(
      layers,
      (layer) => skin_Wm2K * (shape.side_m2 / layers + ends(layer) * shape.end_m2),
    ),
    betweenLayers_WK:
      layers === 1 || shape.height_m === 0
        ? 0
        : (water.conductivity_WmK * shape.end_m2) / (shape.height_m / layers),
  }
}

function slices(count: number, value: (layer: number) => number): number[] {
  return Array.from({ length: count }, (_, layer) => value(layer))
}

/** Outside film of a tank in still air, convection and radiation, W/m²K (common practice, no source). */
const OUTER_FILM_Wm2K = 8

/** Ideal loss per m² of tank skin, W/m²K: flat insulation and outside film; water and shell resist nothing. */
export function tankSkin_Wm2K(spec: Pick<StoreSpec, 'insulation_m' | 'insulationConductivity_WmK'>): number {
  return 1 / (spec.insulation_m / spec.insulationConductivity_WmK + 1 / OUTER_FILM_Wm2K)
}

function checkStoreSpec(spec: StoreSpec): void {
  if (!STORE_KINDS.includes(spec.kind))
    throw new RangeError(`store kind must be one of ${STORE_KINDS.join(', ')}, got ${spec.kind}`)
  if (!DELIVERY_KINDS.includes(spec.deliveryKind))
    throw new RangeError(`delivery must be one of ${DELIVERY_KINDS.join(', ')}, got ${spec.deliveryKind}`)
  const within = (name: keyof StoreSpec, min: number, max: number) => {
    const value = spec[name] as number
    if (!(value >= min && value <= max))
      throw new RangeError(`store ${name} must be ${min}…${max}, got ${value}`)
  }
  within('volume_m3', 0, 1e5)
  within('insulation_m', 0, 5)
  within('insulationConductivity_WmK', 1e-3, 10)
  within('fittingsFactor_frac', 0, 20)
  within('delivery_WK', 0, 1e6)
  within('deliveryPower_W', 0, 1e6)
  within('dewMargin_K', 0, 30)
  if (spec.kind === 'layered' && !(Number.isInteger(spec.layers) && spec.layers >= 1 && spec.layers <= 20))
    throw new RangeError(`store layers must be a whole number 1…20, got ${spec.layers}`)
}
