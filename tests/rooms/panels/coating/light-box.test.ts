/* Source: integrating-sphere balance (closed forms); the multiplier formula is
 * Goebel 1967 from memory. Tolerances are half of the last printed digit. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { wordingText, ProblemError } from '#model/basis/words'
import {
  expectedRatio,
  sphereMultiplier,
  substitutionCorrected,
} from '#inside/model/panels/readings/light-box.ts'
import { lightBoxResult } from '#model/panels/readings'

const BOX = { wallReflectance_frac: 0.95, samplePort_frac: 0.01, otherPorts_frac: 0.03 }

describe('light box', () => {
  it('sphere multiplier at f 0.05, ρ 0.97 is 12.4 (closed form, printed to 0.1)', () => {
    expect(Math.abs(sphereMultiplier(0.97, 0.05) - 12.4)).toBeLessThan(0.06)
  })

  // The printed errors do not name the other ports; 3 % of the wall reproduces both, and is stated here.
  it.each([
    { wallReflectance_frac: 0.95, samplePort_frac: 0.01, want: -0.019 },
    { wallReflectance_frac: 0.97, samplePort_frac: 0.02, want: -0.049 },
  ])('uncorrected error at R 0.80 against 0.99 is $want (printed to 0.001)', ({ want, ...walls }) => {
    const box = { ...walls, otherPorts_frac: 0.03 }
    const uncorrected = 0.99 * expectedRatio(box, 0.8, 0.99)
    expect(Math.abs(uncorrected - 0.8 - want)).toBeLessThan(0.0006)
  })

  it('equals the light bounced round the box term by term (independent summation, 1e-9)', () => {
    // Beam on the sample, then every crossing returns A + f_s R of what crosses: sum the series itself.
    const bounced = (R: number) => {
      const kept = 0.95 * (1 - 0.04) + 0.01 * R
      let light = R
      let total = 0
      for (let n = 0; n < 2000; n++) {
        total += light
        light *= kept
      }
      return total
    }
    const ratio = bounced(0.87) / bounced(0.98)
    expect(substitutionCorrected(BOX, ratio, 0.98)).toBeCloseTo(0.87, 9)
  })

  it('gives back any reflectance from the ratio it would produce (identity, 1e-12)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 1, noNaN: true }),
        fc.double({ min: 0.3, max: 0.99, noNaN: true }),
        fc.double({ min: 0.5, max: 0.98, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        (R, reference, wallReflectance_frac, samplePort_frac) => {
          const box = { wallReflectance_frac, samplePort_frac, otherPorts_frac: 0.02 }
          const back = substitutionCorrected(box, expectedRatio(box, R, reference), reference)
          expect(Math.abs(back - R)).toBeLessThan(1e-12)
        },
      ),
    )
  })

  it('a white that reads 0.90 in visible light may be 0.80 in the sun (common practice, no source), and says so', () => {
    const ratio = expectedRatio(BOX, 0.9, 0.98)
    const result = lightBoxResult(BOX, {
      sample: [1000 * ratio, 1002 * ratio, 998 * ratio],
      reference: [1000, 1001, 999],
      dark: 0,
      referenceReflectance_frac: 0.98,
      referenceUncertainty_frac: 0.005,
    })
    expect(result.visible_frac).toBeCloseTo(0.9, 3)
    expect(result.solarLow_frac).toBeLessThan(0.8)
    expect(result.solarHigh_frac).toBeGreaterThan(0.9)
    expect(result.noonSpread_Wm2).toBeGreaterThan(100)
    expect(wordingText(result.mayNotDecide[0]!, 'si')).toContain('10\u00a0W/m² at noon')
  })

  it.each([
    { why: 'no reading', sample: [], reference: [100], dark: 0, code: 'light-box-reading-missing' },
    { why: 'NaN', sample: [NaN], reference: [100], dark: 0, code: 'light-box-reading-missing' },
    { why: 'lamp off', sample: [5], reference: [5], dark: 5, code: 'light-box-too-dark' },
    { why: 'swapped', sample: [100], reference: [50], dark: 0, code: 'light-box-above-one' },
  ])('refuses with a sentence: $why', ({ sample, reference, dark, code }) => {
    const run = () =>
      lightBoxResult(BOX, {
        sample,
        reference,
        dark,
        referenceReflectance_frac: 0.98,
        referenceUncertainty_frac: 0.005,
      })
    expect(run).toThrow(ProblemError)
    try {
      run()
    } catch (error) {
      expect((error as ProblemError).problems[0]!.code).toBe(code)
    }
  })
})
