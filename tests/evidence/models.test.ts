/** The second models of these tests against printed or separately worked-out numbers, before they judge the project. */
import { describe, expect, test } from 'vitest'
import { colebrook } from './models/colebrook.ts'
import { counterFlow, layersStep, panelConductance_WK, radiatingTank_K } from './models/exchanger.ts'
import { iso13790Hour } from './models/iso13790.ts'
import { periodic } from './models/iso13786.ts'
import { dailyResponse, decay_C, twoNode } from './models/lumped.ts'
import { planckShare } from './models/planck.ts'
import { slabMean } from './models/slab.ts'

const concrete = (thickness_m: number) => ({
  thickness_m,
  conductivity_WmK: 1.8,
  density_kgm3: 2400,
  specificHeat_JkgK: 1000,
})
const foam = { thickness_m: 0.1, conductivity_WmK: 0.035, density_kgm3: 25, specificHeat_JkgK: 1450 }

describe('second models, against numbers worked out apart from them (numpy, finite volumes)', () => {
  test('ISO 13790 annex C: one hour of a light room', () => {
    const room = { floor_m2: 20, mass_m2: 50, capacity_JK: 2.2e6, opaque_WK: 30, windows_WK: 6, air_WK: 17 }
    const drive = { outdoor_C: 30, supply_C: 30, gains_W: 100, sun_W: 300, power_W: 0 }
    const free = iso13790Hour(room, 25, drive)
    expect(free.massEnd_C).toBeCloseTo(26.0218, 4)
    expect(free.surface_C).toBeCloseTo(26.139, 4)
    expect(free.air_C).toBeCloseTo(26.4921, 4)
    expect(free.operative_C).toBeCloseTo(26.2449, 4)
    expect(iso13790Hour(room, 25, { ...drive, power_W: -446.743 }).air_C).toBeCloseTo(24, 4)
  })
  test('ISO 13786: concrete inside and outside the insulation', () => {
    const inside = periodic([concrete(0.1), foam])
    expect(inside.transmittance_Wm2K).toBeCloseTo(0.1207, 4)
    expect(inside.timeShift_h).toBeCloseTo(-5.612, 3)
    expect(inside.insideCapacity_Jm2K / 1000).toBeCloseTo(86.074, 2)
    expect(periodic([foam, concrete(0.1)]).insideCapacity_Jm2K / 1000).toBeCloseTo(5.002, 3)
    expect(periodic([concrete(0.2)]).admittance_Wm2K).toBeCloseTo(5.7043, 4)
  })
  test('one and two nodes', () => {
    expect(decay_C(2.2e6, 60, 30, 20, 6)).toBeCloseTo(25.5483145, 6)
    expect(dailyResponse(2.2e6, 60).ratio).toBeCloseTo(0.3511455, 6)
    const room = { air_JK: 2e5, mass_JK: 4e6, airOut_WK: 40, airMass_WK: 150, massOut_WK: 10 }
    expect(twoNode(room, [10, 10], 0, 0, 6)[0]).toBeCloseTo(6.468686, 5)
    expect(twoNode(room, [0, 0], 0, -1000, 6)[1]).toBeCloseTo(-3.555403, 5)
  })
  test('exchangers and tanks', () => {
    expect(counterFlow(2, 0.5)).toBeCloseTo(0.7746, 4)
    expect(panelConductance_WK(6, 9, 0.95, 0.06 * 4184)).toBeCloseTo(46.397944, 4)
    expect(radiatingTank_K(295.15, 268.15, 0.93, 6, 2088234.4, 8)).toBeCloseTo(273.15 + 13.44237642, 5)
    expect(layersStep(5, 0.8)).toBeCloseTo(0.37116, 4)
  })
  test('slab, Planck and Colebrook', () => {
    const slab = { thickness_m: 0.1, conductivity_WmK: 1.8, capacity_Jm3K: 2.4e6, surface_Wm2K: 8 }
    expect(slabMean(slab, 4)).toBeCloseTo(0.6569236, 5)
    expect(planckShare(8, 13, 280)).toBeCloseTo(0.303, 3)
    expect(planckShare(8, 13, 300)).toBeCloseTo(0.322, 3)
    expect(colebrook(1e5, 0.001)).toBeCloseTo(0.02217, 5)
  })
})
