import type { FluidProperties } from './properties.ts'
import { flowRegime, tubeReynolds } from './friction.ts'
import { UNEVEN_frac, unevenHeatLoss_frac } from './evenness.ts'
import type { LoopDuty, LoopSpec } from './spec.ts'
import { figure, words, type Figure, type Wording } from '#model/basis/words'

/** Water slower than this leaves air behind in the pipe, m/s (common practice, no source). */
const CARRIES_AIR_ms = 0.6
/** Faster than this it is heard, and than the second it wears cold copper, m/s (handbook limits for copper tube). */
const QUIET_ms = 1.5
const WEARS_ms = 2.4
/** Ducts and air channels above this roar, m/s (common practice, no source). */
const AIR_ms = 8
/** Fan pressure a small fan can hardly reach, Pa (common practice, no source). */
const FAN_Pa = 400

/** A pump that takes more than this per m² of panel eats a tenth or more of what a good night gives, W/m² (40–100 W/m²: references of the evidence table). */
const HUNGRY_Wm2 = 6
const GOOD_NIGHT_Wm2 = [40, 100] as const

/** Sentences worth showing about a worked-out loop. */
export function loopRemarks(spec: LoopSpec, duty: LoopDuty, fluid: FluidProperties): Wording[] {
  const remarks = spec.fluid === 'air' ? airRemarks(duty) : waterRemarks(spec, duty)
  if (flowRegime(duty.riserReynolds) === 'transitional')
    remarks.push(
      words`Flow in the ${passageName(spec)} is between smooth and turbulent (Re ${whole(duty.riserReynolds)}): pressure and heat transfer there are uncertain by about a third.`,
    )
  const pipe = {
    flow_kgs: duty.flow_kgs,
    bore_m: duty.pipeInnerDiameter_m,
    roughness_m: 0,
    fluid,
  }
  if (flowRegime(tubeReynolds(pipe)) === 'transitional')
    remarks.push(
      words`Flow in the pipes is between smooth and turbulent (Re ${whole(tubeReynolds(pipe))}): their loss is uncertain by about a third.`,
    )
  if (duty.pumpPower_W > HUNGRY_Wm2 * duty.area_m2)
    remarks.push(
      words`The ${spec.fluid === 'air' ? 'fan' : 'pump'} needs ${figure(duty.pumpPower_W, 'W')}, and all of it warms the loop: a panel sheds ${figure(GOOD_NIGHT_Wm2[0], 'Wm2')} to ${figure(GOOD_NIGHT_Wm2[1], 'Wm2')} on a good night. Use wider or shorter tubes, or less flow.`,
    )
  if (duty.flowSpread_frac > UNEVEN_frac * (1 + 1e-6)) remarks.push(unevenRemark(spec, duty))
  return remarks
}

function waterRemarks(spec: LoopSpec, duty: LoopDuty): Wording[] {
  const remarks: Wording[] = []
  const velocity = duty.pipeVelocity_ms
  // A bore chosen here is the next one sold; the vents it needs are in every parts list and start-up.
  if (spec.pipeInnerDiameter_m !== null && velocity < CARRIES_AIR_ms)
    remarks.push(
      words`Water in the pipes runs at ${speed(velocity)}, too slow to carry air down (${speed(CARRIES_AIR_ms)}): put a vent at every high point and slope the pipes to it.`,
    )
  const fastest = Math.max(velocity, duty.riserVelocity_ms)
  if (fastest > WEARS_ms)
    remarks.push(
      words`Water runs at ${speed(fastest)} somewhere in the loop: above ${speed(WEARS_ms)} it wears copper. Use a wider tube or less flow.`,
    )
  else if (fastest >= QUIET_ms)
    remarks.push(
      words`Water runs at ${speed(fastest)} somewhere in the loop: above ${speed(QUIET_ms)} it is heard. A wider tube is quieter.`,
    )
  if (duty.liftLoss_Pa > 0)
    remarks.push(
      words`The pump must lift water ${figure(spec.lift_m, 'm', 2)} to start: that takes ${whole((100 * duty.liftLoss_Pa) / duty.pressureDrop_Pa)} % of its pressure.`,
    )
  return remarks
}

/** Surface conductance at which the heat lost to uneven flow is given, W/m²K: a bare panel in a light wind (common practice, no source). */
const SURFACE_Wm2K = 10
/** The first-order spread says no more than that it is large beyond this. */
const LARGE_SPREAD_frac = 0.5

function unevenRemark(spec: LoopSpec, duty: LoopDuty): Wording {
  const perPlate_Wm2K = 1 / (1 / SURFACE_Wm2K + 1 / duty.fluidToPlate_Wm2K)
  const spread = Math.min(duty.flowSpread_frac, LARGE_SPREAD_frac)
  const lost_frac = unevenHeatLoss_frac(spread, (perPlate_Wm2K * duty.area_m2) / duty.capacityRate_WK)
  const beyond = duty.flowSpread_frac > LARGE_SPREAD_frac ? 'more than ' : ''
  const lost = lost_frac < 0.001 ? 'less than 0.1' : beyond + (100 * lost_frac).toFixed(1)
  return words`Even when fed at one corner and drained at the opposite one, the ${passageName(spec)} of a row share the flow unevenly, by ${beyond}± ${whole(100 * spread)} %; that costs ${lost} % of the heat. Widen the headers, narrow the tubes or shorten the rows.`
}

function airRemarks(duty: LoopDuty): Wording[] {
  const remarks: Wording[] = []
  const fastest = Math.max(duty.pipeVelocity_ms, duty.riserVelocity_ms)
  if (fastest > AIR_ms)
    remarks.push(
      words`Air runs at ${speed(fastest)} somewhere in the loop: above ${speed(AIR_ms)} it roars and eats fan power. Use wider channels or less flow.`,
    )
  if (duty.pressureDrop_Pa > FAN_Pa)
    remarks.push(
      words`The fan must make ${figure(duty.pressureDrop_Pa, 'fanPressure')}: small fans reach about ${figure(FAN_Pa, 'fanPressure')}. Use wider or shorter channels.`,
    )
  return remarks
}

function passageName(spec: LoopSpec): string {
  return spec.layout === 'riser' ? 'risers' : spec.layout === 'wetted' ? 'channels' : 'tubes'
}

/** Speed in a tube or duct. */
const speed = (value_ms: number): Figure => figure(value_ms, 'flowSpeed', 2)

function whole(value: number): string {
  return value.toFixed(0)
}
