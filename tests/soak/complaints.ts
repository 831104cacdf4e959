import { Spine } from '#model/answer.ts'
import { pumpEatsGain } from '#model/loop/remarks.ts'
import type { DesignAnswer } from '#model/scenario/design-answer.ts'
import { runsInBursts } from '#model/scenario/design-remarks.ts'
import type { Scenario } from '#model/scenario/fields.ts'
import type { WeatherRecord } from '#model/weather/record.ts'

export interface Complaint {
  readonly index: number
  readonly climate: string
  readonly what: string
}

/** Books must close to this share of what went through them. */
const CLOSURE = 1e-9
/** Colder than anything in these climates, and than any sky makes a tank, °C. */
const COLDEST_C = -90
/** Every so many scenarios is repeated, and asked for more area and a better coating. */
const REPEATED_EVERY = 25
const COMPARED_EVERY = 5
/** The pump's start and stop fall on quarter hours, so the measure may rise by this much when the area grows, K of peak. */
const SWITCHING_K = 0.15

/** What is wrong with one scenario in one climate; empty when nothing is. */
export function complaints(
  spine: Spine,
  scenario: Scenario,
  climate: { readonly name: string; readonly weather: WeatherRecord },
  index: number,
): Complaint[] {
  const say = (what: string): Complaint => ({ index, climate: climate.name, what })
  try {
    const own = withArea(scenario, Math.max(0.5, Math.min(scenario.target.area_m2, 200)))
    const answer = spine.answer(own, climate.weather)
    const heard = yearComplaints(answer)
    if (index % COMPARED_EVERY === 0) heard.push(...comparedComplaints(spine, own, answer, climate.weather))
    if (index % REPEATED_EVERY === 0) heard.push(...repeatComplaints(own, answer, climate.weather))
    return heard.map(say)
  } catch (error) {
    return [say(`threw ${(error as Error).message}`)]
  }
}

function withArea(scenario: Scenario, area_m2: number): Scenario {
  return { ...scenario, target: { ...scenario.target, autoArea: false, area_m2 } }
}

function yearComplaints(answer: DesignAnswer): string[] {
  const { year, sizing, doNothing } = answer
  const heard: string[] = []
  const closure = Math.abs(year.ledger.residual_J) / year.ledger.throughput_J
  if (!(closure <= CLOSURE)) heard.push(`books open by ${closure.toExponential(1)} of throughput`)
  const columns = [
    'room_C',
    'air_C',
    'fabric_C',
    'slab_C',
    'store_C',
    'plate_C',
    'panelHeat_W',
    'delivered_W',
    'water_kgm2',
  ] as const
  for (const name of columns) if (year[name].some(Number.isNaN)) heard.push(`NaN in ${name}`)
  const limit_C = Math.max(hottest(doNothing.room_C), hottest(doNothing.slab_C), hottest(doNothing.fabric_C))
  const sane = sanePump(answer)
  for (const name of ['room_C', 'store_C'] as const) {
    const top_C = hottest(year[name])
    if (sane && top_C > limit_C + RISE_K)
      heard.push(
        `${name} reaches ${top_C.toFixed(1)} °C, nothing in the room left alone passes ${limit_C.toFixed(1)} °C`,
      )
    if (year[name].some((value) => value < COLDEST_C)) heard.push(`${name} falls below ${COLDEST_C} °C`)
  }
  if (!Number.isFinite(sizing.withPanels.measure)) heard.push('the distance from the target is not finite')
  return heard
}

/** A pump that takes more than this heats the loop faster than the sky cools it (the app warns): not judged, W/m². */
const PUMP_Wm2 = 20
const sanePump = ({ loop, area_m2 }: DesignAnswer): boolean => loop.pumpPower_W < PUMP_Wm2 * area_m2
/** Pump and fan may warm room and store a little above the room left alone, K. */
const RISE_K = 12

const hottest = (column: Float64Array): number =>
  column.reduce((top, value) => Math.max(top, value), -Infinity)

/**
 * True where the app itself warns that more may not be better: the pump takes a large part of the gain, and a larger
 * one more, or what is cooled follows the pump faster than the year is stepped.
 */
const promisesNothing = ({ loop, year }: DesignAnswer): boolean => pumpEatsGain(loop) || runsInBursts(year)

/** More area, and a coating that reflects and emits more, must not make the hottest hour hotter. */
function comparedComplaints(
  spine: Spine,
  scenario: Scenario,
  answer: DesignAnswer,
  weather: WeatherRecord,
): string[] {
  const peak_C = answer.sizing.withPanels.peak_C
  const grown = spine.answer(withArea(scenario, answer.area_m2 * 1.5), weather)
  const larger = grown.sizing.withPanels.peak_C
  const heard =
    !promisesNothing(grown) && larger > peak_C + SWITCHING_K
      ? [`half as much area again: peak ${peak_C.toFixed(2)} → ${larger.toFixed(2)} °C`]
      : []
  const better: Scenario = {
    ...scenario,
    coating: {
      ...scenario.coating,
      solarReflectance_frac: Math.min(1, scenario.coating.solarReflectance_frac + 0.03),
    },
  }
  const whiter = spine.answer(better, weather)
  const coated = whiter.sizing.withPanels.peak_C
  if (!promisesNothing(whiter) && coated > peak_C + SWITCHING_K)
    heard.push(`a whiter coating: peak ${peak_C.toFixed(2)} → ${coated.toFixed(2)} °C`)
  return heard
}

function repeatComplaints(scenario: Scenario, answer: DesignAnswer, weather: WeatherRecord): string[] {
  const again = new Spine().answer(scenario, weather)
  const same = again.year.room_C.every((value, h) => value === answer.year.room_C[h])
  return same ? [] : ['a repeat run gave another room temperature']
}
