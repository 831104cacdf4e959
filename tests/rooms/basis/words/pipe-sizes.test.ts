import { describe, expect, it } from 'vitest'
import { figure, figureText } from '#model/basis/words'
import { pipeSold } from '#inside/model/basis/words/pipe-sizes.ts'
import { WATER_PIPES } from '#inside/model/panels/loop/pipes.ts'

describe('a bore is given as the size pipe is sold in', () => {
  it.each([
    [0.0136, 'si', 'copper 15 × 0.7 mm (13.6 mm inside)'],
    [0.016, 'si', '20 × 2.0 mm (16 mm inside)'],
    [0.0326, 'si', '40 × 3.7 mm (32.6 mm inside)'],
    [0.015, 'si', '20 × 2.0 mm (16 mm inside; at least 15 mm is asked for)'],
    [0.0136, 'us', 'copper 1/2 in type L (0.543 in inside; reckoned with 0.535 in)'],
    [0.5, 'si', 'at least 500 mm inside'],
  ] as const)('%f m in %s', (inner_m, system, text) => {
    expect(figureText(figure(inner_m, 'pipeBore'), system)).toBe(text)
  })
  it('every bore that a water loop is built with is sold to 0.1 mm; in US sizes to 2.5 %', () => {
    for (const { bore_m } of WATER_PIPES) {
      expect(pipeSold(bore_m, 'si')?.inner_m).toBeCloseTo(bore_m, 4)
      if (bore_m > 0.01 && bore_m < 0.1)
        expect(Math.abs(pipeSold(bore_m, 'us')!.inner_m / bore_m - 1)).toBeLessThanOrEqual(0.025)
    }
  })
  it('1.761 m²K/W is R-10 (1 h·ft²·°F/Btu is 0.1761 m²K/W, NIST SP 811)', () => {
    expect(figureText(figure(1.761, 'rValue'), 'us')).toBe('R-10')
  })
})
