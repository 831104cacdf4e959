import { describe, expect, test } from 'vitest'
import { misfitsOf } from '#inside/model/design/assembly/fit.ts'
import { said, wordingText } from '#model/basis/words'
import { verdictOf } from '#ui/answer/verdict-words.ts'
import { builderSheet } from '#model/handover/sheet'
import { defaultScenario, withField } from '#model/design/scenario'
import { answerFor } from '../../handover/sheet/sheet-answers.ts'

const codes = (area_m2: number, volume_m3: number, ...fields: readonly (readonly [string, string])[]): string[] =>
  misfitsOf(
    fields.reduce((scenario, [path, text]) => withField(scenario, path, text), withField(withField(withField(defaultScenario(), 'room.length_m', '4'), 'room.width_m', '3'), 'room.height_m', '2.4')),
    area_m2,
    volume_m3,
  ).map(({ code }) => code) // prettier-ignore

describe('a plant that does not fit is said', () => {
  test('60 m² on a roof of 12 m², and a tank of 17 t in a room of 29 m³', () => {
    expect(codes(60, 17)).toEqual(['panels-do-not-fit', 'tank-does-not-fit'])
  })
  test('what fits is not complained of', () => {
    expect(codes(4.5, 0.5)).toEqual([])
    expect(codes(0, 0)).toEqual([])
    expect(codes(60, 17, ['panel.freeArea_m2', '80'], ['store.place', 'outside'])).toEqual([])
    expect(codes(4, 17, ['store.kind', 'slab'])).toEqual([])
  })
  test('rows that the roof has the area but not the shape for: 3 modules of 1.5 m × 1 m fit 4 m × 3 m', () => {
    expect(codes(6, 0.5)).toEqual(['field-does-not-fit'])
    expect(codes(12, 0.5, ['panel.freeArea_m2', '12'])).toEqual([])
    expect(codes(7.2, 0.5, ['panel.moduleLength_m', '1.2'])).toEqual([])
    expect(codes(6, 0.5, ['panel.moduleLength_m', '1'])).toEqual([])
  })
  test('more panel or more tank never fits better', () => {
    let misfits = 0
    for (let size = 1; size < 40; size++) {
      const now = codes(size, size / 10).length
      expect(now).toBeGreaterThanOrEqual(misfits)
      misfits = now
    }
    expect(misfits).toBe(2)
  })
})

describe('an answer that does not fit', () => {
  const fields = {
    'panel.freeArea_m2': '5',
    'store.autoVolume': 'false',
    'store.volume_m3': '1.5',
    'store.doorWidth_m': '1.3',
  }
  const answer = answerFor(16, fields)
  test('has the whole modules that do, and their hours: more than with all, fewer than with none', () => {
    const { within } = answer.fit
    expect(within!.area_m2).toBe(4)
    expect(within!.hoursOver_h).toBeGreaterThanOrEqual(answer.sizing.withPanels.hours_h)
    expect(within!.hoursOver_h).toBeLessThanOrEqual(answer.sizing.doNothing.hours_h)
  })
  test('is that of the same area of one’s own', () => {
    const own = answerFor(4, { ...fields, 'panel.freeArea_m2': '0' })
    expect(answer.fit.within!.hoursOver_h).toBe(own.sizing.withPanels.hours_h)
  })
  test('is stamped on the sheet; one that fits is not', () => {
    const sheet = builderSheet(answer)!
    expect(said(answer.fit.instead!).message).toMatch(
      /^What fits is 4(\.0)? m² of panel with a tank of 1\.50? m³: \d+ of \d+ hours above the limit are gone\.$/,
    )
    expect(said(sheet.headline).message).toContain(said(answer.fit.instead!).message)
    expect(verdictOf(answer, 'si').why).toContain(wordingText(answer.fit.instead!, 'si'))
    expect(sheet.notBuildable.map(({ code }) => code)).toEqual(['panels-do-not-fit'])
    expect(builderSheet(answerFor(16, { ...fields, 'panel.freeArea_m2': '20' }))!.notBuildable).toEqual([])
  })
})
