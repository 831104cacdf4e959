import { expect, test } from 'vitest'
import { modesOf } from '#model/building/construction'
import { meanShares } from '#inside/model/building/room/rows.ts'

/*
 * Label: conservation. Regression: soak scenarios 802 and 970 had ledgers open by 9.5e-9 and 1.0e-9 of throughput; a roof
 * of metal sheets lost heat in its conductance matrix, a heavy floor in the series of a slow mode.
 */
const SHEET = { thickness_m: 0.0007, conductivity_WmK: 50, density_kgm3: 7800, specificHeat_JkgK: 450 }
const FOAM = { thickness_m: 0.1, conductivity_WmK: 0.03, density_kgm3: 30, specificHeat_JkgK: 1400 }

test('metal sheets on foam: heat leaves the modes only through the inner film, to 1e-13', () => {
  const modes = modesOf([SHEET, FOAM, SHEET], {
    innerFilm_Wm2K: 7.7,
    outerFilm_Wm2K: 20,
    pipeDepth_m: null,
  })
  const carried = Array.from(modes.inner, (b) => modes.innerConductance_Wm2K * b)
  const largest = Math.max(...carried.map(Math.abs))
  modes.decay_1s.forEach((decay, k) => {
    expect(Math.abs(modes.held[k]! * decay - carried[k]!)).toBeLessThan(1e-13 * largest)
  })
})

test('a step of any mode keeps its heat to rounding: e^−x = 1 − x m1, m1 = 1 − λ m2', () => {
  const STEP_S = 900
  for (let exponent = -7.5; exponent < 1; exponent += 0.01) {
    const x = 10 ** exponent
    const { m1, m2_s } = meanShares(x / STEP_S, STEP_S)
    expect(Math.abs(Math.exp(-x) - (1 - x * m1))).toBeLessThan(3e-16)
    expect(Math.abs(m1 - (1 - (x / STEP_S) * m2_s))).toBeLessThan(3e-16)
  }
})
