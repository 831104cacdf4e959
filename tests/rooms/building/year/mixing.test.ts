import { describe, expect, test } from 'vitest'
import { simulateYear } from '#model/building/year'
import { designOf } from '#model/design/assembly'
import { defaultScenario, withField } from '#model/design/scenario'
import { exceedance } from '#model/design/target'
import { Stages } from '#studies/stages.ts'
import { sampleWeather } from '../../../../src/shell/samples.ts'

/* Label: conservation and monotony. Pipes in a slab or ceiling are supplied at indoor dew point + margin at the coldest, by
 * blending return water in; so more panel takes more heat out and leaves no more hours over the limit. Before there
 * was a mixing valve the loop stopped: 121, 152 and 130 kWh at 6, 12 and 60 m² in the continental sample. */
const AREAS_m2 = [3, 6, 12, 20, 60]
/** The supply is judged by the mean of the step before the mass has cooled in it, K. */
const WITHIN_STEP_K = 0.15

describe.each([
  ['continental', 'slab'],
  ['continental', 'building'],
  ['mediterranean-coast', 'slab'],
  ['mediterranean-coast', 'building'],
])('%s, %s', (climate, kind) => {
  const scenario = withField(defaultScenario(), 'store.kind', kind)
  const prepared = new Stages().prepare(scenario, sampleWeather(climate))
  const years = AREAS_m2.map((area_m2) => {
    const { inputs } = designOf(prepared, { area_m2, storeVolume_m3: 0, flow_kgsm2: 0.008 })
    // The pump's own heat grows with the panels and is another matter.
    const plant = { ...inputs.plant!, loop: { ...inputs.plant!.loop, pumpPower_W: 0 } }
    return { inputs, year: simulateYear({ ...inputs, plant }) }
  })

  test('more panel gives off more heat and leaves no more hours over the limit', () => {
    const heat = years.map(({ year }) => year.panelHeat_W.reduce((sum, w) => sum + w, 0))
    const hours = years.map(({ year }) => exceedance(year.room_C, prepared.yardstick).hours_h)
    console.log(
      `${climate}, ${kind}: ${heat.map((w) => (w / 1000).toFixed(0)).join(' / ')} kWh, ${hours.join(' / ')} h`,
    )
    for (let i = 1; i < heat.length; i++) {
      expect(heat[i]!).toBeGreaterThan(heat[i - 1]!)
      expect(hours[i]!).toBeLessThanOrEqual(hours[i - 1]!)
    }
  })

  test('the supply is never colder than the dew point and its margin, and hours held back by it are counted', () => {
    for (const { inputs, year } of years) {
      const { indoorDewPoint_C } = inputs.room
      year.panelReturn_C.forEach((return_C, h) => {
        if (Number.isNaN(return_C)) return
        expect(return_C).toBeGreaterThan(
          indoorDewPoint_C[h]! + inputs.plant!.store.dewMargin_K - WITHIN_STEP_K,
        )
      })
    }
    expect(years.at(-1)!.year.dewHeld_h).toBeGreaterThan(0)
  })

  test('the ledger closes with the valve in it', () => {
    for (const { year } of years)
      expect(Math.abs(year.ledger.residual_J) / year.ledger.throughput_J).toBeLessThan(1e-9)
  })
})
