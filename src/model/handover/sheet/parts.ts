import { loopParts } from './loop-parts.ts'
import { moduleFixings } from './fixings.ts'
import { braceParts } from './braces.ts'
import { frameOf, frameParts } from './frame.ts'
import { EDGE_WALL_m, edgeInside_m, FLANGE_m } from '#model/handover/drawing'
import { boughtCoating } from './bought-coating.ts'
import { factsOf } from './facts-of.ts'
import { backInsulation_m, FOAM_WmK } from './figures.ts'
import { PART_GROUPS, partOf, type Part } from './part.ts'
import type { Plant } from './plant.ts'
import type { Quantities } from './quantities.ts'
import { controlParts, roomParts } from './room-parts.ts'
import { storeParts } from './store-parts.ts'
import { batchQuantities, DEMO_JOB, DEMO_RECIPE } from '#model/panels/paint'
import { PRIMER_m2L } from './way/paint-work.ts'
import { count, figure, short, words } from '#model/basis/words'

const LITRE_m3 = 0.001
/** Film of paste round half a tube, m (common practice, no source). */
const PASTE_m = 0.0002

/** What to buy, in the order of the work. */
export function partsList(plant: Plant, amounts: Quantities): Part[] {
  const parts = [
    ...panelParts(plant, amounts),
    ...frameParts(plant),
    ...braceParts(plant, frameOf(plant)),
    ...loopParts(plant, amounts),
    ...storeParts(plant, amounts),
    ...roomParts(plant),
    ...controlParts(plant),
  ].filter(({ quantity }) => quantity.value > 0)
  return PART_GROUPS.flatMap((group) => parts.filter((part) => part.group === group))
}

function panelParts(plant: Plant, amounts: Quantities): Part[] {
  const { loopSpec, names, passages, layout, panelSpec } = plant
  const { panel, cover } = plant.answer.scenario
  const part = partOf('Panels')
  const foam_m = backInsulation_m(panel.backLoss_Wm2K)
  const parts = [
    part(
      count(layout.modules),
      words`plates ${figure(panel.moduleLength_m, 'span')} along the ${names.passage}s × ${figure(panel.moduleWidth_m, 'span')}, ${figure(loopSpec.plateThickness_m, 'sheetMetal')} thick, ${plateMetal(loopSpec.plateConductivity_WmK)}`,
    ),
    part(
      figure(amounts.passage_m, 'm'),
      words`${names.passage} ${figure(loopSpec.tubeOuterDiameter_m, 'tubeOuter')} outside, about ${short(loopSpec.tubeInnerDiameter_m)} inside${passageMetal(plant)}: ${count(passages.parallel)} of ${figure(passages.length_m, 'span')} a module`,
    ),
    ...(loopSpec.fluid === 'air' || loopSpec.layout === 'wetted'
      ? []
      : [
          part(
            figure(PASTE_m * (Math.PI / 2) * loopSpec.tubeOuterDiameter_m * amounts.passage_m, 'content', 2),
            words`heat-conducting paste for outdoors, free of water, between ${names.passage} and groove (a film of ${short(PASTE_m, 1)}) and under S1`,
          ),
        ]),
    ...coatingParts(plant, amounts.plate_m2),
    part(
      figure(2 * layout.modules * (panel.moduleLength_m + panel.moduleWidth_m), 'm'),
      words`edge profile round each module, aluminium U ${short(edgeInside_m(factsOf(plant).build), 2)} inside or a little more, flanges ${short(FLANGE_m)}, ${figure(EDGE_WALL_m, 'sheetMetal')} thick (folded of sheet where no such U is sold), riveted at the corners with notches for the headers${loopSpec.fluid === 'air' ? '' : ' and the sockets of their unions'}, its upper flange coated with the plate: holds plate, foam and back sheet together, and is what the clamps grip`,
    ),
    moduleFixings(plant),
  ]
  if (foam_m > 0)
    parts.push(
      part(
        figure(amounts.plate_m2, 'm2'),
        words`back insulation, about ${figure(foam_m, 'board', 2)} of closed-cell foam (${figure(foam_m / FOAM_WmK, 'rValue')}; ${figure(panel.backLoss_Wm2K, 'Wm2K')} in all), and a weather-tight back sheet of aluminium or coated steel, ${figure(0.0005, 'sheetMetal')}`,
      ),
    )
  if (cover.kind === 'film')
    parts.push(
      part(
        figure(amounts.plate_m2, 'm2'),
        words`infrared-clear film, with frames that hold it ${short(cover.gap_m)} off the plate: once aged still ${figure(panelSpec.film!.windowTransmittance_frac, 'frac')} clear at 8–13 µm and ${figure(panelSpec.film!.solarTransmittance_frac, 'frac')} to the sun`,
      ),
    )
  return parts
}

/** What tubes are made of: brazed to copper headers, and dry where they touch another metal (common practice, no source). */
function passageMetal({ loopSpec }: Plant): string {
  if (loopSpec.fluid === 'air' || loopSpec.layout === 'wetted') return ''
  return ', soft copper tube, pressed into grooves of the plate that grip it a little past half round and hold it; no water at the joint'
}

/** Coating and primer of the plates. Spreading rate: the batch of the starting recipe. */
function coatingParts(plant: Plant, plate_m2: number): Part[] {
  const { coating } = plant.answer.scenario
  const part = partOf('Panels')
  const { wet_L } = batchQuantities(DEMO_RECIPE, { ...DEMO_JOB, area_m2: plate_m2 })
  const { coats, loss_frac } = DEMO_JOB
  return [
    part(
      figure(wet_L * LITRE_m3, 'content', 2),
      words`coating on the sky side, wet (recipe: ${DEMO_RECIPE.name}; ${figure(DEMO_JOB.dryThickness_m, 'coatThickness')} dry in all): ${count(coats)} coats on ${figure(plate_m2, 'm2')}, each takes ${figure((wet_L / coats) * LITRE_m3, 'content', 2)} with ${figure(100 * loss_frac, 'count', 2)} % for losses (spreading rate of the starting recipe: common practice, no source; that of yours is on the page “Batch”). ${boughtCoating({ fresh_frac: coating.solarReflectance_frac, aged_frac: plant.panelSpec.coating.solarReflectance_frac, age_y: coating.age_y, window_frac: coating.windowEmittance_frac, offWindow_frac: coating.offWindowEmittance_frac })}`,
    ),
    part(
      figure((plate_m2 / PRIMER_m2L) * LITRE_m3, 'content', 2),
      words`primer for the bare metal of the plate, one coat (common practice, no source)`,
    ),
  ]
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
