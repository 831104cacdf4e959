import { describe, expect, it } from 'vitest'
import {
  efficiencyFactor,
  finEfficiency,
  flowFactor,
  removalFactor,
  tubedPlateConductance,
  tubeFilm_Wm2K,
  wettedPlateConductance,
} from '#inside/model/panels/loop/plate.ts'

const BOOK_PLATE = {
  plateThickness_m: 0.0005,
  plateConductivity_WmK: 385,
  tubeSpacing_m: 0.15,
  tubeOuterDiameter_m: 0.01,
  tubeInnerDiameter_m: 0.01,
}

describe('plate with tubes, Duffie & Beckman, Solar Engineering of Thermal Processes', () => {
  it('example 6.5.1: F 0.937, F′ 0.841 (the printed digits)', () => {
    expect(finEfficiency(BOOK_PLATE, 8)).toBeCloseTo(0.937, 3)
    expect(efficiencyFactor(BOOK_PLATE, 8, 300)).toBeCloseTo(0.841, 3)
  })

  it('example 6.7.1: F″ 0.948, F_R 0.797 at 0.03 kg/s over 2 m² (0.001: the book multiplies rounded factors)', () => {
    const rate = (0.03 * 4190) / 2
    expect(flowFactor(rate, 8, 0.841)).toBeCloseTo(0.948, 3)
    expect(Math.abs(removalFactor(rate, 8, 0.841) - 0.797)).toBeLessThan(0.001)
  })

  it('aluminium 237 W/mK, 0.5 mm, tubes of 12 mm at 100 mm, U 9: η 0.9537081, F′ 0.8912304 (closed form)', () => {
    const plate = {
      plateThickness_m: 0.0005,
      plateConductivity_WmK: 237,
      tubeSpacing_m: 0.1,
      tubeOuterDiameter_m: 0.012,
      tubeInnerDiameter_m: 0.012,
    }
    expect(finEfficiency(plate, 9)).toBeCloseTo(0.9537081, 6)
    expect(efficiencyFactor(plate, 9, 300)).toBeCloseTo(0.8912304, 6)
  })

  it('is a perfect fin when tubes touch, when the surface exchanges nothing, and when flow is endless', () => {
    expect(finEfficiency({ ...BOOK_PLATE, tubeSpacing_m: 0.01 }, 8)).toBe(1)
    expect(finEfficiency(BOOK_PLATE, 0)).toBe(1)
    expect(flowFactor(1e15, 8, 0.9)).toBe(1)
  })
})

it('one conductance G gives F′ = 1/(1 + U/G) within 0.5 % for U from 3 to 20, the span of a bare panel from calm to windy', () => {
  const G = tubedPlateConductance(BOOK_PLATE, 300)
  for (let U = 3; U <= 20; U++)
    expect(Math.abs(1 / (1 + U / G) / efficiencyFactor(BOOK_PLATE, U, 300) - 1)).toBeLessThan(0.005)
})

it('a wetted plate of plastic is limited by its own wall: 1 mm of 0.2 W/mK before an endless film is 200 W/m²K', () => {
  const plate = { ...BOOK_PLATE, plateThickness_m: 0.001, plateConductivity_WmK: 0.2 }
  expect(wettedPlateConductance(plate, 1e12)).toBeCloseTo(200, 6)
})

describe('film coefficient in a tube', () => {
  const flow = { prandtl: 8.09, bore_m: 0.01, length_m: 2, conductivity_WmK: 0.5888 }
  const nusselt = (reynolds: number, more: Partial<typeof flow> = {}) =>
    (tubeFilm_Wm2K({ ...flow, ...more, reynolds }) * 0.01) / 0.5888

  it('falls to Nu 3.66 in a long tube (Graetz, constant wall temperature)', () => {
    expect(nusselt(200, { length_m: 1e5 })).toBeCloseTo(3.66, 3)
  })

  it('laminar entrance: within 8 % of the exact Graetz means 7.155 (1/Gz = 0.01) and 4.641 (1/Gz = 0.05), from memory: Shah & London 1978', () => {
    const atGraetz = (graetz: number) => nusselt(1000, { length_m: (1000 * 8.09 * 0.01) / graetz })
    expect(Math.abs(atGraetz(100) / 7.155 - 1)).toBeLessThan(0.08)
    expect(Math.abs(atGraetz(20) / 4.641 - 1)).toBeLessThan(0.08)
  })

  it('turbulent: within 25 % of Dittus & Boelter 1930, 0.023 Re^0.8 Pr^0.4, from 10⁴ to 10⁵ (Incropera & DeWitt §8.5 give it up to 25 % error, from memory)', () => {
    for (const re of [1e4, 2e4, 5e4, 1e5])
      expect(Math.abs(nusselt(re) / (0.023 * re ** 0.8 * 8.09 ** 0.4) - 1)).toBeLessThan(0.25)
  })

  it('joins without a step at 2300 and 4000', () => {
    for (const re of [2300, 4000]) expect(nusselt(re + 1e-6)).toBeCloseTo(nusselt(re - 1e-6), 4)
  })
})
