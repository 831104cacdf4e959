import { describe, expect, it } from 'vitest'
import { builderSheet, designRanges } from '#model/handover/sheet'
import {
  GUST_ms,
  gustPressure_Pa,
  LOCAL_CODES,
  upliftOfModule_N,
} from '#inside/model/handover/sheet/cautions.ts'
import { type Figure, type Wording, type SheetLine, wordingText } from '#model/basis/words'
import { answerFor, ownScenario, sampleWeather, stages } from './sheet-answers.ts'

const answer = answerFor(16, { 'store.autoVolume': 'false', 'store.volume_m3': '1.5' })
const sheet = builderSheet(answer)!

const figuresOf = (wording: Wording): Figure[] => wording.filter((part) => typeof part !== 'string')
function valuesAt(lines: readonly SheetLine[], label: string): number[] {
  const found = lines.find((line) => line.label === label)
  if (!found) throw new Error(`no line ${label}`)
  return figuresOf(found.value).map((figure) => figure.value)
}
/** Figures of the first bought part whose words begin so. */
function valuesOfPart(start: string): number[] {
  const found = sheet.parts.find(({ what }) => wordingText(what, 'si').startsWith(start))
  if (!found) throw new Error(`no part ${start}`)
  return figuresOf(found.what).map(({ value }) => value)
}

describe('numbers of the sheet are those of the answer', () => {
  it('panels, area, flow, bores, pressure and pump', () => {
    const { loop } = answer
    expect(valuesAt(sheet.panels, 'Panels')).toEqual([loop.modules, 2, 1])
    expect(figuresOf(sheet.headline)[0]!.value).toBe(answer.area_m2)
    const [total_m3s, each_m3s] = valuesAt(sheet.loop, 'Flow')
    expect(total_m3s! * 999.1).toBeCloseTo(loop.flow_kgs, 4)
    expect(each_m3s! * 8).toBeCloseTo(total_m3s!, 12)
    expect(valuesOfPart('header pipe')[0]).toBe(loop.headerInnerDiameter_m)
    expect(valuesOfPart('pipe ')[0]).toBe(loop.pipeInnerDiameter_m)
    expect(valuesAt(sheet.loop, 'Pressure')).toEqual([
      loop.pressureDrop_Pa,
      loop.pipeLoss_Pa,
      loop.headerLoss_Pa,
      loop.riserLoss_Pa,
    ])
    expect(valuesAt(sheet.loop, 'Pump')[2]).toBe(loop.pumpPower_W)
  })
  it('temperatures, hours and months', () => {
    const { withPanels, doNothing } = answer.sizing
    expect(valuesAt(sheet.job, 'Hottest hour')).toEqual([withPanels.peak_C, doNothing.peak_C])
    expect(valuesAt(sheet.job, 'Hours above the limit')).toEqual([withPanels.hours_h, doNothing.hours_h])
    expect(sheet.months.map((month) => month.panelHeat_J)).toEqual(
      answer.months.map((month) => month.panelHeat_J),
    )
    expect(Math.max(...sheet.months.map((month) => month.roomPeak_C))).toBeCloseTo(withPanels.peak_C, 9)
  })
})

describe('a loop that drains back', () => {
  const text = (one: typeof sheet): string => one.parts.map(({ what }) => wordingText(what, 'si')).join('; ')
  it('needs a pump that lifts water from the tank to the top of the panels: the lift of the section', () => {
    const lift_m = valuesAt(sheet.loop, 'Pump')[4]!
    // two rows of 2 m and 0.35 m between them at their tilt, over the tank's water
    const { panel } = answer.scenario
    const rise_m = 4.35 * Math.sin((panel.tilt_deg * Math.PI) / 180)
    expect(lift_m).toBeGreaterThan(0.5)
    expect(lift_m).toBeLessThan(panel.height_m + rise_m)
    const section = sheet.drawings.find(({ id }) => id === 'section')!
    expect(JSON.stringify(section)).toContain(JSON.stringify({ value: lift_m }).slice(1, -1))
    expect(text(sheet)).toMatch(/to fill drained panels each time it starts/)
  })
  it('that stays full does not', () => {
    const full = builderSheet(answerFor(16, { 'plan.freeze': 'stop' }))!
    expect(valuesAt(full.loop, 'Pump')).toHaveLength(3)
    expect(text(full)).not.toMatch(/drained panels/)
  })
})

describe('no question is left to the builder', () => {
  const text = sheet.parts.map(({ what }) => wordingText(what, 'si').replaceAll('\u00a0', ' ')).join('; ')
  it('the coil is given as catalogues rate it: 200 W/K · 20 K = 4000 W sensible, its water 4000/0.75/(5 K · c) = 15 L/min', () => {
    expect(text).toMatch(/4000 W sensible/)
    expect(text).toMatch(/pump \(P2\), its speed set by the controller: 15 L\/min/)
  })
  it('every valve, the flow meter, the gauges and the mixing valve have a size', () => {
    for (const mark of ['V1, V2', 'ST', 'FM', 'G1, G2', 'D1', 'O1', 'M1'])
      expect(text).toMatch(
        new RegExp(`(DN \\d+ \\(|L/min to |0 to \\S+ bar)[^;]*\\(${mark}\\)|\\(${mark}\\)[^;]*DN`),
      )
  })
  it('rails, feet and the pull on a fixing: 2 m² · 981 Pa · 1.8 / 4 = 0.88 kN', () => {
    expect(text).toMatch(/rail, .*two a row/)
    expect(text).toMatch(/0\.88 kN/)
  })
  it('the same heights of outlet, return and water line in section, tank lines and start-up', () => {
    const foot_m = 0.08
    const heights = [valuesOfPart('tank connector ')[1]!, valuesOfPart('return ')[1]!]
    const marks = JSON.stringify(sheet.drawings.find(({ id }) => id === 'section'))
    for (const height_m of heights)
      expect(marks).toContain(JSON.stringify({ value: foot_m + height_m }).slice(1, -1))
    const [full_m, running_m] = valuesAt(sheet.store, 'Water line')
    const fill = sheet.commissioning.find(({ what }) => what.startsWith('Fill the tank'))!
    expect(figuresOf(fill.expect).map(({ value }) => value)).toEqual([full_m, running_m, heights[0]])
    expect(running_m! - heights[0]!).toBeCloseTo(0.1, 9)
  })
  it('the level falls by what panels and pipes hold', () => {
    const [full_m, running_m] = valuesAt(sheet.store, 'Water line')
    const base_m2 = (Math.PI / 4) * Math.cbrt(6 / Math.PI) ** 2
    expect((full_m! - running_m!) * base_m2).toBeCloseTo(sheet.quantities.loopVolume_m3, 9)
  })
  it('panels lower than the water cannot drain: not buildable', () => {
    const low = builderSheet(answerFor(8, { 'panel.height_m': '0.5', 'panel.freeArea_m2': '50' }))!
    expect(low.notBuildable.map(({ code }) => code)).toContain('panels-cannot-drain')
    expect(sheet.notBuildable.map(({ code }) => code)).not.toContain('panels-cannot-drain')
  })
})

describe('quantities match hand arithmetic: 8 modules of 2 × 1 m in 2 rows of 4, tubes 120 mm apart', () => {
  const { quantities } = sheet
  it('8 risers of 2 m a module: 128 m; headers 2 × 8 × (1 m + 40 mm); 12 unions, 4 caps, 32 fixings', () => {
    expect(quantities).toMatchObject({
      plate_m2: 16,
      passage_m: 128,
      header_m: 16.64,
      unions: 12,
      caps: 4,
      anchors: 32,
    })
  })
  it('16 m of pipe and 2 × 2 m to the second row: 20 m', () => {
    expect(quantities.pipe_m).toBe(20)
  })
  it('1.5 m³ as high as wide: diameter ∛(4 × 1.5/π) = 1.2407 m, skin 1.5 π d² = 7.254 m²', () => {
    const diameter_m = Math.cbrt(6 / Math.PI)
    expect(valuesAt(sheet.store, 'Size')[0]).toBeCloseTo(diameter_m, 9)
    expect(quantities.tankSkin_m2).toBeCloseTo(1.5 * Math.PI * diameter_m ** 2, 9)
  })
  it('weighs 1.08 × its water, on π d²/4 of floor: one load in place and caution', () => {
    const [full_kg, water_kg] = valuesAt(sheet.store, 'Weight full')
    const load_kgm2 = valuesAt(sheet.site, 'Floor under it')[1]
    const caution = sheet.cautions.find(({ title }) => title === 'Tank weight')!
    expect(figuresOf(caution.text)[1]!.value).toBe(load_kgm2)
    expect(full_kg).toBeCloseTo(1.08 * water_kg!, 6)
    expect(load_kgm2).toBeCloseTo(full_kg! / (0.25 * Math.PI * Math.cbrt(6 / Math.PI) ** 2), 6)
  })
  it('loop content is Σ π d²/4 · length', () => {
    const { headerInnerDiameter_m: header_m, pipeInnerDiameter_m: pipe_m } = answer.loop
    const want = (Math.PI / 4) * (0.01 ** 2 * 128 + header_m ** 2 * 16.64 + pipe_m ** 2 * 20)
    expect(quantities.loopVolume_m3).toBeCloseTo(want, 12)
  })
  it('the parts list has no part of which there are none', () => {
    for (const part of sheet.parts) expect(part.quantity.value).toBeGreaterThan(0)
  })
})

describe('cautions', () => {
  it('each ends with the sentence that local codes and licensed practice decide', () => {
    const titles = sheet.cautions.map((caution) => caution.title)
    expect(titles).toEqual(
      expect.arrayContaining(['Wind', 'Roof load', 'Work at height', 'Tank weight', 'Freezing']),
    )
    expect(titles).toEqual(
      expect.arrayContaining([
        'Cross-connection',
        'Legionella',
        'Mains near water',
        'Pigment dust',
        'Solvents',
      ]),
    )
    expect(titles).toContain('Condensation and mould')
    for (const { text } of sheet.cautions) expect(wordingText(text, 'si')).not.toContain(LOCAL_CODES)
  })
  it('wind: 0.613 V² gives 552, 981 and 1532 Pa at 30, 40 and 50 m/s (0.5 Pa); 2 m² at −1.8 is 3.5 kN (1 %)', () => {
    expect(Math.abs(gustPressure_Pa(30) - 552)).toBeLessThan(0.5)
    expect(Math.abs(gustPressure_Pa(GUST_ms) - 981)).toBeLessThan(0.5)
    expect(Math.abs(gustPressure_Pa(50) - 1532)).toBeLessThan(0.6)
    expect(Math.abs(upliftOfModule_N(2, GUST_ms) / 3530 - 1)).toBeLessThan(0.01)
  })
  it('glycol has its caution only where there is glycol', () => {
    expect(sheet.cautions.some((caution) => caution.title === 'Glycol')).toBe(false)
    const mixed = builderSheet(answerFor(4, { 'loop.fluid': 'glycol', 'plan.freeze': 'glycol' }))!
    expect(mixed.cautions.some((caution) => caution.title === 'Glycol')).toBe(true)
  })
})

describe('other plants', () => {
  it.each([
    ['slab, serpentine, a part-used last module', 13, { 'store.kind': 'slab', 'loop.layout': 'serpentine' }],
    [
      'air to the building',
      6,
      {
        'store.kind': 'building',
        'loop.fluid': 'air',
        'loop.layout': 'wetted',
        'loop.tubeOuterDiameter_m': '0.05',
        'loop.tubeInnerDiameter_m': '0.045',
      },
    ],
    ['one module under a film', 2, { 'cover.kind': 'film', 'plan.kind': 'ownHours', 'plan.freeze': 'stop' }],
  ])('%s: no number missing, in either unit system', (_name, area_m2, fields) => {
    const other = builderSheet(answerFor(area_m2, fields))!
    const lines = [
      other.job,
      other.site,
      other.panels,
      other.loop,
      other.store,
      other.controls,
      other.sensors,
    ]
    const wordings = [
      ...lines.flat().map((line) => line.value),
      ...other.parts.flatMap((part) => [[part.quantity], part.what]),
      ...other.commissioning.map((step) => step.expect),
      ...other.maintenance,
      ...other.assumptions,
      ...other.cautions.map((caution) => caution.text),
    ]
    for (const wording of wordings) {
      for (const figure of figuresOf(wording))
        expect(Number.isFinite(figure.value), JSON.stringify(wording)).toBe(true)
      for (const system of ['si', 'us'] as const)
        expect(wordingText(wording, system)).not.toMatch(/undefined|NaN|Infinity|\[object/)
    }
  })
  it('13 m² of 2 m² modules: 7 of them, and the sheet says what the numbers are for', () => {
    const part = builderSheet(answerFor(13, { 'store.kind': 'slab' }))!
    expect(valuesAt(part.panels, 'Panels')[0]).toBe(7)
    expect(valuesAt(part.panels, 'Note')).toEqual([13, 14])
  })
  it('no area, no sheet', () => {
    expect(builderSheet(answerFor(0))).toBeNull()
  })
})

describe('ranges of the built design', () => {
  it('same seed, same ranges; low below high; the plant held as built', () => {
    const built = { area_m2: 6, storeVolume_m3: 0.5, flow_kgsm2: 0.008 }
    const weather = sampleWeather()
    const run = () => {
      const drawing = designRanges(
        ownScenario(6),
        weather,
        built,
        (drawn) => stages.prepare(drawn, weather),
        4,
      )
      for (;;) {
        const step = drawing.next()
        if (step.done) return step.value
      }
    }
    const first = run()
    expect(first.draws).toBe(4)
    expect(first.months).toHaveLength(12)
    expect(first.yearHeat_J.high).toBeGreaterThan(first.yearHeat_J.low)
    for (const month of first.months)
      expect(month.panelHeat_J.high).toBeGreaterThanOrEqual(month.panelHeat_J.low)
    expect(run()).toEqual(first)
  })
})
