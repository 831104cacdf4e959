import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  constructionOf,
  describedAs,
  type Construction,
  ROOF_BUILDS,
  WALL_BUILDS,
  type Build,
  modesOf,
} from '#model/building/construction'
import { bareResistanceOf_m2KW, type Layer } from '#inside/model/building/construction/layer.ts'
import { periodic } from '../../../evidence/models/iso13786.ts'
import { modesDaily } from '../../../evidence/models/modes-daily.ts'
import { finiteVolumeWall } from './finite-volume-wall.ts'

const FILMS = { innerFilm_Wm2K: 7.63, outerFilm_Wm2K: 20, pipeDepth_m: null }
const BUILDS: readonly Build[] = [...Object.values(WALL_BUILDS), ...Object.values(ROOF_BUILDS)]

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
/** Anything from foam to concrete. */
const randomLayer: fc.Arbitrary<Layer> = fc.record({
  thickness_m: between(0.005, 0.3),
  conductivity_WmK: between(0.03, 2.5),
  density_kgm3: between(20, 2400),
  specificHeat_JkgK: between(800, 1800),
})
const randomWall: fc.Arbitrary<Construction> = fc.array(randomLayer, { minLength: 1, maxLength: 4 })

const capacityOf_Jm2K = (wall: Construction) =>
  wall.reduce(
    (all, part) =>
      'density_kgm3' in part ? all + part.thickness_m * part.density_kgm3 * part.specificHeat_JkgK : all,
    0,
  )

const sum = (values: Float64Array, of: (value: number, k: number) => number) =>
  values.reduce((all, value, k) => all + of(value, k), 0)

describe('what the reduction keeps, whatever the layers (exact, 200 random walls)', () => {
  test('all the mass, the uniform temperature at both faces, and the balance of the inner film', () => {
    fc.assert(
      fc.property(randomWall, (wall) => {
        const { held, inner, outer, decay_1s, innerConductance_Wm2K } = modesOf(wall, FILMS)
        expect(sum(held, (e) => e * e) / capacityOf_Jm2K(wall)).toBeCloseTo(1, 9)
        expect(sum(held, (e, k) => e * inner[k]!)).toBeCloseTo(1, 9)
        expect(sum(held, (e, k) => e * outer[k]!)).toBeCloseTo(1, 9)
        held.forEach((e, k) => {
          const scale = innerConductance_Wm2K * Math.max(...inner.map(Math.abs))
          expect(Math.abs(decay_1s[k]! * e - innerConductance_Wm2K * inner[k]!) / scale).toBeLessThan(1e-6)
        })
        expect(Math.min(...decay_1s)).toBeGreaterThan(0)
      }),
      { numRuns: 200, seed: 4 },
    )
  })

  test('the steady U-value to 1e-6, for the film it was made for and for others', () => {
    fc.assert(
      fc.property(randomWall, between(2, 200), (wall, film) => {
        const { inner, outer, decay_1s, innerConductance_Wm2K, outerResistance_m2KW } = modesOf(wall, FILMS)
        const far = 1 / (1 / film + outerResistance_m2KW)
        const cc = sum(decay_1s, (decay, k) => outer[k]! ** 2 / decay)
        const cb = sum(decay_1s, (decay, k) => (inner[k]! * outer[k]!) / decay)
        const U = (innerConductance_Wm2K * cb * far) / (1 + far * cc)
        const want = 1 / (1 / 7.63 + bareResistanceOf_m2KW(wall) + 1 / film)
        expect(Math.abs(U / want - 1)).toBeLessThan(1e-6)
      }),
      { numRuns: 200, seed: 5 },
    )
  })
})

test('the mean of the innermost layer is that of the slab, not of the soil under it: steady, the straight line through it', () => {
  const slab: Layer = {
    thickness_m: 0.15,
    conductivity_WmK: 1.8,
    density_kgm3: 2300,
    specificHeat_JkgK: 1000,
  }
  const soil: Layer = { thickness_m: 0.5, conductivity_WmK: 1.5, density_kgm3: 2000, specificHeat_JkgK: 1000 }
  const { inner, decay_1s, innermost, outer, innerConductance_Wm2K, outerResistance_m2KW } = modesOf(
    [slab, { resistance_m2KW: 3 }, soil],
    FILMS,
  )
  // 20 °C inside, 0 °C beyond a film of 20 W/m²K: u = G 20, w = −T_N far.
  const U = 1 / (1 / 7.63 + 0.15 / 1.8 + 3 + 0.5 / 1.5 + 1 / 20)
  const w = -U * 20
  const read = (shape: Float64Array) =>
    sum(shape, (each, k) => (each * (inner[k]! * innerConductance_Wm2K * 20 + outer[k]! * w)) / decay_1s[k]!)
  expect(read(innermost)).toBeCloseTo(20 - U * 20 * (1 / 7.63 + 0.075 / 1.8), 6)
  expect(read(outer)).toBeCloseTo(U * 20 * (1 / 20 + outerResistance_m2KW), 6)
})

describe('response over a day', () => {
  test.each(BUILDS.map((build) => [build.label, build.layers] as const))(
    '%s: admittance of ISO 13786 within 2 % (cells of 5 mm)',
    (_label, layers) => {
      const admittance = modesDaily(layers, 1 / 7.63, 1 / 20).admittance_Wm2K
      const want = periodic(layers, 1 / 7.63, 1 / 20).admittance_Wm2K
      expect(Math.abs(admittance / want - 1)).toBeLessThan(0.02)
    },
  )
})

/* Second implementation: a finite-volume wall of 5 mm cells stepped implicitly every minute. */
describe('random walls under a fortnight of weather, against fine finite volumes', () => {
  test('inner cell within 0.15 K in every hour of 30 walls', () => {
    let worst = 0
    fc.assert(
      fc.property(randomWall, fc.integer({ min: 0, max: 1e6 }), (wall, phase) => {
        worst = Math.max(worst, finiteVolumeWall(wall, FILMS, phase))
        expect(worst).toBeLessThan(0.15)
      }),
      { numRuns: 30, seed: 6 },
    )
    console.log(`walls: worst hour ${worst.toFixed(3)} K`)
  })
})

describe('a wall given by U-value, mass and place', () => {
  test.each(['through', 'inside', 'bothSides', 'outside'] as const)(
    '%s: has that U-value and mass',
    (place) => {
      const layers = constructionOf({ U_Wm2K: 0.4, mass_kgm2: 120, place })
      expect(1 / (0.17 + bareResistanceOf_m2KW(layers))).toBeCloseTo(0.4, 9)
      expect(capacityOf_Jm2K(layers)).toBeCloseTo(120 * 900, 6)
      expect(describedAs(layers)).toEqual({
        U_Wm2K: expect.closeTo(0.4, 9),
        mass_kgm2: expect.closeTo(120, 6),
        place,
      })
    },
  )

  test('a U-value that bare films cannot give is a sheet', () => {
    expect(bareResistanceOf_m2KW(constructionOf({ U_Wm2K: 8, mass_kgm2: 5, place: 'through' }))).toBeCloseTo(
      0.002,
      9,
    )
  })

  test('refuses what is no number above 0, and says which layer', () => {
    expect(() => constructionOf({ U_Wm2K: 0, mass_kgm2: 5, place: 'inside' })).toThrow(/U-value/)
    expect(() => modesOf([{ resistance_m2KW: 1 }], FILMS)).toThrow(/mass/)
    expect(() => bareResistanceOf_m2KW([{ resistance_m2KW: -1 }])).toThrow(/layer 1/)
  })
})
