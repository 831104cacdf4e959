import { HOUR_S } from '#model/basis/hours'
import { FlatYear, isFlat } from './flat/flat-year.ts'
import { hoursForm } from './flat/hours-form.ts'
import { Books, UNKEPT } from './books.ts'
import { YearKernel } from './kernel.ts'
import { USUAL_YEAR, type YearInputs, type YearOptions } from './inputs.ts'
import type { RoomStates, YearResult } from './result.ts'
import { pastRoom, roomAt } from './room-start.ts'

/** A warm-up needs this many hours of record to take from; shorter records start from their first air temperature. */
const SHORTEST_WARM_UP_h = 24

/**
 * Simulates room, store and panels through the hours of the record, in implicit steps of a quarter hour or finer.
 * @param inputs  room model, and panel hours, loop, store and plan of one design (or null: the room left alone);
 *   all hourly arrays must have `room.hours` entries
 * @param options `stepsPerHour` ≥ 4; `warmUp_h` hours from the record's end are run first, so that a whole year
 *   begins where it ends; `span` limits the hours kept (with the warm-up taken from just before it); see `YearOptions`
 * @returns hourly means (panelReturn_C is NaN while the pump rests; columns are NaN outside `span`)
 * @throws RangeError when arrays do not match or steps are too coarse
 */
export function simulateYear(inputs: YearInputs, options: Partial<YearOptions> = {}): YearResult {
  const chosen = { ...USUAL_YEAR, ...options }
  assertSound(inputs, chosen)
  const kernel = new YearKernel(inputs, HOUR_S / chosen.stepsPerHour, chosen.books || !chosen.lean)
  const columns = emptyColumns(inputs.room.hours, chosen.lean)
  const [first, end] = chosen.span ?? [0, inputs.room.hours]
  const start = begin(kernel, inputs, chosen, first)
  const form = chosen.modular || !isFlat(inputs) ? null : hoursForm()
  const flat =
    form === null
      ? null
      : new FlatYear(form, kernel, inputs, wrapped(start, inputs.room.hours), columns.room_C)
  warmUp(kernel, flat, inputs.room.hours, start, first)
  kernel.books = new Books()
  const before_J = kernel.stored_J()
  const held = { freezeRisk_h: 0, dewHeld_h: 0, condensate_kg: 0 }
  const states = chosen.keepStates ? emptyStates(kernel, inputs.room.hours) : null
  const atOnce = flat !== null && chosen.lean && !chosen.books && states === null
  if (atOnce) flat.run(first, end)
  for (let run = atOnce ? end : first; run < end; run++) {
    const hour = run % inputs.room.hours
    if (flat === null) kernel.hour(hour)
    else flat.hour(hour)
    columns.room_C[hour] = kernel.books.room_C(HOUR_S)
    if (states !== null) noteState(states, kernel, hour)
    if (!chosen.lean) recordHour(kernel, columns, held, hour)
  }
  return {
    hours: inputs.room.hours,
    ...columns,
    ...held,
    vented_h: (flat?.vented_s ?? kernel.books.vented_s) / HOUR_S,
    states,
    ledger: chosen.books ? kernel.books.ledger(before_J, kernel.stored_J()) : UNKEPT,
  }
}

function assertSound({ room, plant }: YearInputs, options: YearOptions): void {
  if (options.stepsPerHour < 4)
    throw new RangeError(`stepsPerHour ${options.stepsPerHour}: at least 4 are needed`)
  if (plant === null) return
  for (const [name, length] of [
    ['panel hours', plant.panel.hours],
    ['plan hours', plant.allowed.length],
  ] as const) {
    if (length !== room.hours)
      throw new RangeError(`${name}: ${length} entries, the room has ${room.hours} hours`)
  }
}

/** Puts the kernel where the hours before `first` begin, that its state then may not depend on a guess. @returns the first of them, below 0 before the record's */
function begin(kernel: YearKernel, { room }: YearInputs, options: YearOptions, first: number): number {
  const from = first - options.warmUp_h
  const wraps = room.hours >= options.warmUp_h && room.hours > SHORTEST_WARM_UP_h
  const start = wraps ? from : Math.max(0, from)
  const { settled } = options
  if (settled !== null) {
    const hour = wrapped(start - 1, room.hours)
    const at = hour * settled.count
    kernel.setRoom(settled.air_C[hour]!, settled.masses.subarray(at, at + settled.count))
  } else {
    const state = wraps
      ? roomAt(room, wrapped(start, room.hours))
      : pastRoom(room, firstDay(start, room.hours))
    kernel.setRoom(state.air_C, state.masses)
  }
  const begun = wrapped(start, room.hours)
  kernel.plate_C = room.outdoor_C[begun]!
  kernel.plate?.begin(kernel.plate_C, begun)
  return start
}

/** Runs the hours before `first`. */
function warmUp(
  kernel: YearKernel,
  flat: FlatYear | null,
  hours: number,
  start: number,
  first: number,
): void {
  if (flat === null) for (let hour = start; hour < first; hour++) kernel.hour(wrapped(hour, hours))
  else {
    flat.run(wrapped(start, hours), wrapped(start, hours) + first - start)
    flat.endWarmUp()
  }
}

function firstDay(start: number, hours: number): number[] {
  return Array.from({ length: Math.min(SHORTEST_WARM_UP_h, hours) }, (_, k) => wrapped(start + k, hours))
}

function emptyStates(kernel: YearKernel, hours: number): RoomStates {
  const count = kernel.room.masses.length
  return { air_C: new Float64Array(hours), masses: new Float64Array(hours * count), count }
}

function noteState({ air_C, masses, count }: RoomStates, { room }: YearKernel, hour: number): void {
  air_C[hour] = room.air_C
  masses.set(room.masses, hour * count)
}

const wrapped = (hour: number, hours: number): number => ((hour % hours) + hours) % hours

type Columns = {
  -readonly [K in keyof YearResult as YearResult[K] extends Float64Array ? K : never]: Float64Array
}

/** In a lean run all columns but the room's share one empty column. */
function emptyColumns(hours: number, lean: boolean): Columns {
  const unused = lean ? new Float64Array(0) : null
  const column = (): Float64Array => unused ?? new Float64Array(hours).fill(NaN)
  return {
    room_C: new Float64Array(hours).fill(NaN),
    air_C: column(),
    radiant_C: column(),
    slab_C: column(),
    store_C: column(),
    storeTop_C: column(),
    storeBottom_C: column(),
    plate_C: column(),
    panelReturn_C: column(),
    panelHeat_W: column(),
    delivered_W: column(),
    pumpRun_frac: column(),
    electric_W: column(),
    water_kgm2: column(),
  }
}

/** Temperatures of stores and masses are those at the hour's end; flows and room air are means over the hour. */
function recordHour(
  kernel: YearKernel,
  columns: Columns,
  held: { freezeRisk_h: number; dewHeld_h: number; condensate_kg: number },
  hour: number,
): void {
  const { books, nodes, temp_C, controls } = kernel
  columns.air_C[hour] = books.air_Cs / HOUR_S
  columns.radiant_C[hour] = books.radiant_Cs / HOUR_S
  columns.slab_C[hour] = kernel.room.slab_C()
  columns.store_C[hour] = storeMean_C(kernel)
  columns.storeTop_C[hour] = temp_C[nodes.sink]!
  columns.storeBottom_C[hour] = nodes.tank ? temp_C[nodes.bottom]! : temp_C[nodes.sink]!
  columns.plate_C[hour] = kernel.plate_C
  columns.panelReturn_C[hour] = books.run_s > 0 ? books.return_Cs / books.run_s : NaN
  columns.panelHeat_W[hour] = books.taken_J / HOUR_S
  columns.delivered_W[hour] = books.delivered_J / HOUR_S
  columns.pumpRun_frac[hour] = books.run_s / HOUR_S
  columns.electric_W[hour] = (books.pump_J + books.fan_J) / HOUR_S
  columns.water_kgm2[hour] = kernel.water_kgm2
  held.condensate_kg += books.condensate_kg
  if (controls.freezing) held.freezeRisk_h++
  if (kernel.delivery?.dewLimited === true || kernel.plate?.mixing === true) held.dewHeld_h++
}

function storeMean_C({ nodes, temp_C }: YearKernel): number {
  if (!nodes.tank) return temp_C[nodes.sink]!
  let sum = 0
  for (let i = nodes.top; i <= nodes.bottom; i++) sum += temp_C[i]!
  return sum / nodes.layers
}
