import { AS_DESIGNED, type Departure } from './departure.ts'
import { moved } from './departed.ts'
import type { AsBuiltInputs } from './inputs-type.ts'
import type { AsBuiltLog } from './log.ts'
import { RehearsedPanel } from './rehearsal-panel.ts'
import { RehearsedTank } from './rehearsal-tank.ts'
import { loopDuty } from '#model/panels/loop'

/** How the invented panel is run and what is logged. */
export interface Rehearsal {
  readonly fault: Partial<Departure>
  /** Standard normal numbers; passed in, so that the same seed gives the same log. */
  readonly normal: () => number
  /** When the pump runs: all hours, while the sun is down, or nights and every third day. */
  readonly runs: 'always' | 'nights' | 'thirdDays'
  readonly flowMeter: boolean
  readonly plateSensor: boolean
  /**
   * A tank and a room, both logged, or an inlet at its mean with a daily swing (coldest at 7, warmest at 19 local
   * standard time).
   */
  readonly inlet: 'tank' | { readonly mean_C: number; readonly swing_K: number }
}

/**
 * Errors of the invented sensors, one standard deviation: 0.2 K each, of which 0.17 K differs from hour to hour and
 * 0.1 K lasts in the difference of a pair that was compared in one bucket; meter 3 % lasting and 1 % an hour.
 * Common practice, no source.
 */
const ERRORS = { hour_K: 0.17, pair_K: 0.1, plate_K: 0.3, meter: 0.03, meterHour: 0.01 } as const

/**
 * An invented logger record: a panel with a known fault under the weather of `inputs`, worked out with the full plate
 * balance stretch by stretch along the fluid, with errors of sky, wind, sun and sensors. `inputs.log` is not read.
 */
export function rehearsalLog(inputs: AsBuiltInputs, rehearsal: Rehearsal): AsBuiltLog {
  const fault = { ...AS_DESIGNED, ...rehearsal.fault }
  const { normal, inlet } = rehearsal
  const { hours } = inputs.weather
  const column = () => new Float64Array(hours).fill(NaN)
  const [panelIn_C, panelOut_C, plate_C, store_C, room_C] = [column(), column(), column(), column(), column()]
  const flow_kgs = new Float64Array(hours)
  const pair_K = ERRORS.pair_K * normal()
  const plateError_K = ERRORS.plate_K * normal()
  const meter = 1 + ERRORS.meter * normal()
  const read = (temp_C: number) => temp_C + ERRORS.hour_K * normal()
  const panel = new RehearsedPanel(inputs, fault, normal)
  const tank = inlet === 'tank' ? new RehearsedTank(inputs, fault) : null
  for (let i = 0; i < hours; i++) {
    panel.begin(i)
    const drawn = tank?.draw(i) ?? prescribed(inlet as { mean_C: number; swing_K: number }, i)
    let heat_W = 0
    if (drawn.pumps && pumpOn(rehearsal.runs, inputs, i)) {
      const passing = passingOf(inputs, fault, normal)
      const { out_C, plate_C: mean_C } = panel.run(drawn.in_C, passing)
      heat_W = passing.capacityRate_WK * (drawn.in_C - out_C)
      panelIn_C[i] = read(drawn.in_C)
      panelOut_C[i] = read(out_C) - fault.offset_K + pair_K
      plate_C[i] = mean_C + plateError_K + fault.plateSensor_K + ERRORS.hour_K * normal()
      flow_kgs[i] = passing.flow_kgs * meter * (1 + ERRORS.meterHour * normal())
    }
    store_C[i] = read(drawn.store_C)
    room_C[i] = read(tank?.room_C(i) ?? NaN)
    tank?.pass(i, heat_W)
  }
  const columns = { panelIn_C, panelOut_C, flow_kgs, plate_C, store_C, room_C }
  return datedLog(columns, fault.clock_h, rehearsal)
}

/** The columns as the logger's clock dates them, those that are logged. */
function datedLog(
  columns: Record<'panelIn_C' | 'panelOut_C' | 'flow_kgs' | 'plate_C' | 'store_C' | 'room_C', Float64Array>,
  clock_h: number,
  { flowMeter, plateSensor, inlet }: Rehearsal,
): AsBuiltLog {
  const dated = (column: Float64Array, logged = true) => (logged ? moved(column, clock_h) : null)
  const running = columns.flow_kgs.map((flow) => (flow > 0 ? 1 : 0))
  return {
    hours: running.length,
    panelIn_C: moved(columns.panelIn_C, clock_h),
    panelOut_C: moved(columns.panelOut_C, clock_h),
    flow_kgs: dated(columns.flow_kgs, flowMeter),
    pumpRun_frac: dated(running),
    air_C: null,
    plate_C: dated(columns.plate_C, plateSensor),
    store_C: dated(columns.store_C, inlet === 'tank'),
    room_C: dated(columns.room_C, inlet === 'tank'),
    basis: 'Invented for this tool: a computed panel with sensor and weather errors added.',
  }
}

function prescribed({ mean_C, swing_K }: { mean_C: number; swing_K: number }, hour: number) {
  const in_C = mean_C + swing_K * Math.cos((2 * Math.PI * ((hour % 24) - 19)) / 24)
  return { in_C, store_C: NaN, pumps: true }
}

function pumpOn(runs: Rehearsal['runs'], { weather }: AsBuiltInputs, hour: number): boolean {
  const third = runs === 'thirdDays' && Math.floor(hour / 24) % 3 === 1
  return runs === 'always' || third || weather.globalHorizontal_Wm2[hour] === 0
}

/** Flow and working area of one hour; air keeps another part of it from the fluid in each. */
function passingOf(inputs: AsBuiltInputs, fault: Departure, normal: () => number) {
  // Even between none and twice the mean: the normal number's own share of the distribution.
  const airy = fault.airy_frac === 0 ? 0 : Math.min(0.95, 2 * fault.airy_frac * evenShare(normal()))
  const alive_frac = Math.max(0.02, (1 - fault.dead_frac) * (1 - airy))
  const kept = Math.exp(fault.flowLog + fault.meterLog) * (1 - 0.5 * airy)
  const area_m2 = inputs.area_m2 * alive_frac
  const { flow_kgs, capacityRate_WK, fluidToPlate_Wm2K } = loopDuty(
    { ...inputs.loop, flow_kgsm2: (inputs.loop.flow_kgsm2 * kept) / alive_frac },
    area_m2,
  )
  return {
    area_m2,
    flow_kgs,
    capacityRate_WK,
    fluidToPlate_Wm2K: fluidToPlate_Wm2K * Math.exp(fault.bondLog),
  }
}

/** Normal distribution function by the logistic curve, within 0.01: a number spread evenly over 0…1. */
function evenShare(normal: number): number {
  return 1 / (1 + Math.exp(-1.702 * normal))
}
