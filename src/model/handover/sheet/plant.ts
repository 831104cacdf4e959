import {
  fluidProperties,
  builtLayout,
  modulePassages,
  type FieldLayout,
  type ModulePassages,
  LOOP_TEMP_C,
  type FluidProperties,
  type LoopSpec,
} from '#model/panels/loop'
import type { PanelSpec } from '#model/panels/plate'
import {
  type DesignAnswer,
  loopSpecOf,
  panelSpecOf,
  shapeInPlace,
  storeSpecOf,
  type TankPlace,
  tankPlaceOf,
} from '#model/design/assembly'
import { floorLoad, type FloorLoad, type TankShape } from '#model/building/store'

/** What the sheet is made from: the answer without the panel's coefficient columns. */
export type SheetAnswer = Omit<DesignAnswer, 'panel'>

/** Names of things that differ between a liquid and an air loop, and between plates. */
export interface PlantNames {
  readonly mover: 'pump' | 'fan'
  readonly pipe: 'pipe' | 'duct'
  readonly passage: 'riser' | 'tube' | 'channel'
  readonly fluid: string
}

/** The built plant: what was answered, and what follows from it for the builder. */
export interface Plant {
  readonly answer: SheetAnswer
  readonly loopSpec: LoopSpec
  readonly panelSpec: PanelSpec
  readonly layout: FieldLayout
  readonly passages: ModulePassages
  readonly fluid: FluidProperties
  readonly names: PlantNames
  /** Volume flow of all panels together, m³/s. */
  readonly flow_m3s: number
  /** Panel area of whole modules, m²; the answer's own where they divide it. */
  readonly modulesArea_m2: number
  /** Null where the store is the slab or the building. */
  readonly tank:
    (TankShape & { readonly volume_m3: number; readonly load: FloorLoad; readonly place: TankPlace }) | null
}

/** Works out the plant of an answer with panels. @throws RangeError when the answer has none */
export function plantOf(answer: SheetAnswer): Plant {
  const { scenario, loop } = answer
  if (!(answer.area_m2 > 0)) throw new RangeError(`a sheet needs panel area above 0, got ${answer.area_m2}`)
  const loopSpec = { ...loopSpecOf(scenario), flow_kgsm2: loop.flow_kgs / loop.area_m2 }
  const fluid = fluidProperties(loopSpec.fluid, loopSpec.glycol_frac, LOOP_TEMP_C)
  return {
    answer,
    loopSpec,
    panelSpec: panelSpecOf(scenario),
    layout: builtLayout(loopSpec, loop.modules),
    passages: modulePassages(loopSpec),
    fluid,
    names: namesOf(loopSpec),
    flow_m3s: loop.flow_kgs / fluid.density_kgm3,
    modulesArea_m2: loop.modules * loopSpec.moduleLength_m * loopSpec.moduleWidth_m,
    tank: tankOf(answer),
  }
}

/** The tank as it goes into its place. */
function tankOf({ scenario, storeVolume_m3 }: SheetAnswer): Plant['tank'] {
  const place = tankPlaceOf(scenario)
  if (place === null || storeVolume_m3 <= 0) return null
  const shape = shapeInPlace(storeVolume_m3, place)
  const load = floorLoad(storeSpecOf(scenario, storeVolume_m3), shape)
  return { ...shape, volume_m3: storeVolume_m3, load, place }
}

function namesOf({ fluid, glycol_frac, layout }: LoopSpec): PlantNames {
  const passage = layout === 'riser' ? 'riser' : layout === 'wetted' ? 'channel' : 'tube'
  if (fluid === 'air') return { mover: 'fan', pipe: 'duct', passage, fluid: 'Air' }
  const mix = `Water with ${(glycol_frac * 100).toFixed(0)} % propylene glycol by mass`
  return { mover: 'pump', pipe: 'pipe', passage, fluid: fluid === 'water' ? 'Water' : mix }
}

/** Modules of each row, the fullest first; the last row takes what is left. */
export function rowsOf({ layout }: Pick<Plant, 'layout'>): readonly number[] {
  return Array.from({ length: layout.rows }, (_, row) =>
    Math.min(layout.modulesPerRow, layout.modules - row * layout.modulesPerRow),
  ).filter((modules) => modules > 0)
}
