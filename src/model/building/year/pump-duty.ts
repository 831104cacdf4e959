import { HOUR_S } from '#model/basis/hours'
import type { Nodes } from './nodes.ts'
import { panelEffectiveness } from './panel-exchange.ts'
import type { Plant } from './inputs.ts'

/** Pipes in a mass and air from a panel: all of the step at the setpoint, none of it this much under, K: a thermostat's differential (common practice, no source). */
const THERMOSTAT_K = 0.5
/** A pump that rested: none of the step at the start difference, all of it this much over, K (common practice, no source). */
const STARTING_K = 0.5
/** A pump that ran this share of the last hour counts as running: the start difference is asked of it no more. */
const RUNNING_frac = 0.25
/** The share is found where nothing is left or lacking but this, K. */
const NEAR_K = 2e-4
const MOST_TRIALS = 12

/** What a step comes to with the pump running a share of it, as the controller's sensors see it. */
export interface StepSeen {
  /** Store's outlet, slab or air at the step's end, °C. */
  readonly sinkEnd_C: number
  /** Store's outlet (mean over the step) less where the plate comes to rest without the pump, K: by this a start is decided. */
  readonly colder_K: number
  /** Fluid into less out of the panel while it runs, mean over the step, K. */
  readonly drop_K: number
  /** The same against the mass that is cooled: by this its pump is stopped, however fast the fluid goes round. */
  readonly gain_K: number
  /** What a mass gives the fluid if that comes at the coldest it may, K: the mean over its pipes. */
  readonly mixed_K: number
}

/**
 * The share of a step that the pump runs. The controller's switching is finer than a step; what it comes to is the largest
 * share at which the fluid still comes back by the stop difference colder, the store is not under its lowest, and a
 * mass is not under the thermostat. All of these fall with the share, so there is one answer, and it moves with
 * the temperatures without a jump. A pump that rested through the last hour is asked the start difference first, of the plate at rest.
 */
export class PumpDuty {
  /** In this step, and in the one before, 0…1. */
  share = 0
  before = 0
  /** Of the last hour, fading. */
  private lately = 0
  private fade = 0
  private fadeOf_s = NaN
  private rise_K = 0
  private stop_K = 0
  private colder_K = 0
  private lowest_C = 0
  private setpoint_C = -Infinity

  /** What holds for a step: a pump that warms the fluid by more than the panel cools it is not run. */
  begin(plant: Plant, nodes: Nodes, hour: number): void {
    const { plan, loop, panel, fieldFactor_frac } = plant
    const rise_K = loop.pumpPower_W / loop.capacityRate_WK
    const resting = Math.max(0, 1 - this.lately / RUNNING_frac)
    // The resting plate shows only what could be had; of that the fluid gets the panel's effectiveness.
    const got =
      resting > 0 && rise_K > 0
        ? fieldFactor_frac * panelEffectiveness(loop, panel.conductance_Wm2K[hour]!)
        : 1
    this.rise_K = rise_K
    this.stop_K = plan.stopDifference_K
    this.colder_K = resting * Math.max(plan.startDifference_K, got > 0 ? rise_K / got : Infinity)
    this.lowest_C = plan.lowestStore_C
    this.setpoint_C = nodes.tank ? -Infinity : plan.setpoint_C
  }

  /** The start difference counts: the plate must be seen at rest before it is seen with the pump running. */
  get asksStart(): boolean {
    return this.colder_K > 0
  }

  /** Slack of the start difference at rest, K: below 0 the pump is not started whatever else holds. */
  startSlack_K(colder_K: number): number {
    return this.asksStart ? colder_K - this.colder_K : Infinity
  }

  /**
   * What is left over the controller's limits at a share, K; below 0 it would have stopped before.
   * @param air_C  mean of the room's air over the step
   */
  slack_K({ sinkEnd_C, colder_K, drop_K, gain_K, mixed_K }: StepSeen, air_C: number, share: number): number {
    return Math.min(
      gain_K - this.stop_K,
      drop_K - this.rise_K,
      mixed_K - this.rise_K,
      this.asksStart ? colder_K - this.colder_K - STARTING_K * share : Infinity,
      sinkEnd_C - this.lowest_C,
      air_C - this.setpoint_C + THERMOSTAT_K * (1 - share),
    )
  }

  /** The step is over. */
  end(step_s: number): void {
    this.before = this.share
    if (step_s !== this.fadeOf_s) {
      this.fadeOf_s = step_s
      this.fade = 1 - Math.exp(-step_s / HOUR_S)
    }
    this.lately += this.fade * (this.share - this.lately)
  }
}

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
