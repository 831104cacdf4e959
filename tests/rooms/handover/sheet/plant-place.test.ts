import { describe, expect, test } from 'vitest'
import { said, type SheetLine, type Text } from '#model/basis/words'
import { builderSheet } from '#model/handover/sheet'
import { answerFor } from './sheet-answers.ts'

/* Label: exact. */
describe('the place of the plant', () => {
  const textOf = (lines: readonly SheetLine[], label: string): string =>
    said(lines.find((one) => one.label === label)!.value).message

  test('is given or worked out, with what follows from it', () => {
    const { site } = builderSheet(answerFor(8))!
    expect(textOf(site, 'Room for panels')).toContain('worked out: the room’s own roof')
    expect(textOf(site, 'Tank’s way in')).toMatch(
      /^not given; the tank .* an ordinary door of 0\.813 m, .* of room height: at most .* m³ of tank/,
    )
    expect(textOf(site, 'Floor under it')).toContain('7320 kg/m² taken for such a floor')
    const own = builderSheet(answerFor(8, { 'store.doorWidth_m': '0.9', 'panel.freeArea_m2': '30' }))!.site
    expect(textOf(own, 'Tank’s way in')).toContain('a way in of 0.9 m (given)')
    expect(textOf(own, 'Room for panels')).toBe('30 m² (given): at most 15 modules')
  })
  test('of a tank that passes the door only slim is drawn and weighed slim', () => {
    const sheet = builderSheet(
      answerFor(8, {
        'store.autoVolume': 'false',
        'store.volume_m3': '0.9',
        'store.doorWidth_m': '0.813',
      }),
    )!
    expect(textOf(sheet.store, 'Size')).toMatch(/^0\.813 m wide, 1\.73 m high if round, to go into its place/)
  })
  test('of a tank wider than an ordinary door is remarked on where no door is given', () => {
    const remarks = (door: string) =>
      builderSheet(
        answerFor(8, { 'store.autoVolume': 'false', 'store.volume_m3': '1.2', 'store.doorWidth_m': door }),
      )!.remarks.map(({ code }) => code)
    expect(remarks('0')).toContain('tank-wider-than-door')
    expect(remarks('1.5')).not.toContain('tank-wider-than-door')
  })
  test('with a lift beyond small pumps is remarked on', () => {
    const remarks = (panel: string) =>
      builderSheet(answerFor(8, { 'plan.freeze': 'drainBack', 'panel.height_m': panel }))!.remarks.map(
        ({ code }) => code,
      )
    expect(remarks('9')).toContain('lift-beyond-small-pumps')
    expect(remarks('3')).not.toContain('lift-beyond-small-pumps')
  })
})

/** The physics fades the delivery between these: the sheet prints the same, also where a strong fan asks for more. */
test.each([
  ['200', '12', '1.0 K', '0.5 K'],
  ['100', '90', '1.8 K', '0.9 K'],
])('a delivery of %s W/K that draws %s W is full at %s and off at %s', (conductance, power, full, off) => {
  const { states } = builderSheet(
    answerFor(8, { 'store.delivery_WK': conductance, 'store.deliveryPower_W': power }),
  )!
  const text = (value: Text) => said(value).message
  const room = states.filter(({ part }) => part === 'room').map(({ holds }) => text(holds))
  expect(room.some((holds) => holds.includes(`(S8) ${full} colder`))).toBe(true)
  expect(room.some((holds) => holds.includes(`less than ${off} colder than S5`))).toBe(true)
})
