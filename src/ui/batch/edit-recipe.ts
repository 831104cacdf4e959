import type { CoatingRecipe, RecipeSolid } from '#model/panels/paint'

type Liquid = CoatingRecipe['liquids'][number]

/** A list with one entry changed. */
function patched<T>(list: readonly T[], index: number, patch: Partial<T>): readonly T[] {
  return list.map((entry, i) => (i === index ? { ...entry, ...patch } : entry))
}

export const withSolid = (r: CoatingRecipe, index: number, patch: Partial<RecipeSolid>): CoatingRecipe => ({
  ...r,
  solids: patched(r.solids, index, patch),
})
export const withLiquid = (r: CoatingRecipe, index: number, patch: Partial<Liquid>): CoatingRecipe => ({
  ...r,
  liquids: patched(r.liquids, index, patch),
})
export const withoutSolid = (r: CoatingRecipe, index: number): CoatingRecipe => ({
  ...r,
  solids: r.solids.filter((_, i) => i !== index),
})
export const withoutLiquid = (r: CoatingRecipe, index: number): CoatingRecipe => ({
  ...r,
  liquids: r.liquids.filter((_, i) => i !== index),
})
export const withOneMoreSolid = (r: CoatingRecipe): CoatingRecipe => ({
  ...r,
  solids: [...r.solids, { name: 'Another solid', parts_gg: 1, density_kgm3: 2500, price_perkg: 0 }],
})
export const withOneMoreLiquid = (r: CoatingRecipe): CoatingRecipe => ({
  ...r,
  liquids: [
    ...r.liquids,
    { name: 'Another liquid', amount_mLg: 0.5, density_kgm3: 900, waterTakenUp_frac: 0, price_perL: 0 },
  ],
})
