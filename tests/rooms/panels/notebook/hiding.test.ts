import { describe, expect, test } from 'vitest'
import { ProblemError } from '#model/basis/words'
import { filmReflectance_frac, hidingPower } from '#inside/model/panels/notebook/hiding.ts'

/** Coefficients and thickness to what a card would read; then back. */
function card(
  scattering_1m: number,
  absorption_1m: number,
  dryThickness_m: number,
  black_frac = 0,
  white_frac = 0.8,
) {
  const a = 1 + absorption_1m / scattering_1m
  const over = (background: number) => filmReflectance_frac(a, scattering_1m * dryThickness_m, background)
  return {
    overBlack_frac: over(black_frac),
    overWhite_frac: over(white_frac),
    black_frac,
    white_frac,
    dryThickness_m,
  }
}

describe('hiding power', () => {
  /* No published table could be opened. Textbook identities, from memory: without absorption R = SX/(1 + SX) over black;
   * a thick film has R = 1 + K/S − √((K/S)² + 2 K/S). */
  test.each([50, 100, 200, 400])(
    'without absorption, S 0.05 a µm, %d µm: SX/(1 + SX) over black',
    (micron) => {
      const depth = 0.05 * micron
      expect(filmReflectance_frac(1, depth, 0)).toBeCloseTo(depth / (1 + depth), 9)
    },
  )

  test('a thick film: the final reflectance of K/S', () => {
    const ratio = 0.001
    const { final_frac } = hidingPower(card(5e4, 5e4 * ratio, 1e-4))
    expect(final_frac).toBeCloseTo(1 + ratio - Math.sqrt(ratio ** 2 + 2 * ratio), 6)
  })

  // Worked out apart by hand with S 0.05 and K 5e-5 a µm: over black and over white 0.80.
  test.each([
    [50, 0.7129, 0.8637],
    [100, 0.8303, 0.895],
    [200, 0.9029, 0.9248],
    [400, 0.9401, 0.9456],
  ])('%d µm: %d over black, %d over white', (micron, black, white) => {
    const drawdown = card(5e4, 50, micron * 1e-6)
    expect(Math.abs(drawdown.overBlack_frac - black)).toBeLessThan(1e-4)
    expect(Math.abs(drawdown.overWhite_frac - white)).toBeLessThan(1e-4)
    const back = hidingPower(drawdown)
    expect(back.scattering_1m / 5e4).toBeCloseTo(1, 6)
    expect(back.absorption_1m / 50).toBeCloseTo(1, 3)
  })

  test('the thickness for 95 and 98 % gives just that', () => {
    const found = hidingPower(card(5e4, 50, 1e-4, 0.05))
    const a = 1 + found.absorption_1m / found.scattering_1m
    for (const [share, thickness] of [
      [0.95, found.for95_m],
      [0.98, found.for98_m],
    ] as const)
      expect(filmReflectance_frac(a, found.scattering_1m * thickness, 0.05) / found.final_frac).toBeCloseTo(
        share,
        6,
      )
  })

  test('readings no film gives are refused in words', () => {
    const good = card(5e4, 50, 1e-4)
    for (const bad of [
      { overBlack_frac: 0.95 },
      { overBlack_frac: 0, black_frac: 0.05 },
      { white_frac: 0.1 },
      { overWhite_frac: 1.2 },
      { dryThickness_m: 0 },
    ])
      expect(() => hidingPower({ ...good, ...bad })).toThrow(ProblemError)
  })
})
