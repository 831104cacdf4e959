/* Whatever lawful field notes hold, the bench answers with finite numbers or a problem for people. */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { estimateCoatings, USUAL_BOARD, type BenchReadings } from '#model/panels/readings'
import { ProblemError } from '#model/basis/words'
import { nextReading, POLYETHYLENE, REFERENCE, unknown } from './field-notes.ts'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const surface = fc.record({
  sample: fc.constantFrom(0, 1, 2),
  shown_C: number(-60, 120),
  cover: fc.constantFrom('bare' as const, 'film' as const),
  thermometer: fc.constantFrom('contact' as const, 'infrared' as const),
})
const moment = fc
  .record({
    time: fc.constant(null),
    airTemp_C: number(-40, 60),
    dewDepression_K: number(0, 40),
    light: fc.constantFrom('sun' as const, 'shade' as const, 'night' as const),
    sun_Wm2: fc.option(number(0, 1500)),
    skyLongwave_Wm2: fc.option(number(80, 600)),
    cloud_frac: number(0, 1),
    wind: fc.constantFrom('metered' as const, 'calm' as const, 'breezy' as const),
    wind_ms: number(0, 30),
    surfaces: fc.array(surface, { minLength: 1, maxLength: 4 }),
  })
  .map(({ dewDepression_K, ...rest }) => ({
    ...rest,
    dewPoint_C: Math.max(-50, rest.airTemp_C - dewDepression_K),
  }))

it('answers or refuses, never crashes, on 60 random sets of notes', () => {
  let answered = 0
  fc.assert(
    fc.property(fc.array(moment, { minLength: 1, maxLength: 4 }), (moments) => {
      const notes: BenchReadings = {
        board: { ...USUAL_BOARD, film: POLYETHYLENE },
        samples: [unknown('A'), unknown('B'), REFERENCE],
        moments,
        infraredSetting_frac: 0.95,
        basis: 'random',
      }
      try {
        const estimate = estimateCoatings(notes)
        for (const s of estimate.samples) {
          for (const e of [s.solarReflectance, s.emittance]) {
            expect(e.low).toBeLessThanOrEqual(e.value)
            expect(e.high).toBeGreaterThanOrEqual(e.value)
          }
        }
        expect(Number.isFinite(nextReading(notes, estimate).doubtThen_Wm2)).toBe(true)
        answered += 1
      } catch (error) {
        expect(error).toBeInstanceOf(ProblemError)
      }
    }),
    { numRuns: 60, seed: 7 },
  )
  expect(answered).toBeGreaterThan(5)
})
