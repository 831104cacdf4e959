import type { CoatingRecipe } from './batch-recipe.ts'

/** Words in an ingredient's name that call for a caution of their own. */
const FLAMMABLE = /acet|ethan|propan|toluen|xylen|spirit|thinner|butan|hexan|mek\b|solvent|alcohol/i
const BARIUM = /barium|barite|baryte|baso/i

/**
 * Cautions for mixing and spraying a recipe, the ones that matter most first. Solvent and barium facts: NIOSH Pocket
 * Guide entries for acetone and soluble barium compounds; the rest common practice, no source.
 */
export function batchCautions(recipe: CoatingRecipe): string[] {
  const liquids = [recipe.solvent.name, ...recipe.liquids.map((liquid) => liquid.name)]
  const solids = recipe.solids.map((solid) => solid.name)
  const said: string[] = []
  if (liquids.some((name) => FLAMMABLE.test(name))) {
    said.push(
      'Solvent vapour burns and creeps along the floor to any flame, heater, switch or static spark; acetone catches fire far below freezing (flash point −20 °C). Work outdoors or with strong draught, small open amounts, no ignition source, a fire extinguisher at hand.',
      'Spraying makes an explosive, breathable mist: respirator for organic vapour with particle filter, eye protection, and butyl rubber gloves for acetone (nitrile gives way in minutes). Keep solvent-wet rags in a closed metal tin.',
    )
  }
  if (solids.some((name) => BARIUM.test(name))) {
    said.push(
      'Buy washed barium sulfate, which is practically insoluble. Soluble barium salts (chloride, nitrate, hydroxide, acetate, sulfide) and acid-soluble carbonate are poisonous: never make the pigment from them at home, and never let acid reach a pigment you are not sure of.',
    )
  }
  if (solids.length > 0) {
    said.push(
      'Fine pigment dust harms the lungs: weigh and sand with a P2 / N95 mask or better, damp the dust, eat elsewhere.',
    )
  }
  said.push(
    'Label every jar with its content and date, keep it from children and from the sun, and hand left-overs to the collection your local rules name, never to a drain. Local codes and licensed practice decide.',
  )
  return said
}
