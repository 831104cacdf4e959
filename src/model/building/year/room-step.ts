import {
  CONVECTION_INSIDE_Wm2K as HC,
  FILM_INSIDE_Wm2K as HI,
  RADIATION_INSIDE_Wm2K as HR,
  endOverMean,
  ACROSS_WK,
  AIR_WK,
  BACK_WK,
  groupAt,
  PER_GROUP,
  PER_MODE,
  RADIANT_WK,
  TO_AIR_W,
  TO_RADIANT_W,
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
  /** Modes of all groups, in √(J K)/m: the state of the masses. They are set by `begin`. */
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
  /** Mean temperatures of each group's faces over the coming step without heat at them, as the masses now are, °C. */
  private readonly inner_C: Float64Array
  private readonly outer_C: Float64Array
  /** What holds for an hour with the windows as they are. */
  private hour = -1
  private vent_WK = 0
  private at = 0
  private end = 0
  private endOf_WK = NaN
  private inertia_WK = 0
  private across_WK = 0
  private radiant_WK = 0
  private radiantShare = 0
  private hourToAir_W = 0
  private hourToRadiant_W = 0
  /** Of the prepared step. */
  private toRadiant_W = 0

  constructor(room: RoomNetwork, step_s: number, port: RoomPortKind = 'air') {
    this.room = room
    this.rows = room.rowsOf(step_s)
    this.port = new RoomPort(port, this.rows.groups)
    this.masses = new Float64Array(this.rows.modes)
    const { length } = this.rows.groups
    this.outer_Wm2 = new Float64Array(length)
    this.inner_C = new Float64Array(length)
    this.outer_C = new Float64Array(length)
  }

  /** Puts air, °C, and masses where they are to begin. */
  begin(air_C: number, masses: ArrayLike<number>): void {
    const { innerMean, outerMean, ends } = this.rows
    const { inner_C, outer_C } = this
    this.air_C = this.radiantMean_C = air_C
    this.masses.set(masses)
    inner_C.fill(0)
    outer_C.fill(0)
    for (let i = 0, k = 0; i < ends.length; i++)
      for (; k < ends[i]!; k++) {
        inner_C[i]! += innerMean[k]! * this.masses[k]!
        outer_C[i]! += outerMean[k]! * this.masses[k]!
      }
  }

  /**
   * The room before its plant.
   * @param vent_WK  added by opened windows
   */
  prepare(hour: number, vent_WK: number): void {
    if (hour !== this.hour || vent_WK !== this.vent_WK) this.setHour(hour, vent_WK)
    const { inner_C, outer_C, port } = this
    const { rows, given_WK, cb } = this.rows
    let J = 0
    for (let i = 0, mine = groupAt(this.at, 0); i < inner_C.length; i++, mine += PER_GROUP)
      J += given_WK[i]! * (inner_C[i]! + cb[i]! * rows[mine]! * (rows[mine + 1]! - outer_C[i]!))
    this.toRadiant_W = this.hourToRadiant_W + HR * J
    this.airDrive_W =
      this.hourToAir_W + HC * J + this.inertia_WK * this.air_C - this.radiantShare * this.toRadiant_W
    if (port.kind !== 'air') this.preparePort()
  }

  /** Copies an hour's row: most steps go on with that of the one before. */
  private setHour(hour: number, vent_WK: number): void {
    const { rows, stride, step_s } = this.rows
    const { room } = this
    const at = hour * stride
    const air_WK = rows[at + AIR_WK]! + vent_WK
    if (air_WK !== this.endOf_WK) {
      this.endOf_WK = air_WK
      this.end = endOverMean((air_WK * step_s) / room.airCapacity_JK)
    }
    this.hour = hour
    this.vent_WK = vent_WK
    this.at = at
    this.inertia_WK = (this.end * room.airCapacity_JK) / step_s
    this.across_WK = rows[at + ACROSS_WK]!
    this.radiant_WK = rows[at + RADIANT_WK]!
    // A room without faces has no radiant temperature of its own: it takes the air's.
    this.radiantShare = this.radiant_WK > 0 ? this.across_WK / this.radiant_WK : 0
    this.hourToAir_W = rows[at + TO_AIR_W]! + vent_WK * room.outdoor_C[hour]!
    this.hourToRadiant_W = rows[at + TO_RADIANT_W]!
    this.air_WK = air_WK + this.inertia_WK - rows[at + BACK_WK]! - this.radiantShare * this.across_WK
  }

  private preparePort(): void {
    const { port, radiant_WK } = this
    if (port.piped >= 0) this.preparePipes(port.piped)
    const radiant_C = radiant_WK > 0 ? this.toRadiant_W / radiant_WK : 0
    port.follow(radiant_C, radiant_WK > 0 ? -this.radiantShare : 1, radiant_WK)
  }

  /** The pipes as the prepared step leaves them without heat. */
  private preparePipes(i: number): void {
    const { rows, pipeMean, groups } = this.rows
    const group = groups[i]!
    const mine = groupAt(this.at, i)
    let mean_C = group.dc * rows[mine]! * (rows[mine + 1]! - this.outer_C[i]!)
    for (let k = group.begin; k < group.end; k++) mean_C += pipeMean[k]! * this.masses[k]!
    this.port.setPipes(group, mean_C, rows[mine]!, rows[mine + 2]!)
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
    const { port } = this
    const radiant_C =
      this.radiant_WK > 0
        ? this.radiantAt_C(airMean_C) + (port.toRadiant * portHeat_W) / this.radiant_WK
        : airMean_C
    this.radiantMean_C = radiant_C
    this.advance((HC * airMean_C + HR * radiant_C) / HI)
    if (port.kind !== 'air') port.mean_C = port.at_C(airMean_C, portHeat_W)
    if (port.piped >= 0 && portHeat_W !== 0) this.enterPipes(port.piped, portHeat_W)
    this.air_C += this.end * (airMean_C - this.air_C)
  }

  /** Masses at the step's end, and in the same pass what the next step asks of them. */
  private advance(star_C: number): void {
    const { rows, ends, modeRows, inner_Wm2K, cb, step_s } = this.rows
    const { masses, inner_C, outer_C, outer_Wm2 } = this
    let k = 0
    let m = 0
    for (let i = 0, mine = groupAt(this.at, 0); i < ends.length; i++, mine += PER_GROUP) {
      const u = inner_Wm2K[i]! * star_C + rows[mine + 2]!
      const w = rows[mine]! * (rows[mine + 1]! - outer_C[i]! - cb[i]! * u)
      const inner_Jm2 = step_s * u
      const outer_Jm2 = step_s * w
      let inner = 0
      let outer = 0
      for (const end = ends[i]!; k < end; k++, m += PER_MODE) {
        const b = modeRows[m + 1]!
        const c = modeRows[m + 2]!
        const z = modeRows[m]! * masses[k]! + b * inner_Jm2 + c * outer_Jm2
        masses[k] = z
        inner += b * z
        outer += c * z
      }
      outer_Wm2[i] = w
      inner_C[i] = inner
      outer_C[i] = outer
    }
  }

  /** What heat at the pipes adds: at the outer face within the step, and to their group's masses. */
  private enterPipes(i: number, heat_W: number): void {
    const { rows, groups, innerMean, outerMean, pipeMean, step_s } = this.rows
    const { masses } = this
    const { area_m2, dc, begin, end } = groups[i]!
    const perArea_Wm2 = heat_W / area_m2
    const less_Wm2 = rows[groupAt(this.at, i)]! * dc * perArea_Wm2
    this.outer_Wm2[i]! -= less_Wm2
    let inner = 0
    let outer = 0
    for (let k = begin; k < end; k++) {
      masses[k]! += step_s * (pipeMean[k]! * perArea_Wm2 - outerMean[k]! * less_Wm2)
      inner += innerMean[k]! * masses[k]!
      outer += outerMean[k]! * masses[k]!
    }
    this.inner_C[i] = inner
    this.outer_C[i] = outer
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
