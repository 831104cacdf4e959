import type { YearInputs } from '#model/building/year'
import { FlatYear } from '#inside/model/building/year/flat/flat-year.ts'
import { hoursForm } from '#inside/model/building/year/flat/hours-form.ts'
import { YearKernel } from '#inside/model/building/year/kernel.ts'
import { roomAt } from '#inside/model/building/year/room-start.ts'

export const WARM_UP_H = 21 * 24

/** A year of the search whose plate is always worked out in it, never read from a course known before. */
export function yearOfItsOwn({ room, ...rest }: YearInputs): Float64Array {
  const inputs = { room, ...rest }
  const kernel = new YearKernel(inputs, 900, false)
  const from = room.hours - WARM_UP_H
  const { air_C, masses } = roomAt(room, from)
  const room_C = new Float64Array(room.hours)
  kernel.setRoom(air_C, masses)
  kernel.plate_C = room.outdoor_C[from]!
  new FlatYear(hoursForm()!, kernel, inputs, from, room_C, false).run(from, from + WARM_UP_H + room.hours)
  return room_C
}
