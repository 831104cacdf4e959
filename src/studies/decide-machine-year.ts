/** A machine in the room, through as much of the year as it may run in. */
import { equippedYear, type EquippedInputs, type EquippedYear } from '#model/building/year'
import type { Prepared } from '#model/design/assembly'
import type { Scenario } from '#model/design/scenario'
import { seasonAtRisk, seasonDecides } from '#model/design/sizing'
import { airOffset_K, exceedance, type Yardstick } from '#model/design/target'

/** Machines start this far under the limit, K, and may run so long before hours that count. */
export const UNDER_LIMIT_K = 1
const AHEAD_h = 3

type Machine = Pick<EquippedInputs, 'cooler' | 'airConditioner' | 'nightFan_W'>

/** The year with a machine: only its season where that is enough to tell. */
export function machineYear(prepared: Prepared, machine: Machine): EquippedYear {
  const { doNothing, yardstick } = prepared
  const { inputs, stick } = machineInputs(prepared, machine)
  // a fan at night runs out of season too
  const season = machine.nightFan_W > 0 ? null : seasonAtRisk(doNothing.room_C, stick)
  if (season === null) return equippedYear(inputs)
  const year = equippedYear(inputs, { spells: season.spells, alone: doNothing })
  const outside = { ...season, outsideOver_K: season.outsideOver_K - leastUnder_K(yardstick, stick) }
  return seasonDecides(outside, yardstick, exceedance(year.room_C, yardstick)) ? year : equippedYear(inputs)
}

/** Room air at which a machine starts, °C. */
export function startsAt_C({ target, plan }: Scenario): number {
  const limit_C = target.kind === 'adaptive' ? plan.setpoint_C + UNDER_LIMIT_K : target.limit_C
  return limit_C - UNDER_LIMIT_K + airOffset_K(target)
}

/** What a machine is run with, and what the room left alone is measured by to see where it may run. */
export function machineInputs(
  { scenario, room, yardstick, weather, nightVentStop_C }: Prepared,
  machine: Machine,
): { readonly inputs: EquippedInputs; readonly stick: Yardstick } {
  const { target } = scenario
  const setpoint_C = startsAt_C(scenario)
  const allowed = hoursAhead(yardstick.limit_C)
  const inputs = {
    ...machine,
    room,
    setpoint_C,
    nightVentStop_C,
    moisture_kgh: scenario.room.moisture_kgh,
    pressure_Pa: weather.pressure_Pa[0]!,
    mostHumid_frac: target.mostHumid_frac,
    allowed,
  }
  return { inputs, stick: machineStick(yardstick, setpoint_C, allowed) }
}

/** A limit in all hours in which a machine may run: its setpoint where that is lower. */
function machineStick(stick: Yardstick, setpoint_C: number, allowed: Uint8Array): Yardstick {
  const limit_C = stick.limit_C.map((limit, h) =>
    allowed[h] === 1 ? Math.min(Number.isNaN(limit) ? setpoint_C : limit, setpoint_C) : NaN,
  )
  return { ...stick, limit_C }
}

/** How far the other limit is at least under that of the target, K. */
function leastUnder_K({ limit_C }: Yardstick, other: Yardstick): number {
  return limit_C.reduce(
    (least, limit, h) => (Number.isNaN(limit) ? least : Math.min(least, limit - other.limit_C[h]!)),
    Infinity,
  )
}

/** Hours that count, and the few before them; kept for the next machine. */
function hoursAhead(limit_C: Float64Array): Uint8Array {
  const found = known.get(limit_C) ?? new Uint8Array(limit_C.length)
  if (known.has(limit_C)) return found
  for (let h = 0; h < limit_C.length; h++)
    if (!Number.isNaN(limit_C[h]!))
      for (let k = 0; k <= AHEAD_h; k++) found[(h - k + limit_C.length) % limit_C.length] = 1
  known.set(limit_C, found)
  return found
}

const known = new WeakMap<Float64Array, Uint8Array>()
