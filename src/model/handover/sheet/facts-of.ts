import { roofFromAbove } from '#model/design/assembly'
import type { PlantFacts } from '#model/handover/drawing'
import { figure, short, words } from '#model/basis/words'
import { builtDelivery } from './delivered-by.ts'
import { backInsulation_m, flowFigure } from './figures.ts'
import { roofThickness_m } from './roof-thickness.ts'
import { feetHeights, frameOf, PAST_m } from './frame.ts'
import { rowsOf, type Plant } from './plant.ts'
import { quantitiesOf } from './quantities.ts'
import { tankLevels } from './tank-levels.ts'

const UNITS = {
  surface: 'fanCoil',
  drained: 'fanCoil',
  ceiling: 'ceiling',
  floorPipes: 'pipes',
  roofPipes: 'pipes',
} as const

/** What of a plant is drawn. */
export function factsOf(plant: Plant): PlantFacts {
  const { answer, loopSpec, tank, names } = plant
  const { panel, room, store, plan } = answer.scenario
  const wet = loopSpec.fluid !== 'air'
  const frame = frameOf(plant)
  return {
    moduleLength_m: loopSpec.moduleLength_m,
    moduleWidth_m: loopSpec.moduleWidth_m,
    rows: rowsOf(plant),
    feetPerRail: frame.feetPerRail,
    railPast_m: PAST_m,
    feetHigh: feetHeights(frame),
    tilt_deg: panel.tilt_deg,
    azimuth_deg: panel.azimuth_deg,
    panelHeight_m: panel.height_m,
    roof: roofFromAbove(answer.scenario),
    roomWidth_m: room.width_m,
    roomHeight_m: room.height_m,
    roofThickness_m: roofThickness_m(answer.scenario),
    liquid: wet,
    glycol: loopSpec.fluid === 'glycol',
    freeze: plan.freeze,
    tank:
      tank === null
        ? null
        : {
            volume_m3: tank.volume_m3,
            diameter_m: tank.diameter_m,
            height_m: tank.height_m,
            place: store.place,
            foot_m: store.insulation_m,
            ...tankLevels(plant, tank),
          },
    mass: tank !== null ? null : store.kind === 'slab' ? 'slab' : 'building',
    drained: builtDelivery(store) === 'drained',
    roomUnit: tank === null ? null : UNITS[store.deliveryKind],
    pipe: wet
      ? words`${figure(answer.loop.pipeInnerDiameter_m, 'pipeBore')}`
      : words`${short(answer.loop.pipeInnerDiameter_m)} inside`,
    header: wet
      ? words`${figure(answer.loop.headerInnerDiameter_m, 'pipeBore')}`
      : words`${short(answer.loop.headerInnerDiameter_m)} inside`,
    pipeRun_m: quantitiesOf(plant).pipe_m,
    flow: flowFigure(plant),
    mover: names.mover,
    ducting: names.pipe,
    passage: names.passage,
    build: buildOf(plant),
  }
}

/** Thicknesses and sizes of a panel. */
function buildOf({ answer, loopSpec, panelSpec, passages }: Plant): PlantFacts['build'] {
  const { panel } = answer.scenario
  const film = panelSpec.film
  return {
    film: film === null ? null : { gap_m: answer.scenario.cover.gap_m },
    coating: words`solar reflectance ${figure(panelSpec.coating.solarReflectance_frac, 'frac')}`,
    plate_m: loopSpec.plateThickness_m,
    plateText: words`${figure(loopSpec.plateThickness_m, 'sheetMetal')} thick`,
    passageInner_m: loopSpec.tubeInnerDiameter_m,
    passageOuter_m: loopSpec.tubeOuterDiameter_m,
    passages: passages.parallel,
    header_m: answer.loop.headerInnerDiameter_m,
    spacing_m: loopSpec.layout === 'wetted' ? null : loopSpec.tubeSpacing_m,
    foam_m: backInsulation_m(panel.backLoss_Wm2K),
    foamText: words`${figure(backInsulation_m(panel.backLoss_Wm2K), 'board', 2)} of closed-cell foam`,
  }
}
