import { loopParts } from './loop-parts.ts'
import { frameParts } from './frame.ts'
import { backInsulation_m, FOAM_WmK } from './figures.ts'
import { PART_GROUPS, partOf, type Part } from './part.ts'
import type { Plant } from './plant.ts'
import type { Quantities } from './quantities.ts'
import { controlParts, roomParts } from './room-parts.ts'
import { storeParts } from './store-parts.ts'
import { count, figure, short, words } from '#model/basis/words'

/** What to buy, in the order of the work. */
export function partsList(plant: Plant, amounts: Quantities): Part[] {
  const parts = [
    ...panelParts(plant, amounts),
    ...frameParts(plant),
    ...loopParts(plant, amounts),
    ...storeParts(plant, amounts),
    ...roomParts(plant),
    ...controlParts(plant),
  ].filter(({ quantity }) => quantity.value > 0)
  return PART_GROUPS.flatMap((group) => parts.filter((part) => part.group === group))
}

function panelParts(plant: Plant, amounts: Quantities): Part[] {
  const { loopSpec, names, passages, layout } = plant
  const { panel, cover } = plant.answer.scenario
  const part = partOf('Panels')
  const foam_m = backInsulation_m(panel.backLoss_Wm2K)
  const parts = [
    part(
      count(layout.modules),
      words`plates ${figure(panel.moduleLength_m, 'm')} along the ${names.passage}s × ${figure(panel.moduleWidth_m, 'm')}, ${short(loopSpec.plateThickness_m)} thick, ${plateMetal(loopSpec.plateConductivity_WmK)}`,
    ),
    part(
      figure(amounts.passage_m, 'm'),
      words`${names.passage} ${short(loopSpec.tubeInnerDiameter_m)} inside, ${short(loopSpec.tubeOuterDiameter_m)} outside: ${count(passages.parallel)} of ${figure(passages.length_m, 'm')} a module`,
    ),
    part(
      figure(amounts.plate_m2, 'm2'),
      words`coating on the sky side, on a primer for the bare metal of the plate: litres and coats from the page “Batch” for this area`,
    ),
  ]
  if (foam_m > 0)
    parts.push(
      part(
        figure(amounts.plate_m2, 'm2'),
        words`back insulation, about ${short(foam_m, 2)} of closed-cell foam (${figure(foam_m / FOAM_WmK, 'rValue')}), and a weather-tight back sheet`,
      ),
    )
  if (cover.kind === 'film')
    parts.push(
      part(
        figure(amounts.plate_m2, 'm2'),
        words`infrared-clear film, with frames that hold it ${short(cover.gap_m)} off the plate`,
      ),
    )
  return parts
}

/** Metals by what they conduct, W/mK (handbook values, from memory). */
function plateMetal(conductivity_WmK: number): ReturnType<typeof words> {
  const metal =
    conductivity_WmK >= 300
      ? 'copper'
      : conductivity_WmK >= 120
        ? 'aluminium'
        : conductivity_WmK >= 30
          ? 'steel'
          : 'of a material'
  return words`${metal} that conducts ${figure(conductivity_WmK, 'WmK')}`
}
