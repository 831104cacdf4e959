import {
  CONVECTION_INSIDE_Wm2K as HC,
  FILM_INSIDE_Wm2K as HI,
  RADIATION_INSIDE_Wm2K as HR,
  CEILING_CONVECTIVE_frac,
  type GroupStep,
  type RoomPortKind,
} from '#model/building/room'

/**
 * Where a plant meets the room: the air, a cooled ceiling (convection to the air, longwave to the radiant temperature), or
 * pipes inside a layer. Heat Q put in there, constant over the step, goes to the air by `toAir` and to the radiant
 * temperature by `toRadiant`, and what the port senses is made of both by the same shares (reciprocity), so a
 * conductance from port to store takes no energy from nowhere. With the radiant temperature eliminated:
 *
 *   T_port = share · T_air + base + own · Q;   the air's equation gains share · Q
 */
export class RoomPort {
  readonly kind: RoomPortKind
  /** Place among the groups of the one with pipes; −1 without. */
  readonly piped: number
  /** The relation above for the prepared step; for the air itself 1, 0, 0. */
  share = 1
  base_C = 0
  own_KW = 0
  toAir = 1
  toRadiant = 0
  /** Mean over the step finished last, °C. */
  mean_C = 0
  /** What the pipes would read at an air and a radiant temperature of 0 °C, and their own answer to heat, K/W. */
  private still_C = 0
  private local_KW = 0

  constructor(kind: RoomPortKind, groups: readonly GroupStep[]) {
    this.kind = kind
    this.piped = kind === 'pipes' ? groups.findIndex(({ hasPipes }) => hasPipes) : -1
    if (kind === 'pipes' && this.piped < 0) throw new RangeError('pipes need a layer to lie in')
    if (kind === 'ceiling') {
      this.toAir = CEILING_CONVECTIVE_frac
      this.toRadiant = 1 - CEILING_CONVECTIVE_frac
    }
  }

  /**
   * Pipes in a group, for this step.
   * @param pipe_C  their mean without heat at inner face and pipes
   * @param alpha   what reaches the outer face, W/m²K
   * @param kept    as the group's row has it: G q/h_i, W/m²
   */
  setPipes(group: GroupStep, pipe_C: number, alpha: number, kept: number): void {
    const reach = group.db - alpha * group.cb * group.dc
    this.still_C = pipe_C + reach * kept
    this.toAir = (HC * group.inner_Wm2K * reach) / HI
    this.toRadiant = (HR * group.inner_Wm2K * reach) / HI
    this.local_KW = (group.dd - alpha * group.dc * group.dc) / group.area_m2
  }

  /** Eliminates the radiant temperature, T_mr = radiant_C + radiantShare T_air + Q toRadiant/radiant_WK. */
  follow(radiant_C: number, radiantShare: number, radiant_WK: number): void {
    if (this.kind === 'air') return
    const { toAir, toRadiant } = this
    this.share = toAir + toRadiant * radiantShare
    this.base_C = this.still_C + toRadiant * radiant_C
    this.own_KW = this.local_KW + (radiant_WK > 0 ? (toRadiant * toRadiant) / radiant_WK : 0)
  }

  /** What the port reads before heat is put in, °C. */
  free_C(air_C: number): number {
    return this.share * air_C + this.base_C
  }

  /** Its temperature with heat put in, °C. */
  at_C(air_C: number, heat_W: number): number {
    return this.share * air_C + this.base_C + this.own_KW * heat_W
  }

  /** A conductance behind the port, as it looks from before it, W/K. */
  seen_WK(conductance_WK: number): number {
    return conductance_WK / (1 + this.own_KW * conductance_WK)
  }

  /** Heat put in by what gives charging_W − charging_WK T_port, W. */
  heat_W(loop: { readonly charging_W: number; readonly charging_WK: number }, air_C: number): number {
    return (loop.charging_W - loop.charging_WK * this.free_C(air_C)) / (1 + this.own_KW * loop.charging_WK)
  }
}
