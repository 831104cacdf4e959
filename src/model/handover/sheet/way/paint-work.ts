import { floor_m2 } from '#model/design/measures'
import type { Scenario } from '#model/design/scenario'
import { batchCautions, batchQuantities } from '#model/panels/paint'
import { count, figure, line, words, type Wording } from '#model/basis/words'
import { boughtCoating } from '../bought-coating.ts'
import { heightCaution, solventsCaution } from '../cautions.ts'
import type { WayBuilt } from './way-asked.ts'
import type { Work } from './work.ts'

/** A litre of primer goes so far, m² (common practice, no source). */
export const PRIMER_m2L = 8
/** Sun and outside film for the reading at noon, W/m² and W/m²K (ISO 6946: 25). */
const NOON_Wm2 = 900
const FILM_Wm2K = 25
const LITRE_m3 = 0.001

/** Painting the roof: area, coats, litres of the maker's own recipe, weather, and what a thermometer then shows. */
export function paintWork({ scenario, asItIs, recipe, coat }: WayBuilt): Work {
  const area_m2 = floor_m2(scenario)
  const batch = batchQuantities(recipe, { ...coat, area_m2 })
  const wet_kg = batch.lines.reduce((sum, { mass_kg }) => sum + mass_kg, 0)
  const before = asItIs.roofReflectance_frac
  const now = scenario.room.roofReflectance_frac
  const { coating } = scenario
  const colder_K = ((now - before) * NOON_Wm2) / FILM_Wm2K
  return {
    name: 'Paint the roof',
    sizes: [
      line(
        'Area to coat',
        words`${figure(area_m2, 'm2')} seen from above; a roof pitched 20° has 6 % more, corrugated sheet 10 to 20 % more: measure yours`,
      ),
      line(
        'Coating',
        words`solar reflectance ${figure(now, 'frac')}, emittance ${figure(scenario.room.roofEmittance_frac, 'frac')} as reckoned (aged); ${count(coat.coats)} coats, ${figure(coat.dryThickness_m, 'coatThickness')} dry in all`,
      ),
      line('Recipe', recipeWords(recipe.name, batch)),
      line(
        'One coat',
        words`${figure((batch.wet_L / coat.coats) * LITRE_m3, 'content', 2)} for the whole area, ${figure(batch.wetPerCoat_m, 'coatThickness', 2)} wet`,
      ),
    ],
    buy: [
      {
        quantity: figure(batch.wet_L * LITRE_m3, 'content', 2),
        what: words`coating, wet, for ${count(coat.coats)} coats (${recipe.name}; ${figure(coat.dryThickness_m, 'coatThickness')} dry in all) with ${figure(100 * coat.loss_frac, 'count', 2)} % for losses (${figure(wet_kg, 'kg', 2)}, ${figure(batch.dryMass_kg, 'kg', 2)} once dry); what to weigh is on the page “Batch”. ${boughtCoating({ fresh_frac: coating.solarReflectance_frac, aged_frac: now, age_y: coating.age_y, window_frac: coating.windowEmittance_frac, offWindow_frac: coating.offWindowEmittance_frac }, 'roofs')}`,
      },
      {
        quantity: figure((area_m2 / PRIMER_m2L) * LITRE_m3, 'content', 2),
        what: words`primer for what the roof is made of (zinc, bitumen, tile), one coat`,
      },
      {
        quantity: count(1),
        what: words`set of tools: a roller with a long handle for each who paints, with spare covers, brush for edges, wet-film comb, masking for gutters`,
      },
    ],
    steps: [
      words`Mend leaks and rust, wash off dirt, moss and chalk, rinse, let it dry. Bitumen: let new felt weather as its maker says.`,
      words`Try one square metre first: after a week press tape on a cross cut (ISO 2409) and pull; what comes off wants another primer.`,
      words`Weather: roof between ${figure(10, 'C')} and ${figure(35, 'C')}, at least ${figure(3, 'K')} above the dew point (ISO 8502-4), no rain or dew until it is dry to the touch, no rain for a day after the last coat; not in full sun.`,
      words`Prime. Then ${count(coat.coats)} thin coats, each across the one before and dry before the next; comb each to ${figure(batch.wetPerCoat_m, 'coatThickness', 2)} wet.`,
      words`Where rain water is drunk or used, take the first rains away: ask the maker of every part of the coating.`,
    ],
    readings: [
      {
        what: 'Dry film, by a gauge or a chip under a lens',
        expect: words`${figure(coat.dryThickness_m, 'coatThickness')} ± 20 %`,
      },
      {
        what: 'Near noon, clear sky, light wind: infrared thermometer on painted roof and on a piece left as it was (emissivity at its emittance)',
        expect: words`painted about ${figure(colder_K, 'K')} colder than a roof that reflects ${figure(before, 'frac')} (difference of reflectance × ${figure(NOON_Wm2, 'Wm2')} ÷ ${figure(FILM_Wm2K, 'Wm2K')})`,
      },
    ],
    cautions: [heightCaution, solventsCaution, ...bariumOf(recipe), wetRoof],
    keep: keepWords(scenario),
  }
}

function keepWords(scenario: Scenario): Work['keep'] {
  return [
    words`Wash it with soft water and a soft brush before each summer: the reckoning has ${figure(scenario.coating.age_y, 'y')} of dirt on it, at ${figure(scenario.coating.soiling_1y, 'frac')} of reflectance a year.`,
    words`Look for chalk, cracks and standing water each spring; a new top coat when the reflectance has fallen by 0.1.`,
  ]
}

/** Where a pigment of the recipe is a barium salt, what the page “Batch” says of it. */
function bariumOf(recipe: WayBuilt['recipe']): Work['cautions'] {
  const text = batchCautions(recipe).find((caution) => caution.includes('barium'))
  return text === undefined ? [] : [{ title: 'Barium', text: words`${text}` }]
}

const wetRoof = {
  title: 'Slippery and bright',
  text: words`A coated roof is slippery when wet or dewy, and blinds in the sun: dry surface, soft soles, sun glasses, crawling boards on thin sheet. Ask neighbours and rules about glare.`,
}

/** What to weigh for all coats together. */
function recipeWords(name: string, { lines }: ReturnType<typeof batchQuantities>): Wording {
  const weighed = lines.flatMap(({ name: part, mass_kg }, i) => [
    i === 0 ? '' : '; ',
    part,
    ' ',
    figure(mass_kg, 'kg', 3),
  ])
  return words`${name}, for all coats: ${weighed}. Order of mixing: page “Batch”`
}
