import { HOUR_ERRORS, moves } from './errors.ts'
import { AS_DESIGNED, type AsBuiltInputs } from './plant.ts'
import type { ErrorBlock } from '#model/basis/numbers'

/** Measured heat over predicted heat (field factor included) in the hours in which heat was to be given off. */
export interface HeatShare {
  /** Measured over predicted; null where no heat was predicted. */
  readonly share_frac: number | null
  /** Ends of the 90 % interval. */
  readonly low_frac: number
  readonly high_frac: number
  /** `short`: surely less than promised; `unclear`: perhaps; `kept`: no sign of less. */
  readonly verdict: 'short' | 'unclear' | 'kept'
}

/** A share under this is not called kept, however wide its interval: common practice, no source. */
const WORTH_A_WORD_FRAC = 0.9
/** Ends of the middle 90 % of a normal distribution, in standard deviations. */
const NINETY_SD = 1.645
/**
 * Errors that stay the same in all hours, one standard deviation: sky formula (the hourly error does not
 * wear off in full), wind exposure, pair of sensors, flow with and without a meter. Common practice, no source.
 */
const LASTING = { sky_Wm2: 6, windLog: 0.35, sensors_K: 0.1, meteredFlow: 0.04, flow: 0.08 } as const

interface Heats {
  /** ṁc of each judged hour, W/K. */
  readonly rate_WK: readonly number[]
  readonly measuredHeat_W: Float64Array
  readonly predictedHeat_W: Float64Array
}

/**
 * Whether the panel gives the promised heat, before any cause is asked for: Σ measured ÷ Σ predicted, with the errors
 * of weather and sensors of each hour (day by day correlated) and those that last through the log.
 * @param blocks  covariance of the hourly falls, as designed
 */
export function heatShare(inputs: AsBuiltInputs, blocks: readonly ErrorBlock[], heats: Heats): HeatShare {
  const weight = heats.rate_WK.map((rate, i) => (heats.predictedHeat_W[i]! > 0 ? rate : 0))
  const sum = (of: (row: number) => number) => weight.reduce((s, w, i) => s + (w > 0 ? of(i) : 0), 0)
  const predicted = sum((i) => heats.predictedHeat_W[i]!)
  if (predicted <= 0) return { share_frac: null, low_frac: 0, high_frac: Infinity, verdict: 'unclear' }
  const share_frac = sum((i) => heats.measuredHeat_W[i]!) / predicted
  const sky = moves(inputs, AS_DESIGNED, 'sky_Wm2', 5)
  const wind = moves(inputs, AS_DESIGNED, 'windLog', 0.1)
  const flow = inputs.log.flow_kgs === null ? LASTING.flow : LASTING.meteredFlow
  const sd_W = Math.hypot(
    hourly_W(blocks, weight),
    LASTING.sky_Wm2 * sum((i) => weight[i]! * sky[i]!),
    LASTING.windLog * sum((i) => weight[i]! * wind[i]!),
    Math.max(LASTING.sensors_K, HOUR_ERRORS.sensors_K) * sum((i) => weight[i]!),
    flow * share_frac * predicted,
  )
  const half = (NINETY_SD * sd_W) / predicted
  const high_frac = share_frac + half
  const verdict = high_frac < 1 ? 'short' : share_frac < WORTH_A_WORD_FRAC ? 'unclear' : 'kept'
  return { share_frac, low_frac: share_frac - half, high_frac, verdict }
}

/** Standard deviation of the weighted sum of the falls by the errors of single hours and days, W. */
function hourly_W(blocks: readonly ErrorBlock[], weight: readonly number[]): number {
  let variance = 0
  for (const { rows, covariance } of blocks) {
    rows.forEach((i, a) =>
      rows.forEach((j, b) => {
        variance += weight[i]! * weight[j]! * covariance.get(a, b)
      }),
    )
  }
  return Math.sqrt(variance)
}
