import type { LoopDuty } from '#model/panels/loop'
import { type PanelSpec, reducePanelHours, type PanelHours } from '#model/panels/plate'
import { CONVECTION_INSIDE_Wm2K, FILM_INSIDE_Wm2K, withRows, type RoomNetwork } from '#model/building/room'
import type { FaceGroup } from '#inside/model/building/room/spec.ts'
import type { SkyHours } from '#model/outdoors/sky'
import type { StoreModel } from '#model/building/store'
import type { Plant } from '#inside/model/building/year/inputs.ts'
import type { YearKernel } from '#inside/model/building/year/kernel.ts'
import type { PlanSpec } from '#model/building/year'
import type { WeatherRecord } from '#model/outdoors/weather'

const column = (hours: number, value: number): Float64Array => new Float64Array(hours).fill(value)

/** What a hand-made room is made of; drives hold in every hour. Nothing else exchanges heat. */
export interface HandMadeRoom {
  readonly hours: number
  readonly air_JK: number
  /** A lump behind the film of its faces, and what ties it to the air and to outdoors. */
  readonly fabric_JK?: number
  readonly fabricOut_WK?: number
  readonly airFabric_WK?: number
  /** The same for a floor with pipes; without a tie it touches a thousandth of a square metre of air. */
  readonly slab_JK?: number
  readonly airSlab_WK?: number
  readonly ground_C?: number
  readonly slabOut_WK?: number
  readonly airOut_WK?: number
  readonly outdoor_C?: Float64Array
  /** Given to the air by the outdoor air, as a heater would. */
  readonly power_W?: number
  readonly gains_W?: number
  readonly dewPoint_C?: number
  readonly nightVent_WK?: number
}

/** A lump of one mode: a capacity at one temperature right behind its faces. */
export function lump(
  name: FaceGroup['name'],
  area_m2: number,
  capacity_JK: number,
  outside: { readonly temp_C: Float64Array; readonly through_WK: number } | null,
): FaceGroup {
  const capacity_Jm2K = capacity_JK / area_m2
  const shape = Float64Array.of(1 / Math.sqrt(capacity_Jm2K))
  return {
    name,
    area_m2,
    modes: {
      count: 1,
      decay_1s: Float64Array.of(FILM_INSIDE_Wm2K / capacity_Jm2K),
      inner: shape,
      outer: shape,
      pipe: name === 'floor' ? shape : new Float64Array(1),
      held: Float64Array.of(Math.sqrt(capacity_Jm2K)),
      innermost: shape,
      innerConductance_Wm2K: FILM_INSIDE_Wm2K,
      outerResistance_m2KW: 0,
    },
    outside:
      outside === null
        ? null
        : {
            temp_C: outside.temp_C,
            film_Wm2K: column(outside.temp_C.length, Math.max(1e-12, outside.through_WK / area_m2)),
          },
    sunShare: 0,
    areaShare: 0,
  }
}

/** A room of lumps with the numbers of a textbook. */
export function handMadeRoom(made: HandMadeRoom): RoomNetwork {
  const { hours, airOut_WK = 0, power_W = 0 } = made
  const outdoor_C = made.outdoor_C ?? column(hours, 0)
  const areaOf = (tie_WK: number | undefined) => Math.max(1e-3, (tie_WK ?? 0) / CONVECTION_INSIDE_Wm2K)
  const groups: FaceGroup[] = []
  if (made.fabric_JK !== undefined)
    groups.push(
      lump('wall', areaOf(made.airFabric_WK), made.fabric_JK, {
        temp_C: outdoor_C,
        through_WK: made.fabricOut_WK ?? 0,
      }),
    )
  if (made.slab_JK !== undefined)
    groups.push(
      lump('floor', areaOf(made.airSlab_WK), made.slab_JK, {
        temp_C: column(hours, made.ground_C ?? 0),
        through_WK: made.slabOut_WK ?? 0,
      }),
    )
  const inner_m2 = groups.reduce((sum, { area_m2 }) => sum + area_m2, 0)
  return withRows({
    hours,
    floor_m2: 20,
    volume_m3: 50,
    airCapacity_JK: made.air_JK,
    groups: groups.map((group) => ({ ...group, areaShare: group.area_m2 / inner_m2 })),
    windows: null,
    ventilation_WK: column(hours, airOut_WK),
    outdoor_C: airOut_WK > 0 ? outdoor_C.map((out_C) => out_C + power_W / airOut_WK) : outdoor_C,
    sun_W: column(hours, 0),
    gains_W: column(hours, made.gains_W ?? 0),
    nightVent_WK: made.nightVent_WK ?? 0,
    ventAllowed: new Uint8Array(hours).fill(1),
    indoorDewPoint_C: column(hours, made.dewPoint_C ?? -30),
    pressure_Pa: 101_325,
  })
}

/** Puts the whole room, and the tank, at one temperature. */
export function startAt(kernel: YearKernel, room: RoomNetwork, temp_C: number): void {
  const masses = room.groups.flatMap(({ modes }) => Array.from(modes.held, (e) => e * temp_C))
  kernel.setRoom(temp_C, masses)
}

/** Weather of one steady night. */
export function steadyNight(hours: number, air_C: number, wind_ms = 0, dewPoint_C = -40): WeatherRecord {
  const zero = (): Float64Array => new Float64Array(hours)
  return {
    site: { name: 'Hand-made', latitude_deg: 40, longitude_deg: 0, altitude_m: 0, utcOffset_h: 0 },
    start_utcMs: Date.UTC(2023, 5, 1),
    hours,
    radiationMiddle_h: 0.5,
    airTemp_C: column(hours, air_C),
    dewPoint_C: column(hours, dewPoint_C),
    pressure_Pa: column(hours, 101_325),
    wind_ms: column(hours, wind_ms),
    globalHorizontal_Wm2: zero(),
    directNormal_Wm2: zero(),
    diffuseHorizontal_Wm2: zero(),
    cloud_frac: zero(),
    origins: {},
    basis: 'Made by hand for tests.',
  }
}

const NO_SUN = (hours: number) => ({
  beam_Wm2: new Float64Array(hours),
  diffuse_Wm2: new Float64Array(hours),
  ground_Wm2: new Float64Array(hours),
  total_Wm2: new Float64Array(hours),
})

/** A bare grey plate facing a sky that sends so much, W/m² in both bands together. */
export function greyPanel(
  weather: WeatherRecord,
  sky: SkyHours,
  change: Partial<PanelSpec> & { readonly emittance_frac?: number } = {},
): PanelHours {
  const emittance_frac = change.emittance_frac ?? 0.93
  const spec: PanelSpec = {
    coating: {
      solarReflectance_frac: 0.95,
      windowEmittance_frac: emittance_frac,
      offWindowEmittance_frac: emittance_frac,
    },
    film: null,
    tilt_deg: 0,
    azimuth_deg: 0,
    horizon_deg: 0,
    groundAlbedo_frac: 0.2,
    height_m: 3,
    terrain: 'open',
    windModel: 'watmuff1977',
    windExposure_frac: 1,
    freeConvectionLength_m: 0.33,
    backLoss_Wm2K: 0,
    heatCapacity_Jm2K: 1000,
    ...change,
  }
  return reducePanelHours(weather, NO_SUN(weather.hours) as never, sky, spec)
}

/** A plan that always lets the loop run. */
export const ALWAYS: PlanSpec = {
  kind: 'allDay',
  startHour_h: 0,
  endHour_h: 0,
  startDifference_K: 0.2,
  stopDifference_K: 0,
  lowestStore_C: -50,
  seasonGate_C: -50,
  setpoint_C: 22,
  band_K: 1,
  freeze: 'glycol',
  freezeLimit_C: -50,
}

/** A loop without pipes and pump heat. */
export function bareLoop(area_m2: number, capacityRate_WK: number, fluidToPlate_Wm2K: number): LoopDuty {
  return {
    area_m2,
    modules: 1,
    flow_kgs: capacityRate_WK / 4184,
    capacityRate_WK,
    fluidToPlate_Wm2K,
    pipeGain_WK: 0,
    pressureDrop_Pa: 0,
    pumpPower_W: 0,
    pipeInnerDiameter_m: 0.02,
    pipeVelocity_ms: 0,
    headerInnerDiameter_m: 0.02,
    riserVelocity_ms: 0,
    riserReynolds: 0,
    flowSpread_frac: 0,
    headerLoss_Pa: 0,
    riserLoss_Pa: 0,
    pipeLoss_Pa: 0,
    liftLoss_Pa: 0,
    remarks: [],
  }
}

/** A tank of equal layers that gives nothing to the room unless asked to. */
export function bareTank(
  layerCapacity_JK: readonly number[],
  layerLoss_WK: readonly number[],
  change: Partial<StoreModel> = {},
): StoreModel {
  return {
    kind: layerCapacity_JK.length > 1 ? 'layered' : 'mixed',
    layerCapacity_JK,
    layerLoss_WK,
    lossTo: 'outside',
    betweenLayers_WK: 0,
    delivery_WK: 0,
    deliveryPower_W: 0,
    dewMargin_K: 2,
    drained: false,
    port: change.kind === 'slab' ? 'pipes' : 'air',
    waterMass_kg: 500,
    ...change,
  }
}

/** Panel, loop, store and plan as one plant whose loop may always run. */
export function plantOf(
  panel: PanelHours,
  loop: LoopDuty,
  store: StoreModel,
  plan: Partial<PlanSpec> = {},
): Plant {
  const allowed = new Uint8Array(panel.hours).fill(1)
  return { panel, loop, store, plan: { ...ALWAYS, ...plan }, allowed, fieldFactor_frac: 1 }
}

const nothing = (): Float64Array => new Float64Array(6)
const NO_EXCHANGE = {
  plateEmission: nothing(),
  plateWindow: 0,
  plateOff: 0,
  plateSun: 0,
  filmToPlate: nothing(),
  plateToFilm: nothing(),
  filmEmission: nothing(),
  filmWindow: 0,
  filmOff: 0,
  filmSun: 0,
}

/** A panel of a textbook: heat leaving it is U (T − T_eq) and nothing else; never wet. */
export function linearPanel(
  hours: number,
  slope_Wm2K: number,
  equilibrium_C: number,
  heatCapacity_Jm2K: number,
): PanelHours {
  const zero = (): Float64Array => new Float64Array(hours)
  const still = { constant: zero(), first: zero(), second: zero(), third: zero(), span_K: 50 }
  return {
    hours,
    equilibrium_C: column(hours, equilibrium_C),
    conductance_Wm2K: column(hours, slope_Wm2K),
    surface_C: column(hours, equilibrium_C),
    surfaceSlope: column(hours, 1),
    air_C: column(hours, equilibrium_C),
    vapour_Pa: zero(),
    massTransfer: zero(),
    cold: still,
    hot: still,
    dryGain: { plate_Wm2: zero(), film_Wm2: zero() },
    wetGain: { plate_Wm2: zero(), film_Wm2: zero() },
    absorbedSun_Wm2: zero(),
    dryExchange: NO_EXCHANGE,
    wetExchange: NO_EXCHANGE,
    gap: null,
    backLoss_Wm2K: slope_Wm2K,
    heatCapacity_Jm2K,
    waterLimit_kgm2: 0.8,
  }
}

/** The same panel, whose plate also has no convection: it only radiates. */
export function withoutConvection(panel: PanelHours): PanelHours {
  const { cold, hot } = linearPanel(panel.hours, 0, 0, 0)
  return { ...panel, cold, hot }
}
