import type { PlanSpec } from './plan.ts'

/** Pipes in a mass and air from a panel: all of the step at the setpoint, none of it this much under, K: a thermostat's differential (common practice, no source). */
export const THERMOSTAT_K = 0.5
/** The band of the start difference is no narrower than this, K: none of the step at its beginning, all of it at its end (common practice, no source). */
export const NARROWEST_K = 0.1
/** The share is found where nothing is left or lacking but this, K. */
const NEAR_K = 2e-4
const MOST_TRIALS = 12

/** What a step comes to with the pump running a share of it, as the controller's sensors see it. */
export interface StepSeen {
  /** Store's outlet at the step's end (slab or air: mean over the step), °C. */
  readonly sinkEnd_C: number
  /** What the panel takes from the fluid while the pump runs, as a fall of temperature, K. */
  readonly drop_K: number
  /** How much colder the fluid comes back than it left, heat of pump and pipes in it, K. */
  readonly gain_K: number
}

/** A plate that the loop could draw from. */
interface PlateAtRest {
  /** Where it is in balance without the loop, °C. */
  balance_C(hour: number): number
  /** Store or mass from which, with the plate in balance, just so much is taken from the fluid, °C. */
  paysFrom_C(hour: number, drop_K: number): number
}

/**
 * The share of a step that the pump runs. The controller's switching is finer than a step; what it comes to is the largest
 * share at which the panel still takes the stop difference from the fluid, which comes back no warmer than it left, the store
 * is not under its lowest, and a mass is not under the thermostat. All of these fall with the share, so there is one answer, and it moves with the temperatures without a jump.
 *
 * Between its two differences a switch keeps the state that it has, and which one that is hangs on what came before: a store
 * a little warmer would start the pump and end up the colder. Here the share grows in that band from none, where just the stop
 * difference could be had from the plate in balance, to all at the start difference: no memory, and the warmer store stays the warmer,
 * at the step's end: a plate that has rested is cold for its first minutes, and by the mean a small store would end up far under the band.
 * In a tank in layers what comes back lies further down and leaves the top, which is looked at, as warm: begun at the stop difference, a
 * pump would put all of that under a store a little warmer, and nothing under another. There the share grows from where nothing is gained.
 */
export class PumpDuty {
  /** In this step, and in the one before, 0…1. */
  share = 0
  before = 0
  private readonly start_K: number
  private readonly stop_K: number
  private readonly least_K: number
  private readonly lowest_C: number
  private readonly setpoint_C: number
  private hour = -1
  /** Where the band of switching begins, of what the loop charges, °C, and its width, K. */
  private from_C = 0
  private band_K = 0

  /** @param layers  of a tank; 0 of a mass, which a thermostat guards */
  constructor(plan: PlanSpec | null, layers: number) {
    this.start_K = plan?.startDifference_K ?? 0
    this.stop_K = plan?.stopDifference_K ?? 0
    this.lowest_C = plan?.lowestStore_C ?? 0
    this.least_K = plan === null ? 0 : leastDrop_K(plan, layers)
    this.setpoint_C = plan === null || layers > 0 ? -Infinity : plan.setpoint_C
  }

  /** Sets what holds through an hour. */
  begin(plate: PlateAtRest, hour: number): void {
    if (hour === this.hour) return
    this.hour = hour
    const pays_C = plate.paysFrom_C(hour, this.stop_K)
    this.from_C = this.least_K === this.stop_K ? pays_C : plate.paysFrom_C(hour, this.least_K)
    const started_C = Math.max(plate.balance_C(hour) + this.start_K, pays_C)
    this.band_K = Math.max(NARROWEST_K, started_C - this.from_C)
  }

  /** What is left over the band of switching, K: below 0 at rest a pump is not started whatever else holds. */
  startSlack_K(sinkEnd_C: number, share: number): number {
    return sinkEnd_C - this.from_C - this.band_K * share
  }

  /**
   * What is left over the controller's limits at a share, K; below 0 it would have stopped before.
   * @param air_C  mean of the room's air over the step
   */
  slack_K({ sinkEnd_C, drop_K, gain_K }: StepSeen, air_C: number, share: number): number {
    return Math.min(
      drop_K - this.least_K,
      gain_K,
      this.startSlack_K(sinkEnd_C, share),
      sinkEnd_C - this.lowest_C,
      air_C - this.setpoint_C + THERMOSTAT_K * (1 - share),
    )
  }
}

/** What the panel must take at the least for the pump to run, K: in a tank in layers anything. */
export const leastDrop_K = ({ stopDifference_K }: PlanSpec, layers: number): number =>
  layers > 1 ? 0 : stopDifference_K

/**
 * The share, 0…1, at which a slack that falls with it is used up; 1 where it never is, 0 where there is none. The slack asked
 * last is that of the share returned.
 * @param before  the share of the step before: the end that is tried first
 * Source: Dowell & Jarratt 1971, BIT 11, 168–174 (Illinois method).
 */
export function shareUsed(slackAt_K: (share: number) => number, before: number): number {
  const first = before > 0.5 ? 1 : 0
  const atFirst = slackAt_K(first)
  if (first === 1 ? atFirst >= 0 : atFirst <= 0) return first
  const atOther = slackAt_K(1 - first)
  if (first === 0 ? atOther >= 0 : atOther <= 0) return 1 - first
  let [low, high] = [0, 1]
  let [lowSlack, highSlack] = first === 0 ? [atFirst, atOther] : [atOther, atFirst]
  let share = 0
  let side = 0
  for (let k = 0; k < MOST_TRIALS; k++) {
    share = low + ((high - low) * lowSlack) / (lowSlack - highSlack)
    const slack = slackAt_K(share)
    if (Math.abs(slack) < NEAR_K) break
    if (slack > 0) {
      low = share
      lowSlack = slack
      if (side === 1) highSlack /= 2
      side = 1
    } else {
      high = share
      highSlack = slack
      if (side === -1) lowSlack /= 2
      side = -1
    }
  }
  return share
}
