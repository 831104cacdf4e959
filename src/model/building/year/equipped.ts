import { HOUR_S } from '#model/basis/hours'
import {
  type AirConditionerSpec,
  airConditionerPower_W,
  availableCooling_W,
  type EvaporativeSpec,
  type Supply,
} from '#model/building/equipment'
import { vapourPressure_Pa, WATER_AIR_MOLAR_RATIO } from '#model/outdoors/air'
import type { RoomNetwork } from '#model/building/room'
import { NightWindows } from './night-windows.ts'
import type { YearResult } from './result.ts'
import { pastRoom } from './room-start.ts'
import { RoomStep } from './room-step.ts'

/** A cooler with its supply worked out for every hour of the record. */
export interface CoolerHours {
  readonly spec: EvaporativeSpec
  readonly supply: readonly Supply[]
}

/** One building with a machine for cooling in place of panels, and windows or a fan at night. */
export interface EquippedInputs {
  readonly room: RoomNetwork
  readonly cooler: CoolerHours | null
  readonly airConditioner: AirConditionerSpec | null
  /** The machine starts above this operative temperature, °C. */
  readonly setpoint_C: number
  readonly nightVentStop_C: number
  /** Electric power while the night opening is in use, W: that of its fan, or 0. */
  readonly nightFan_W: number
  readonly moisture_kgh: number
  readonly pressure_Pa: number
  /** Humid air is not let in above this relative humidity of the room, 0…1. */
  readonly mostHumid_frac: number
  /** Days of the record that the machine may be switched on in: 1 where it may. */
  readonly allowed: Uint8Array
}

/** The room through the year with its machine. */
export interface EquippedYear {
  /** Operative temperature, mean over each hour, °C. */
  readonly room_C: Float64Array
  readonly electric_J: number
  readonly water_kg: number
  /** Hours in which the machine ran. */
  readonly run_h: number
  /** Highest relative humidity of the room while it ran, 0…1. */
  readonly mostHumid_frac: number
}

const STEPS = 4
const WARM_UP_h = 21 * 24
/** The machine is forgotten where the room was so near to the one left alone for a day, K. */
const ALIKE_K = 1e-3
const DAY_h = 24
/** Supply must be this much colder than the room, K (common practice, no source). */
const WORTH_K = 1

/**
 * When the machine may run: spells outside which the room left alone stays well under its setpoint, first and one past the
 * last hour of each, the second maybe past the record's end; and the room left alone, with its states.
 */
export interface EquippedSeason {
  readonly spells: readonly (readonly [number, number])[]
  readonly alone: Pick<YearResult, 'room_C' | 'states'>
}

/**
 * Steps the room through the hours with its machine, as `simulateYear` does with panels.
 * @param season  null: all hours are run, after a warm-up; else its spells, each from the room left alone until the room
 *   is that again, which the other hours are: what a fan at night draws in these is not counted
 */
export function equippedYear(inputs: EquippedInputs, season: EquippedSeason | null = null): EquippedYear {
  const { room } = inputs
  const step_s = HOUR_S / STEPS
  const step = new RoomStep(room, step_s)
  if (season !== null) return seasonOf(inputs, season, step, step_s)
  const warm_h = room.hours > WARM_UP_h ? WARM_UP_h : 0
  const before = Array.from({ length: room.hours }, (_, k) => (k + room.hours - warm_h) % room.hours)
  const rest = pastRoom(room, before)
  step.begin(rest.air_C, rest.masses)
  const machine = new Machine(inputs, step)
  const room_C = new Float64Array(room.hours)
  for (let run = -warm_h; run < room.hours; run++) {
    const h = (run + room.hours) % room.hours
    if (run === 0) machine.clear()
    room_C[h] = machine.hour(step, h, step_s)
  }
  return { room_C, ...machine.result() }
}

function seasonOf(
  inputs: EquippedInputs,
  { spells, alone }: EquippedSeason,
  step: RoomStep,
  step_s: number,
): EquippedYear {
  const { hours } = inputs.room
  const { air_C, masses, count } = alone.states!
  const machine = new Machine(inputs, step)
  const room_C = alone.room_C.slice()
  let reached = -1
  for (const [k, [first, end]] of spells.entries()) {
    if (first !== reached) {
      const before = (first + hours - 1) % hours
      step.begin(air_C[before]!, masses.subarray(before * count, (before + 1) * count))
      machine.begin(alone.room_C[before]!)
    }
    const next = spells[k + 1]?.[0] ?? spells[0]![0] + hours
    let alike_h = 0
    for (reached = first; reached < end || (alike_h < DAY_h && reached < next); reached++) {
      const h = reached % hours
      room_C[h] = machine.hour(step, h, step_s)
      alike_h = Math.abs(room_C[h] - alone.room_C[h]!) < ALIKE_K ? alike_h + 1 : 0
    }
  }
  return { room_C, ...machine.result() }
}

class Machine {
  private electric_J = 0
  private water_kg = 0
  private run_s = 0
  private humid = 0
  private operative_C = NaN
  private readonly inputs: EquippedInputs
  private readonly windows: NightWindows

  constructor(inputs: EquippedInputs, step: RoomStep) {
    this.inputs = inputs
    this.windows = new NightWindows(inputs.room, inputs.nightVentStop_C, step)
  }

  clear(): void {
    this.electric_J = this.water_kg = this.run_s = this.humid = 0
  }

  /** @param operative_C  of the step before */
  begin(operative_C: number): void {
    this.operative_C = operative_C
  }

  result(): Omit<EquippedYear, 'room_C'> {
    const { electric_J, water_kg, run_s, humid } = this
    return { electric_J, water_kg, run_h: run_s / HOUR_S, mostHumid_frac: humid }
  }

  /** Its mean operative temperature, °C. */
  hour(step: RoomStep, h: number, step_s: number): number {
    let sum = 0
    for (let k = 0; k < STEPS; k++) sum += this.step(step, h, step_s)
    return sum / STEPS
  }

  /** One step; its mean operative temperature, °C. */
  private step(step: RoomStep, h: number, step_s: number): number {
    const { room, nightFan_W, airConditioner } = this.inputs
    const { windows } = this
    const outdoor_C = room.outdoor_C[h]!
    const air_C = step.air_C
    this.electric_J += windows.prepare(h) * nightFan_W * step_s
    const supply = this.supplyAt(h, air_C)
    if (supply !== null) step.prepare(h, windows.vent_WK + supply.stream_WK)
    if (supply !== null) {
      step.airDrive_W += supply.stream_WK * (supply.temp_C - outdoor_C) + this.fan_W()
      this.enterSupply(supply, step_s)
    }
    const cooling_W = airConditioner === null ? 0 : this.cooling_W(step, airConditioner, h)
    if (cooling_W > 0 && airConditioner !== null) {
      this.electric_J += step_s * airConditionerPower_W(airConditioner, cooling_W, outdoor_C)
      this.run_s += step_s
    }
    const mean_C = (step.airDrive_W - cooling_W) / step.air_WK
    step.finish(mean_C)
    this.operative_C = 0.5 * (mean_C + step.radiantMean_C)
    return this.operative_C
  }

  private fan_W(): number {
    const spec = this.inputs.cooler!.spec
    return spec.fan_Wm3h * spec.flow_m3h
  }

  private enterSupply({ evaporated_kgh }: Supply, step_s: number): void {
    const { cycles_count } = this.inputs.cooler!.spec
    this.electric_J += this.fan_W() * step_s
    this.water_kg += ((evaporated_kgh * step_s) / HOUR_S) * (cycles_count / (cycles_count - 1))
    this.run_s += step_s
  }

  /** The supply of this hour where it is worth blowing in; null where it is off. */
  private supplyAt(h: number, air_C: number): Supply | null {
    const { cooler, setpoint_C, allowed, moisture_kgh, pressure_Pa, mostHumid_frac } = this.inputs
    if (cooler === null || allowed[h] !== 1 || !(this.operative_C > setpoint_C)) return null
    const supply = cooler.supply[h]!
    if (air_C - supply.temp_C < WORTH_K + this.fan_W() / supply.stream_WK) return null
    const inside = supply.humidity_frac + moisture_kgh / 3600 / supply.flow_kgs
    const vapour_Pa = (pressure_Pa * inside) / (WATER_AIR_MOLAR_RATIO + inside)
    const humid = vapour_Pa / vapourPressure_Pa(air_C)
    if (humid > mostHumid_frac) return null
    this.humid = Math.max(this.humid, humid)
    return supply
  }

  /** What brings the operative temperature of the step to the setpoint, as far as the machine can, W. */
  private cooling_W(step: RoomStep, spec: AirConditionerSpec, h: number): number {
    const { room, setpoint_C, allowed } = this.inputs
    if (allowed[h] !== 1) return 0
    const free_C = operative_C(step, 0)
    if (free_C <= setpoint_C) return 0
    const needed_W = (free_C - setpoint_C) / (free_C - operative_C(step, 1))
    return Math.min(needed_W, availableCooling_W(spec, room.outdoor_C[h]!))
  }
}

/** Mean operative temperature of the prepared step with so much heat taken from the air, °C. */
function operative_C(step: RoomStep, cooling_W: number): number {
  const air_C = (step.airDrive_W - cooling_W) / step.air_WK
  return 0.5 * (air_C + step.radiantAt_C(air_C))
}
