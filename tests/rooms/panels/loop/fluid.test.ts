import { describe, expect, it } from 'vitest'
import { fluidProperties } from '#model/panels/loop'

describe('water, against IAPWS-95 and the IAPWS viscosity at 1 atm (general property library)', () => {
  it.each([
    [5, 999.967, 1518.2, 4205.0, 0.5678, 11.24],
    [10, 999.702, 1305.9, 4195.2, 0.5788, 9.47],
    [15, 999.103, 1137.6, 4188.5, 0.5888, 8.09],
    [20, 998.207, 1001.6, 4184.1, 0.598, 7.01],
    [25, 997.048, 890.0, 4181.3, 0.6065, 6.14],
    [30, 995.649, 797.2, 4179.8, 0.6144, 5.42],
  ])(
    '%i °C: density 1e-5, viscosity 0.1 %%, conductivity 0.1 %%, Prandtl 0.3 %%',
    (t, rho, mu, cp, k, pr) => {
      const water = fluidProperties('water', 0, t)
      expect(Math.abs(water.density_kgm3 / rho - 1)).toBeLessThan(1e-5)
      expect(Math.abs((water.viscosity_Pas * 1e6) / mu - 1)).toBeLessThan(1e-3)
      expect(Math.abs(water.specificHeat_JkgK / cp - 1)).toBeLessThan(1e-4)
      expect(Math.abs(water.conductivity_WmK / k - 1)).toBeLessThan(1e-3)
      const prandtl = (water.viscosity_Pas * water.specificHeat_JkgK) / water.conductivity_WmK
      expect(Math.abs(prandtl / pr - 1)).toBeLessThan(3e-3)
    },
  )

  it.each([
    [10, 999.7, 1.307, 4194.8],
    [20, 998.2, 1.002, 4184.2],
    [30, 995.7, 0.797, 4179.8],
  ])(
    '%i °C: half the last printed digit of Chaplin, Water Structure and Science, plus Kell’s own 5e-6',
    (t, rho, mu_mPas, cp) => {
      const water = fluidProperties('water', 0, t)
      expect(Math.abs(water.density_kgm3 - rho)).toBeLessThan(0.05 + 5e-6 * rho)
      expect(Math.abs(water.viscosity_Pas * 1e3 - mu_mPas)).toBeLessThan(1.5e-3)
      expect(Math.abs(water.specificHeat_JkgK - cp)).toBeLessThan(1)
    },
  )
})

describe('propylene glycol by mass', () => {
  it.each([
    [0.25, 15, 1021.204, 3908.4, 2.9279, 0.46329],
    [0.35, 5, 1035.147, 3740.9, 7.0827, 0.41132],
    [0.45, 25, 1032.861, 3638.7, 4.2885, 0.38229],
    [0.15, 35, 1005.022, 4053.6, 1.1387, 0.53453],
  ])(
    'share %f at %i °C, between the table’s points: 0.2 %% (viscosity 4 %%, a line in its logarithm) of the correlations of Melinder 2010 run in a property library',
    (frac, t, rho, cp, mu_mPas, k) => {
      const mix = fluidProperties('glycol', frac, t)
      expect(Math.abs(mix.density_kgm3 / rho - 1)).toBeLessThan(2e-3)
      expect(Math.abs(mix.specificHeat_JkgK / cp - 1)).toBeLessThan(2e-3)
      expect(Math.abs((mix.viscosity_Pas * 1e3) / mu_mPas - 1)).toBeLessThan(0.04)
      expect(Math.abs(mix.conductivity_WmK / k - 1)).toBeLessThan(4e-3)
    },
  )

  it.each([
    [0.2, -7.1],
    [0.3, -12.7],
    [0.4, -21.1],
  ])(
    'freezes at a share of %f within 0.6 K of a manufacturer-independent table by mass',
    (frac, freezing_C) => {
      expect(Math.abs(fluidProperties('glycol', frac, 10).freezing_C - freezing_C)).toBeLessThan(0.6)
    },
  )

  it('30 % at 10 °C: specific heat 3820 and density 1032.6 of the same table, 1 %, the spread between tables', () => {
    const mix = fluidProperties('glycol', 0.3, 10)
    expect(Math.abs(mix.specificHeat_JkgK / 3820 - 1)).toBeLessThan(0.01)
    expect(Math.abs(mix.density_kgm3 / 1032.6 - 1)).toBeLessThan(0.01)
  })

  it('runs into plain water as the share goes to nothing', () => {
    const water = fluidProperties('water', 0, 12)
    const trace = fluidProperties('glycol', 1e-9, 12)
    for (const [name, value] of Object.entries(water))
      expect(trace[name as keyof typeof trace]).toBeCloseTo(value, 5)
  })

  it('is continuous through every share and temperature of the table', () => {
    for (const t of [-5, 0, 9.999, 10, 25, 40, 60])
      for (const frac of [0.1, 0.2, 0.3, 0.4, 0.5]) {
        const below = fluidProperties('glycol', frac - 1e-9, t)
        const above = fluidProperties('glycol', frac + 1e-9, t)
        expect(Math.abs(below.viscosity_Pas / above.viscosity_Pas - 1)).toBeLessThan(1e-6)
        expect(Math.abs(below.density_kgm3 / above.density_kgm3 - 1)).toBeLessThan(1e-6)
      }
  })
})

it('air at 20 °C and sea level: density 1.2046, viscosity 18.21 µPa s, conductivity 0.02587 (real-gas formulation; 1 %)', () => {
  const air = fluidProperties('air', 0, 20)
  expect(Math.abs(air.density_kgm3 / 1.2046 - 1)).toBeLessThan(1e-3)
  expect(Math.abs(air.viscosity_Pas / 18.206e-6 - 1)).toBeLessThan(0.01)
  expect(Math.abs(air.conductivity_WmK / 0.025874 - 1)).toBeLessThan(0.01)
})

it('refuses a temperature or share that is none, with the value', () => {
  expect(() => fluidProperties('water', 0, 200)).toThrow(/200/)
  expect(() => fluidProperties('glycol', 0.7, 10)).toThrow(/0\.7/)
  expect(() => fluidProperties('water', 0, NaN)).toThrow(RangeError)
})
