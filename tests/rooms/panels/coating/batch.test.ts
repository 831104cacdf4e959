/* Batch quantities against arithmetic done by hand, written out beside each value. Every amount is invented.
 * Tolerances are rounding of the hand arithmetic. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  batchCautions,
  DEMO_RECIPE,
  type CoatingRecipe,
  type CoatJob,
  batchQuantities,
} from '#model/panels/paint'
import { dryThicknessOfSpread } from '#inside/model/panels/paint/batch.ts'
import { ProblemError } from '#model/basis/words'

/** Invented: solvent-borne, with water added by way of a pre-mix; round numbers, to be followed with a pencil. */
const PENCIL: CoatingRecipe = {
  name: 'Pencil',
  basis: 'Invented round numbers.',
  binder: { name: 'Ethyl cellulose', density_kgm3: 1250, stock_gmL: 0.125, price_perkg: 30 },
  solvent: { name: 'Ethanol', density_kgm3: 750, waterTakenUp_frac: 0, price_perL: 4 },
  water: { total_mLg: 0.5, premixSolvent: 3 },
  solids: [{ name: 'Zinc sulfide', parts_gg: 3, density_kgm3: 2500, price_perkg: 6 }],
  liquids: [],
  porosity_frac: 0.2,
}
const JOB: CoatJob = {
  area_m2: 9,
  dryThickness_m: 0.0002,
  coats: 3,
  loss_frac: 0.1,
  jar_L: 4,
  jarFill_frac: 0.75,
}

describe('batch quantities', () => {
  /* By hand. Dry film of 1 g binder: 1/1.25 + 3/2.5 = 0.8 + 1.2 = 2 mL solid, a fifth air → 2.5 mL.
   * 9 m² × 0.2 mm = 1.8 L of dry film → 1800/2.5 = 720 g binder on the panel; a tenth lost → 720/0.9 = 800 g.
   * Pigment 3 × 800 = 2400 g. Stock 800 g ÷ 0.125 g/mL = 6400 mL ethanol.
   * Water 0.5 mL/g × 800 = 400 mL, pre-mixed with 3 × 400 = 1200 mL ethanol → 1600 mL pre-mix; ethanol 7600 mL.
   * Wet: 640 (800 g/1.25) + 960 (2400 g/2.5) + 7600 + 400 = 9600 mL. Jar holds 4 × 0.75 = 3 L → 3.2 → 4 batches.
   * Cost: 0.8 kg × 30 + 7.6 L × 4 + 2.4 kg × 6 = 24 + 30.4 + 14.4 = 68.8.
   * Wet on panel 9.6 × 0.9 = 8.64 L over 9 m² = 0.96 mm, three coats of 0.32 mm; 0.2/0.96 = 5/24.
   * Spread: 9 m² × 3 coats ÷ 9.6 L = 2.8125 m²/L. */
  const q = batchQuantities(PENCIL, JOB)
  const line = (role: string) => q.lines.find((l) => l.role === role)!
  it.each([
    ['binder, kg', q.binder_kg, 0.8],
    ['pigment, kg', line('solid').mass_kg, 2.4],
    ['stock, L of solvent', q.stock_L, 6.4],
    ['water added, L', q.addedWater_L, 0.4],
    ['pre-mix, L', q.premix_L, 1.6],
    ['ethanol in all, L', line('solvent').volume_L, 7.6],
    ['ethanol in all, kg', line('solvent').mass_kg, 5.7],
    ['wet mix, L', q.wet_L, 9.6],
    ['dry mass, kg', q.dryMass_kg, 3.2],
    ['batches', q.batches, 4],
    ['pigment per batch, g', line('solid').perBatch_g, 600],
    ['cost', q.cost, 68.8],
    ['wet film per coat, mm', q.wetPerCoat_m * 1000, 0.32],
    ['dry over wet', q.dryOverWet_frac, 5 / 24],
    ['spread, m²/L', q.spread_m2L, 2.8125],
  ])('matches the pencil: %s', (_name, got, want) => {
    expect(got).toBeCloseTo(want, 9)
  })

  it('warns of a wet coat over 12 mil and names the coats that mend it: 0.96 mm ÷ 0.3048 mm → 4', () => {
    expect(q.remarks.join(' ')).toContain('4 coats')
  })

  it('water that the can already holds is measured out less (arithmetic by hand)', () => {
    // Ethanol with 2.5 % of water by volume: 8 mL/g carry 0.2 mL of the 0.5 mL wanted; (0.5 − 0.2)/(1 + 3 × 0.025).
    const damp = { ...PENCIL, solvent: { ...PENCIL.solvent, waterTakenUp_frac: 0.025 } }
    expect(batchQuantities(damp, JOB).addedWater_mLg).toBeCloseTo(0.3 / 1.075, 9)
  })

  it('without water and pigment the stock is all there is: 8 mL of solvent a gram (arithmetic by hand)', () => {
    const small = batchQuantities({ ...PENCIL, water: null, solids: [] }, JOB)
    expect(small.stock_L / small.binder_kg).toBeCloseTo(8, 9)
    expect(small.premix_L).toBe(0)
  })

  it('a water-borne dispersion needs neither pre-mix nor measured water; the example is one', () => {
    const made = batchQuantities(DEMO_RECIPE, JOB)
    expect(made.addedWater_L).toBe(0)
    expect(made.lines.some((l) => l.role === 'water')).toBe(false)
    expect(DEMO_RECIPE.basis).toMatch(/invented/i)
  })

  it.each([0.4, 1.5, 7])('solids at %d g per gram of binder keep their share (identity)', (parts) => {
    const recipe = { ...PENCIL, solids: [{ ...PENCIL.solids[0]!, parts_gg: parts }] }
    const made = batchQuantities(recipe, JOB)
    expect(made.lines.find((l) => l.role === 'solid')!.mass_kg / made.binder_kg).toBeCloseTo(parts, 9)
  })

  it('water in the mix is what was asked for, however damp the can (conservation, 1e-9)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.06, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (waterTakenUp_frac, premixSolvent) => {
          const recipe = {
            ...PENCIL,
            solvent: { ...PENCIL.solvent, waterTakenUp_frac },
            water: { total_mLg: 0.7, premixSolvent },
          }
          const made = batchQuantities(recipe, JOB)
          const solvent_L = made.lines.find((l) => l.role === 'solvent')!.volume_L
          expect(made.addedWater_L + solvent_L * waterTakenUp_frac).toBeCloseTo(made.binder_kg * 0.7, 9)
        },
      ),
    )
  })

  it('too damp a can is said, not hidden', () => {
    const soaked = { ...PENCIL, solvent: { ...PENCIL.solvent, waterTakenUp_frac: 0.2 } }
    expect(batchQuantities(soaked, JOB).remarks.join(' ')).toContain('more water than the recipe wants')
    expect(batchQuantities(soaked, JOB).addedWater_L).toBe(0)
  })

  it('spread rate and thickness are inverse to each other (identity, 1e-12 m)', () => {
    const back = dryThicknessOfSpread(PENCIL, q.spread_m2L, JOB.coats, JOB.loss_frac)
    expect(Math.abs(back - JOB.dryThickness_m)).toBeLessThan(1e-12)
  })

  it('refuses nonsense with the field named', () => {
    const broken = { ...PENCIL, solids: [{ ...PENCIL.solids[0]!, parts_gg: NaN }] }
    expect(() => batchQuantities(broken, JOB)).toThrow(/solids\.0\.parts_gg/)
    expect(() => batchQuantities(PENCIL, { ...JOB, area_m2: -1 })).toThrow(ProblemError)
    expect(() => batchQuantities(PENCIL, { ...JOB, coats: 1.5 })).toThrow(/coats/)
  })

  it('cautions follow the recipe: a solvent and barium have their own, a water-borne mix has no fire caution', () => {
    const barium = { ...PENCIL.solids[0]!, name: 'Barium sulfate' }
    const said = batchCautions({ ...PENCIL, solids: [barium] }).join(' ')
    expect(said).toContain('flash point')
    expect(said).toContain('poisonous')
    expect(batchCautions(DEMO_RECIPE).join(' ')).not.toContain('flash point')
  })
})
