import { gaussian, seededRandom } from '#model/basis/numbers'
import { defaultScenario } from '#model/design/scenario'
import { asBuiltCheck, asBuiltInputs, type RealFault } from '#model/handover/as-built'
import { emptyLog } from '#inside/model/handover/as-built/inputs.ts'
import { rehearsalLog } from '#inside/model/handover/as-built/rehearsal.ts'
import { hourHeats } from '#inside/model/handover/as-built/shortfall.ts'
import { ProblemError } from '#model/basis/words'
import { fewDays } from '../rooms/handover/as-built/panel.ts'
import type { RehearsedCase } from './cases.ts'

const AREA_M2 = 12
const DAYS = 14

/** What the check made of one invented log. */
export interface Judged {
  readonly planted: readonly RealFault[]
  readonly sizeNumber: number
  readonly place: string
  /** Heat of the log over the promise, without any error of weather and sensors. */
  readonly trueShare_frac: number
  /** Said to be short, or a fault named. */
  readonly alarm: boolean
  readonly named: readonly RealFault[]
  readonly ranked: readonly RealFault[]
  /** `sound` was said beside an alarm, or a fault was named twice. */
  readonly contradicts: boolean
}

/** Invents the log of a case and judges it. @param plateSensor  whether the plate has a sensor */
export function judged(
  { planted, size, sizeNumber, climate, seed }: RehearsedCase,
  plateSensor: boolean,
): Judged {
  const { place, firstDay } = climate
  const weather = fewDays(place, firstDay, DAYS)
  const base = defaultScenario()
  const kind = planted.includes('wornFilm') ? ('film' as const) : ('bare' as const)
  const scenario = { ...base, cover: { ...base.cover, kind } }
  const inputs = asBuiltInputs(scenario, weather, emptyLog(weather.hours), AREA_M2)
  const logWith = (normal: () => number) =>
    rehearsalLog(inputs, {
      fault: size,
      normal,
      runs: 'thirdDays',
      flowMeter: true,
      plateSensor,
      inlet: 'tank',
    })
  const random = seededRandom(seed)
  // A clock is off by minutes even where nobody would call it wrong: 6 minutes, one standard deviation.
  const clock_h = (size.clock_h ?? 0) + 0.1 * gaussian(random)
  const log = rehearsalLog(inputs, {
    fault: { ...size, clock_h },
    normal: () => gaussian(random),
    runs: 'thirdDays',
    flowMeter: true,
    plateSensor,
    inlet: 'tank',
  })
  const { measured_W, promised_W } = hourHeats({ ...inputs, log: logWith(() => 0) }, 1)
  const summed = (heat: Float64Array) => heat.reduce((sum, h, i) => sum + (promised_W[i]! > 0 ? h : 0), 0)
  const common = {
    planted,
    sizeNumber,
    place,
    trueShare_frac: summed(measured_W) / summed(promised_W),
  }
  try {
    const { shortfall, faults, ranked, inspections } = asBuiltCheck({ ...inputs, log })
    const alarm = shortfall.verdict === 'short' || faults.length > 0
    const codes = inspections.map(({ code }) => code)
    const contradicts = (codes.includes('sound') && alarm) || new Set(codes).size < codes.length
    return { ...common, alarm, named: faults, ranked, contradicts }
  } catch (reason) {
    // A refused log (in and out exchanged) is an alarm that names nothing.
    if (!(reason instanceof ProblemError)) throw reason
    return { ...common, alarm: true, named: [], ranked: [], contradicts: false }
  }
}
