import { expect, test } from 'vitest'
import { defaultScenario, withChosen } from '#model/design/scenario'

const usual = defaultScenario()

test('a roof of boards and felt is dark: what it is made of brings its face along', () => {
  const felt = withChosen(usual, 'room.roofBuild', 'felt')
  expect(felt.room.roofBuild).toBe('felt')
  expect(felt.room.roofReflectance_frac).toBe(0.1)
  const sheet = withChosen(felt, 'room.roofBuild', 'sheet')
  expect(sheet.room.roofReflectance_frac).toBe(0.3)
  expect(withChosen(usual, 'room.wallBuild', 'brick').room.wallReflectance_frac).toBe(0.35)
})

test('a face that was given stays, and so does one that is only described by its U-value', () => {
  const white = withChosen(usual, 'room.roofReflectance_frac', 0.8)
  expect(withChosen(white, 'room.roofBuild', 'felt').room.roofReflectance_frac).toBe(0.8)
  const felt = withChosen(usual, 'room.roofBuild', 'felt')
  expect(withChosen(felt, 'room.roofBuild', 'own').room.roofReflectance_frac).toBe(0.1)
})

test('nothing but the field and its face changes', () => {
  const felt = withChosen(usual, 'room.roofBuild', 'felt')
  expect(felt).toEqual({ ...usual, room: { ...usual.room, roofBuild: 'felt', roofReflectance_frac: 0.1 } })
  expect(withChosen(usual, 'panel.tilt_deg', 7)).toEqual({ ...usual, panel: { ...usual.panel, tilt_deg: 7 } })
})
