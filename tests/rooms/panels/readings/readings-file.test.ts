import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DEMO_READINGS, readReadings, writeReadings } from '#model/panels/readings'
import { DEMO_RECIPE, readRecipe, writeRecipe } from '#model/panels/paint'
import { ProblemError } from '#model/basis/words'

const good = JSON.parse(writeReadings(DEMO_READINGS)) as {
  moments: Record<string, unknown>[]
  samples: unknown[]
}
const spoilt = (change: (notes: typeof good) => void): string => {
  const copy = structuredClone(good)
  change(copy)
  return JSON.stringify(copy)
}

describe('files of field notes and recipes', () => {
  it('come back as they were written', () => {
    expect(readReadings(writeReadings(DEMO_READINGS), 'notes.json')).toEqual(DEMO_READINGS)
    expect(readRecipe(writeRecipe(DEMO_RECIPE), 'recipe.json')).toEqual(DEMO_RECIPE)
  })

  it('take relative humidity for a dew point (30 °C, 40 %: 14.94 °C, psychrolib; 0.05 K)', () => {
    const text = spoilt(({ moments }) => {
      delete moments[0]!['dewPoint_C']
      moments[0]!['relativeHumidity_frac'] = 0.4
    })
    expect(Math.abs(readReadings(text, 'notes.json').moments[0]!.dewPoint_C - 14.9358)).toBeLessThan(0.05)
  })

  it.each([
    ['not JSON', '{', /not JSON/],
    ['no mark', '{}', /duskbankReadings|samples/],
    ['unknown light', spoilt((n) => (n.moments[0]!['light'] = 'moon')), /moments\.0\.light/],
    ['stray field', spoilt((n) => (n.moments[0]!['mood'] = 'good')), /moments\.0\.mood/],
    ['no humidity', spoilt((n) => delete n.moments[0]!['dewPoint_C']), /neither a dew point/],
    [
      'unknown sample',
      spoilt((n) => ((n.moments[0]!['surfaces'] as { sample: string }[])[0]!.sample = 'Pot Z')),
      /Pot Z/,
    ],
  ])('refuse with the place named: %s', (_why, text, sentence) => {
    expect(() => readReadings(text, 'notes.json')).toThrow(sentence)
    expect(() => readReadings(text, 'notes.json')).toThrow(/notes\.json/)
  })

  it('throw nothing but problems for people, whatever the JSON (property)', () => {
    fc.assert(
      fc.property(fc.json(), (text) => {
        for (const read of [readReadings, readRecipe]) {
          try {
            read(text, 'any.json')
          } catch (error) {
            expect(error).toBeInstanceOf(ProblemError)
          }
        }
      }),
    )
  })
})
