import {
  CONVECTION_INSIDE_Wm2K as HC,
  FILM_INSIDE_Wm2K as HI,
  RADIATION_INSIDE_Wm2K as HR,
  endOverMean,
  ACROSS_WK,
  addFaces,
  AIR_WK,
  BACK_WK,
  groupAt,
  RADIANT_WK,
  TO_AIR_W,
  TO_RADIANT_W,
  type GroupStep,
  type RoomNetwork,
  type RoomRows,
} from '#model/building/room'

/**
 * The room through one step, exact for drives that hold over it. Air and mean radiant temperature enter with their
 * means over the step; the radiant one is eliminated, so that a plant meets a single node of air:
 *
 *   air_WK · T_air = airDrive_W + what the plant gives it
 *
 * `prepare`, then the plant's own solution for the air's mean, then `finish`.
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
  /** Heat in at the outer face of each group, W/m², and at its pipes. */
  readonly outer_Wm2: Float64Array
  pipe_Wm2 = 0
  private readonly rows: RoomRows
  private readonly room: RoomNetwork
  /** w = fixed − follows · u of each group. */
  private readonly fixed: Float64Array
  private readonly follows: Float64Array
  private pipeFixed = 0
  private pipeFollows = 0
  private end = 0
  private endOf_WK = NaN
  private readonly piped: number
  private across_WK = 0
  private radiant_WK = 0
  private toRadiant_W = 0
  private hour = 0
  private readonly sums = new Float64Array(6)

  constructor(room: RoomNetwork, step_s: number) {
    this.room = room
    this.rows = room.rowsOf(step_s)
    this.piped = this.rows.groups.findIndex(({ hasPipes }) => hasPipes)
    this.masses = new Float64Array(this.rows.modes)
    const { length } = this.rows.groups
    this.outer_Wm2 = new Float64Array(length)
    this.fixed = new Float64Array(length)
    this.follows = new Float64Array(length)
  }

  /**
   * The room before its plant.
   * @param vent_WK      added by opened windows
   * @param pipes_WK     heat into the pipes is pipes_W − pipes_WK × their temperature; both 0 without
   */
  prepare(hour: number, vent_WK: number, pipes_WK: number, pipes_W: number): void {
    const { rows, stride, groups, step_s } = this.rows
    const at = hour * stride
    const { sums, room } = this
    for (let i = 0; i < 6; i++) sums[i] = rows[at + i]!
    for (let i = 0; i < groups.length; i++) {
      const group = groups[i]!
      if (group.hasPipes) this.withPipes(group, i, groupAt(at, i), pipes_WK, pipes_W)
      else this.without(group, i, groupAt(at, i))
    }
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
  }

  private without(group: GroupStep, i: number, mine: number): void {
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

  /** Outer face and pipes are solved together, for each feels the other. */
  private withPipes(group: GroupStep, i: number, mine: number, pipes_WK: number, pipes_W: number): void {
    const { rows, innerMean, outerMean, pipeMean } = this.rows
    const { masses } = this
    let inner = 0
    let outer = 0
    let pipe = 0
    for (let k = group.begin; k < group.end; k++) {
      inner += innerMean[k]! * masses[k]!
      outer += outerMean[k]! * masses[k]!
      pipe += pipeMean[k]! * masses[k]!
    }
    const Go = rows[mine]!
    const Gp = pipes_WK / group.area_m2
    const outside = Go * (rows[mine + 1]! - outer)
    const carried = pipes_W / group.area_m2 - Gp * pipe
    const ofOuter = 1 + Go * group.cc
    const ofPipe = 1 + Gp * group.dd
    const D = ofOuter * ofPipe - Go * Gp * group.dc * group.dc
    this.fixed[i] = (ofPipe * outside - Go * group.dc * carried) / D
    this.follows[i] = (ofPipe * Go * group.cb - Go * group.dc * Gp * group.db) / D
    this.pipeFixed = (ofOuter * carried - Gp * group.dc * outside) / D
    this.pipeFollows = (ofOuter * Gp * group.db - Gp * group.dc * Go * group.cb) / D
    const G = group.inner_Wm2K
    const Y = G * (1 - G * (group.bb - group.cb * this.follows[i] - group.db * this.pipeFollows))
    const J = G * (inner + group.cb * this.fixed[i] + group.db * this.pipeFixed)
    addFaces(this.sums, 0, group.area_m2, Y, J, (rows[mine + 2]! * HI) / G)
  }

  /** Mean radiant temperature over the step for a mean of the air, °C. */
  radiantAt_C(airMean_C: number): number {
    if (this.radiant_WK === 0) return airMean_C
    return (this.toRadiant_W - this.across_WK * airMean_C) / this.radiant_WK
  }

  /** The pipes’ mean temperature over the prepared step for a mean of the air, °C; NaN without pipes. */
  pipeAt_C(airMean_C: number): number {
    const { stride, rows, pipeMean, groups } = this.rows
    const i = this.piped
    const group = groups[i]!
    const radiant_C = this.radiantAt_C(airMean_C)
    const mine = groupAt(this.hour * stride, i)
    const u = (group.inner_Wm2K * (HC * airMean_C + HR * radiant_C)) / HI + rows[mine + 2]!
    let mean = 0
    for (let k = group.begin; k < group.end; k++) mean += pipeMean[k]! * this.masses[k]!
    const w = this.fixed[i]! - this.follows[i]! * u
    const wp = this.pipeFixed - this.pipeFollows * u
    return mean + group.db * u + group.dc * w + group.dd * wp
  }

  /** Advances air and masses to the step's end, for the mean that the air has had. */
  finish(airMean_C: number): void {
    const { rows, stride, groups, decay, innerGain, outerGain, pipeGain } = this.rows
    const { masses, fixed, follows, outer_Wm2 } = this
    const radiant_C = this.radiantAt_C(airMean_C)
    this.radiantMean_C = radiant_C
    const at = this.hour * stride
    const inner_C = (HC * airMean_C + HR * radiant_C) / HI
    for (let i = 0; i < groups.length; i++) {
      const group = groups[i]!
      const u = group.inner_Wm2K * inner_C + rows[groupAt(at, i) + 2]!
      const w = fixed[i]! - follows[i]! * u
      outer_Wm2[i] = w
      if (group.hasPipes) {
        const wp = this.pipeFixed - this.pipeFollows * u
        this.pipe_Wm2 = wp
        for (let k = group.begin; k < group.end; k++)
          masses[k] = decay[k]! * masses[k]! + innerGain[k]! * u + outerGain[k]! * w + pipeGain[k]! * wp
      } else {
        for (let k = group.begin; k < group.end; k++)
          masses[k] = decay[k]! * masses[k]! + innerGain[k]! * u + outerGain[k]! * w
      }
    }
    this.air_C += this.end * (airMean_C - this.air_C)
  }

  /** Heat in air and masses above 0 °C, J. */
  stored_J(): number {
    const { held } = this.rows
    let sum = this.room.airCapacity_JK * this.air_C
    for (let k = 0; k < held.length; k++) sum += held[k]! * this.masses[k]!
    return sum
  }

  /** Temperature at the depth of the pipes now, or of the floor's whole mass without pipes, °C. */
  slab_C(): number {
    const { room } = this
    for (let i = 0; i < room.groups.length; i++) {
      const { name, modes } = room.groups[i]!
      if (name !== 'floor') continue
      const { begin, hasPipes } = this.rows.groups[i]!
      let sum = 0
      let held = 0
      for (let k = 0; k < modes.count; k++) {
        sum += (hasPipes ? modes.pipe[k]! : modes.held[k]!) * this.masses[begin + k]!
        held += modes.held[k]! ** 2
      }
      return hasPipes ? sum : sum / held
    }
    return this.air_C
  }
}
