export { batchCautions } from './batch-cautions.ts'
export { readRecipe, writeRecipe } from './batch-file.ts'
export {
  type CoatJob,
  type CoatingRecipe,
  DEMO_JOB,
  DEMO_RECIPE,
  DEMO_WATER,
  type RecipeSolid,
} from './batch-recipe.ts'
export { CANS_L, CANS_gal, containersFor, type ContainerSizes, TUBS_kg, TUBS_lb } from './containers.ts'
export { type BatchQuantities, batchQuantities } from './batch.ts'
