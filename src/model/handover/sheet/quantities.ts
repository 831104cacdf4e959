import { MODULE_GAP_m } from '#model/panels/loop'
import { massLoop } from './mass-loop.ts'
import type { Plant } from './plant.ts'
import { rowsOf } from './plant.ts'

/** Lengths, areas and volumes that have to be bought: plain sums over the layout, nothing added for waste. */
export interface Quantities {
  /** Plate (and so coating, and insulation behind it), m². */
  readonly plate_m2: number
  /** Tubes or channels on all plates, m. */
  readonly passage_m: number
  /** Both headers of all rows, with the stubs between neighbours, m. */
  readonly header_m: number
  /** Unions between the headers of neighbouring modules. */
  readonly unions: number
  /** Closed header ends: each row is fed at one corner and drained at the opposite one. */
  readonly caps: number
  /** Supply and return, with the reach to further rows, m. */
  readonly pipe_m: number
  /** Fluid in plates, headers and pipes, m³. */
  readonly loopVolume_m3: number
  /** Fluid in pipes of slab or ceiling that the panel loop runs through, m³. */
  readonly massVolume_m3: number
  /** Skin of the tank to be insulated, m²; 0 without a tank. */
  readonly tankSkin_m2: number
  readonly anchors: number
}

/** Fixings of a module: one near each corner (common practice, no source). */
export const ANCHORS_PER_MODULE = 4

export function quantitiesOf(plant: Plant): Quantities {
  const { loopSpec, layout, passages, tank } = plant
  const { loop } = plant.answer
  const rows = rowsOf(plant).length
  const passage_m = layout.modules * passages.parallel * passages.length_m
  const header_m = 2 * layout.modules * (loopSpec.moduleWidth_m + MODULE_GAP_m)
  const pipe_m = loopSpec.pipeLength_m + layout.rowPipes_m
  return {
    plate_m2: plant.modulesArea_m2,
    passage_m,
    header_m,
    unions: 2 * (layout.modules - rows),
    caps: 2 * rows,
    pipe_m,
    loopVolume_m3:
      bore_m2(loopSpec.tubeInnerDiameter_m) * passage_m +
      bore_m2(loop.headerInnerDiameter_m) * header_m +
      bore_m2(loop.pipeInnerDiameter_m) * pipe_m,
    massVolume_m3: massLoop(plant)?.volume_m3 ?? 0,
    tankSkin_m2: tank === null ? 0 : tank.side_m2 + 2 * tank.end_m2,
    anchors: ANCHORS_PER_MODULE * layout.modules,
  }
}

/** A drain-back vessel over the water it takes in, and the share of that which stays in it while the pump runs (common practice, no source). */
const VESSEL_SPARE = 1.5
const VESSEL_LEFT = 0.25

/** The vessel that panels without a tank run empty into, m³: its content, the water in it at rest, and while the pump runs. */
export function vesselOf({ loopVolume_m3 }: Pick<Quantities, 'loopVolume_m3'>) {
  return {
    content_m3: VESSEL_SPARE * loopVolume_m3,
    filled_m3: (1 + VESSEL_LEFT) * loopVolume_m3,
    left_m3: VESSEL_LEFT * loopVolume_m3,
  }
}

function bore_m2(bore_m: number): number {
  return 0.25 * Math.PI * bore_m * bore_m
}
