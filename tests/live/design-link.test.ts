import { describe, expect, test } from 'vitest'
import { linkHash, placedText, readLinkHash, readPlacedText } from '#live/design-link.ts'
import {
  FIELDS,
  type Scenario,
  PRESETS,
  SCENARIO_VERSION,
  withPreset,
  defaultScenario,
} from '#model/design/scenario'

const awkward: Scenario = {
  ...defaultScenario(),
  job: {
    name: 'Böden & Dächer #1 = 50 %?',
    note: 'Line one\nline two; +5 °C, "quoted"',
    way: ['paintRoof', 'nightFan', 'panels'],
  },
}

describe('a design in a link and in the autosave', () => {
  test.each([...PRESETS.map((preset) => withPreset(defaultScenario(), preset)), awkward])(
    'comes back as it went in (%#)',
    (scenario) => {
      const placed = { scenario, climate: 'hot-desert' }
      expect(readLinkHash(`#${linkHash(placed)}`)).toEqual(placed)
      expect(readPlacedText(placedText(placed))).toEqual(placed)
    },
  )

  test('a default design is a short link', () => {
    expect(linkHash({ scenario: defaultScenario(), climate: 'continental' })).toBe(
      `climate=continental&version=${SCENARIO_VERSION}`,
    )
  })

  test('a link without a version is read as before; one of a newer version is refused in a sentence', () => {
    expect(readLinkHash('#climate=x&room.length_m=6')!.scenario.room.length_m).toBe(6)
    expect(() => readLinkHash(`#climate=x&version=${SCENARIO_VERSION + 1}`)).toThrow(/newer version/)
  })

  test('a hash without a design is none', () => {
    expect(readLinkHash('#main')).toBeNull()
    expect(readLinkHash('')).toBeNull()
  })

  test('a value out of range is refused by name and nothing is repaired', () => {
    const above = FIELDS.room.length_m.max + 1
    expect(() => readLinkHash(`#climate=x&room.length_m=${above}`)).toThrow(/room\.length_m/)
  })

  test('a damaged autosave is said in a sentence', () => {
    expect(() => readPlacedText('{"climate":')).toThrow(/cannot be read/)
    expect(() => readPlacedText('null')).not.toThrow(TypeError)
  })
})
