import { departedHours, type PanelPart } from './departed.ts'
import type { Departure } from './departure.ts'
import type { AsBuiltInputs } from './inputs-type.ts'
import { runningHours, type AsBuiltLog } from './log.ts'
import { loopDuty, type LoopDuty } from '#model/panels/loop'
import { type PanelTangent, panelTangent, LONGEST_STEP_S, waterAfter_kgm2 } from '#model/panels/plate'
import { panelExchange_WK } from '#model/building/year'

/** Dew and frost are stepped no longer than their evaporation limit allows: else more would dry than is there. */
export const STEPS_AN_HOUR = 3600 / LONGEST_STEP_S

/** What the panel's own sensors should read in the running hours of the log, in their order. */
export interface Predicted {
  /** Temperature fall of the fluid (in − out), K. */
  readonly fall_K: Float64Array
  /** Plate, mean over the area that works, °C. */
  readonly plate_C: Float64Array
}

/** Predicted temperature fall of the fluid (in − out), K, in the running hours of the log, in their order. */
export function predictedFall_K(inputs: AsBuiltInputs, departure: Departure): Float64Array {
  return predicted(inputs, departedHours(inputs, departure), departure).fall_K
}

/** Fall and plate temperature in the running hours, for panel hours already departed. */
export function predicted(
  inputs: AsBuiltInputs,
  parts: readonly PanelPart[],
  departure: Departure,
): Predicted {
  const { log, fieldFactor_frac } = inputs
  const dutyOf = hourDuties(inputs, departure)
  const running = new Set(runningHours(log))
  const fall_K = new Float64Array(running.size)
  const plates_C = new Float64Array(running.size)
  const plate = new PartedPlate(parts, fieldFactor_frac)
  const { limit_kgm2 } = plate
  let water_kgm2 = 0
  let row = 0
  for (let hour = 0; hour < log.hours; hour++) {
    const duty = running.has(hour) ? dutyOf(hour) : null
    let shed_W = 0
    let plateSum_K = 0
    for (let left = STEPS_AN_HOUR; left > 0;) {
      const plate_C = plate.settle(hour, duty, log, water_kgm2)
      const rate_kgm2s = plate.tangent.water_kgm2s
      const after_kgm2 = waterAfter_kgm2(water_kgm2, rate_kgm2s, LONGEST_STEP_S, plate_C, limit_kgm2)
      // Where the water stays as it is, so does all else to the end of the hour.
      const steps = after_kgm2 === water_kgm2 ? left : 1
      shed_W += ((duty?.area_m2 ?? 0) * fieldFactor_frac * plate.tangent.q_Wm2 * steps) / STEPS_AN_HOUR
      plateSum_K += (plate_C * steps) / STEPS_AN_HOUR
      water_kgm2 = after_kgm2
      left -= steps
    }
    if (duty === null) continue
    plates_C[row] = plateSum_K + departure.plateSensor_K
    fall_K[row++] = shed_W / duty.capacityRate_WK + departure.offset_K
  }
  return { fall_K, plate_C: plates_C }
}

/** The loop in each hour: at the metered flow where there is a meter, over the area that works. */
function hourDuties({ loop, area_m2, log }: AsBuiltInputs, departure: Departure): (hour: number) => LoopDuty {
  const alive_frac = Math.max(0.02, (1 - departure.dead_frac) * (1 - departure.airy_frac))
  const flow_kgsm2 = (loop.flow_kgsm2 * Math.exp(departure.flowLog)) / alive_frac
  const duty = loopDuty({ ...loop, flow_kgsm2 }, area_m2 * alive_frac)
  const designed = { ...duty, fluidToPlate_Wm2K: duty.fluidToPlate_Wm2K * Math.exp(departure.bondLog) }
  const { flow_kgs: metered } = log
  if (metered === null) return () => designed
  const specificHeat_JkgK = designed.capacityRate_WK / designed.flow_kgs
  return (hour) => {
    const flow_kgs = metered[hour]! * Math.exp(departure.flowLog)
    return { ...designed, flow_kgs, capacityRate_WK: flow_kgs * specificHeat_JkgK }
  }
}

/** The mean plate over its parts, in balance with the fluid or at rest. */
class PartedPlate {
  readonly tangent: PanelTangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }
  readonly limit_kgm2: number
  private readonly part: PanelTangent = { q_Wm2: 0, slope_Wm2K: 0, water_kgm2s: 0 }

  constructor(
    private readonly parts: readonly PanelPart[],
    private readonly fieldFactor_frac: number,
  ) {
    this.limit_kgm2 = parts[0]!.hours.waterLimit_kgm2
  }

  /** Plate temperature of the hour, °C; leaves its heat in `tangent`. */
  settle(hour: number, duty: LoopDuty | null, log: AsBuiltLog, water_kgm2: number): number {
    if (duty === null) {
      const rest_C = this.parts[0]!.hours.equilibrium_C[hour]!
      this.read(hour, rest_C, water_kgm2)
      return rest_C
    }
    const in_C = log.panelIn_C[hour]!
    let plate_C = in_C
    for (let i = 0; i < 8; i++) {
      this.read(hour, plate_C, water_kgm2)
      const slope_Wm2K = this.fieldFactor_frac * this.tangent.slope_Wm2K
      const exchange = panelExchange_WK(duty, slope_Wm2K)
      const excess_W = duty.area_m2 * this.fieldFactor_frac * this.tangent.q_Wm2 - exchange * (in_C - plate_C)
      const step = -excess_W / (duty.area_m2 * slope_Wm2K + exchange)
      if (Math.abs(step) < 1e-4) break
      plate_C += step
    }
    return plate_C
  }

  /** Heat, slope and water of all parts at one temperature; water is kept for the first. */
  private read(hour: number, plate_C: number, water_kgm2: number): void {
    const { tangent, part, parts } = this
    panelTangent(parts[0]!.hours, hour, plate_C, water_kgm2, tangent)
    if (parts.length === 1) return
    const water = tangent.water_kgm2s
    let q = 0
    let slope = 0
    parts.forEach(({ share_frac, hours }, i) => {
      panelTangent(hours, hour, plate_C, i === 0 ? water_kgm2 : 0, part)
      q += share_frac * part.q_Wm2
      slope += share_frac * part.slope_Wm2K
    })
    tangent.q_Wm2 = q
    tangent.slope_Wm2K = slope
    tangent.water_kgm2s = water
  }
}
