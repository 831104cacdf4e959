import {
  CONVECTION_INSIDE_Wm2K as HC,
  FILM_INSIDE_Wm2K as HI,
  RADIATION_INSIDE_Wm2K as HR,
  endOverMean,
  ACROSS_WK,
  AIR_WK,
  BACK_WK,
  groupAt,
  RADIANT_WK,
  TO_AIR_W,
  TO_RADIANT_W,
  type GroupStep,
  type RoomNetwork,
  type RoomPortKind,
  type RoomRows,
} from '#model/building/room'
import { RoomPort } from './room-port.ts'

/**
 * The room through one step, exact for drives that hold over it. Air and mean radiant temperature enter with their
 * means over the step; the radiant one is eliminated, so that a plant meets a single node of air:
 *
 *   air_WK · T_air = airDrive_W + what the plant gives it
 *
 * What a plant puts in elsewhere comes by its `port`. `prepare`, then the plant's own solution for the air's mean, then `finish`.
 */
export class RoomStep {
  /** Air at the end of the last step, °C. */
  air_C = 0
  /** Modes of all groups, in √(J K)/m: the state of the masses. */
  readonly masses: Float64Array
  /** What the plant meets in the prepared step. */
  air_WK = 0
  airDrive_W = 0
  /** Means over the step finished last, °C. */
  radiantMean_C = 0
  /** Where the plant meets it. */
  readonly port: RoomPort
  /** Heat in at the outer face of each group, W/m². */
  readonly outer_Wm2: Float64Array
  private readonly rows: RoomRows
  private readonly room: RoomNetwork
  /** w = fixed − follows · u of each group. */
  private readonly fixed: Float64Array
  private readonly follows: Float64Array
  private end = 0
  private endOf_WK = NaN
  private across_WK = 0
  private radiant_WK = 0
  private toRadiant_W = 0
  private hour = 0
  private readonly sums = new Float64Array(6)

  constructor(room: RoomNetwork, step_s: number, port: RoomPortKind = 'air') {
    this.room = room
    this.rows = room.rowsOf(step_s)
    this.port = new RoomPort(port, this.rows.groups)
    this.masses = new Float64Array(this.rows.modes)
    const { length } = this.rows.groups
    this.outer_Wm2 = new Float64Array(length)
    this.fixed = new Float64Array(length)
    this.follows = new Float64Array(length)
  }

  /**
   * The room before its plant.
   * @param vent_WK  added by opened windows
   */
  prepare(hour: number, vent_WK: number): void {
    const { rows, stride, groups, step_s } = this.rows
    const at = hour * stride
    const { sums, room, port } = this
    for (let i = 0; i < 6; i++) sums[i] = rows[at + i]!
    for (let i = 0; i < groups.length; i++) this.addGroup(groups[i]!, i, groupAt(at, i))
    const air_WK = sums[AIR_WK]! + vent_WK
    // Most steps have the conductance of the one before: an exponential saved.
    if (air_WK !== this.endOf_WK) {
      this.endOf_WK = air_WK
      this.end = endOverMean((air_WK * step_s) / room.airCapacity_JK)
    }
    const inertia_WK = (this.end * room.airCapacity_JK) / step_s
    const radiant_WK = sums[RADIANT_WK]!
    // A room without faces has no radiant temperature of its own: it takes the air's.
    const share = radiant_WK > 0 ? sums[ACROSS_WK]! / radiant_WK : 0
    this.hour = hour
    this.across_WK = sums[ACROSS_WK]!
    this.radiant_WK = radiant_WK
    this.toRadiant_W = sums[TO_RADIANT_W]!
    this.air_WK = air_WK + inertia_WK - sums[BACK_WK]! - share * sums[ACROSS_WK]!
    this.airDrive_W =
      sums[TO_AIR_W]! + inertia_WK * this.air_C + vent_WK * room.outdoor_C[hour]! - share * this.toRadiant_W
    if (port.piped >= 0) this.preparePipes(groups[port.piped]!, groupAt(at, port.piped))
    port.follow(radiant_WK > 0 ? this.toRadiant_W / radiant_WK : 0, radiant_WK > 0 ? -share : 1, radiant_WK)
  }

  /** The pipes as the prepared step leaves them without heat. */
  private preparePipes(group: GroupStep, mine: number): void {
    const { rows, pipeMean } = this.rows
    let mean_C = group.dc * this.fixed[this.port.piped]!
    for (let k = group.begin; k < group.end; k++) mean_C += pipeMean[k]! * this.masses[k]!
    this.port.setPipes(group, mean_C, rows[mine]!, rows[mine + 2]!)
  }

  private addGroup(group: GroupStep, i: number, mine: number): void {
    const { rows, innerMean, outerMean } = this.rows
    const { masses, sums } = this
    let inner = 0
    let outer = 0
    for (let k = group.begin; k < group.end; k++) {
      inner += innerMean[k]! * masses[k]!
      outer += outerMean[k]! * masses[k]!
    }
    const alpha = rows[mine]!
    const fixed = alpha * (rows[mine + 1]! - outer)
    this.fixed[i] = fixed
    this.follows[i] = alpha * group.cb
    const J = (group.area_m2 * group.inner_Wm2K * (inner + group.cb * fixed)) / HI
    sums[TO_AIR_W]! += HC * J
    sums[TO_RADIANT_W]! += HR * J
  }

  /** Mean radiant temperature over the step for a mean of the air, °C. */
  radiantAt_C(airMean_C: number): number {
    if (this.radiant_WK === 0) return airMean_C
    return (this.toRadiant_W - this.across_WK * airMean_C) / this.radiant_WK
  }

  /**
   * Advances air and masses to the step's end, for the mean that the air has had.
   * @param portHeat_W  heat put in at the port, which the air's mean already knows of
   */
  finish(airMean_C: number, portHeat_W = 0): void {
    const { rows, stride, groups, decay, innerGain, outerGain, pipeGain } = this.rows
    const { masses, fixed, follows, outer_Wm2, port } = this
    const { piped } = port
    const perArea_Wm2 = piped < 0 ? 0 : portHeat_W / groups[piped]!.area_m2
    const radiant_C =
      this.radiant_WK > 0
        ? this.radiantAt_C(airMean_C) + (port.toRadiant * portHeat_W) / this.radiant_WK
        : airMean_C
    this.radiantMean_C = radiant_C
    port.mean_C = port.at_C(airMean_C, portHeat_W)
    const at = this.hour * stride
    const inner_C = (HC * airMean_C + HR * radiant_C) / HI
    for (let i = 0; i < groups.length; i++) {
      const group = groups[i]!
      const u = group.inner_Wm2K * inner_C + rows[groupAt(at, i) + 2]!
      const w =
        fixed[i]! - follows[i]! * u - (i === piped ? rows[groupAt(at, i)]! * group.dc * perArea_Wm2 : 0)
      outer_Wm2[i] = w
      for (let k = group.begin; k < group.end; k++)
        masses[k] = decay[k]! * masses[k]! + innerGain[k]! * u + outerGain[k]! * w
    }
    if (piped >= 0)
      for (let k = groups[piped]!.begin; k < groups[piped]!.end; k++) masses[k]! += pipeGain[k]! * perArea_Wm2
    this.air_C += this.end * (airMean_C - this.air_C)
  }

  /** Heat in air and masses above 0 °C, J. */
  stored_J(): number {
    const { held } = this.rows
    let sum = this.room.airCapacity_JK * this.air_C
    for (let k = 0; k < held.length; k++) sum += held[k]! * this.masses[k]!
    return sum
  }

  /** Temperature now where the plant meets the room, °C: of a ceiling as the step's mean has it. */
  portNow_C(): number {
    const { port, air_C } = this
    if (port.kind === 'air') return air_C
    if (port.piped >= 0) return this.pipe_C(port.piped)
    return port.toAir * air_C + port.toRadiant * this.radiantMean_C
  }

  private pipe_C(i: number): number {
    return this.readBy(this.room.groups[i]!.modes.pipe, this.rows.groups[i]!.begin)
  }

  private readBy(shape: Float64Array, begin: number): number {
    let sum = 0
    for (let k = 0; k < shape.length; k++) sum += shape[k]! * this.masses[begin + k]!
    return sum
  }

  /** Temperature at the depth of the floor's pipes now, or of the whole slab without pipes, °C. */
  slab_C(): number {
    const { groups } = this.room
    const i = groups.findIndex(({ name }) => name === 'floor')
    if (i < 0) return this.air_C
    const { begin, hasPipes } = this.rows.groups[i]!
    return hasPipes ? this.pipe_C(i) : this.readBy(groups[i]!.modes.innermost, begin)
  }
}
