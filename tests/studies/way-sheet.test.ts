import { describe, expect, it } from 'vitest'
import { createStudies, finish } from '#studies/index.ts'
import {
  defaultScenario,
  withField,
  withWayTaken,
  type MachineId,
  type MeasureId,
  type Scenario,
} from '#model/design/scenario'
import { MEASURES, withWay } from '#model/design/measures'
import { DEMO_RECIPE } from '#model/panels/paint'
import { figureText, wordingText } from '#model/basis/words'
import type { WaySheet } from '#model/handover/sheet'
import { joinHours } from '#studies/decide-sure.ts'
import { sampleWeather } from '../../src/shell/samples.ts'

/* Areas, flows and resistances are hand arithmetic on the default room of 5 × 4 × 2.4 m with windows of 1.2 and 0.6 m². */

const weather = sampleWeather('hot-desert')
const studies = createStudies()

/** The default room with a way taken as the page does it. */
function adopted(ids: readonly MeasureId[], machine: MachineId | 'none' = 'none'): Scenario {
  return withWayTaken(defaultScenario(), [...ids, ...(machine === 'none' ? [] : [machine])])
}

const sheetOf = (scenario: Scenario, draws = 0): WaySheet =>
  finish(studies.waySheet({ scenario, weather, draws })).result!

const textOf = ({ works }: WaySheet, system: 'si' | 'us' = 'si'): string =>
  works
    .flatMap((work) => [
      ...work.sizes.map(({ value }) => wordingText(value, system)),
      ...work.buy.map(({ quantity, what }) => `${figureText(quantity, system)} ${wordingText(what, system)}`),
      ...work.steps.map((step) => wordingText(step, system)),
      ...work.readings.map(({ expect: want }) => wordingText(want, system)),
    ])
    .join('\n')
    .replaceAll('\u00a0', ' ')

describe('the sheet of a way without panels', () => {
  it('painted roof: 20 m², the batch’s litres and coats, prime, dew point, noon reading, winter, and a range', () => {
    const scenario = adopted(['paintRoof'])
    const sheet = sheetOf(scenario, 4)
    const text = textOf(sheet)
    const batch = finish(studies.mixPaint({ recipe: DEMO_RECIPE, job: { area_m2: 20 } })).result
    expect(text).toMatch(/20 m² seen from above/)
    expect(text).toContain(`${Number(batch.wet_L.toPrecision(2))} L coating, wet, for 3 coats`)
    expect(text).toMatch(/primer/)
    expect(text).toMatch(/above the dew point/)
    const colder_K = ((withWay(scenario, weather).room.roofReflectance_frac - 0.3) * 900) / 25
    expect(text).toContain(`painted about ${colder_K.toFixed(1)} K colder`)
    const titles = sheet.works.flatMap(({ cautions }) => cautions.map(({ title }) => title))
    expect(titles).toEqual(expect.arrayContaining(['Work at height', 'Solvents', 'Slippery and bright']))
    expect(sheet.job.find(({ label }) => label === 'Heating in winter')).toBeDefined()
    expect(wordingText(sheet.sure!, 'si')).toMatch(/eight cases in ten: \d+ to \d+ h above the limit/)
  })

  it('shade, night fan, ceiling fan: each window, 8 · 48 m³/h = 384 of air, 0.107 m² of way in, low room', () => {
    const text = textOf(sheetOf(adopted(['shade', 'nightFan', 'ceilingFan'])))
    expect(text).toMatch(/front window \(faces 180°\): 1.2 m² of glass/)
    expect(text).toMatch(/back window \(faces 0°\): 0.6 m² of glass/)
    expect(text).toMatch(/380 m³\/h in all/)
    expect(text).toMatch(/0.11 m² of free opening/)
    expect(text).toMatch(/too low for blades/)
  })

  it('night opening: 0.05 · 20 m² = 1 m²; insulation: 0.1 m of 0.035 W/mK is R 2.9, R-16', () => {
    const sheet = sheetOf(adopted(['nightOpening', 'insulateRoof']))
    expect(textOf(sheet)).toMatch(/^1 m² in all, 1 m high/m)
    expect(textOf(sheet)).toMatch(/R 2.9 m²K\/W/)
    expect(textOf(sheet, 'us')).toMatch(/R-16/)
  })

  it('evaporative cooler: 20 · 48 m³/h, 960/3600/2 m/s of way out, water with backflow preventer; 35 − 0.75 · 15 °C', () => {
    const sheet = sheetOf(adopted([], 'direct'))
    const text = textOf(sheet)
    expect(text).toMatch(/960 m³\/h/)
    expect(text).toMatch(/0.13 m² of open window/)
    expect(text).toMatch(/backflow preventer/)
    // a degree under the limit of 26 °C, as the page of ways runs it
    expect(text).toMatch(/thermostat, set to 25\.0 °C/)
    expect(text).toContain('23.8 °C')
    expect(sheet.job.find(({ label }) => label === 'Water')).toBeDefined()
  })

  it.each(MEASURES.map(({ id }) => id))(
    '%s: something to size and buy, each caution once, all that is bought in one list, no number missing',
    (id) => {
      const sheet = sheetOf(adopted([id]))
      expect(sheet.works).toHaveLength(1)
      const [work] = sheet.works
      expect(work!.sizes.length).toBeGreaterThan(0)
      expect(work!.buy.length).toBeGreaterThan(0)
      expect(work!.steps.length).toBeGreaterThan(0)
      const titles = sheet.cautions.map(({ title }) => title)
      expect(new Set(titles).size).toBe(titles.length)
      for (const { text } of sheet.cautions) expect(wordingText(text, 'si')).not.toMatch(/Local codes/)
      expect(sheet.parts).toHaveLength(work!.buy.length)
      for (const system of ['si', 'us'] as const)
        expect(textOf(sheet, system)).not.toMatch(/undefined|NaN|Infinity|\[object/)
    },
  )

  it('before is the building without its measures, as the page of ways simulates it', () => {
    const sheet = sheetOf(adopted(['shade']))
    const plain = withField(withField(defaultScenario(), 'target.autoArea', 'false'), 'target.area_m2', '0')
    const { doNothing } = finish(studies.size({ scenario: plain, weather })).result.sizing
    const line = sheet.job.find(({ label }) => label === 'Hours above the limit')!
    expect(wordingText(line.value, 'si')).toMatch(new RegExp(`; ${Math.round(doNothing.hours_h)} before$`))
  })

  it('is as sure as the page of ways says: the same hours of the same draws', () => {
    const scenario = withField(
      withField(defaultScenario(), 'target.autoArea', 'false'),
      'target.area_m2',
      '0',
    )
    const way = {
      measures: ['shade', 'ceilingFan'] as const,
      plant: 'direct' as const,
      panelArea_m2: 0,
      storeVolume_m3: 0,
    }
    const drawn = finish(studies.drawHours({ scenario, weather, ways: [way], draws: 4 })).result
    const [spread] = joinHours([drawn])
    const sheet = sheetOf(adopted(way.measures, 'direct'), 4)
    const [low, high] = sheet.sure!.filter((part) => typeof part !== 'string')
    expect([low!.value, high!.value]).toEqual([Math.round(spread!.low_h), Math.round(spread!.high_h)])
  })

  it('no measure and no machine: no such sheet', () => {
    const scenario = defaultScenario()
    expect(finish(studies.waySheet({ scenario, weather, draws: 0 })).result).toBeNull()
  })
})
