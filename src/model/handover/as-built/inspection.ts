import { causeWords } from './cause-words.ts'
import { isLarge, type RealFault } from './causes.ts'
import type { Diagnosis, Explanation } from './diagnose.ts'
import type { Observed } from './observed.ts'
import type { HeatShare } from './shortfall.ts'
import { sawSun } from './sunlit.ts'

/** Something to look at on the roof, and why. */
export interface Inspection {
  /** Of a cause, its own; else `unlit`, `dew`, `shelter`, `unexplained`, `short`, `unclear`, `sound`. */
  readonly code: string
  readonly what: string
  readonly why: string
  /** What would separate it from the other causes tomorrow night; empty where there is nothing to separate. */
  readonly test: string
}

/** Scatter over stated scatter above which something else is going on. */
const UNEXPLAINED_SCALE = 2.5
/** Share of judged hours with the outlet at or below the dew point that is worth a word. */
const DEWY_SHARE = 0.2
/** Causes not named are worth a word from this belief, and no more of them than this. */
const WORTH_A_WORD = 0.03
const MOST_RIVALS = 3

/** What to inspect, the most likely first. Nothing here may contradict another: `sound` is only said alone. */
export function inspections(
  observed: Observed,
  diagnosis: Diagnosis,
  best: Explanation,
  faults: readonly RealFault[],
  shortfall: HeatShare,
): Inspection[] {
  const found: Inspection[] = diagnosis.ranked
    .filter((fault) => faults.includes(fault))
    .map((fault) => cardOf(observed, fault, best))
  const short = faults.length === 0 && shortfall.verdict !== 'kept'
  if (short) found.push(withoutCause(shortfall))
  if (faults.length > 0 || short) found.push(...rivals(observed, diagnosis, faults))
  const scale = best.chiSquare / best.residual.length
  if (scale > UNEXPLAINED_SCALE) {
    found.push({
      code: 'unexplained',
      what: 'Check sensor places, the clock of the logger, and that the weather is that of the site.',
      why: `What is left scatters ${Math.sqrt(scale).toFixed(1)} times more than stated errors: ${faults.length === 0 ? 'none of the usual faults explains it' : 'what is named above does not explain that part'}.`,
      test: '',
    })
  }
  if (found.length === 0) {
    found.push({
      code: 'sound',
      what: 'Nothing needs mending.',
      why: `The panel gives ${percentOf(shortfall)} of the heat promised, field factor included: within the errors of weather and sensors.`,
      test: '',
    })
  }
  return [...found, ...conditionInspections(observed, best)]
}

const percentOf = ({ share_frac }: HeatShare) => `${Math.round(100 * (share_frac ?? NaN))} %`

function cardOf(observed: Observed, fault: RealFault, { departure }: Explanation): Inspection {
  const { code, what, size, test } = causeWords(fault, observed.inputs.panel.film !== null)
  return { code, what, why: size(departure), test }
}

/** Causes that the log cannot rule out beside those named, each with the size it would have. */
function rivals(observed: Observed, diagnosis: Diagnosis, faults: readonly RealFault[]): Inspection[] {
  return diagnosis.ranked
    .filter((fault) => !faults.includes(fault) && diagnosis.belief[fault] > WORTH_A_WORD)
    .slice(0, MOST_RIVALS)
    .flatMap((fault) => {
      const with_ = diagnosis.explanations.find(({ causes }) => causes.includes(fault))!
      if (!isLarge(fault, with_.departure)) return []
      const card = cardOf(observed, fault, with_)
      const surely = Math.round(100 * diagnosis.belief[fault])
      return [
        {
          ...card,
          why: `Not ruled out (${surely < 1 ? 'under 1' : surely} % likely). If so: ${lowered(card.why)}`,
        },
      ]
    })
}

const lowered = (sentence: string) => sentence.charAt(0).toLowerCase() + sentence.slice(1)

/** Less heat than promised and no cause that the log can name: what would separate them tomorrow night. */
function withoutCause(shortfall: HeatShare): Inspection {
  const { share_frac, low_frac, high_frac, verdict } = shortfall
  if (share_frac === null) {
    return {
      code: 'unclear',
      what: 'Log nights with water warmer than the panel at rest.',
      why: 'In none of the judged hours was heat to be given off: this log can neither find nor clear a shortfall.',
      test: '',
    }
  }
  const between = `${percentOf(shortfall)} of the heat promised, field factor included (90 % sure: ${Math.round(100 * low_frac)} to ${Math.round(100 * high_frac)} %)`
  if (verdict === 'unclear') {
    return {
      code: 'unclear',
      what: 'Log another week with clear nights, both sensors compared in one bucket first.',
      why: `The panel gives ${between}: perhaps less than promised, not surely.`,
      test: '',
    }
  }
  return {
    code: 'short',
    what: 'Tomorrow night: measure the flow with a bucket and a watch; exchange the two sensors and see whether the difference follows them; feel for a module that stays warm; stop the pump for an hour and read the plate (too warm at rest: coat, film, shade or insulation; cold at rest: flow, air or bond).',
    why: `The panel gives ${between}: less than promised, and the log does not show why.`,
    test: '',
  }
}

/** Remarks on the hours themselves and on the doubts that every fit leaves. */
function conditionInspections({ inputs, hours }: Observed, best: Explanation): Inspection[] {
  const found: Inspection[] = []
  const { log, weather } = inputs
  const dewy = hours.filter((hour) => log.panelOut_C[hour]! <= weather.dewPoint_C[hour]!).length
  if (dewy / hours.length > DEWY_SHARE) {
    found.push({
      code: 'dew',
      what: 'Expect less on such nights: wipe the panel at dusk, tilt it so that drops run off, and look for water under a film.',
      why: `In ${Math.round((100 * dewy) / hours.length)} % of the hours the outlet was at or below the dew point: dew warms the panel and blinds a film.`,
      test: '',
    })
  }
  if (!sawSun(inputs)) {
    found.push({
      code: 'unlit',
      what: 'Let the pump run through one sunny day and log it.',
      why: 'All judged hours are dark or dull: dirt shows in sunlight, so this log can neither find nor clear it.',
      test: '',
    })
  }
  const { windLog } = best.departure
  if (Math.abs(windLog) > 0.4) {
    found.push({
      code: 'shelter',
      what: 'Compare the wind at the panel with the wind of the weather file.',
      why: `It feels ${Math.exp(windLog).toFixed(1)} times the wind assumed.`,
      test: '',
    })
  }
  return found
}
