import { checkRecipe, outOfRange, type CoatingRecipe, type CoatJob } from './batch-recipe.ts'

/** One line of the shopping and weighing list. */
export interface BatchLine {
  readonly name: string
  /** `binder`, `solvent`, `water`, `solid` or `liquid`. */
  readonly role: 'binder' | 'solvent' | 'water' | 'solid' | 'liquid'
  /** For the whole job. */
  readonly mass_kg: number
  readonly volume_L: number
  /** For one jar. */
  readonly perBatch_g: number
  readonly perBatch_mL: number
  readonly cost: number
}

export interface BatchQuantities {
  readonly lines: readonly BatchLine[]
  readonly binder_kg: number
  /** Stock solution to draw for the whole job, counted as its solvent's volume (grams per mL of solvent). */
  readonly stock_L: number
  /** Water and solvent mixed beforehand, L; 0 for a recipe without. */
  readonly premix_L: number
  /** Water that is measured out (not what the solvent carries), L and mL per gram of binder. */
  readonly addedWater_L: number
  readonly addedWater_mLg: number
  /** Wet mix, volumes added up, L. */
  readonly wet_L: number
  readonly dryMass_kg: number
  /** Wet film of one coat, m. */
  readonly wetPerCoat_m: number
  /** Dry thickness over wet thickness, 0…1. */
  readonly dryOverWet_frac: number
  /** Area one litre of wet mix covers in one coat, losses included, m²/L. */
  readonly spread_m2L: number
  readonly batches: number
  readonly cost: number
  /** Sentences worth showing. */
  readonly remarks: readonly string[]
}

/**
 * Quantities for a coat.
 *   dry film of 1 g binder:  v = (1/ρ_b + Σ parts_i/ρ_i)/(1 − porosity)
 *   binder = area · thickness/(v (1 − loss)); all else in proportion.
 * Volumes are added up as if mixing neither shrank nor swelled them (an organic solvent and water shrink by a few percent).
 * @throws ProblemError for a value out of its range
 */
export function batchQuantities(recipe: CoatingRecipe, job: CoatJob): BatchQuantities {
  checkRecipe(recipe)
  checkJob(job)
  const perGram = mixPerGram(recipe)
  const dryVolume_m3 = job.area_m2 * job.dryThickness_m
  const onPanel_g = dryVolume_m3 / perGram.dry_m3
  const binder_g = onPanel_g / (1 - job.loss_frac)
  const wet_L = (binder_g * perGram.wet_mL) / 1000
  const usable_L = job.jar_L * job.jarFill_frac
  const batches = Math.ceil(wet_L / usable_L - 1e-9)
  const lines = perGram.lines.map((line) => scaled(line, binder_g, batches))
  const wetThickness_m = (onPanel_g * perGram.wet_mL * 1e-6) / job.area_m2
  const result = {
    lines,
    binder_kg: binder_g / 1000,
    stock_L: (binder_g * perGram.stock_mL) / 1000,
    premix_L: (binder_g * perGram.premix_mL) / 1000,
    addedWater_L: (binder_g * perGram.addedWater_mL) / 1000,
    addedWater_mLg: perGram.addedWater_mL,
    wet_L,
    dryMass_kg: (binder_g * perGram.dry_g) / 1000,
    wetPerCoat_m: wetThickness_m / job.coats,
    dryOverWet_frac: job.dryThickness_m / wetThickness_m,
    spread_m2L: (job.area_m2 * job.coats) / wet_L,
    batches,
    cost: lines.reduce((sum, line) => sum + line.cost, 0),
  }
  return { ...result, remarks: remarks(recipe, job, result, perGram) }
}

/** Dry thickness, m, that a spread rate (m² per litre of wet mix and coat, losses included) gives after all coats. */
export function dryThicknessOfSpread(
  recipe: CoatingRecipe,
  spread_m2L: number,
  coats: number,
  loss_frac: number,
): number {
  checkRecipe(recipe)
  if (!(spread_m2L > 0)) throw outOfRange('spread_m2L', spread_m2L, 0.01, 100)
  const perGram = mixPerGram(recipe)
  const binder_gm2 = (coats * 1000 * (1 - loss_frac)) / spread_m2L / perGram.wet_mL
  return binder_gm2 * perGram.dry_m3
}

interface GramLine {
  readonly name: string
  readonly role: BatchLine['role']
  readonly mass_g: number
  readonly volume_mL: number
  readonly cost: number
}

/** Everything that goes with one gram of dry binder. */
interface MixPerGram {
  readonly lines: readonly GramLine[]
  readonly stock_mL: number
  readonly premix_mL: number
  readonly addedWater_mL: number
  /** Water wanted less what the liquids carry; negative when they already carry too much. */
  readonly missingWater_mL: number
  readonly wet_mL: number
  readonly dry_g: number
  readonly dry_m3: number
}

function mixPerGram(recipe: CoatingRecipe): MixPerGram {
  const { binder, solvent } = recipe
  const stock_mL = 1 / binder.stock_gmL
  const carried_mL =
    stock_mL * solvent.waterTakenUp_frac +
    recipe.liquids.reduce((sum, l) => sum + l.amount_mLg * l.waterTakenUp_frac, 0)
  const water = waterToAdd(recipe, carried_mL)
  const lines: GramLine[] = [
    solidLine(binder.name, 'binder', 1, binder.density_kgm3, binder.price_perkg),
    ...recipe.solids.map((s) => solidLine(s.name, 'solid', s.parts_gg, s.density_kgm3, s.price_perkg)),
    liquidLine(
      solvent.name,
      'solvent',
      stock_mL + water.solvent_mL,
      solvent.density_kgm3,
      solvent.price_perL,
    ),
    ...recipe.liquids.map((l) => liquidLine(l.name, 'liquid', l.amount_mLg, l.density_kgm3, l.price_perL)),
  ]
  if (water.added_mL > 0) lines.push(liquidLine('Water', 'water', water.added_mL, 1000, 0))
  const stays = lines.filter((line) => line.role === 'binder' || line.role === 'solid')
  const solid_mL = stays.reduce((sum, line) => sum + line.volume_mL, 0)
  return {
    lines,
    stock_mL,
    premix_mL: recipe.water?.premixSolvent ? water.added_mL + water.solvent_mL : 0,
    addedWater_mL: water.added_mL,
    missingWater_mL: water.missing_mL,
    wet_mL: lines.reduce((sum, line) => sum + line.volume_mL, 0),
    dry_g: stays.reduce((sum, line) => sum + line.mass_g, 0),
    dry_m3: (solid_mL * 1e-6) / (1 - recipe.porosity_frac),
  }
}

/**
 * Water to measure out so that, with what stock and pre-mix solvent carry, the total is reached:
 * added (1 + premixSolvent · taken up) = total − carried.
 */
function waterToAdd(recipe: CoatingRecipe, carried_mL: number) {
  if (recipe.water === null) return { added_mL: 0, solvent_mL: 0, missing_mL: 0 }
  const { total_mLg, premixSolvent } = recipe.water
  const missing_mL = total_mLg - carried_mL
  const added_mL = Math.max(0, missing_mL) / (1 + premixSolvent * recipe.solvent.waterTakenUp_frac)
  return { added_mL, solvent_mL: added_mL * premixSolvent, missing_mL }
}

function solidLine(
  name: string,
  role: 'binder' | 'solid',
  mass_g: number,
  density_kgm3: number,
  perkg: number,
): GramLine {
  return { name, role, mass_g, volume_mL: (mass_g / density_kgm3) * 1000, cost: (mass_g / 1000) * perkg }
}

function liquidLine(
  name: string,
  role: 'solvent' | 'liquid' | 'water',
  volume_mL: number,
  density_kgm3: number,
  perL: number,
): GramLine {
  return { name, role, mass_g: (volume_mL * density_kgm3) / 1000, volume_mL, cost: (volume_mL / 1000) * perL }
}

function scaled(line: GramLine, binder_g: number, batches: number): BatchLine {
  const mass_g = line.mass_g * binder_g
  const volume_mL = line.volume_mL * binder_g
  return {
    name: line.name,
    role: line.role,
    mass_kg: mass_g / 1000,
    volume_L: volume_mL / 1000,
    perBatch_g: mass_g / batches,
    perBatch_mL: volume_mL / batches,
    cost: line.cost * binder_g,
  }
}

/** Wet coats thicker than this tend to run on a steep face: the thickest notch of a usual sag test, 12 mil (ASTM D4400, from memory). */
const THICK_WET_COAT_M = 12 * 25.4e-6

function remarks(
  recipe: CoatingRecipe,
  job: CoatJob,
  result: { wetPerCoat_m: number; dryOverWet_frac: number },
  perGram: MixPerGram,
): string[] {
  const said = [
    `The wet film shrinks to ${(100 * result.dryOverWet_frac).toFixed(0)} % of its thickness as it dries.`,
  ]
  if (perGram.missingWater_mL < 0) {
    said.push(
      'The solvent already carries more water than the recipe wants: open a drier can, or expect a chalky, weak film.',
    )
  }
  if (result.wetPerCoat_m > THICK_WET_COAT_M) {
    const coats = Math.ceil((result.wetPerCoat_m * job.coats) / THICK_WET_COAT_M)
    said.push(
      `A wet coat of ${(result.wetPerCoat_m * 1000).toFixed(2)} mm may run or crack: ${coats} coats would keep each under ${(THICK_WET_COAT_M * 1000).toFixed(1)} mm.`,
    )
  }
  if (recipe.porosity_frac > 0.7) said.push('Very porous films rub off and soak up dirt and water.')
  return said
}

function checkJob(job: CoatJob): void {
  const ranges: [field: string, value: number, min: number, max: number][] = [
    ['area_m2', job.area_m2, 0.001, 10000],
    ['dryThickness_m', job.dryThickness_m, 1e-6, 0.01],
    ['coats', job.coats, 1, 50],
    ['loss_frac', job.loss_frac, 0, 0.9],
    ['jar_L', job.jar_L, 0.01, 1000],
    ['jarFill_frac', job.jarFill_frac, 0.1, 1],
  ]
  for (const [field, value, min, max] of ranges) {
    if (!(value >= min && value <= max)) throw outOfRange(field, value, min, max)
  }
  if (!Number.isInteger(job.coats)) throw outOfRange('coats (whole number)', job.coats, 1, 50)
}
