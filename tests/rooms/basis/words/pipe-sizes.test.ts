import { describe, expect, it } from 'vitest'
import { figure, figureText } from '#model/basis/words'

describe('a bore is given as the size pipe is sold in', () => {
  it.each([
    [0.0136, 'si', '20 × 2.0 mm (16 mm inside; at least 13.6 mm is asked for)'],
    [0.016, 'si', '20 × 2.0 mm (16 mm inside; at least 16 mm is asked for)'],
    [0.0136, 'us', '3/4 in nominal (0.669 in inside; at least 0.535 in is asked for)'],
    [0.5, 'si', 'at least 500 mm inside'],
  ] as const)('%f m in %s', (inner_m, system, text) => {
    expect(figureText(figure(inner_m, 'pipeBore'), system)).toBe(text)
  })
  it('1.761 m²K/W is R-10 (1 h·ft²·°F/Btu is 0.1761 m²K/W, NIST SP 811)', () => {
    expect(figureText(figure(1.761, 'rValue'), 'us')).toBe('R-10')
  })
})
