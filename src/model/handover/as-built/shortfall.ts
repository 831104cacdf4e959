import { AS_DESIGNED } from './departure.ts'
import { HOUR_ERRORS, nightOf } from './errors.ts'
import type { AsBuiltInputs } from './inputs-type.ts'
import { runningHours } from './log.ts'
import { predictedFall_K } from './plant.ts'
import { loopDuty } from '#model/panels/loop'

/** Measured heat over promised heat (field factor included) in the hours in which heat was to be given off. */
export interface HeatShare {
  /** Measured over promised; null where no heat was promised. */
  readonly share_frac: number | null
  /** Ends of the 90 % interval. */
  readonly low_frac: number
  readonly high_frac: number
  /** `short`: surely less than promised; `unclear`: perhaps; `kept`: no sign of less. */
  readonly verdict: 'short' | 'unclear' | 'kept'
}

/** Heat of each running hour, W: as logged, and as promised at the designed flow for the logged inlet. */
export interface HourHeats {
  readonly measured_W: Float64Array
  readonly promised_W: Float64Array
}

/** A share under this is not called kept, however wide its interval: common practice, no source. */
const WORTH_A_WORD_FRAC = 0.9
/** Ends of the middle 90 % of a normal distribution, in standard deviations. */
const NINETY_SD = 1.645
/**
 * Errors that stay the same in all hours, one standard deviation: sky formula (the hourly error does not wear off
 * in full), wind exposure, pair of sensors, flow with and without a meter. Common practice, no source.
 */
const LASTING = { sky_Wm2: 6, windLog: 0.35, sensors_K: 0.1, meteredFlow: 0.04, flow: 0.08 } as const

/** ṁc of each running hour, W/K: as metered, else as designed times `unmetered_frac`. */
export function heatRates_WK(inputs: AsBuiltInputs, unmetered_frac = 1): Float64Array {
  const { loop, area_m2, log } = inputs
  const designed = loopDuty(loop, area_m2)
  const perFlow = designed.capacityRate_WK / designed.flow_kgs
  return Float64Array.from(runningHours(log), (hour) =>
    log.flow_kgs === null ? designed.capacityRate_WK * unmetered_frac : log.flow_kgs[hour]! * perFlow,
  )
}

/** The log without its meter: the promise is made at the designed flow, whatever a meter says. */
export function atDesignFlow(inputs: AsBuiltInputs): AsBuiltInputs {
  const running = new Set(runningHours(inputs.log))
  const pumpRun_frac = Float64Array.from({ length: inputs.log.hours }, (_, hour) =>
    running.has(hour) ? 1 : 0,
  )
  return { ...inputs, log: { ...inputs.log, flow_kgs: null, pumpRun_frac } }
}

/** Heat of the running hours. @param unmetered_frac  share of the designed flow where there is no meter */
export function hourHeats(inputs: AsBuiltInputs, unmetered_frac: number): HourHeats {
  const { log } = inputs
  const rate_WK = heatRates_WK(inputs, unmetered_frac)
  const designed_WK = loopDuty(inputs.loop, inputs.area_m2).capacityRate_WK
  const hours = runningHours(log)
  return {
    measured_W: rate_WK.map((rate, i) => rate * (log.panelIn_C[hours[i]!]! - log.panelOut_C[hours[i]!]!)),
    promised_W: predictedFall_K(atDesignFlow(inputs), AS_DESIGNED).map((fall) => fall * designed_WK),
  }
}

/**
 * Whether the panel gives the promised heat, before any cause is asked for: Σ measured ÷ Σ promised, with the errors
 * of weather and sensors of each hour (night by night correlated) and those that last through the log.
 */
export function heatShare(inputs: AsBuiltInputs, { measured_W, promised_W }: HourHeats): HeatShare {
  const counts = promised_W.map((heat) => (heat > 0 ? 1 : 0))
  const sum = (of: (row: number) => number) => counts.reduce((s, w, i) => s + (w > 0 ? of(i) : 0), 0)
  const promised = sum((i) => promised_W[i]!)
  if (promised <= 0) return { share_frac: null, low_frac: 0, high_frac: Infinity, verdict: 'unclear' }
  const share_frac = sum((i) => measured_W[i]!) / promised
  const moved = (key: 'sky_Wm2' | 'windLog', step: number) => {
    const designed_WK = loopDuty(inputs.loop, inputs.area_m2).capacityRate_WK
    const at = predictedFall_K(atDesignFlow(inputs), { ...AS_DESIGNED, [key]: step })
    return at.map((fall, i) => (fall * designed_WK - promised_W[i]!) / step)
  }
  const sky = moved('sky_Wm2', 5)
  const wind = moved('windLog', 0.1)
  const flow = inputs.log.flow_kgs === null ? LASTING.flow : LASTING.meteredFlow
  const rate_WK = heatRates_WK(inputs)
  const sd_W = Math.hypot(
    passing_W(inputs, counts, sky, wind, rate_WK),
    LASTING.sky_Wm2 * sum((i) => sky[i]!),
    LASTING.windLog * sum((i) => wind[i]!),
    LASTING.sensors_K * sum((i) => rate_WK[i]!),
    flow * share_frac * promised,
  )
  const half = (NINETY_SD * sd_W) / promised
  const high_frac = share_frac + half
  const verdict = high_frac < 1 ? 'short' : share_frac < WORTH_A_WORD_FRAC ? 'unclear' : 'kept'
  return { share_frac, low_frac: share_frac - half, high_frac, verdict }
}

/** Standard deviation of the summed heat by the errors of single hours and nights, W. */
function passing_W(
  { log, weather }: AsBuiltInputs,
  counts: Float64Array,
  sky: Float64Array,
  wind: Float64Array,
  rate_WK: Float64Array,
): number {
  const nights = new Map<number, number>()
  let variance = 0
  runningHours(log).forEach((hour, i) => {
    if (counts[i] === 0) return
    nights.set(nightOf(hour), (nights.get(nightOf(hour)) ?? 0) + HOUR_ERRORS.skyDay_Wm2 * sky[i]!)
    const cloud = HOUR_ERRORS.cloudSky_Wm2 * weather.cloud_frac[hour]!
    variance +=
      (sky[i]! * Math.hypot(HOUR_ERRORS.skyHour_Wm2, cloud)) ** 2 +
      (wind[i]! * HOUR_ERRORS.windLog) ** 2 +
      (rate_WK[i]! * HOUR_ERRORS.sensors_K) ** 2
  })
  for (const night of nights.values()) variance += night ** 2
  return Math.sqrt(variance)
}
