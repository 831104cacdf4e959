import { constructionOf, type Construction, ROOF_BUILDS, WALL_BUILDS } from '#model/building/construction'
import { agedCoating, agedFilm } from '#model/panels/coating'
import { LOOP_TEMP_C, fluidProperties, type LoopSpec } from '#model/panels/loop'
import type { PanelSpec } from '#model/panels/plate'
import type { RoomSpec } from '#model/building/room'
import type { Scenario } from '#model/design/scenario'
import type { TargetSpec } from '#model/design/target'
import type { SkyOptions } from '#model/outdoors/sky'
import { deliveryPower_W, type StoreSpec } from '#model/building/store'
import type { PlanSpec } from '#model/building/year'
import { rowPlaceOf } from './panel-place.ts'

/** What each room of the model takes, picked out of a scenario. */

export function skyOptionsOf({ sky }: Scenario): SkyOptions {
  return {
    model: sky.model,
    altitudeTerm: sky.altitudeTerm,
    useMeasured: sky.useMeasured,
    deficitFactor_frac: sky.deficitFactor_frac,
  }
}

export function panelSpecOf({ coating, cover, panel, site }: Scenario): PanelSpec {
  const { moduleLength_m: length_m, moduleWidth_m: width_m } = panel
  return {
    coating: agedCoating(coating, coating.soiling_1y, coating.age_y),
    film: cover.kind === 'film' ? agedFilm(cover, coating.age_y) : null,
    tilt_deg: panel.tilt_deg,
    azimuth_deg: panel.azimuth_deg,
    horizon_deg: site.horizon_deg,
    groundAlbedo_frac: site.albedo_frac,
    height_m: panel.height_m,
    terrain: site.terrain,
    windModel: panel.windModel,
    windExposure_frac: panel.windExposure_frac,
    freeConvectionLength_m: (length_m * width_m) / (2 * (length_m + width_m)),
    backLoss_Wm2K: panel.backLoss_Wm2K,
    heatCapacity_Jm2K: panel.heatCapacity_Jm2K,
  }
}

export function loopSpecOf(scenario: Scenario): LoopSpec {
  const { loop, panel } = scenario
  return {
    ...loop,
    pipeInnerDiameter_m: loop.autoPipe ? null : loop.pipeInnerDiameter_m,
    moduleLength_m: panel.moduleLength_m,
    moduleWidth_m: panel.moduleWidth_m,
    place: rowPlaceOf(scenario),
  }
}

/** Density of the scenario's fluid, kg/m³: turns a metered volume into mass. */
export function loopDensity_kgm3({ loop }: Scenario): number {
  return fluidProperties(loop.fluid, loop.glycol_frac, LOOP_TEMP_C).density_kgm3
}

/** The store of the scenario with the volume a search has come to; what fan and pump draw is worked out where it is not given. */
export function storeSpecOf({ store }: Scenario, volume_m3: number): StoreSpec {
  return { ...store, volume_m3, deliveryPower_W: deliveryPower_W(store) }
}

export function roomSpecOf({ room, site, store }: Scenario): RoomSpec {
  return {
    ...room,
    terrain: site.terrain,
    wall: wallOf(room),
    roof: roofOf(room),
    pipes: pipesOf(store),
  }
}

function pipesOf({ kind, deliveryKind }: Scenario['store']): RoomSpec['pipes'] {
  if (kind === 'slab' || deliveryKind === 'floorPipes') return 'floor'
  return deliveryKind === 'roofPipes' ? 'roof' : 'none'
}

/** Layers of the walls: as chosen by material, or as described by U-value, mass and its place. */
export function wallOf(room: Scenario['room']): Construction {
  if (room.wallBuild !== 'own') return WALL_BUILDS[room.wallBuild].layers
  return constructionOf({ U_Wm2K: room.wallU_Wm2K, mass_kgm2: room.wallMass_kgm2, place: room.wallMassPlace })
}

/** The same of the roof. */
export function roofOf(room: Scenario['room']): Construction {
  if (room.roofBuild !== 'own') return ROOF_BUILDS[room.roofBuild].layers
  return constructionOf({ U_Wm2K: room.roofU_Wm2K, mass_kgm2: room.roofMass_kgm2, place: room.roofMassPlace })
}

export function planSpecOf({ plan }: Pick<Scenario, 'plan'>): PlanSpec {
  return plan
}

/** Opened windows are shut again once the room is this far under the setpoint, K (common practice, no source). */
const VENT_BELOW_SETPOINT_K = 4

/** Room air at which night windows and night fans of the year stop, °C. */
export const ventStop_C = (scenario: Pick<Scenario, 'plan'>): number =>
  planSpecOf(scenario).setpoint_C - VENT_BELOW_SETPOINT_K

export function targetSpecOf({ target }: Scenario): TargetSpec {
  return target
}
