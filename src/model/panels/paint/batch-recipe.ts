import { stop } from '#model/basis/words'

/**
 * A maker's own coating recipe. Everything is counted per gram of dry binder, so that a recipe can be scaled to any
 * area: solids by mass (`_gg`, gram per gram of binder), liquids by volume (`_mLg`, millilitre per gram of binder).
 */
export interface CoatingRecipe {
  readonly name: string
  /** One sentence: whose recipe, whether invented. */
  readonly basis: string
  readonly binder: RecipeBinder
  readonly solvent: RecipeLiquid
  /** Water wanted in the wet mix (it makes the pores); null for a recipe without. */
  readonly water: RecipeWater | null
  /** Pigments and other solids that stay in the film. */
  readonly solids: readonly RecipeSolid[]
  /** More liquids that dry out: slow solvents, wetting agents, thinner. */
  readonly liquids: readonly (RecipeLiquid & { readonly amount_mLg: number })[]
  /** Air in the dry film, 0…0.9. */
  readonly porosity_frac: number
}

export interface RecipeBinder {
  readonly name: string
  readonly density_kgm3: number
  /** Stock solution or dispersion: grams of dry binder per mL of its liquid (35 g in 250 mL is 0.14). */
  readonly stock_gmL: number
  readonly price_perkg: number
}

export interface RecipeLiquid {
  readonly name: string
  readonly density_kgm3: number
  /** Water the liquid has taken up, share by volume: 0 in a fresh dry can. */
  readonly waterTakenUp_frac: number
  readonly price_perL: number
}

export interface RecipeWater {
  /** All the water in the wet mix, whether added or carried by the solvent. */
  readonly total_mLg: number
  /** Parts of solvent to one part of water in the pre-mix; 0 adds water neat. */
  readonly premixSolvent: number
}

export interface RecipeSolid {
  readonly name: string
  readonly parts_gg: number
  readonly density_kgm3: number
  readonly price_perkg: number
}

/**
 * The example recipe. Every amount is invented for this tool: a water-borne acrylic dispersion filled with ground
 * calcium carbonate and a coarser diatomite. Densities are handbook values of the pure substances (from memory).
 */
export const DEMO_RECIPE: CoatingRecipe = {
  name: 'Example white (invented): acrylic dispersion, calcium carbonate and diatomite',
  basis: 'Invented: every amount was made up for this tool; try it on a small board before you make a batch.',
  binder: { name: 'Acrylic dispersion, dry part', density_kgm3: 1120, stock_gmL: 0.92, price_perkg: 0 },
  solvent: { name: 'Water of the dispersion', density_kgm3: 1000, waterTakenUp_frac: 0, price_perL: 0 },
  water: null,
  solids: [
    { name: 'Ground calcium carbonate, fine', parts_gg: 2.65, density_kgm3: 2710, price_perkg: 0 },
    { name: 'Diatomite, coarse', parts_gg: 0.35, density_kgm3: 2200, price_perkg: 0 },
  ],
  liquids: [
    {
      name: 'Propylene glycol (keeps a wet edge)',
      density_kgm3: 1036,
      waterTakenUp_frac: 0,
      price_perL: 0,
      amount_mLg: 0.06,
    },
    {
      name: 'Water to thin',
      density_kgm3: 1000,
      waterTakenUp_frac: 0,
      price_perL: 0,
      amount_mLg: 0.85,
    },
  ],
  porosity_frac: 0.32,
}

/** What a recipe starts from once water is wanted in its solvent; invented. */
export const DEMO_WATER: RecipeWater = { total_mLg: 0.7, premixSolvent: 3 }

/** The job a batch starts from, all of it invented and to be changed. Area: the sized panels where there are any. */
export const DEMO_JOB: CoatJob = {
  area_m2: 8,
  dryThickness_m: 0.00024,
  coats: 3,
  loss_frac: 0.12,
  jar_L: 2,
  jarFill_frac: 0.75,
}

/** What is to be coated, and how it is put on. */
export interface CoatJob {
  readonly area_m2: number
  /** Thickness wanted once dry, all coats together, m. */
  readonly dryThickness_m: number
  readonly coats: number
  /** Share of the wet mix that does not end on the panel (overspray, roller, jar), 0…0.9. */
  readonly loss_frac: number
  /** Size of the mixing jar, L, and how full it may be. */
  readonly jar_L: number
  readonly jarFill_frac: number
}

/**
 * Checks a recipe that came from a form or a file.
 * @throws ProblemError naming every field that is out of range
 */
export function checkRecipe(recipe: CoatingRecipe): void {
  const ranges: [field: string, value: number, min: number, max: number][] = [
    ['binder.density_kgm3', recipe.binder.density_kgm3, 300, 5000],
    ['binder.stock_gmL', recipe.binder.stock_gmL, 0.001, 5],
    ['binder.price_perkg', recipe.binder.price_perkg, 0, 1e6],
    ['solvent.density_kgm3', recipe.solvent.density_kgm3, 500, 2000],
    ['solvent.waterTakenUp_frac', recipe.solvent.waterTakenUp_frac, 0, 0.5],
    ['solvent.price_perL', recipe.solvent.price_perL, 0, 1e6],
    ['porosity_frac', recipe.porosity_frac, 0, 0.9],
  ]
  if (recipe.water !== null) {
    ranges.push(['water.total_mLg', recipe.water.total_mLg, 0, 50])
    ranges.push(['water.premixSolvent', recipe.water.premixSolvent, 0, 20])
  }
  recipe.solids.forEach((solid, i) => {
    ranges.push([`solids.${i}.parts_gg`, solid.parts_gg, 0, 50])
    ranges.push([`solids.${i}.density_kgm3`, solid.density_kgm3, 100, 20000])
    ranges.push([`solids.${i}.price_perkg`, solid.price_perkg, 0, 1e6])
  })
  recipe.liquids.forEach((liquid, i) => {
    ranges.push([`liquids.${i}.amount_mLg`, liquid.amount_mLg, 0, 100])
    ranges.push([`liquids.${i}.density_kgm3`, liquid.density_kgm3, 500, 2000])
    ranges.push([`liquids.${i}.waterTakenUp_frac`, liquid.waterTakenUp_frac, 0, 0.5])
    ranges.push([`liquids.${i}.price_perL`, liquid.price_perL, 0, 1e6])
  })
  for (const [field, value, min, max] of ranges) {
    if (!(value >= min && value <= max)) throw outOfRange(field, value, min, max)
  }
}

/** The problem for one number outside its range; shared with the coat that is asked for. */
export function outOfRange(field: string, value: number, min: number, max: number) {
  return stop(
    'batch-value-out-of-range',
    `${field} is ${value}, outside ${min} to ${max}.`,
    'Type a value inside the range, in the unit of the field.',
    { field },
  )
}
