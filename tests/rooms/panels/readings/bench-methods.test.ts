import { describe, expect, test } from 'vitest'
import { pairedReflectance, warmPlateEmittance } from '#model/panels/readings'
import { ProblemError } from '#model/basis/words'

const PLATE = { foil_C: [20], tapeEmittance_frac: 0.95, tapeSd_frac: 0.01 }
const BOARDS = {
  blackAbsorptance_frac: 0.95,
  blackSd_frac: 0.01,
  whiteAbsorptance_frac: 0.15,
  whiteSd_frac: 0.005,
}

describe('tape on a warm plate', () => {
  // Band signals of 8–14 µm integrated by hand: a sample of 0.90 beside a tape of 0.95, surroundings 20 °C.
  test.each([
    [40, 39.08, 38.15],
    [60, 58.27, 56.52],
    [80, 77.54, 75.03],
  ])('a plate of %d °C: tape shows %d, sample %d: 0.90 within 0.004', (_plate, tape, sample) => {
    const { value } = warmPlateEmittance({ ...PLATE, tape_C: [tape], sample_C: [sample] })
    expect(Math.abs(value - 0.9)).toBeLessThan(0.004)
  })

  test('a warmer plate says more; the largest doubt comes first with what to do next', () => {
    const width = (tape: number, sample: number) => {
      const { low, high } = warmPlateEmittance({ ...PLATE, tape_C: [tape], sample_C: [sample] })
      return high - low
    }
    expect(width(77.54, 75.03)).toBeLessThan(width(39.08, 38.15))
    const { doubts } = warmPlateEmittance({ ...PLATE, tape_C: [39.08], sample_C: [38.15] })
    expect(doubts[0]!.of).toContain('readings')
    expect(doubts[0]!.next).toContain('Warm the plate')
  })

  test('a plate too cold, no reading or a tape of metal is refused in words', () => {
    expect(() => warmPlateEmittance({ ...PLATE, tape_C: [30], sample_C: [29] })).toThrow(/Warm|10 K more/)
    expect(() => warmPlateEmittance({ ...PLATE, tape_C: [], sample_C: [29] })).toThrow(ProblemError)
    expect(() =>
      warmPlateEmittance({ ...PLATE, tape_C: [60], sample_C: [58], tapeEmittance_frac: 0.1 }),
    ).toThrow(ProblemError)
  })
})

describe('boards side by side in the sun', () => {
  test('black 68, sample 38, white 36 °C with 0.95 and 0.15: absorptance 0.200 by plain temperatures, a little less by losses', () => {
    const { value } = pairedReflectance([{ black_C: 68, white_C: 36, sample_C: 38 }], BOARDS)
    expect(value).toBeGreaterThan(0.8)
    expect(value).toBeLessThan(0.81)
  })

  test('more moments narrow it until the white reference is what is left', () => {
    const moments = Array.from({ length: 40 }, () => ({ black_C: 68, white_C: 36, sample_C: 38 }))
    const { doubts, low, high } = pairedReflectance(moments, { ...BOARDS, whiteSd_frac: 0.01 })
    expect(doubts[0]!.of).toBe('the white reference')
    expect(high - low).toBeLessThan(0.05)
  })

  test('boards hardly apart, or references hardly unlike, are refused', () => {
    expect(() => pairedReflectance([{ black_C: 40, white_C: 36, sample_C: 38 }], BOARDS)).toThrow(/apart/)
    expect(() => pairedReflectance([], BOARDS)).toThrow(ProblemError)
    expect(() =>
      pairedReflectance([{ black_C: 68, white_C: 36, sample_C: 38 }], {
        ...BOARDS,
        blackAbsorptance_frac: 0.3,
      }),
    ).toThrow(ProblemError)
  })
})
