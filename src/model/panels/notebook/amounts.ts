import type { CoatingRecipe } from '#model/panels/paint'
import type { PaintSample } from './sample.ts'

/** Something of a sample that can be changed and drawn a property against. */
export interface Amount {
  /** Key of the thing: `thickness`, `coats`, `porosity`, `solid:NAME` or `liquid:NAME`. */
  readonly key: string
  readonly value: number
}

const THICKNESS = 'thickness'
const COATS = 'coats'
const POROSITY = 'porosity'
const SOLID = 'solid:'
const LIQUID = 'liquid:'

/** Amounts of a sample: dry thickness (m), coats, porosity, solids (g a g of dry binder), liquids (mL a g). */
export function amountsOf({ dryThickness_m, coats, recipe }: PaintSample): Amount[] {
  return [
    { key: THICKNESS, value: dryThickness_m },
    { key: COATS, value: coats },
    { key: POROSITY, value: recipe.porosity_frac },
    ...recipe.solids.map(({ name, parts_gg }) => ({ key: SOLID + name, value: parts_gg })),
    ...recipe.liquids.map(({ name, amount_mLg }) => ({ key: LIQUID + name, value: amount_mLg })),
  ]
}

/** The amount under a key; 0 for an ingredient that the sample does not have. */
export function amountOf(sample: PaintSample, key: string): number {
  return amountsOf(sample).find((amount) => amount.key === key)?.value ?? 0
}

/** The sample with one amount changed; the rest is copied. An ingredient it does not have is left out. */
export function withAmount(sample: PaintSample, key: string, value: number): PaintSample {
  if (key === THICKNESS) return { ...sample, dryThickness_m: value }
  if (key === COATS) return { ...sample, coats: Math.max(1, Math.round(value)) }
  const { recipe } = sample
  if (key === POROSITY) return { ...sample, recipe: { ...recipe, porosity_frac: value } }
  const solids = recipe.solids.map((solid) =>
    key === SOLID + solid.name ? { ...solid, parts_gg: value } : solid,
  )
  const liquids = recipe.liquids.map((liquid) =>
    key === LIQUID + liquid.name ? { ...liquid, amount_mLg: value } : liquid,
  )
  return { ...sample, recipe: { ...recipe, solids, liquids } }
}

/** A copy to change one thing in: without its measurements, under a name that is free. */
export function copyOf(sample: PaintSample, taken: readonly string[], date: string): PaintSample {
  const stem = sample.name.replace(/ \d+$/, '')
  let number = 2
  while (taken.includes(`${stem} ${number}`)) number++
  return { ...sample, name: `${stem} ${number}`, date, note: '', measured: {} }
}

/** Keys whose amount is not the same in all samples: what a property can be drawn against. */
export function variedKeys(samples: readonly PaintSample[]): string[] {
  const keys = new Set(samples.flatMap((sample) => amountsOf(sample).map(({ key }) => key)))
  return [...keys].filter((key) => new Set(samples.map((sample) => amountOf(sample, key))).size > 1)
}

/** One ingredient of the dry film and the wet mix, by mass and by volume. */
export interface IngredientShare {
  readonly name: string
  /** Of the wet mix by mass; of the dry film, without its air, by volume. */
  readonly wetMass_frac: number
  readonly dryVolume_frac: number
}

/** The recipe by mass (wet mix) and by volume (dry film). The water of a pre-mix is left out. */
export function ingredientShares(recipe: CoatingRecipe): IngredientShare[] {
  const { binder, solvent, solids, liquids } = recipe
  const stock_mL = 1 / binder.stock_gmL
  const rows = [
    { name: binder.name, wet_g: 1, dry_mL: 1000 / binder.density_kgm3 },
    { name: solvent.name, wet_g: (stock_mL * solvent.density_kgm3) / 1000, dry_mL: 0 },
    ...solids.map(({ name, parts_gg, density_kgm3 }) => ({
      name,
      wet_g: parts_gg,
      dry_mL: (1000 * parts_gg) / density_kgm3,
    })),
    ...liquids.map(({ name, amount_mLg, density_kgm3 }) => ({
      name,
      wet_g: (amount_mLg * density_kgm3) / 1000,
      dry_mL: 0,
    })),
  ]
  const sum = (of: 'wet_g' | 'dry_mL') => rows.reduce((all, row) => all + row[of], 0)
  const [wet, dry] = [sum('wet_g'), sum('dry_mL')]
  return rows.map((row) => ({
    name: row.name,
    wetMass_frac: row.wet_g / wet,
    dryVolume_frac: row.dry_mL / dry,
  }))
}
