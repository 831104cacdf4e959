import { describe, expect, test } from 'vitest'
import { edgeLoss_Wm2K } from '#inside/model/panels/plate/edge-loss.ts'
import { flutter_Wm2K, outsideFactor_frac } from '#inside/model/panels/plate/flutter.ts'
import { FILM } from './cases.ts'

describe('a film that flutters', () => {
  test('taut: as a rigid plate; single: 1.4 times outside (Schuepp 1972), and 0.3 of that in the gap', () => {
    expect(outsideFactor_frac(null)).toBe(1)
    expect(outsideFactor_frac({ ...FILM, flutter_frac: 0 })).toBe(1)
    expect(flutter_Wm2K({ ...FILM, flutter_frac: 0 }, 10)).toBe(0)
    expect(outsideFactor_frac({ ...FILM, flutter_frac: 0.3 })).toBeCloseTo(1.4, 12)
    expect(outsideFactor_frac({ ...FILM, flutter_frac: 0.5 })).toBeCloseTo(1.4, 12)
    expect(flutter_Wm2K({ ...FILM, flutter_frac: 0.3 }, 10)).toBeCloseTo(4.2, 12)
    expect(flutter_Wm2K(FILM, 0)).toBe(0)
  })
})

/* Second implementation: axisymmetric conduction of a disc in 50 mm of foam, worked out apart, W/m²K; 10 %: what its cells
 * and the rule are good for. The back loss of a plate one metre across is 0.77 there. */
test.each([
  [0.1, 1.92],
  [0.2, 1.28],
  [0.3, 1.07],
  [0.5, 0.9],
  [1, 0.77],
])('edges of a disc %f m across', (across_m, want) => {
  expect(Math.abs((0.77 + edgeLoss_Wm2K(across_m / 4)) / want - 1)).toBeLessThan(0.1)
})

test('wider plates have their edges in the back loss', () => {
  expect(edgeLoss_Wm2K(1 / 3)).toBe(0)
})
