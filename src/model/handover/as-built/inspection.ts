import type { Explanation, Fault } from './hypotheses.ts'
import type { AsBuiltInputs } from './plant.ts'
import type { HeatShare } from './shortfall.ts'
import { loopDuty } from '#model/panels/loop'

/** Something to look at on the roof, and why. */
export interface Inspection {
  readonly code:
    | 'flow'
    | 'air'
    | 'dirt'
    | 'shading'
    | 'dew'
    | 'shelter'
    | 'sensors'
    | 'unexplained'
    | 'unlit'
    | 'short'
    | 'unclear'
    | 'sound'
  readonly what: string
  readonly why: string
}

/** Scatter over stated scatter above which something else is going on. */
const UNEXPLAINED_SCALE = 2.5
/** Scatter from hour to hour (same unit) that speaks of air in the loop rather than of weather. */
const RESTLESS_SCALE = 4
/** A wrong clock or sensor drifts through the day; air makes most of the scatter from one hour to the next. */
const RESTLESS_SHARE = 0.7
/** Share of judged hours with the outlet at or below the dew point that is worth a word. */
const DEWY_SHARE = 0.2

/** What to inspect, the most likely first. */
export function inspections(
  inputs: AsBuiltInputs,
  fault: Fault,
  best: Explanation,
  hours: readonly number[],
  shortfall: HeatShare,
): Inspection[] {
  const found = [...faultInspections(inputs, fault, best)]
  const restless = hourToHourScale(best.result.whitened, hours)
  const scale = best.result.chiSquare / best.result.freedom
  if (restless > RESTLESS_SCALE && restless > RESTLESS_SHARE * scale) {
    found.push({
      code: 'air',
      what: 'Bleed the loop: open the highest vent until no air comes, and look for a sucking joint.',
      why: `The outlet jumps from hour to hour ${Math.sqrt(restless).toFixed(1)} times more than weather and sensors do, as air passing through does.`,
    })
  } else if (scale > UNEXPLAINED_SCALE) {
    found.push({
      code: 'unexplained',
      what: 'Check sensor places, the clock of the logger, and that the weather is that of the site.',
      why: `What is left scatters ${Math.sqrt(scale).toFixed(1)} times more than stated errors: ${fault === 'none' ? 'none of the usual faults explains it' : 'the fault named above does not explain that part'}.`,
    })
  }
  if (fault === 'none' && shortfall.verdict !== 'kept') found.push(withoutCause(shortfall))
  if (found.length === 0) {
    found.push({
      code: 'sound',
      what: 'Nothing needs mending.',
      why: `The panel gives ${percentOf(shortfall)} of the heat predicted, field factor included: within the errors of weather and sensors.`,
    })
  }
  return [...found, ...conditionInspections(inputs, best, hours)]
}

const percentOf = ({ share_frac }: HeatShare) => `${Math.round(100 * (share_frac ?? NaN))} %`

/** Less heat than promised and no cause that the log can name: what would separate them tomorrow night. */
function withoutCause(shortfall: HeatShare): Inspection {
  const { share_frac, low_frac, high_frac, verdict } = shortfall
  if (share_frac === null) {
    return {
      code: 'unclear',
      what: 'Log nights with water warmer than the panel at rest.',
      why: 'In none of the judged hours was heat to be given off: this log can neither find nor clear a shortfall.',
    }
  }
  const between = `${percentOf(shortfall)} of the heat predicted, field factor included (90 % sure: ${Math.round(100 * low_frac)} to ${Math.round(100 * high_frac)} %)`
  if (verdict === 'unclear') {
    return {
      code: 'unclear',
      what: 'Log another week with clear nights, both sensors compared in one bucket first.',
      why: `The panel gives ${between}: perhaps less than promised, not surely.`,
    }
  }
  return {
    code: 'short',
    what: 'Tomorrow night: measure the flow with a bucket and a watch; exchange the two sensors and see whether the difference follows them; feel for a module that stays warm; stop the pump for an hour and read the plate (too warm at rest: coat, film, shade or insulation; cold at rest: flow, air or bond).',
    why: `The panel gives ${between}: less than promised, and the log does not show why.`,
  }
}

function faultInspections(inputs: AsBuiltInputs, fault: Fault, { departure }: Explanation): Inspection[] {
  const percent = (share: number) => `${Math.round(100 * share)} %`
  const film = inputs.panel.film !== null
  switch (fault) {
    case 'none':
      return []
    case 'lowFlow': {
      const share = meteredFlowShare(inputs) ?? Math.exp(departure.flowLog)
      return [
        {
          code: 'flow',
          what: 'Check filter, valves, pump speed and air locks, then measure the flow with a bucket and a watch.',
          why: `The panel behaves as with ${percent(share)} of the designed flow: a larger temperature difference, less heat.`,
        },
      ]
    }
    case 'dirty':
      return [
        {
          code: 'dirt',
          what: film
            ? 'Wash the film; look for clouding, yellowing and water inside.'
            : 'Wash the coating; look for dust, soot, algae and yellowing.',
          why: `It takes in sunlight as if it had lost ${departure.soil_frac.toFixed(2)} of solar ${film ? 'transmittance' : 'reflectance'}, and ${percent(departure.veil_frac)} of its infrared radiation.`,
        },
      ]
    case 'shading':
      return [
        {
          code: 'shading',
          what: 'Look for what hides the sky since that day: a tree in leaf, a tarpaulin, a new wall, leaves or snow on the panel.',
          why: `From hour ${departure.shadeFrom + 1} of the log on, about ${percent(departure.shade_frac)} of the sky is missing; before, it was there.`,
        },
      ]
  }
}

/** A log without sunlight cannot show dirt: it takes in sun, and hardly changes how the panel radiates. */
const SUNNY_WM2 = 200

/** Whether any judged hour had sun enough to show dirt. */
export function sawSun(inputs: AsBuiltInputs, hours: readonly number[]): boolean {
  return hours.some((hour) => inputs.plane.total_Wm2[hour]! > SUNNY_WM2)
}

/** Remarks on the hours themselves and on the doubts that every fit leaves. */
function conditionInspections(
  inputs: AsBuiltInputs,
  best: Explanation,
  hours: readonly number[],
): Inspection[] {
  const found: Inspection[] = []
  const { log, weather } = inputs
  const dewy = hours.filter((hour) => log.panelOut_C[hour]! <= weather.dewPoint_C[hour]!).length
  if (dewy / hours.length > DEWY_SHARE) {
    found.push({
      code: 'dew',
      what: 'Expect less on such nights: wipe the panel at dusk, tilt it so that drops run off, and look for water under a film.',
      why: `In ${Math.round((100 * dewy) / hours.length)} % of the hours the outlet was at or below the dew point: dew warms the panel and blinds a film.`,
    })
  }
  if (!sawSun(inputs, hours)) {
    found.push({
      code: 'unlit',
      what: 'Let the pump run through one sunny day and log it.',
      why: 'All judged hours are dark or dull: dirt shows in sunlight, so this log can neither find nor clear it.',
    })
  }
  const { windLog, offset_K } = best.departure
  if (Math.abs(windLog) > 0.4) {
    found.push({
      code: 'shelter',
      what: 'Compare the wind at the panel with the wind of the weather file.',
      why: `It feels ${Math.exp(windLog).toFixed(1)} times the wind assumed.`,
    })
  }
  if (Math.abs(offset_K) > 0.15) {
    found.push({
      code: 'sensors',
      what: 'Put both panel sensors in one bucket and compare them.',
      why: `They seem to differ by ${Math.abs(offset_K).toFixed(2)} K when they should not.`,
    })
  }
  return found
}

/** Half the mean square of the difference between neighbouring hours of the whitened rest: 1 for sound data. */
function hourToHourScale(whitened: Float64Array, hours: readonly number[]): number {
  let sum = 0
  let pairs = 0
  for (let i = 1; i < hours.length; i++) {
    if (hours[i]! !== hours[i - 1]! + 1) continue
    sum += (whitened[i]! - whitened[i - 1]!) ** 2 / 2
    pairs += 1
  }
  return pairs === 0 ? 1 : sum / pairs
}

/** Median metered flow over the design flow; null without a meter. */
export function meteredFlowShare(inputs: AsBuiltInputs): number | null {
  const flow = inputs.log.flow_kgs
  if (flow === null) return null
  const running = flow.filter((value) => value > 0).sort()
  if (running.length === 0) return null
  return running[Math.floor(running.length / 2)]! / loopDuty(inputs.loop, inputs.area_m2).flow_kgs
}
