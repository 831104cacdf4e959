import { expect, test } from 'vitest'
import { simulateYear } from '#model/building/year'
import { hotDays } from './hot-days.ts'

/* Beside the fourteen pairs of `against-odex.test.ts`: what the other names of a store and a delivery come to. */

/* Label: exact. A slab's own pipes deliver, whatever else is named; without a tank nothing runs under the dew point into a tray. */
test.each([
  ['slab', 'drained', 'slab', 'surface'],
  ['slab', 'ceiling', 'slab', 'surface'],
  ['slab', 'floorPipes', 'slab', 'surface'],
  ['slab', 'roofPipes', 'slab', 'surface'],
  ['building', 'floorPipes', 'slab', 'surface'],
  ['building', 'drained', 'building', 'surface'],
])('%s store, %s, is %s store, %s, to the last digit', (kind, by, likeKind, likeBy) => {
  const [one, other] = [hotDays(kind, by, 0), hotDays(likeKind, likeBy, 0)]
  // Without a tank no fan or pump of a delivery runs: its power is in no year.
  const [store, likeStore] = [one, other].map(({ inputs }) => inputs.plant!.store)
  const { deliveryPower_W } = likeStore!
  expect({ ...store, kind: likeKind, deliveryPower_W }).toEqual(likeStore)
  const span = [one.first_h, one.first_h + 4 * 24] as const
  const [year, likeYear] = [one, other].map(({ inputs }) => simulateYear(inputs, { span }))
  for (const name of ['room_C', 'slab_C', 'plate_C', 'delivered_W'] as const)
    expect(year![name], name).toEqual(likeYear![name])
})
