import type { Prepared } from '#model/design/assembly'

/**
 * The hottest of all that room and store are between, °C: the room left alone, the sun on any of its faces (pipes may lie in a
 * roof of dark sheet), and some columns more.
 */
export function hottestAround_C({ doNothing, room }: Prepared, ...more: readonly Float64Array[]): number {
  const inside = [doNothing.room_C, doNothing.slab_C, doNothing.radiant_C]
  const faces = room.groups.flatMap(({ outside }) => (outside === null ? [] : [outside.temp_C]))
  return Math.max(...[...inside, ...faces, ...more].map(hottest))
}

/** The largest value of a column. */
export const hottest = (column: Float64Array): number =>
  column.reduce((top, value) => Math.max(top, value), -Infinity)
