import type { DeliveryKind, StoreSpec } from '#model/building/store'

/** What cools the room, for the lists of the sheet; a slab's own pipes deliver. */
export function deliveredBy({ kind, deliveryKind }: Pick<StoreSpec, 'kind' | 'deliveryKind'>): string {
  return kind === 'slab' ? NAMES.floorPipes : NAMES[deliveryKind]
}

const NAMES: Readonly<Record<DeliveryKind, string>> = {
  surface: 'fan coil or coil kept dry',
  drained: 'fan coil with drip tray',
  ceiling: 'cooled ceiling panels',
  floorPipes: 'pipes in the slab',
  roofPipes: 'pipes in the ceiling’s inner layer',
}
