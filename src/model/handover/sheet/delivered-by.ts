import { type DeliveryKind, isTank, type StoreSpec } from '#model/building/store'

/** How cold gets in, as it is built: a slab's own pipes deliver, and a coil without a tank is kept dry, with or without a tray. */
export function builtDelivery({
  kind,
  deliveryKind,
}: Pick<StoreSpec, 'kind' | 'deliveryKind'>): DeliveryKind {
  if (kind === 'slab') return 'floorPipes'
  return deliveryKind === 'drained' && !isTank(kind) ? 'surface' : deliveryKind
}

/** What cools the room, for the lists of the sheet. */
export function deliveredBy(store: Pick<StoreSpec, 'kind' | 'deliveryKind'>): string {
  return NAMES[builtDelivery(store)]
}

const NAMES: Readonly<Record<DeliveryKind, string>> = {
  surface: 'fan coil or coil kept dry',
  drained: 'fan coil with drip tray',
  ceiling: 'cooled ceiling panels',
  floorPipes: 'pipes in the slab',
  roofPipes: 'pipes in the ceiling’s inner layer',
}
