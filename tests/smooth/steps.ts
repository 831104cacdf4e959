import { designOf, taskOf } from '#model/design/assembly'
import { defaultScenario, type Scenario } from '#model/design/scenario'
import { exceedance } from '#model/design/target'
import { simulateYear } from '#model/building/year'
import { areaOnly } from '#inside/model/design/sizing/size.ts'
import { Stages } from '#studies/stages.ts'
import { sampleWeather } from '../../src/shell/samples.ts'

/** The area may move by so much when the step is halved, and the hours over the limit by so much or one hour. */
const MOST_MOVED = 0.01
const FIXED_m2 = 12
const STORES = ['mixed', 'layered', 'slab', 'building'] as const
/** Climates, and a limit that each store can meet there, °C. */
const PLACES = [
  ['continental', 28.5],
  ['mediterranean-coast', 35],
] as const

/**
 * Area and hours over the limit of every store in quarter hours and in half of that. Prints each, and returns how many
 * moved by more than 1 %.
 */
export function steps(): number {
  let over = 0
  for (const [climate, limit_C] of PLACES) {
    const weather = sampleWeather(climate)
    for (const kind of STORES) {
      const usual = defaultScenario()
      const scenario: Scenario = { ...usual, store: { ...usual.store, kind } }
      const prepared = new Stages().prepare(scenario, weather)
      const reached = new Stages().prepare(
        { ...scenario, target: { ...scenario.target, kind: 'peak', limit_C } },
        weather,
      )
      const found = [4, 8].map((stepsPerHour) => {
        const area_m2 = areaOnly(taskOf(reached, stepsPerHour), {
          ratio_m3m2: 0.08,
          guess_m2: 8,
          slope: null,
        })
        const flow_kgsm2 = prepared.flow_kgsm2(FIXED_m2)
        const design = designOf(prepared, { area_m2: FIXED_m2, storeVolume_m3: 0.08 * FIXED_m2, flow_kgsm2 })
        const { room_C } = simulateYear(design.inputs, { lean: true, books: false, stepsPerHour })
        return { area_m2, hours_h: exceedance(room_C, prepared.yardstick).hours_h }
      })
      const [quarter, eighth] = [found[0]!, found[1]!]
      const area =
        eighth.area_m2 === null || quarter.area_m2 === null ? null : eighth.area_m2 / quarter.area_m2 - 1
      const apart_h = Math.abs(eighth.hours_h - quarter.hours_h)
      const moved =
        (area !== null && Math.abs(area) > MOST_MOVED) || apart_h > Math.max(1, MOST_MOVED * quarter.hours_h)
      if (moved) over++
      const areas =
        area === null
          ? `${limit_C} °C out of reach`
          : `${quarter.area_m2!.toFixed(3)} → ${eighth.area_m2!.toFixed(3)} m² (${(100 * area).toFixed(2)} %) for ${limit_C} °C`
      console.log(
        `${climate.padEnd(20)} ${kind.padEnd(9)} ${areas}; ${quarter.hours_h} → ${eighth.hours_h} h at ${FIXED_m2} m²${moved ? '  over' : ''}`,
      )
    }
  }
  console.log(`${PLACES.length * STORES.length} cases in half the step, ${over} over`)
  return over
}
