import { loopDuty } from '#model/panels/loop'
import type { RealFault } from './causes.ts'
import { AS_DESIGNED, type Departure } from './departure.ts'
import type { AsBuiltInputs } from './inputs-type.ts'
import { predictedFall_K } from './plant.ts'
import { atDesignFlow, heatRates_WK } from './shortfall.ts'

/** What is left of the promise with the faults named, and what would bring it back. */
export interface Remaining {
  /** Heat with the faults over heat without, in the weather as the log shows it. */
  readonly share_frac: number
  /** Panel to add for the promised heat as it is, m²; 0 where none is lost. */
  readonly add_m2: number
  /** Each named fault: m² of sound panel that mending it alone is worth. */
  readonly mended: readonly { readonly fault: RealFault; readonly worth_m2: number }[]
}

/** The departures that belong to each cause and take heat; sensors, clock and tank take none from the panel. */
const OF_CAUSE: Readonly<Record<RealFault, readonly (keyof Departure)[]>> = {
  lowFlow: ['flowLog', 'meterLog'],
  air: ['airy_frac'],
  deadModule: ['dead_frac'],
  poorBond: ['bondLog'],
  dirty: ['soil_frac', 'veil_frac'],
  wornFilm: ['torn_frac'],
  wetInsulation: ['back_Wm2K'],
  shading: ['shade_frac', 'dayShade_frac'],
  sensorOffset: [],
  wrongClock: [],
  warmMixing: [],
  tankLeak: [],
}
/** Less than this share is not worth more panel. */
const NEGLIGIBLE = 0.005

/** Heat left of the promise by the fitted departure, with and without each named fault. */
export function remaining(
  inputs: AsBuiltInputs,
  departure: Departure,
  faults: readonly RealFault[],
): Remaining {
  const without = (mended: readonly RealFault[]): Departure => ({
    ...departure,
    offset_K: 0,
    ...Object.fromEntries(mended.flatMap((fault) => OF_CAUSE[fault].map((key) => [key, 0]))),
  })
  const sound = heatOf(inputs, without(faults), true)
  const counted = (heat: Float64Array) => heat.reduce((sum, h, i) => sum + (sound[i]! > 0 ? h : 0), 0)
  const whole = counted(sound)
  const lost = faults.some((fault) => OF_CAUSE[fault].length > 0)
  if (whole <= 0 || !lost) return { share_frac: 1, add_m2: 0, mended: [] }
  const shareOf = (mended: readonly RealFault[]) =>
    counted(heatOf(inputs, without(mended), mended.includes('lowFlow'))) / whole
  const share_frac = shareOf([])
  const { area_m2 } = inputs
  return {
    share_frac,
    add_m2: share_frac < 1 - NEGLIGIBLE ? area_m2 * (1 / Math.max(0.05, share_frac) - 1) : 0,
    mended: faults
      .filter((fault) => OF_CAUSE[fault].length > 0)
      .map((fault) => ({ fault, worth_m2: Math.max(0, area_m2 * (shareOf([fault]) - share_frac)) })),
  }
}

/** Heat of the running hours, W: at the designed flow, or at the flow there was. */
function heatOf(inputs: AsBuiltInputs, departure: Departure, designedFlow: boolean): Float64Array {
  if (designedFlow) {
    const { capacityRate_WK } = loopDuty(inputs.loop, inputs.area_m2)
    const falls = predictedFall_K(atDesignFlow(inputs), { ...departure, flowLog: AS_DESIGNED.flowLog })
    return falls.map((fall) => fall * capacityRate_WK)
  }
  const rate_WK = heatRates_WK(inputs, Math.exp(departure.flowLog))
  return predictedFall_K(inputs, departure).map((fall, i) => fall * rate_WK[i]!)
}
