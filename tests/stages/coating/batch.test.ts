/* Batch quantities against arithmetic done by hand (written out beside each value) and facts of the trade marked
 * `common practice, no source`. Tolerances are rounding of the hand arithmetic. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { batchCautions } from '#model/coating/batch-cautions.ts'
import { DEMO_RECIPE, type CoatingRecipe } from '#model/coating/batch-recipe.ts'
import { batchQuantities, dryThicknessOfSpread, type CoatJob } from '#model/coating/batch.ts'
import { ProblemError } from '#model/problem.ts'

/** Round numbers so that every step can be followed with a pencil. */
const PENCIL: CoatingRecipe = {
  name: 'Pencil',
  basis: 'Invented round numbers.',
  binder: { name: 'Acrylic', density_kgm3: 1000, stock_gmL: 0.1, price_perkg: 20 },
  solvent: { name: 'Acetone', density_kgm3: 800, waterTakenUp_frac: 0, price_perL: 5 },
  water: { total_mLg: 1, premixSolvent: 4 },
  solids: [{ name: 'Barium sulfate', parts_gg: 4, density_kgm3: 4000, price_perkg: 3 }],
  liquids: [],
  porosity_frac: 0.5,
}
const JOB: CoatJob = {
  area_m2: 10,
  dryThickness_m: 0.0004,
  coats: 4,
  loss_frac: 0.2,
  jar_L: 2.5,
  jarFill_frac: 0.8,
}

describe('batch quantities', () => {
  /* By hand. Dry film of 1 g binder: 1 g/1 g·mL⁻¹ + 4 g/4 g·mL⁻¹ = 2 mL solid, half air → 4 mL.
   * 10 m² × 0.4 mm = 4 L of dry film → 4000/4 = 1000 g binder on the panel; 20 % lost → 1000/0.8 = 1250 g.
   * Pigment 4 × 1250 = 5000 g. Stock 1250 g ÷ 0.1 g/mL = 12 500 mL acetone.
   * Water 1 mL/g × 1250 = 1250 mL, pre-mixed with 4 × 1250 = 5000 mL acetone → 6250 mL pre-mix; acetone 17 500 mL.
   * Wet: 1250 + 1250 (5000 g/4) + 17 500 + 1250 = 21 250 mL. Jar holds 2.5 × 0.8 = 2 L → 10.6 → 11 batches.
   * Cost: 1.25 kg × 20 + 17.5 L × 5 + 5 kg × 3 = 25 + 87.5 + 15 = 127.5.
   * Wet on panel 21.25 × 0.8 = 17 L over 10 m² = 1.7 mm, four coats of 0.425 mm; 0.4/1.7 = 0.2353.
   * Spread: 10 m² × 4 coats ÷ 21.25 L = 1.882 m²/L. */
  const q = batchQuantities(PENCIL, JOB)
  const line = (role: string) => q.lines.find((l) => l.role === role)!
  it.each([
    ['binder, kg', q.binder_kg, 1.25],
    ['pigment, kg', line('solid').mass_kg, 5],
    ['stock, L of solvent', q.stock_L, 12.5],
    ['water added, L', q.addedWater_L, 1.25],
    ['pre-mix, L', q.premix_L, 6.25],
    ['acetone in all, L', line('solvent').volume_L, 17.5],
    ['acetone in all, kg', line('solvent').mass_kg, 14],
    ['wet mix, L', q.wet_L, 21.25],
    ['dry mass, kg', q.dryMass_kg, 6.25],
    ['batches', q.batches, 11],
    ['pigment per batch, g', line('solid').perBatch_g, 5000 / 11],
    ['cost', q.cost, 127.5],
    ['wet film per coat, mm', q.wetPerCoat_m * 1000, 0.425],
    ['dry over wet', q.dryOverWet_frac, 4 / 17],
    ['spread, m²/L', q.spread_m2L, 40 / 21.25],
  ])('matches the pencil: %s', (_name, got, want) => {
    expect(got).toBeCloseTo(want, 9)
  })

  it('warns of the wet coat over 0.4 mm and names the coats that mend it', () => {
    expect(q.remarks.join(' ')).toContain('5 coats')
  })

  it('10 g clear acrylic in 100 mL acetone is 1 g per 10 mL (common practice, no source)', () => {
    const small = batchQuantities({ ...PENCIL, water: null, solids: [] }, JOB)
    expect(small.stock_L / small.binder_kg).toBeCloseTo(10, 9)
  })

  it('a damp can needs 0.5–0.6 mL water per gram, a fresh dry one about double (common practice, no source)', () => {
    // Acetone that has taken up 4.5 % of water by volume: 10 mL/g carry 0.45 mL.
    // (1.1 − 0.45)/(1 + 4 × 0.045) = 0.5508 mL; dry: 1.1 mL. Ratio 1.997.
    const damp = { ...DEMO_RECIPE, solvent: { ...DEMO_RECIPE.solvent, waterTakenUp_frac: 0.045 } }
    const wetCan = batchQuantities(damp, JOB).addedWater_mLg
    const dryCan = batchQuantities(DEMO_RECIPE, JOB).addedWater_mLg
    expect(wetCan).toBeCloseTo(0.65 / 1.18, 9)
    expect(wetCan).toBeGreaterThanOrEqual(0.5)
    expect(wetCan).toBeLessThanOrEqual(0.6)
    expect(dryCan / wetCan).toBeCloseTo(2, 1)
  })

  it.each([2, 4, 6])(
    'pigment %d g per gram of acrylic (common practice, no source) keeps its share',
    (parts) => {
      const recipe = { ...PENCIL, solids: [{ ...PENCIL.solids[0]!, parts_gg: parts }] }
      const made = batchQuantities(recipe, JOB)
      expect(made.lines.find((l) => l.role === 'solid')!.mass_kg / made.binder_kg).toBeCloseTo(parts, 9)
    },
  )

  it('water in the mix is what was asked for, however damp the can (conservation, 1e-9)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.08, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        (waterTakenUp_frac, premixSolvent) => {
          const recipe = {
            ...PENCIL,
            solvent: { ...PENCIL.solvent, waterTakenUp_frac },
            water: { total_mLg: 1, premixSolvent },
          }
          const made = batchQuantities(recipe, JOB)
          const solvent_L = made.lines.find((l) => l.role === 'solvent')!.volume_L
          expect(made.addedWater_L + solvent_L * waterTakenUp_frac).toBeCloseTo(made.binder_kg * 1, 9)
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

  it('cautions follow the recipe: acetone and barium have their own, a waterborne mix has no fire caution', () => {
    const said = batchCautions(DEMO_RECIPE).join(' ')
    expect(said).toContain('flash point')
    expect(said).toContain('poisonous')
    const plain = batchCautions({ ...PENCIL, solvent: { ...PENCIL.solvent, name: 'Water' }, solids: [] })
    expect(plain.join(' ')).not.toContain('flash point')
  })
})
