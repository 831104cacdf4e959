import * as v from 'valibot'
import type { CoatingRecipe } from './batch-recipe.ts'
import { ProblemError, stop } from '#model/basis/words'

const finite = v.pipe(v.number(), v.finite())
const price = v.optional(finite, 0)
const name = v.pipe(v.string(), v.minLength(1), v.maxLength(80))

const LIQUID = {
  name,
  density_kgm3: finite,
  waterTakenUp_frac: v.optional(finite, 0),
  price_perL: price,
}

const RECIPE = v.strictObject({
  duskbankRecipe: v.literal(1),
  name,
  basis: v.optional(v.pipe(v.string(), v.maxLength(500)), ''),
  binder: v.strictObject({ name, density_kgm3: finite, stock_gmL: finite, price_perkg: price }),
  solvent: v.strictObject(LIQUID),
  water: v.optional(v.nullable(v.strictObject({ total_mLg: finite, premixSolvent: finite })), null),
  solids: v.pipe(
    v.array(v.strictObject({ name, parts_gg: finite, density_kgm3: finite, price_perkg: price })),
    v.maxLength(40),
  ),
  liquids: v.optional(
    v.pipe(v.array(v.strictObject({ ...LIQUID, amount_mLg: finite })), v.maxLength(40)),
    [],
  ),
  porosity_frac: finite,
})

/**
 * Reads a recipe from JSON text (`duskbankRecipe: 1`). Ranges are checked when quantities are worked out.
 * @throws ProblemError naming file and field
 */
export function readRecipe(text: string, file: string): CoatingRecipe {
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch (error) {
    throw stop(
      'recipe-not-json',
      `The file is not JSON (${(error as Error).message}).`,
      'Start from the example recipe: batch --example.',
      { file },
    )
  }
  const parsed = v.safeParse(RECIPE, value)
  if (parsed.success) {
    const { name, basis, binder, solvent, water, solids, liquids, porosity_frac } = parsed.output
    return { name, basis, binder, solvent, water, solids, liquids, porosity_frac }
  }
  throw new ProblemError(
    parsed.issues.slice(0, 10).map((issue) => ({
      code: 'recipe-file',
      severity: 'error' as const,
      message: `${issue.message}.`,
      remedy: 'Mend that field; the example recipe shows every one.',
      place: { file, field: v.getDotPath(issue) ?? 'the whole file' },
    })),
  )
}

/** A recipe as JSON text that `readRecipe` reads back. */
export function writeRecipe(recipe: CoatingRecipe): string {
  return `${JSON.stringify({ duskbankRecipe: 1, ...recipe }, null, 2)}\n`
}
